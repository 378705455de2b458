"""The fields, defaults, units, pipes and pumps of release 0.1.0, read from ``defaults.json``.

Nothing here looks at today's ``calc``: these stay as they were.
"""

import json
from pathlib import Path

FILE = Path(__file__).with_name("defaults.json")
SYSTEMS = ("metric", "us")
# around these, SI, where 0.1.0 left a number field empty
EMPTY_AROUND = {
    "highest": 6e5, "own": 3.0, "well": 1.4e-4, "height": 12.0, "precharge": 1.8e5, "set": 3.5e5,
    "flow": 2e-4, "rated": 2e5, "want": 1e5,
}  # fmt: skip
ZERO_AROUND = {"length": 300.0, "flow": 5e-5, "volume": 0.4}  # SI, where the default is 0


def load():
    return json.loads(FILE.read_text(encoding="utf-8"))


class Frozen:
    """The frozen fields of one sheet, and the units they are typed in."""

    def __init__(self, key, data=None):
        data = data or load()
        self.key = key
        self.page = data["sheets"][key]["page"]
        self.fields = data["sheets"][key]["fields"]
        self.quantities = data["quantities"]

    def field(self, key):
        return next(entry for entry in self.fields if entry["key"] == key)

    def units(self, entry):
        return self.quantities[entry["quantity"]]["units"]

    def symbol(self, entry, system):
        return self.quantities[entry["quantity"]][system]

    def around(self, entry, system):
        """The SI value of a number field's default, or what stands for it where it is empty."""
        text = entry[system]
        if not text:
            return EMPTY_AROUND[entry["key"]]
        for unit in sorted(self.units(entry), key=lambda unit: -len(unit["symbol"])):
            if text.endswith(unit["symbol"]):
                number = float(text[: len(text) - len(unit["symbol"])])
                value = number * unit["factor"] + unit["offset"]
                return value or ZERO_AROUND[entry["quantity"]]
        raise ValueError(text)

    def shown(self, entry, texts, system):
        """Whether the choices in ``texts`` show the field."""
        if not entry["when"]:
            return True
        key, wanted = entry["when"]
        ruler = self.field(key)
        return texts.get(key, ruler[system]) in wanted and self.shown(ruler, texts, system)

    def completed(self, request, since=()):
        """A request with every text that it left to 0.1.0's defaults written out.

        since: (key, text) of fields that came later, with what leaves old answers as they were.
        """
        texts = {entry["key"]: self._default(entry, request["system"]) for entry in self.fields}
        later = {key: text for key, text in since if key not in texts}
        return {**request, "texts": later | texts | request["texts"]}

    def _default(self, entry, system):
        if entry["kind"] != "Rows":
            return entry[system]
        return ";".join(",".join(cells) for cells in entry[system])
