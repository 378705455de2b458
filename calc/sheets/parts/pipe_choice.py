"""The menus that choose a real pipe: its kind, then a size of that kind."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.errors import RangeError
from calc.page.fields import Choice, Number
from calc.pipe import pipes
from calc.pipe import tables as pipe_tables
from calc.units import INCH

if TYPE_CHECKING:
    from calc.page.fields import Field, When
    from calc.page.form import Values

ROUGHNESS = (
    ("plastic", "Smooth plastic or copper", pipe_tables.PLASTIC),
    ("hose", "Rubber hose", pipe_tables.RUBBER),
    ("steel", "Galvanised steel, new", pipe_tables.GALVANISED),
    ("rusty", "Steel, rusted or scaled", 1.0e-3),
)  # m; Moody (1944) for the new pipes, handbook range for rusted steel, from memory


def kind_field(
    start: str, start_us: str, group: str = "", when: When | None = None, own: bool = True
) -> Choice:
    """The menu of kinds, with or without a bore of the reader's own."""
    options = tuple(pipes.KINDS.items()) + ((("own", "Another: by measured bore"),) if own else ())
    return Choice("kind", "Pipe", options, start, start_us, group=group, when=when)


def pipe_fields(
    group: str = "",
    start: tuple[str, str] = ("pe100-sdr11", "32"),
    start_us: tuple[str, str] = ("pvc40", "1"),
    when: When | None = None,
) -> tuple[Field, ...]:
    """A kind menu, a size menu for each kind (its key is the kind's), and a bore of one's own.

    start, start_us: (kind, size) for metric and US readers.  ``when`` holds for the kind menu;
    the size menus show with their kind.  Returns a tuple of fields for a sheet.
    """
    fields: list[Field] = [kind_field(start[0], start_us[0], group, when)]
    wanted = dict([start_us, start])
    for kind in pipes.KINDS:
        options = tuple((p.size, _size_label(p)) for p in pipes.sizes(kind))
        first = wanted.get(kind) or options[min(2, len(options) - 1)][0]
        fields.append(Choice(kind, "Size", options, first, group=group, when=("kind", (kind,))))
    own = ("kind", ("own",))
    menu = tuple((key, label) for key, label, _ in ROUGHNESS)
    fields += [
        Number(
            "bore",
            "Inside diameter",
            "diameter",
            "28 mm",
            "1.1 in",
            1e-3,
            0.5,
            group=group,
            when=own,
        ),
        Choice("inside", "Inside surface", menu, "plastic", group=group, when=own),
    ]
    return tuple(fields)


def _size_label(pipe: pipes.Pipe) -> str:
    bore = pipe.inside_m
    return f"{pipe.name} – inside {bore * 1e3:.1f} mm ({bore / INCH:.3f} in)"


def pipe_options() -> tuple[tuple[str, str], ...]:
    """Every size of every kind as one menu: ("pe100-sdr11/32", "32 mm PE 100 SDR 11")."""
    return tuple((f"{p.kind}/{p.size}", p.label) for kind in pipes.KINDS for p in pipes.sizes(kind))


KIND_HEADINGS = tuple(pipes.KINDS.items())  # of a menu of ``pipe_options``


def pipe_of(value: str) -> pipes.Pipe:
    """The ``Pipe`` of a value of ``pipe_options``."""
    kind, _, size = value.partition("/")
    return pipes.pipe(kind, size)


# arguments of ``pipes.own_pipe`` -> the fields they come from
_OWN_FIELDS = {"bore_m": "bore", "roughness_m": "inside"}


def chosen_pipe(values: Values) -> pipes.Pipe:
    """The ``Pipe`` the menus of ``pipe_fields`` are set to.

    Raises RangeError at "bore" or "inside" for an own pipe too narrow or too rough.
    """
    if values.kind != "own":
        return pipes.pipe(values.kind, values.numbers[values.kind])
    roughness = {key: size for key, _, size in ROUGHNESS}[values.inside]
    try:
        return pipes.own_pipe(values.bore, roughness)
    except RangeError as error:
        at = _OWN_FIELDS[str(error.name)]
        span = error.value, error.low, error.high, error.quantity
        raise RangeError(at, *span, error.remedy) from error
