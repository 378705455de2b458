"""What to try with hot water: a relief valve, room to expand, less pressure, a pipe, mixing."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import hot_water, practice
from calc.pipe import pipes
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.hot_water.case import Case
    from calc.units import Reader

NONE = (
    "No single change we tried is enough. Ask a licensed person about the heater, its relief "
    "valve and its pipe together."
)
SURE = 1 + 1e-6  # beyond what is just enough, so that rounding leaves enough
REDUCED = 0.5  # of the pressure to stay below: what the supply is set to, to leave room; our choice
LEAST_SET = 0.5e5  # Pa, that a relief valve or a supply is set to; our choice
# Kinds made for hot water, those tried first by system of units: our choice
HOT_KINDS = {
    "metric": ("pex-mm", "copper-en", "steel-en"),
    "us": ("pex-in", "cpvc11", "copper-l", "steel"),
}
PRESSED = frozenset({"over-rating", "relief-runs", "relief-near"})
ROOM = frozenset({"no-room", "tank-small"})
NO_RELIEF = frozenset({"bursts", "no-relief"})


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    yield from _relief(case, reader)
    yield from _pipe(case, reader)
    yield from _room(case, reader)
    yield from _lower(case, reader)
    yield from _mixing(case, reader)
    yield from _store(case, reader)


def _setting(case: Case, reader: Reader) -> float | None:
    """A setting of the relief valve below every rating and well above the static pressure."""
    usual = practice.RELIEF_USUAL[reader.system == "us"]
    least = case.static / practice.RELIEF_SEEPS * SURE
    most = usual if case.lowest is None else min(case.lowest, max(usual, 1.3 * least))
    found = round_down(most, "pressure", reader)
    return found if found >= max(least, LEAST_SET) else None


def _relief(case: Case, reader: Reader) -> Iterator[Change]:
    """A relief valve where there is none, and one of another setting."""
    setting = _setting(case, reader)
    if setting is None:
        return
    shown, texts = reader.show(setting, "pressure"), {"relief": exact(setting, "pressure", reader)}
    if case.relieved:
        if case.setting is not None:
            text = f"Fit a relief valve set to {shown}."
            yield Change(text, PRESSED, texts)
        return
    text = f"Fit a temperature-and-pressure relief valve set to {shown}."
    texts["valve"] = "tp"
    tank = _tank_texts(case.with_setting(setting), reader)
    if case.closed and case.tank == 0.0 and tank is not None:
        said, more = tank
        yield Change(f"{text} {said}", NO_RELIEF, texts | more)
    yield Change(text, NO_RELIEF | {"over-rating"}, texts)


def _pipe(case: Case, reader: Reader) -> Iterator[Change]:
    """A pipe made for the heat, in the size nearest to the one there."""
    if not (case.too_hot or case.pipe_is_lowest):
        return
    for kind in HOT_KINDS[reader.system]:
        sizes = pipes.sizes(kind)
        wide = [one for one in sizes if one.inside_m >= 0.97 * case.pipe.inside_m]
        best = wide[0] if wide else sizes[-1]
        if kind != case.pipe.kind and not pipes.too_hot(best, case.heat, case.stored):
            text = f"Use {best.label} for the hot pipe."
            keys = frozenset({"too-hot", "over-rating"})
            yield Change(text, keys, {"kind": kind, kind: best.size})


def _enough(case: Case, charge: float) -> float | None:
    """The least expansion tank that is enough with a pre-charge (Pa); None where none is."""
    if case.limit is None:
        return None
    needed = hot_water.tank_needed(case.growth, charge, case.static, case.limit, case.air)
    return needed * SURE if 0 < needed < math.inf else None


def _tank_texts(case: Case, reader: Reader) -> tuple[str, dict[str, str]] | None:
    """(sentence, texts) of an expansion tank that is enough; None where none is."""
    charge = round_down(case.static, "pressure", reader)
    needed = _enough(case, charge)
    if needed is None:
        return None
    size = round_up(needed, "volume", reader, 2)
    shown = reader.show(size, "volume"), reader.show(charge, "pressure")
    texts = {
        "vessel": "yes",
        "volume": exact(size, "volume", reader),
        "charge": exact(charge, "pressure", reader),
    }
    return f"Fit an expansion tank of {shown[0]} or more, pre-charged to {shown[1]}.", texts


def _charged(case: Case, reader: Reader) -> tuple[str, dict[str, str]] | None:
    """(sentence, texts) of another pre-charge, where the tank that is there is then enough."""
    charge = round_down(case.static, "pressure", reader)
    needed = _enough(case, charge)
    if not case.tank or case.charge in (None, charge) or needed is None or case.tank < needed:
        return None
    text = (
        f"Set the tank's pre-charge to {reader.show(charge, 'pressure')}, with its water let out."
    )
    return text, {"charge": exact(charge, "pressure", reader)}


def _room(case: Case, reader: Reader) -> Iterator[Change]:
    """Another pre-charge where the tank is large enough, else a larger tank."""
    for found in (_charged(case, reader), _tank_texts(case, reader)):
        if found is not None:
            yield Change(found[0], ROOM, found[1])
            return


def _lower(case: Case, reader: Reader) -> Iterator[Change]:
    """Less pressure from the supply, with the relief valve and the tank that then suit."""
    if case.limit is None:
        return
    low = round_down(REDUCED * case.limit, "pressure", reader, 2)
    if not LEAST_SET <= low < case.static:
        return
    shown, texts = reader.show(low, "pressure"), {"static": exact(low, "pressure", reader)}
    text = f"Lower the pressure at the pump or tank, to {shown} at the heater."
    if case.closed:
        text, texts["closed"] = f"Fit a pressure-reducing valve set to {shown}.", "reducer"
    lower, keys = case.with_static(low), PRESSED
    if case.setting is not None and case.lowest is not None and case.setting > case.lowest:
        setting = _setting(lower, reader)
        if setting is None:
            return
        text += f" Fit a relief valve set to {reader.show(setting, 'pressure')}."
        texts["relief"], lower = exact(setting, "pressure", reader), lower.with_setting(setting)
    if case.closed and not _settled(lower):
        more = _charged(lower, reader) or _tank_texts(lower, reader)
        if more is not None:
            text, texts, keys = f"{text} {more[0]}", texts | more[1], PRESSED | ROOM
    yield Change(text, keys, texts)


def _settled(case: Case) -> bool:
    """Whether the tank that is there is enough, or nothing is known of it."""
    if case.reached is None or case.limit is None:
        return True
    return case.reached <= case.limit


def _mixed(reader: Reader) -> tuple[str, str]:
    """(a mixing valve's setting as shown, as typed)."""
    return (
        reader.show(practice.MIXED_TO, "temperature"),
        exact(practice.MIXED_TO, "temperature", reader),
    )


def _mixing(case: Case, reader: Reader) -> Iterator[Change]:
    shown, typed = _mixed(reader)
    keys = frozenset({"scald"})
    if case.mixed:
        yield Change(f"Set the mixing valve to {shown}.", keys, {"set": typed})
    else:
        text = f"Fit a mixing valve at the tap that holds {shown}."
        yield Change(text, keys, {"mix": "tap", "set": typed})


def _store(case: Case, reader: Reader) -> Iterator[Change]:
    """Hotter against legionella, with a mixing valve; cooler than boiling in an open system."""
    shown = reader.show(practice.STORED_HOT, "temperature")
    texts = {"stored": exact(practice.STORED_HOT, "temperature", reader)}
    mixed, typed = _mixed(reader)
    if case.stored < practice.STORED_HOT:
        text = f"Store the water at {shown}, and mix it to {mixed} before the tap."
        mix = {} if case.mixed else {"mix": "tap"}
        yield Change(text, frozenset({"lukewarm"}), texts | mix | {"set": typed})
    elif case.vented:
        yield Change(f"Store the water at {shown}.", frozenset({"boils"}), texts)
