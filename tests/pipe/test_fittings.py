"""What sits in a pipe: each part has one loss, that of the trade."""

import pytest

from calc import practice
from calc.pipe import fittings, friction


@pytest.mark.parametrize("part", fittings.PARTS, ids=lambda part: part.key)
def test_a_part_has_one_loss_or_is_none(part):
    losses = [part.fitting, part.device, part.reducer]
    assert sum(one is not None for one in losses) == (0 if part.key == "none" else 1)


def test_the_keys_of_old_links_are_kept():
    kept = ["none", "filter", "dirty", "twin", "meter", "check", "stop", "r10", "r15", "r20", "r30"]
    assert [part.key for part in fittings.PARTS[: len(kept)]] == kept


def test_two_filters_side_by_side_lose_a_quarter_of_one():
    one, two = fittings.BY_KEY["filter"].device, fittings.BY_KEY["twin"].device
    assert two[0] == one[0] and two[1] == pytest.approx(one[1] / 4, rel=1e-12)


def test_check_valves_reducing_valves_and_break_pressure_tanks_pass_water_one_way():
    assert {part.key for part in fittings.PARTS if part.one_way} == {
        "check", "swing", "r10", "r15", "r20", "r30", "r40", "r50", "break",
    }  # fmt: skip


def test_a_reducing_valve_may_hold_every_usual_setting_and_a_tank_holds_nothing():
    held = {part.reducer[0] for part in fittings.PARTS if part.reducer is not None}
    assert set(practice.REDUCED_TO) < held
    assert {part.key for part in fittings.PARTS if part.vented} == {"break"}
    assert fittings.BY_KEY["break"].reducer[0] == 0.0


def test_fittings_are_those_of_the_one_list():
    assert all(part.fitting in friction.FITTINGS for part in fittings.PARTS if part.fitting)
