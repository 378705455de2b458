"""The whole answer on one page, for a site: asked in stages, so that a page fills as they come.

{"op": "desk", "do": "whole", "fragment", "stage": one of ``STAGES``, "at": how many were done
before, "base", "flat"} gives {"parts": {place on the page: HTML}, "done": whether the stage is,
"at": what to ask for next}.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.desk import bands, changes, fails, pairs, settings, verdict, whole_show
from calc.desk.whole_show import Where
from calc.desk.work import all_ways, part, way_for, work_out
from calc.errors import InputError
from calc.site.demo import alder_terrace
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.desk.work import Part, Work

Data = dict[str, Any]
FAST = ("keep_up", "reach", "gravity")  # what the first verdict waits for
STAGES = ("verdict", "parts", "changes", "fails", "bands")
SLICE = 3  # changes worked out in one request, so that none keeps a browser long; our choice


def handle(request: Data) -> Data:
    """Answer one request.  Raises InputError for a link that cannot be read."""
    opened = _opened(request.get("fragment", ""))
    where = Where(request.get("base", ""), bool(request.get("flat", False)), opened.may)
    stage = request.get("stage", "verdict")
    reply = _STAGES[stage](opened, where, int(request.get("at", 0)))
    return {"done": True, "at": 0, "said": list(opened.said), "name": opened.site.name,
            "example": not request.get("fragment"), **reply}  # fmt: skip


def _opened(text: str) -> pairs.Opened:
    if not text.strip("#").strip():
        return pairs.Opened("metric", alder_terrace())
    return pairs.of_address(text)


def _work(opened: pairs.Opened) -> Work:
    return work_out(opened.site, opened.system)


def _verdict(opened: pairs.Opened, where: Where, _at: int) -> Data:
    work = work_out(opened.site, opened.system, FAST)
    told = verdict.of(work)
    return {"level": told.level, "parts": {
        "top": whole_show.top(work, told, bool(work.parts), where),
        "outlets": whole_show.outlets(work, outlets(work), where),
    }}  # fmt: skip


def outlets(work: Work) -> tuple[Part, ...]:
    """The page of one pipe asked about every outlet, each open beside all that is open after."""
    found = []
    for way in all_ways(work.site):
        asked = way_for(work.site, "reach", way.outlet)
        try:
            found.append(part(work.site, work.packed, "reach", work.system, asked))
        except InputError:
            continue
    return tuple(found)


def _parts(opened: pairs.Opened, where: Where, _at: int) -> Data:
    work = _work(opened)
    told = verdict.of(work)
    reader = Reader(opened.system)
    held = whole_show.set_pressure(settings.set_range(work.site, work.system), reader)
    return {"level": told.level, "parts": {
        "top": whole_show.top(work, told, False, where),
        "list": whole_show.parts(work, where),
        "set": held,
        "assumed": whole_show.assumed(work),
        "unchecked": whole_show.unchecked(work),
        "goes": whole_show.goes(work, where),
    }}  # fmt: skip


def _changes(opened: pairs.Opened, where: Where, at: int) -> Data:
    work = _work(opened)
    if not work.weakest and not work.parts:
        return {"parts": {"changes": whole_show.changed(work, (), where)}}
    count = len(changes.candidates(work))
    upto = min(at + SLICE, count)
    if upto < count:
        for one in changes.candidates(work)[at:upto]:
            changes.change(work, one)  # kept for the ranking
        said = f"<p>Tried {upto} of {count} changes …</p>"
        return {"done": False, "at": upto, "parts": {"changes": said}}
    return {"parts": {"changes": whole_show.changed(work, changes.ranked(work), where)}}


def _fails(opened: pairs.Opened, where: Where, at: int) -> Data:
    work = _work(opened)
    if not work.parts:
        return {"parts": {"fails": ""}}
    days = fails.days(work.site, Reader(work.system))
    upto = min(at + 1, len(days))
    found = [(day, fails.tried(work, day)) for day in days[:upto]]
    html = whole_show.bad_days(work, found, where)
    return {"done": upto >= len(days), "at": upto, "parts": {"fails": html}}


def _bands(opened: pairs.Opened, _where: Where, _at: int) -> Data:
    work = work_out(opened.site, opened.system, FAST)
    try:
        found = bands.of(work)
    except InputError:
        found = None
    return {"parts": {"bands": whole_show.sure(found, Reader(work.system))}}


_STAGES: dict[str, Callable[[pairs.Opened, Where, int], Data]] = {
    "verdict": _verdict, "parts": _parts, "changes": _changes, "fails": _fails, "bands": _bands,
}  # fmt: skip


def all_of(fragment: str, base: str, flat: bool) -> dict[str, str]:
    """Every place of the page filled, as when all stages are done: for a page made at build."""
    found: dict[str, str] = {}
    for stage in STAGES:
        at, done = 0, False
        while not done:
            reply = handle({"fragment": fragment, "stage": stage, "at": at, "base": base,
                            "flat": flat})  # fmt: skip
            found |= reply["parts"]
            at, done = reply["at"], reply["done"]
    return found
