"""A site worked out on the sheets it fills, each as its own page does it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.bulk.answers import ALL, Data, Wanted, record
from calc.errors import InputError
from calc.page.fields import UNKNOWN
from calc.page.state import State, hidden_keys
from calc.sheets import KEYS, site_ops, views
from calc.sheets import sheet as find_sheet
from calc.sheets.parts import ways
from calc.sheets.parts.filling import filled_form
from calc.site import file
from calc.site.pack import pack

if TYPE_CHECKING:
    from calc.site.site import Site

WHOLE_SUPPLY = ("keep_up",)  # what is asked of a site where nothing else is said


def form(site: Site, key: str, system: str = "") -> tuple[State, str]:
    """(the form as the sheet's page shows it for the site, the way asked about).

    system: "metric" or "us"; "": the site's own.  Raises InputError for what the site holds and
    cannot be followed, KeyError for no such sheet.
    """
    system = system or site.system
    request = {"do": "fill", "site": file.to_data(site), "sheet": key, "system": system}
    filled = site_ops.handle(request)
    if filled["errors"]:
        raise InputError(" ".join(filled["errors"]))
    usual = {entry.key: "example" for entry in find_sheet(key).fields}
    return filled_form(filled, State(system, {}, {}, usual)), filled["way"]


def is_filled(key: str, state: State) -> bool:
    """Whether the site says at least as many of the fields that show as the example does.

    Source: our choice.
    """
    sheet = find_sheet(key)
    hidden = hidden_keys(sheet, state)
    shown = [entry for entry in sheet.fields if entry.key not in hidden]
    example = sum(state.standing[entry.key] == "example" for entry in shown)
    said = sum(
        state.standing[entry.key] != "example" and state.text(entry).strip() not in {"", UNKNOWN}
        for entry in shown
    )
    return said >= max(example, 1)


def is_lacking(found: Data, state: State) -> bool:
    """Whether there is no answer, and only because of what the site does not say."""
    return bool(found["errors"]) and all(
        state.texts.get(place, "").strip() in {"", UNKNOWN} for place in found["errors"]
    )


def keys(site: Site) -> tuple[str, ...]:
    """The sheets that a site may fill: without a pump not those of one."""
    pump = ways.has_pump(site)
    return tuple(key for key in KEYS if pump or key not in views.OF_A_PUMP)


def answers(site: Site, wanted: Wanted) -> list[Data]:
    """Records of the sheets that are wanted; of all where ``ALL`` is, those that the site fills."""
    packed = pack(site)
    every = ALL in wanted.sheets
    found = []
    for key in keys(site) if every else wanted.sheets or WHOLE_SUPPLY:
        try:
            state, way = form(site, key, wanted.system)
        except InputError as error:
            found.append({"sheet": key, "error": error.message})
            continue
        if every and not is_filled(key, state):
            continue
        one = record(find_sheet(key), state, wanted, (packed, way))
        if not every or not is_lacking(one, state):
            found.append(one)
    return found


def worked(given: Any, wanted: Wanted) -> Data:
    """The record of a site: {"id", "name", "notes", "answers", "error"}.

    given: the object of a site file, or {"id", "site": such an object}.  Raises nothing on input.
    """
    found: Data = {"id": "", "name": "", "notes": [], "answers": [], "error": ""}
    if isinstance(given, dict) and "id" in given:
        found["id"] = given["id"]
        given = {key: value for key, value in given.items() if key != "id"}
    if isinstance(given, dict) and isinstance(given.get("site"), dict):
        given = given["site"]
    opened = file.from_data(given)
    found["notes"] = list(opened.notes)
    if opened.site is None:
        return found | {"error": " ".join(opened.errors)}
    found["name"] = opened.site.name
    found["answers"] = answers(opened.site, wanted)
    if not found["answers"]:
        found["error"] = "Too little is known of this site for any sheet."
    else:
        told = (f"{one['sheet']}: {one['error']}" for one in found["answers"] if one["error"])
        found["error"] = "; ".join(told)
    return found
