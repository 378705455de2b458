"""What a fix leaves, in words: nothing is claimed for it beyond what it does."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.findings import Finding

MOST_NAMED = 3  # faults named in one sentence; our choice
# key of a finding -> what it is about, as it is named among several
_ABOUT = {
    "short": "too little pressure",
    "no-water": "no water",
    "over": "too much pressure",
    "over-rating": "a pipe over its rating",
    "shut-off-over-rating": "a missing relief valve",
    "outlet-over-limit": "the static pressure",
    "too-hot": "the heat",
    "negative-pressure": "low pressure on the way",
    "below-vacuum": "low pressure on the way",
    "fast": "the water speed",
    "npsh": "too little NPSH",
    "npsh-margin": "the NPSH margin",
    "lift-practice": "the suction lift",
    "vacuum-collapse": "the soft suction pipe",
    "vacuum": "the vacuum at the pump",
    "past-curve": "a flow far out on the pump's curve",
    "grade": "the pump's tolerance",
    "runs-on": "a set pressure out of reach",
    "set-too-high": "a set pressure out of reach",
    "pump-most": "the pump's flow",
    "least-flow": "the smallest draw",
    "displacement-relief": "the pump's guard",
    "fight": "sources that work against each other",
    "npsh-unchecked": "the pump's NPSH",
    "pulses-unchecked": "the pump's pulses",
    "no-rating": "the pipe's rating",
    "unchecked-pump-most": "the pump's maximum flow",
    "suction-too-short": "the length of the suction pipe",
    "height": "the height",
    "boils": "water that boils",
    "no-foot-valve": "the missing foot valve",
    "near-rating": "a peak near a rating",
    "column-separation": "low pressure after the knock",
    "crest-unchecked": "how high the pipe passes",
    "no-tank": "the missing pressure tank",
    "starts": "the pump's starts",
    "leaks": "starts from leaks",
    "never-stops": "a pump that never stops",
    "least-flow-unchecked": "the pump's least flow",
    "rating": "the tank's rating",
    "tank-not-given": "the size of your tank",
    "relief-low": "a relief valve set too low",
    "relief-high": "a relief valve set too high",
    "relief-small": "the relief valve's opening",
    "relief-unchecked": "the lowest rating",
    "relief-flow-unchecked": "what the relief valve must pass",
    "no-source": "the missing water",
    "too-little": "too little water a day",
    "too-small": "the size of the tank",
    "short-of-days": "the days without supply",
    "never-refills": "a tank that never fills again",
    "slow-refill": "a slow refill",
    "short-days": "days with too little water",
    "too-slow": "the pump's flow",
    "battery-life": "the battery's wear",
    "frost": "the battery in frost",
    "rate": "the battery's power",
    "autonomy": "the days without sun",
    "never-starts": "the pump's threshold",
    "dim": "a late start of the pump",
    "hidden": "what stands before the sun",
    "turned": "tilt and facing",
    "capacity": "what the cable may carry",
    "over-capacity": "the current in the cable",
    "fuse": "the fuse of the cable",
    "no-size": "the drop in the cable",
    "too-thin": "the drop in the cable",
    "start-drop": "the drop at start",
    "start-half": "the drop at start",
    "no-flow": "a well that does not fill again",
    "well-near": "how little the well leaves to spare",
    "suction": "the suction lift",
    "suction-unchecked": "the suction lift",
    "runs-dry": "a pump that runs dry",
    "peak": "the busiest time",
    "cistern": "the size of the storage tank",
    "floor": "an intake near the floor",
    "floor-unchecked": "the depth of the well",
    "cooling": "the cooling of the motor",
    "cooling-unchecked": "the cooling of the motor",
    "beyond-test": "a flow beyond the test",
    "limited": "whether the water lasts",
    "tank-dry": "a tank that runs dry",
    "nearly-empty": "too little to spare",
    "season": "the dry season",
    "dry-spell": "the days between rains",
    "year-short": "too little water a year",
    "zone-flow": "the flow of a zone",
    "too-long": "the hours of watering",
    "uneven": "uneven drippers",
    "emission": "the emission uniformity",
    "over-pressure": "too much pressure for drip",
    "no-filter": "the missing filter",
    "daily": "the water there is a day",
    "zone-uneven": "an uneven zone",
    "manifold-fast": "the water speed in the manifold",
    "weak": "too little pressure",
    "runoff": "water that runs off",
    "soil": "what the soil takes in",
    "gaps": "the distance between sprinklers",
    "windy": "the wind",
    "bursts": "the room for hot water to grow",
    "no-room": "the missing expansion tank",
    "tank-small": "the expansion tank",
    "tank-unchecked": "the expansion tank",
    "no-relief": "the missing relief valve",
    "relief-runs": "the relief valve's setting",
    "relief-near": "the relief valve's setting",
    "heater-relief-unchecked": "the relief valve's setting",
    "rating-unchecked": "a rating",
    "scald": "scalding at the tap",
    "mix-unchecked": "the mixing valve",
    "lukewarm": "a lukewarm store",
    "dry": "a point above the water it comes from",
    "break-empty": "a break-pressure tank that runs empty",
    "break-over": "a break-pressure tank that runs over",
    "source-short": "too little water from the source",
    "source-unchecked": "what the source gives",
    "tank-empty": "a tank that runs dry",
    "too-weak": "too little pressure",
    "lower": "days that end lower than they begin",
    "against-closed": "a pump against closed valves",
    "yield-unknown": "what the source gives",
    "stored-unknown": "what is stored at the source",
    "no-use": "when outlets are open",
}
AT_AN_OUTLET = frozenset({"short", "no-water", "over", "outlet-over-limit", "too-weak"})
LEFT, UNCHECKED = "Still to put right", "Still not checked"  # how the sentences begin


def left_words(left: Iterable[Finding]) -> str:
    """Sentences that name what is still wrong and what is still not checked; "" for nothing.

    >>> from calc.page.findings import Finding
    >>> left_words([Finding("stop", "short", "Too weak.", at="Tap"), Finding("care", "fast", "x")])
    'Still to put right: too little pressure at Tap, and the water speed.'
    """
    every = [one for one in left if one.level != "note"]
    wrong = [_named(one) for one in every if one.rank != "unchecked"]
    unknown = [_named(one) for one in every if one.rank == "unchecked"]
    parts = ((LEFT, wrong), (UNCHECKED, unknown))
    return " ".join(f"{begins}: {_listed(names)}." for begins, names in parts if names)


def _named(one: Finding) -> str:
    about = _ABOUT.get(one.key, "another fault")
    return f"{about} at {one.at}" if one.at and one.key in AT_AN_OUTLET else about


def _listed(names: list[str]) -> str:
    several = list(dict.fromkeys(names))
    if len(several) > MOST_NAMED:
        several = [*several[:MOST_NAMED], "more"]
    return ", and ".join([", ".join(several[:-1]), several[-1]] if several[1:] else several)
