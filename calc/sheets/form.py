"""Fields of a sheet, and the one place where what a reader typed becomes numbers.

A sheet is a ``Sheet``: a key, a title, fields and ``solve(values, reader) ->
Answer``.  ``work(sheet, state)`` reads every field, catches every
``InputError``, and returns an ``Outcome``.
"""

import math
from collections.abc import Callable
from dataclasses import dataclass, field

from calc.answer import Answer
from calc.errors import InputError, RangeError
from calc.units import Reader, number_text, parse


@dataclass(frozen=True)
class Number:
    """A number with a unit.

    metric, us: the default as typed text ("18 m", "60 ft"); low, high: SI.
    optional: empty is allowed and gives None.  when: (key, (choice, ...)), the
    field counts and shows only while that choice field has one of those values.
    """

    key: str
    label: str
    quantity: str
    metric: str
    us: str
    low: float
    high: float
    help: str = ""
    optional: bool = False
    when: tuple | None = None
    group: str = ""

    def default(self, system):
        return self.us if system == "us" else self.metric


@dataclass(frozen=True)
class Count:
    """A whole number from low to high."""

    key: str
    label: str
    start: int
    low: int
    high: int
    help: str = ""
    when: tuple | None = None
    group: str = ""

    def default(self, _system):
        return str(self.start)


@dataclass(frozen=True)
class Choice:
    """One of ``options``: (value, label) pairs; values are short link-safe words."""

    key: str
    label: str
    options: tuple
    start: str
    start_us: str | None = None
    help: str = ""
    when: tuple | None = None
    group: str = ""

    def default(self, system):
        return self.start_us if system == "us" and self.start_us else self.start


@dataclass(frozen=True)
class Text:
    """A block of text, such as a table pasted in; read as it stands into ``Values``."""

    key: str
    label: str
    start: str
    longest: int = 4000  # characters; a page of figures, not a book
    help: str = ""
    when: tuple | None = None
    group: str = ""

    def default(self, _system):
        return self.start


@dataclass(frozen=True)
class Sheet:
    """A calculator. ``folded``: names of groups that start closed (rarely changed fields)."""

    key: str
    title: str
    fields: tuple
    solve: Callable
    folded: tuple = ()
    cautions: tuple = ()
    sources: tuple = ()
    page: str = ""  # address of its guide below the site's root, e.g. "head/"

    def field(self, key):
        for candidate in self.fields:
            if candidate.key == key:
                return candidate
        raise KeyError(key)


@dataclass(frozen=True)
class State:
    """What the reader typed: texts by field key (missing: the default)."""

    system: str = "metric"
    texts: dict = field(default_factory=dict)
    units: dict = field(default_factory=dict)  # field key -> unit symbol from its menu


@dataclass(frozen=True)
class Values:
    """SI numbers, counts and choices by attribute; ``typed`` keeps the ``Parsed`` numbers."""

    numbers: dict
    typed: dict

    def __getattr__(self, key):
        try:
            return self.numbers[key]
        except KeyError:
            raise AttributeError(key) from None


@dataclass(frozen=True)
class Outcome:
    """``answer`` is None where ``errors`` (field key -> sentence; "" = the whole sheet) is not empty."""

    answer: Answer | None
    errors: dict
    notes: dict
    hidden: frozenset
    reader: Reader


def work(sheet, state):
    """Read ``state``, solve the sheet and return an ``Outcome``; never raises on input."""
    reader = Reader(state.system)
    numbers, typed, errors, notes = {}, {}, {}, {}
    hidden = hidden_keys(sheet, state)
    for entry in sheet.fields:
        if entry.key in hidden:
            numbers[entry.key] = None
            continue
        try:
            numbers[entry.key] = _read(entry, state, reader, typed, notes)
        except InputError as error:
            errors[entry.key] = error.message
    answer = None
    if not errors:
        try:
            answer = sheet.solve(Values(numbers, typed), reader)
        except InputError as error:
            known = {entry.key for entry in sheet.fields} - hidden
            key = error.name if error.name in known else ""
            errors[key] = _sentence(error, sheet, key, reader)
    return Outcome(answer, errors, notes, hidden, reader)


def hidden_keys(sheet, state):
    """Keys of the fields whose ``when`` does not hold in ``state``."""
    hidden = set()
    for entry in sheet.fields:
        if entry.when is None:
            continue
        key, wanted = entry.when
        chosen = state.texts.get(key, sheet.field(key).default(state.system))
        if key in hidden or chosen not in wanted:
            hidden.add(entry.key)
    return frozenset(hidden)


def _read(entry, state, reader, typed, notes):
    text = state.texts.get(entry.key, entry.default(state.system))
    if isinstance(entry, Choice):
        return _read_choice(entry, text)
    if isinstance(entry, Count):
        return _read_count(entry, text)
    if isinstance(entry, Text):
        return _read_text(entry, text)
    if entry.optional and not text.strip():
        return None
    symbol = state.units.get(entry.key) or reader.unit(entry.quantity).symbol
    try:
        parsed = parse(text, entry.quantity, symbol)
    except InputError as error:
        raise InputError(f"{error.message} {allowed(entry, reader)}") from error
    slack = 1e-9 * max(abs(entry.low), abs(entry.high))  # a bound typed in another unit is in
    if not entry.low - slack <= parsed.value <= entry.high + slack:
        raise InputError(f"{_given(parsed)} is out of range. {allowed(entry, reader)}")
    typed[entry.key] = parsed
    notes[entry.key] = parsed.note
    return min(max(parsed.value, entry.low), entry.high)


def _read_choice(entry, text):
    if text not in {value for value, _ in entry.options}:
        raise InputError(f"“{text}” is not one of the choices here. Choose one from the list.")
    return text


def _read_count(entry, text):
    span = f"Enter a whole number from {entry.low} to {entry.high}."
    try:
        number = float(text.strip())
    except ValueError:
        given = f"“{text.strip()}” is not a whole number" if text.strip() else "Nothing is entered here"
        raise InputError(f"{given}. {span}") from None
    if not math.isfinite(number) or number != int(number) or not entry.low <= number <= entry.high:
        raise InputError(f"“{text.strip()}” is not allowed here. {span}")
    return int(number)


def _read_text(entry, text):
    if len(text) > entry.longest:
        raise InputError(
            f"This is {len(text)} characters long. Allowed: up to {entry.longest}. Leave some lines out."
        )
    return text


def _given(parsed):
    return f"{number_text(parsed.number, 4)} {parsed.unit.symbol}".strip()


def allowed(entry, reader):
    """The sentence that says which span a number field takes, in the reader's units."""
    low, high = (reader.show(v, entry.quantity) for v in (entry.low, entry.high))
    return f"Allowed: {low} to {high}."


def _sentence(error, sheet, key, reader):
    if not isinstance(error, RangeError):
        return error.message
    show = {bound: reader.show(getattr(error, bound), error.quantity) for bound in ("value", "low", "high")}
    name = sheet.field(key).label if key else error.name.replace("_", " ")
    sentence = f"{name}: {show['value']} is out of range; allowed: {show['low']} to {show['high']}."
    return f"{sentence} {error.remedy}".strip()


