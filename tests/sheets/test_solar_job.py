"""Designs for a target, asked a slice at a time through the bridge and worked out apart."""

import json
import math
import re
from html import unescape

import pytest

from calc import bridge
from calc.page.form import work
from calc.page.state import State
from calc.power import design
from calc.power.year import simulate
from calc.sheets import jobs, sheet
from calc.sheets.parts import solar_job
from calc.site import link
from calc.units import HOUR, Reader
from tests.sheets import solar
from tests.sheets.solar import NORTH

PANELS = sheet("panels")
STATE = {
    "system": "us",
    "texts": {
        **NORTH, "use": "500", "flow": "15 L/min", "watts": "300 W", "rated": "100 W",
        "series": "1", "strings": "2", "kind": "lfp", "volts": "24", "ah": "30 Ah", "fail": "3",
        "tank": "0 gal", "tilt": "55", "shade": "0 %", "limit": "100 V", "amps": "30 A",
    },
    "units": {"use": "L/day", "tilt": "°", "tank": "gal"},
    "standing": {"use": "assumed", "flow": "assumed", "rated": "given", "tilt": "given"},
}  # fmt: skip


def ask(do, **more):
    return json.loads(bridge.handle(json.dumps({"op": "job", "sheet": "panels", "do": do, **more})))


def state_of(request):
    return State(request["system"], request["texts"], request["units"], request["standing"])


@pytest.fixture(scope="module")
def case():
    return solar.solar_case.case_of(solar.read_values(PANELS, state_of(STATE)))


@pytest.fixture(scope="module")
def whole():
    """(replies, what was answered in between) of one job run to its end."""
    replies, between = [ask("start", **STATE)], []
    while "html" not in replies[-1]:
        if len(replies) in (3, 20):
            other = {"op": "work", "sheet": "battery", **STATE, "texts": {**NORTH, "ah": "77 Ah"}}
            between.append(json.loads(bridge.handle(json.dumps(other))))
        replies.append(ask("step"))
    return replies, between


@pytest.fixture(scope="module")
def tried(case):
    """{(strings, J, m3): days short} of every design, each year worked out here."""
    sizes, found = solar_job.sizes(case, Reader("us")), {}
    for strings in sizes.strings:
        for energy in sizes.energies:
            for tank in sizes.tanks:
                made = design.with_size(case.system, strings, energy, tank)
                found[strings, energy, tank] = simulate(case.weather, made, case.demand).short_days
    return found


# Slices -------------------------------------------------------------------------------------------


def test_progress_comes_in_several_replies_and_never_goes_back(whole):
    replies, _ = whole
    done = [one["done"] for one in replies[:-1]]
    assert len(done) > 10 and done == sorted(set(done))
    assert {one["of"] for one in replies[:-1]} == {replies[0]["of"]} and done[-1] <= replies[0][
        "of"
    ]
    assert all(one["said"] for one in replies[:-1])
    assert len({one["said"] for one in replies[:-1]}) == 3  # years, designs, years of the best


def test_at_least_sixty_designs_are_tried(whole, tried):
    assert len(tried) >= 60
    assert whole[0][0]["of"] >= 20 + len(tried)


def test_another_question_in_between_is_answered_and_disturbs_nothing(whole):
    replies, between = whole
    assert len(between) == 2 and all(one["errors"] == {} and one["html"] for one in between)
    assert "html" in replies[-1]  # whose figures are held to below


def test_nothing_runs_after_the_end_or_a_stop(whole):
    assert ask("step") == {}
    assert "done" in ask("start", **STATE)
    assert ask("stop") == {} and ask("step") == {}


def test_a_new_start_drops_the_old():
    first = [ask("start", **STATE)] + [ask("step") for _ in range(3)]
    again = ask("start", **{**STATE, "texts": {**STATE["texts"], "strings": "3"}})
    assert again["done"] < first[-1]["done"]
    assert len(jobs._RUNNING) == 1
    ask("stop")


@pytest.mark.parametrize("fault", [{"use": "x"}, {"series": "20"}, {"lat": "95°"}])
def test_a_form_with_faults_says_so_and_leaves_nothing_running(fault):
    ask("start", **STATE)
    reply = ask("start", **{**STATE, "texts": {**STATE["texts"], **fault}})
    assert reply["error"] and "done" not in reply
    assert ask("step") == {}


# What it says -------------------------------------------------------------------------------------


def paragraphs(html):
    return [unescape(re.sub("<[^>]+>", "", one)) for one in re.findall(r"<p.*?</p>", html)]


def test_the_band_is_that_of_the_twenty_years(whole, case):
    short = [
        simulate(case.place.year(at, case.stand), case.system, case.demand).short_days
        for at in range(20)
    ]
    band = paragraphs(whole[0][-1]["html"])[0]
    assert min(short) < max(short) and max(short) == case.year.short_days
    assert f"{min(short)} to {max(short)} days short a year" in band
    assert f"{sum(short) / 20:.1f} in the mean" in band
    assert f"{sum(one <= 3 for one in short)} of 20 years keep to the 3 allowed" in band


def test_the_bars_are_the_fewest_panels_of_a_search_of_one_s_own(whole, tried):
    html = whole[0][-1]["html"]
    heights = {
        at: float(height)
        for height, at in re.findall(r'height="([\d.]+)"[^>]*data-sl-at="(bar \d [^"]+)"', html)
    }
    energies = sorted({energy for _, energy, _ in tried})
    tanks = sorted({tank for _, _, tank in tried})
    fewest = {}
    for at, energy in enumerate(energies):
        for tank in tanks:
            fits = [
                n for (n, e, t), days in tried.items() if (e, t) == (energy, tank) and days <= 3
            ]
            if fits:
                fewest[f"bar {at} {tank:g}"] = min(fits)
    assert heights.keys() == fewest.keys() and len(set(fewest.values())) > 2
    scale = max(heights.values()) / max(fewest.values())
    for at, panels in fewest.items():
        assert heights[at] == pytest.approx(panels * scale, abs=0.11), at  # written to a tenth
    said = re.search(r'aria-label="(The fewest panels[^"]+)"', html)[1]
    for row, tank in zip(said.split(": ")[1:][-3:], tanks, strict=True):
        numbers = [int(one) for one in re.findall(r"\b\d+\b", row.partition(";")[0])]
        wanted = [fewest[f"bar {at} {tank:g}"] for at in range(len(energies))]
        assert numbers == wanted


def designs_said(html):
    """(words, address) of the designs that are named."""
    found = re.findall(r'<p class="sl-fix">(.*?) <a href="(#[^"]+)">', html)
    return [(unescape(words), unescape(address)) for words, address in found]


def pressed(html):
    """(words, address) of the bars."""
    found = re.findall(r'<a href="(#[^"]+)" aria-label="([^"]+): see it"', html)
    return [(unescape(words), unescape(address)) for address, words in found]


def test_every_link_gives_the_design_it_names_and_changes_nothing_else(whole, tried):
    html = whole[0][-1]["html"]
    links = [*designs_said(html), *pressed(html)]
    assert len(designs_said(html)) == 3 and len(pressed(html)) > 10
    before = link.read("#" + link.write(PANELS, state_of(STATE)), PANELS)
    for words, address in links:
        found = link.read(address, PANELS)
        assert found.trusted and not found.said
        values = solar.read_values(PANELS, found.state)
        assert int(re.search(r"(\d+) panel", words)[1]) == values.strings
        energy = float(re.search(r"([\d.\u202f]+)\u00a0Wh", words)[1].replace("\u202f", ""))
        assert values.ah * 24 == pytest.approx(energy * HOUR, rel=5e-3)  # three figures
        size = values.strings, round(values.ah * 24), values.tank
        (match,) = [
            one for one in tried
            if one[0] == size[0] and round(one[1]) == size[1] and math.isclose(one[2], size[2])
        ]  # fmt: skip
        assert tried[match] <= 3
        for key in set(before.texts) - {"strings", "ah", "tank"}:
            assert found.texts[key] == before.texts[key], key
            assert found.units.get(key) == before.units.get(key), key
            assert found.standing.get(key) == before.standing.get(key), key


def test_the_designs_named_are_on_the_frontier_and_their_years_are_their_own(whole, case, tried):
    good = {size for size, days in tried.items() if days <= 3}
    for words, address in designs_said(whole[0][-1]["html"]):
        values = solar.read_values(PANELS, link.read(address, PANELS).state)
        size = next(
            one for one in good
            if one[0] == values.strings and math.isclose(one[1], values.ah * 24)
            and math.isclose(one[2], values.tank)
        )  # fmt: skip
        assert not any(
            other != size and all(a <= b for a, b in zip(other, size, strict=True))
            for other in good
        )
        made = design.with_size(case.system, *size)
        short = [
            simulate(case.place.year(at, case.stand), made, case.demand).short_days
            for at in range(20)
        ]
        assert f": {solar_job.span(short)} days short a year" in words


def test_one_link_opened_shows_the_days_that_were_said(whole, tried):
    words, address = designs_said(whole[0][-1]["html"])[-1]
    outcome = work(PANELS, link.read(address, PANELS).state)
    assert outcome.errors == {} and outcome.answer.verdict.level != "bad"
    most = int(re.search(r"(\d+) days short", words)[1])
    assert next(f for f in outcome.answer.figures if f.main).value <= most


# Sizes --------------------------------------------------------------------------------------------


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize(
    "texts",
    [{}, solar.POLAR, {"use": "1 L/day"}, {"use": "60000 L/day", "rated": "30 W"},
     {"rated": "1000 W", "use": "5 L/day"}, {"watts": "20 kW"}],
)  # fmt: skip
def test_there_are_sixty_designs_to_try_that_the_form_takes(system, texts):
    reader = Reader(system)
    one = solar.case(PANELS, system, **{**STATE["texts"], "use": "500 L/day", **texts})
    sizes = solar_job.sizes(one, reader)
    assert sizes.count >= 60
    for part in (sizes.strings, sizes.energies, sizes.tanks):
        assert list(part) == sorted(set(part))
    for place in (0, -1):
        size = sizes.strings[place], sizes.energies[place], sizes.tanks[place]
        (tried,) = design.sweep(
            one.weather, one.demand, one.system, *([each] for each in size), most_short=1.0
        )
        given = solar_job.texts_of(tried, one, reader)
        values = solar.read_values(
            PANELS, State(system, {**STATE["texts"], "use": "500 L/day", **texts, **given})
        )
        assert values is not None, given
        assert values.strings == size[0]
        assert values.ah * float(values.volts) == pytest.approx(size[1])
        assert values.tank == pytest.approx(size[2])


def test_where_no_design_keeps_to_the_days_it_says_how_near_the_best_comes():
    """A pump too slow for the busiest hour, without a tank tried: nothing helps."""
    one = solar.case(PANELS, **{**STATE["texts"], "flow": "0.3 L/min", "watts": "10 W"})
    tried = list(
        design.sweep(one.weather, one.demand, one.system, (1, 2), (3.6e6, 7.2e6), (0.0,), 1)
    )
    assert solar_job.finalists(tried) == []
    html = solar_job.html(one, Reader(), lambda _: "#", [365], tried, [], [])
    assert "None of the 4 designs tried keeps to 3 days" in html
    least = min(each.year.short_days for each in tried)
    assert f"falls short on {least} days" in html and "none tried" in html


def test_the_finalists_have_the_smallest_tank_the_fewest_panels_and_the_smallest_battery(case):
    sizes = solar_job.sizes(case, Reader())
    some = list(design.sweep(case.weather, case.demand, case.system, sizes.strings[::2],
                             sizes.energies[::2], sizes.tanks, 100 * 3 / 365))  # fmt: skip
    front = design.frontier(some)
    picked = solar_job.finalists(some)
    assert len(picked) == len({one.size for one in picked}) == min(3, len(front))
    assert picked[0].tank == min(one.tank for one in front)
    assert min(one.strings for one in picked) == min(one.strings for one in front)
    assert min(one.energy for one in picked) == min(one.energy for one in front)
