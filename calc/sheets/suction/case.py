"""A suction line and its pump: what is lost, what is left, and what would cure a lift too high."""

from dataclasses import dataclass, replace

from calc import suction, water
from calc.errors import InputError
from calc.pipe import friction, pipes

SAFE = 0.005  # share: half of the last of three figures, so that advice as printed still holds
WIDEST, LEAST = 2.0, 0.2  # bore and flow, of those asked, that advice stays within; own choice
RATED_AT = (0.0, 293.15)  # m, K: sea level and cool water, where dry lifts are stated; by practice


@dataclass(frozen=True)
class Case:
    """SI: lift, length, strainer, needed, margin m; flow m3/s; temperature K; k summed K."""

    site: suction.Place
    lift: float
    length: float
    flow: float
    pipe: pipes.Pipe
    temperature: float
    k: float
    strainer: float  # head lost in a strainer or filter at the pump, m
    needed: float  # NPSH the pump needs, m
    margin: float

    @property
    def viscosity(self):
        return water.kinematic_viscosity(self.temperature)

    @property
    def speed(self):
        return friction.velocity(self.flow, self.pipe.inside_m)

    @property
    def straight_loss(self):
        bore, rough = self.pipe.inside_m, self.pipe.roughness_m
        return friction.pipe_loss(self.flow, bore, self.length, rough, self.viscosity)

    @property
    def local_loss(self):
        return friction.local_loss(self.k, self.speed)

    @property
    def loss(self):
        return self.straight_loss + self.local_loss + self.strainer

    @property
    def limit(self):
        """The lift of a perfect vacuum here, m."""
        return suction.theoretical_lift(self.site)

    @property
    def available(self):
        return suction.npsh_available(self.site, self.lift, self.loss)

    @property
    def allowed(self):
        """The highest the pump may stand above the water, m; below 0: it must stand under it."""
        return suction.allowable_lift(self.site, self.loss, self.needed, self.margin)

    @property
    def vacuum(self):
        """Pa below the air outside at the pump's inlet; negative where water presses in."""
        return -suction.inlet_pressure(self.site, self.lift, self.loss)

    @property
    def flattens(self):
        """Lay-flat hose has no wall to stand a vacuum."""
        return self.pipe.kind == "layflat" and self.vacuum > 0

    @property
    def fits(self):
        return self.lift <= self.allowed + 1e-9  # m; a lift set to the limit itself is in

    def largest_flow(self):
        """The largest flow (m3/s) this pipe may carry at this lift; 0 where none may."""
        spare = self.limit - self.needed - self.margin - self.strainer - self.lift
        if spare <= 0:
            return 0.0
        bore, rough = self.pipe.inside_m, self.pipe.roughness_m
        return friction.flow_for_loss(spare, bore, self.length, rough, self.viscosity, self.k)

    def larger_pipe(self):
        """The same line with the smallest larger pipe of its kind that fits; None if none does.

        Pipes of more than twice the bore are not offered.
        """
        if self.pipe.kind not in pipes.KINDS:
            return None
        bore = self.pipe.inside_m
        larger = (p for p in pipes.sizes(self.pipe.kind) if bore < p.inside_m <= WIDEST * bore)
        return next((c for p in larger if (c := replace(self, pipe=p)).fits), None)

    def priming_seconds(self):
        """Least time to draw the air out at the flow given, s; None where that cannot be done."""
        if not 0 < self.lift < self.limit * (1 - 1e-6):
            return None
        return suction.priming_time(
            self.pipe.inside_m, self.length, self.site, self.lift, self.flow
        )


def fitting_k(values):
    """Loss coefficients of the line's fittings summed; a bare end counts as a sharp entrance."""
    entrance = friction.BY_KEY["entrance"].k if values.foot == 0 else 0.0
    foot, elbow = friction.BY_KEY["foot"].k, friction.BY_KEY["elbow90"].k
    return entrance + values.foot * foot + values.elbow90 * elbow


def needed(values, site):
    """NPSH the pump needs at ``site``, m: as given, or what its dry lift leaves of the push."""
    if values.figure == "npsh":
        return values.npsh
    return suction.npsh_of_dry_lift(values.rated, site, suction.place(*RATED_AT))


def read(values, pipe, reader):
    """The ``Case`` the form describes.  Raises InputError for a pipe shorter than the lift."""
    if values.length < values.lift - 1e-9:
        lift = reader.show(values.lift, "length")
        raise InputError(
            f"The pipe is shorter than the lift. It must be at least {lift} long; add what runs "
            "level and what hangs under water.",
            name="length",
        )
    site = suction.place(values.altitude, values.water)
    return Case(
        site=site,
        lift=values.lift,
        length=values.length,
        flow=values.flow,
        pipe=pipe,
        temperature=values.water,
        k=fitting_k(values),
        strainer=values.strainer,
        needed=needed(values, site),
        margin=values.margin,
    )


def cures(case, reader):
    """Sentences on what would make the lift fit, each worked out anew."""
    show, found = reader.both, []
    lower = show((case.lift - case.allowed) * (1 + SAFE), "length")
    if case.lift > case.limit:
        return f"Set the pump {lower} lower, or use one that stands in the water and pushes."
    larger = case.larger_pipe()
    if larger is not None:
        found.append(
            f"With {larger.pipe.label} the pump may stand {show(larger.allowed, 'length')} up."
        )
    flow = case.largest_flow() * (1 - SAFE)
    if flow >= LEAST * case.flow:
        found.append(f"This pipe would do at up to {show(flow, 'flow')}.")
    if not found:
        return (
            "A wider pipe is no cure: the height is too much for this pump. "
            f"Set it {lower} lower, or use one that stands in the water and pushes."
        )
    return " ".join((*found, f"Or set the pump {lower} lower."))
