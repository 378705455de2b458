"""What may differ from release 0.1.0, and why.

A sheet in ``CHANGED`` is no longer held to its replies byte by byte, but still to what must hold
of any change (see ``held.py``).  Say in ``changes.md`` what changed, under the sheet's key.
"""

_FINDINGS = "judged by findings, in other words; "
CHANGED = {  # sheet key: why its replies are others now
    "reach": _FINDINGS + "two levels of enough; 80 psi; water speed; hot water",
    "keep_up": "judged by findings; ratings at shut-off, 80 psi, NPSH margin; levels of practice",
    "pressure": _FINDINGS + "up to a tenth more than needed is borderline; 80 psi",
    "suction": _FINDINGS + "fittings by bore; lift rule by air pressure; vacuum, not lift",
    "pipe": _FINDINGS + "one filled line; hot water; water speed",
    "tank": _FINDINGS + "a refill within ten days; too low a tank does not work",
    "pressure_tank": _FINDINGS + "no tank can be said; a draw below the pump's least flow",
    "demand": _FINDINGS + "a plan that never falls; IPC fixture units; more kinds of stock",
    "pump_match": _FINDINGS + "one filled line; shut-off with the fall; NPSH margin",
    "surge": _FINDINGS + "stiffer cold plastic; each standard's surge allowance",
}
# (sheet key, index of the request): why what was an error is an answer now
_ABOUT = "“about 5” is read as 5 now"
_RESTART = "a speed control starts again at 95 % of its set pressure: the cut-in counts for none"
_TANK = (
    2, 7, 9, 15, 22, 36, 41, 60, 65, 74, 79, 88, 103, 113, 130, 181, 199, 213, 215, 224, 234, 240,
    254, 258, 261, 273, 285, 295, 309, 313, 331, 335, 338, 341, 342, 348, 366, 385,
)  # fmt: skip
MENDED = {
    **{("pressure_tank", at): _RESTART for at in _TANK},
    ("keep_up", 80): "a lift that no pump can draw is answered so; it was refused at its field",
    ("pump_match", 201): "a low head has a speed now; it was refused in a solver's words",
    **dict.fromkeys((("tank", 170), ("tank", 343), ("surge", 62), ("surge", 397)), _ABOUT),
}

_LEVELS = "a house works from 15 psi at a shower (it had to be comfortable, 30 psi); see changes.md"
_REACH = (
    12, 32, 42, 45, 58, 72, 80, 105, 113, 130, 135, 138, 165, 177, 186, 196, 198, 200, 201, 233,
    248, 272, 299, 301, 302, 305, 345, 355, 359, 362, 377,
)  # fmt: skip
_LIST = "a list shorter than chance asks for is a note on the size told, not a fault of it"
_DEMAND = (
    3, 4, 5, 7, 16, 25, 28, 31, 37, 42, 43, 46, 47, 52, 57, 64, 67, 70, 73, 79, 85, 88, 94, 105,
    109, 115, 117, 123, 125, 126, 127, 129, 132, 133, 136, 140, 143, 147, 160, 169, 171, 172,
    173, 174, 175, 177, 178, 180, 182, 184, 199, 203, 212, 213, 218, 219, 228, 234, 237, 239,
    240, 243, 245, 252, 253, 257, 258, 263, 267, 273, 275, 276, 291, 296, 297, 300, 301, 303,
    306, 308, 309, 318, 323, 329, 345, 351, 357, 366, 367, 372, 377, 378, 379, 381, 392,
)  # fmt: skip
_SPARE = "a wider size is told, with a tenth to spare, in place of one only just enough"
_PIPE = (1, 5, 42, 86, 90, 96, 131, 138, 141, 153, 156, 180, 198, 312, 380)
# (sheet key, index of the request): why its verdict is better now
BETTER = {
    **{("reach", at): _LEVELS for at in _REACH},
    **{("demand", at): _LIST for at in _DEMAND},
    **{("pipe", at): _SPARE for at in _PIPE},
}
