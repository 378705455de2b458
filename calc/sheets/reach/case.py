"""What a pump's pressure leaves at the top of one pipe, for the sheet that asks if it reaches."""

import math
from dataclasses import dataclass

from calc import water
from calc.pipe import friction, pipes
from calc.units import GALLON_US, GRAVITY, MINUTE, PSI

HOUSE = 30 * PSI  # Pa, low end of 30-40 psi for a house; common practice, no source
DRIP = 20 * PSI  # Pa, suits drip lines; common practice, no source
TROUGH = 5 * PSI  # Pa, enough to fill through an open float valve; common practice, no source
SHOWER = 2 * GALLON_US / MINUTE  # m3/s, a shower or sink; common practice, no source
HOSE = 10 * GALLON_US / MINUTE  # m3/s, a garden hose; common practice, no source
FASTEST = 1.5  # m/s, about 5 ft/s, for supply lines; common practice, no source
TIGHT = 0.7  # of the wanted pressure: below it people complain; common practice, no source

USES = (
    ("house", "House: showers and sinks", HOUSE),
    ("drip", "Drip lines", DRIP),
    ("trough", "Trough or tank, filled openly", TROUGH),
)


@dataclass(frozen=True)
class Line:
    """One pipe to one tap; SI: pressure Pa, climb and length m, temperature K."""

    pressure: float
    climb: float
    length: float
    pipe: pipes.Pipe
    temperature: float

    @property
    def weight(self):
        """Pa per metre of climb."""
        return water.density(self.temperature) * GRAVITY

    def loss(self, flow):
        """Head lost to friction at ``flow`` (m3/s), m."""
        if flow == 0:
            return 0.0
        viscosity = water.kinematic_viscosity(self.temperature)
        speed = self.speed(flow)
        bore = self.pipe.inside_m
        factor = friction.friction_factor(speed * bore / viscosity, self.pipe.roughness_m / bore)
        return factor * self.length / bore * speed**2 / (2 * GRAVITY)

    def speed(self, flow):
        """Mean speed in the pipe, m/s."""
        return flow / (math.pi / 4 * self.pipe.inside_m**2)

    def left(self, flow):
        """Pressure at the tap at ``flow``, Pa; negative where the water does not arrive."""
        return self.pressure - self.weight * (self.climb + self.loss(flow))

    def largest_flow(self, wanted, most):
        """The largest flow up to ``most`` (m3/s) that leaves ``wanted`` Pa; 0 where none does."""
        if self.left(0.0) <= wanted:
            return 0.0
        if self.left(most) >= wanted:
            return most
        low, high = 0.0, most
        for _ in range(60):
            middle = (low + high) / 2
            low, high = (middle, high) if self.left(middle) >= wanted else (low, middle)
        return low

    @property
    def rating(self):
        """Pressure rating at the water's temperature, Pa; None where none is known."""
        return pipes.rating_at(self.pipe, self.temperature) if self.pipe.rating_pa else None
