"""Six quite different sites, as their owners would write of them."""

import functools

from calc.site import enquiry
from calc.site.facts import Fact

LETTERS = {
    "cistern": (
        "Hello, we water 60 m2 of vegetables on drip from a 3000 L cistern. The pump stands beside "
        "the cistern, the water is level with the pump. From the pump it is 45 m of 32 mm PE pipe "
        "to the beds, which lie 3 m above the pump. 2 drip zones, 6 L/min each. No goats, no "
        "animals at all."
    ),
    "deep well": (
        "We have a drilled well 45 m deep with a submersible pump at 38 m; the water stands 28 m "
        "below the ground and the well gives 15 L/min. From the well head 60 m of 32 mm PE pipe "
        "rise 6 m to the house. 2 showers, 1 kitchen sink, one hose. Four people. The pressure "
        "tank holds 100 L, the switch goes on at 2 bar and off at 3.5 bar."
    ),
    "spring": (
        "Our spring is 32 m above the cabin. 280 m of 25 mm PE pipe lead down to it, no pump. One "
        "shower and one sink. The spring gives 9 L/min. Two of us live there."
    ),
    "goats": (
        "We keep 24 goats and 6 kids, and 30 hens. The pump is at the well, water 3 m below it. "
        "120 m of 25 mm PE pipe go up 8 m to the barn, where two float valve troughs and one hose "
        "are. Nobody lives there. There is no pressure tank."
    ),
    "cabin": (
        "Small cabin, two people, 48 V battery of 100 Ah and 4 panels of 300 W at latitude 45 "
        "north. The pump draws from a shallow well, water 4 m below the pump. 30 m of 25 mm PE "
        "pipe climb 5 m to the cabin with a shower and a sink. The cable is 25 m long. No toilets, "
        "no washing machine, no hose."
    ),
    "impossible": (
        "The pump stands in the shed and the water in the well is 15 m below the pump. From the "
        "pump 50 m of 32 mm PE pipe rise 4 m to the house with one shower and two sinks."
    ),
}


# What their owners then typed into the form.
TYPED = {
    "cistern": {"water.level": "0 m", "drip.rows": "20"},
    "deep well": {},
    "spring": {},
    "goats": {"use.toilets": "0"},
    "cabin": {"power.series": "2", "power.strings": "2"},
    "impossible": {},
}
CELLS = {"goats": (("sections", 0, "height", "8 m"), ("outlets", 1, "after", "2"))}


@functools.cache
def six(key):
    """The site that is read of a letter, named after it."""
    site = enquiry.to_site(enquiry.read(LETTERS[key]))
    for path, text in TYPED[key].items():
        site = site.put(path, Fact(text))
    for table, row, column, text in CELLS.get(key, ()):
        site = site.put_cell(table, row, column, Fact(text))
    return type(site)(key.capitalize(), site.system, site.facts, site.tables, site.note)
