"""The menu that chooses a pump, an invented one or the reader's own by its table."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.fields import Choice, Text
from calc.pump.curve import DisplacementPump, Pump
from calc.pump.invented import PUMPS, TABLE
from calc.pump.pasted import read_points

if TYPE_CHECKING:
    from calc.page.form import Values

OWN = ("pump", ("own",))


def pump_menu(start: str) -> Choice:
    """The menu of pumps. start: the key of the one the example has."""
    menu = tuple((key, pump.name) for key, pump in PUMPS.items())
    return Choice(
        "pump",
        "Pump",
        menu + (("own", "My own pump, pasted below"),),
        start,
        help="The invented pumps are examples; no manufacturer sells them",
    )


def own_pump_fields() -> tuple[Text, Choice]:
    """A pasted table and the kind of pump, shown where the pump is the reader's own."""
    return (
        Text(
            "table",
            "The pump's table",
            TABLE,
            help="Three rows or more. The heading names each column and its unit; power, "
            "efficiency and NPSH required may be left out.",
            when=OWN,
        ),
        Choice(
            "works",
            "How it works",
            (
                ("centrifugal", "Centrifugal (impeller)"),
                ("diaphragm", "Diaphragm or other displacement pump"),
            ),
            "centrifugal",
            help="It decides how the curve changes with speed.",
            when=OWN,
        ),
    )


def chosen_pump(values: Values) -> Pump:
    """The pump of a sheet's values.  Raises InputError at "table" for one that cannot be read."""
    if values.pump != "own":
        return PUMPS[values.pump]
    kind = DisplacementPump if values.works == "diaphragm" else Pump
    try:
        return kind("Your pump", read_points(values.table))
    except InputError as error:
        raise InputError(error.message, name="table") from error
