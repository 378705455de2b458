"""What may sit in a pipe beside its bends: valves, meters, filters, break-pressure tanks.

Each is one part at the far end of a pipe section.  How much a fitting loses stands in
``friction.FITTINGS``; what a filter or a reducing valve loses is a usual value of the trade
(``practice``).
"""

from dataclasses import dataclass

from calc import practice
from calc.pipe import friction
from calc.units import METRE_OF_WATER


@dataclass(frozen=True)
class Part:
    """One part in a pipe, by one of three losses, or none.

    key: link-safe; name: for readers; fitting: its coefficient on the pipe's own speed; device:
    (flow m3/s, loss m) of what loses with the square of the flow; reducer: (pressure held Pa,
    flow m3/s, loss m wide open at that flow), 0 Pa at a tank open to the air; one_way: water
    passes forwards only.
    """

    key: str
    name: str
    fitting: friction.Fitting | None = None
    device: tuple[float, float] | None = None
    reducer: tuple[float, float, float] | None = None
    one_way: bool = False

    @property
    def vented(self) -> bool:
        """Whether it is a tank open to the air, behind which pressure begins again from 0."""
        return self.reducer is not None and self.reducer[0] <= 0.0


def falls_off(flow_m3s: float, rated_m3s: float) -> bool:
    """Whether a pressure-reducing valve is near its rated flow, where what it holds falls off.

    Q >= 0.8 Q_r
    flow_m3s, rated_m3s: Q, Q_r, m3/s.  Raises nothing.  Source: ``practice.REDUCER_NEAR``.

    >>> falls_off(0.4e-3, 0.5e-3), falls_off(0.3e-3, 0.5e-3)
    (True, False)
    """
    return flow_m3s >= practice.REDUCER_NEAR * rated_m3s * (1 - 1e-9)


def _fitting(key: str, of: str, one_way: bool = False) -> Part:
    fitting = friction.BY_KEY[of]
    return Part(key, fitting.name, fitting, one_way=one_way)


def _filter(key: str, name: str, loss_pa: float) -> Part:
    return Part(key, name, device=(practice.FILTER_FLOW, loss_pa / METRE_OF_WATER))


def _reducer(key: str, bar: float, psi: int) -> Part:
    held = (bar * 1e5, practice.REDUCER_FLOW, practice.REDUCER_LOSS)
    name = f"Pressure-reducing valve, {bar:g} bar ({psi} psi)"
    return Part(key, name, reducer=held, one_way=True)


# The first ten keys have stood in links since 0.1.0.
PARTS = (
    Part("none", "–"),
    _filter("filter", "Filter, clean", practice.FILTER_CLEAN),
    _filter("dirty", "Filter, due for a change", practice.FILTER_DIRTY),
    # half of the flow in each, a quarter of the loss
    _filter("twin", "Two clean filters side by side", practice.FILTER_CLEAN / 4),
    _fitting("meter", "meter"),
    _fitting("check", "spring", one_way=True),
    _fitting("stop", "globe"),
    _reducer("r10", 1.0, 15),
    _reducer("r15", 1.5, 22),
    _reducer("r20", 2.0, 29),
    _reducer("r30", 3.0, 44),
    _fitting("swing", "swing", one_way=True),
    _fitting("ball", "ball"),
    _fitting("gate", "gate"),
    Part(
        "strainer",
        "Strainer, clean",
        device=(practice.FILTER_FLOW, practice.STRAINER_CLEAN / METRE_OF_WATER),
    ),
    _reducer("r40", 4.0, 58),
    _reducer("r50", 5.0, 73),
    Part(
        "break",
        "Break-pressure tank with a float valve",
        reducer=(0.0, practice.FLOAT_FLOW, practice.FLOAT_LOSS),
        one_way=True,
    ),
)
BY_KEY = {part.key: part for part in PARTS}
