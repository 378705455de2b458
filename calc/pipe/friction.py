"""Friction in full pipes: Darcy-Weisbach with Colebrook, Hazen-Williams, fittings, laterals."""

import math
from dataclasses import dataclass

from calc import solve
from calc.errors import require
from calc.units import GRAVITY

LAMINAR_LIMIT = (
    2040.0  # Re: Avila et al., Science 333 (2011) 192-196, onset of sustained turbulence
)
TURBULENT_FROM = 4000.0  # Re, where the bridge of ``design_factor`` meets Colebrook (our choice)
_STEEL_ROUGHNESS = 4.6e-5  # m, clean commercial steel: Moody, Trans. ASME 66 (1944) 671
LN10 = math.log(10.0)
ROUGH, SMOOTH = 3.7, 2.51  # of the wall and of the water in Colebrook (1939)


@dataclass(frozen=True)
class Fitting:
    """A fitting: link-safe ``key``, name in a sentence, loss coefficient, source.

    diameters: L/D, the length of pipe, in bores, that loses as much (None: K is fixed);
    k: loss coefficient K (-), where ``diameters`` is given that of a 1 in fitting.
    """

    key: str
    name: str
    k: float
    source: str
    diameters: float | None = None


_ONE_INCH = 0.023  # f_T of 1 in pipe, -: Crane TP-410 page A-26, from memory


def _crane(key: str, name: str, diameters: float) -> Fitting:
    source = "Crane TP-410, from memory"
    return Fitting(key, name, diameters * _ONE_INCH, source, diameters)


# K on the velocity head of the pipe; Crane Technical Paper 410 gives K = (L/D) f_T.
FITTINGS = (
    _crane("elbow90", "90° elbow", 30),
    _crane("elbow45", "45° elbow", 16),
    _crane("teerun", "Tee, straight through", 20),
    _crane("teebranch", "Tee, into the branch", 60),
    _crane("gate", "Gate valve, open", 8),
    _crane("ball", "Ball valve, open", 3),
    _crane("globe", "Globe valve", 340),
    _crane("swing", "Check valve, swing", 100),
    # a 1 in in-line spring check valve passes about 15 gpm at 1 psi: K = 890 d^4 / Cv^2 = 4.8
    Fitting("spring", "Check valve, spring", 5.0, "common practice, no source"),
    _crane("foot", "Foot valve with strainer", 420),
    # ISO 4064: at most 0.63 bar at Q3; Q3 = 4 m3/h in DN 20: 0.63e5 Pa / (rho v^2 / 2) = 10
    Fitting("meter", "Water meter", 10.0, "ISO 4064 loss class 63, DN 20, from memory"),
    Fitting("entrance", "Sharp entrance from a tank", 0.5, "Crane TP-410, from memory"),
    Fitting("exit", "Exit into a tank", 1.0, "Borda-Carnot: all the velocity head"),
)
BY_KEY = {fitting.key: fitting for fitting in FITTINGS}


def turbulent_factor(bore_m: float) -> float:
    """Friction factor of clean commercial steel in fully turbulent flow, f_T.

    f_T = 0.25 / lg((eps/D)/3.7)^2, eps = 0.046 mm
    bore_m: m, 5 mm to 2 m.  Returns -.  Raises RangeError outside.
    Source: Crane Technical Paper 410, appendix A.

    >>> round(turbulent_factor(26.6e-3), 4)
    0.0225
    """
    require("bore_m", bore_m, 5e-3, 2.0, "diameter", "Give the pipe's inside diameter.")
    return 0.25 / math.log10(_STEEL_ROUGHNESS / bore_m / 3.7) ** 2


def fitting_coefficient(fitting: Fitting, bore_m: float) -> float:
    """Loss coefficient of a fitting in a pipe of this bore.

    K = (L/D) f_T, or the fitting's own K where it has no L/D
    fitting: ``Fitting``; bore_m: m, 5 mm to 2 m.  Returns -.  Raises RangeError outside.
    Source: Crane Technical Paper 410; the fitting's own source.
    """
    factor = turbulent_factor(bore_m)
    return fitting.k if fitting.diameters is None else fitting.diameters * factor


def velocity(flow_m3s: float, bore_m: float) -> float:
    """Mean speed in a full round pipe.

    v = Q / (pi D^2 / 4)
    flow_m3s: m3/s; bore_m: inside diameter, m, above 0.  Returns m/s.
    Raises RangeError for a bore that is not above 0.  Source: continuity.
    """
    require("bore_m", bore_m, 1e-5, 10.0, "diameter", "Give the pipe's inside diameter.")
    return flow_m3s / (math.pi / 4 * bore_m**2)


def reynolds(velocity_ms: float, bore_m: float, kinematic_m2s: float) -> float:
    """Reynolds number.

    Re = v D / nu
    velocity_ms: m/s; bore_m: m; kinematic_m2s: m2/s, above 0.  Returns -.
    Source: definition.
    """
    return abs(velocity_ms) * bore_m / kinematic_m2s


def friction_factor(re: float, relative_roughness: float) -> float:
    """Darcy friction factor: 64/Re below Re 2040, Colebrook from there on.

    1/sqrt(f) = -2 lg(eps/(3.7 D) + 2.51/(Re sqrt(f)))
    re: -, above 0 to 1e10; relative_roughness: eps/D, 0 to 0.1.  Returns -.
    Raises RangeError outside.  Source: C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939)
    133-156; laminar limit Avila et al. (2011).  Solved by Newton steps on 1/sqrt(f).

    >>> round(friction_factor(1e5, 1e-4), 6)
    0.018514
    """
    require("re", re, 1e-12, 1e10, "number")
    require("relative_roughness", relative_roughness, 0.0, 0.1, "number", "Check the bore.")
    if re < LAMINAR_LIMIT:
        return 64.0 / re
    a, b = relative_roughness / ROUGH, SMOOTH / re
    x = -1.8 * math.log10((relative_roughness / 3.7) ** 1.11 + 6.9 / re)  # Haaland (1983): start
    for _ in range(8):
        inside = a + b * x
        step = (x + 2.0 * math.log(inside) / LN10) / (1.0 + 2.0 * b / (inside * LN10))
        x -= step
        if abs(step) < 1e-14 * x:
            break
    return 1.0 / (x * x)


def design_factor(re: float, relative_roughness: float) -> float:
    """Darcy friction factor in use for pipes and networks: never falling loss, no jump.

    ``friction_factor`` below Re 2040 and from Re 4000; between them f Re^2 (proportional to the
    loss) is a straight line from the laminar to the turbulent end, since no steady law exists.
    re: -, above 0 to 1e10; relative_roughness: eps/D, 0 to 0.1.  Returns -.
    Raises RangeError outside.  Source: ``friction_factor``; of the bridge: our choice.

    >>> round(design_factor(3000.0, 1e-4), 4)
    0.0422
    """
    require("re", re, 1e-12, 1e10, "number")
    return _f_re2(re, relative_roughness)[0] / re**2


def darcy_weisbach(factor: float, length_m: float, bore_m: float, velocity_ms: float) -> float:
    """Head lost to friction in a straight pipe.

    h_f = f L/D v^2/(2 g)
    factor: Darcy friction factor, -; length_m, bore_m: m; velocity_ms: m/s.  Returns m.
    Source: Darcy-Weisbach equation.
    """
    return factor * length_m / bore_m * velocity_ms**2 / (2.0 * GRAVITY)


def pipe_loss(
    flow_m3s: float, bore_m: float, length_m: float, roughness_m: float, kinematic_m2s: float
) -> float:
    """Head lost to friction at a flow, Darcy-Weisbach with ``design_factor``.

    h_f = f(Re, eps/D) L/D v^2/(2 g)
    flow_m3s: m3/s, 0 or more; bore_m, length_m, roughness_m: m; kinematic_m2s: m2/s.
    Returns m; 0 at no flow.  Raises RangeError for a flow below 0 and as its parts do.
    """
    require("flow_m3s", flow_m3s, 0.0, 1e3, "flow", "Give the flow without a sign.")
    if flow_m3s == 0:
        return 0.0
    speed = velocity(flow_m3s, bore_m)
    re = reynolds(speed, bore_m, kinematic_m2s)
    if re < 1e-6:  # the same law as f = 64/Re, without a factor that grows past all bounds
        return 32.0 * kinematic_m2s * length_m * speed / (GRAVITY * bore_m**2)
    factor = design_factor(re, roughness_m / bore_m)
    return darcy_weisbach(factor, length_m, bore_m, speed)


def hazen_williams(flow_m3s: float, bore_m: float, length_m: float, c: float) -> float:
    """Head lost to friction by the Hazen-Williams formula, for cold water only.

    h_f = 10.67 L Q^1.852 / (C^1.852 D^4.8704)
    flow_m3s: m3/s, 0 or more; bore_m, length_m: m; c: coefficient, 40 to 160.  Returns m.
    Raises RangeError outside.  Source: Hazen and Williams, SI form (10.67), from memory.
    """
    require("flow_m3s", flow_m3s, 0.0, 1e3, "flow", "Give the flow without a sign.")
    require("c", c, 40.0, 160.0, "number")
    require("bore_m", bore_m, 1e-5, 10.0, "diameter")
    return 10.67 * length_m * flow_m3s**1.852 / (c**1.852 * bore_m**4.8704)


def local_loss(k: float, velocity_ms: float) -> float:
    """Head lost in fittings.

    h_m = K v^2/(2 g)
    k: sum of loss coefficients, -; velocity_ms: m/s.  Returns m.  Source: definition of K.
    """
    return k * velocity_ms**2 / (2.0 * GRAVITY)


def christiansen(outlets: int, exponent: float) -> float:
    """Share of the full-flow friction lost in a lateral of equal, evenly spaced outlets.

    F = 1/(m+1) + 1/(2 N) + sqrt(m-1)/(6 N^2)
    outlets: N, 1 or more; exponent: m of the flow in the friction formula, 1.5 to 2.  Returns -.
    Raises RangeError outside.  Source: J. E. Christiansen, Univ. California Bull. 670 (1942).

    >>> round(christiansen(10, 1.852), 3)
    0.402
    """
    require("outlets", outlets, 1, 1e6, "number")
    require("exponent", exponent, 1.5, 2.0, "number")
    n = float(outlets)
    return 1 / (exponent + 1) + 1 / (2 * n) + math.sqrt(exponent - 1) / (6 * n * n)


def total_loss(
    flow_m3s: float,
    bore_m: float,
    length_m: float,
    roughness_m: float,
    kinematic_m2s: float,
    k: float,
) -> float:
    """Head lost in a straight pipe and its fittings together.

    h = h_f + h_m
    flow_m3s: m3/s, 0 or more; bore_m, length_m, roughness_m: m; kinematic_m2s: m2/s;
    k: sum of loss coefficients, -.  Returns m.  Raises RangeError as its parts do.
    Source: ``pipe_loss`` and ``local_loss``.
    """
    straight = pipe_loss(flow_m3s, bore_m, length_m, roughness_m, kinematic_m2s)
    return straight + local_loss(k, velocity(flow_m3s, bore_m))


def flow_for_loss(
    head_m: float,
    bore_m: float,
    length_m: float,
    roughness_m: float,
    kinematic_m2s: float,
    k: float = 0.0,
) -> float:
    """The flow that a head drives through a pipe with fittings.

    Solves total_loss(Q) = h for Q by bracketing.
    head_m: m, 0 or more; length_m: m, above 0; others as ``total_loss``.  Returns m3/s.
    Raises RangeError outside.  Source: inverse of ``total_loss``.
    """
    require("head_m", head_m, 0.0, 1e5, "head", "Give a head that drives the flow.")
    require("length_m", length_m, 1e-6, 1e7, "length", "Give the length of pipe.")
    if head_m == 0:
        return 0.0

    def short(flow: float) -> float:
        return total_loss(flow, bore_m, length_m, roughness_m, kinematic_m2s, k) - head_m

    area = math.pi / 4 * bore_m**2
    fast = area * math.sqrt(2 * GRAVITY * head_m / (0.005 * length_m / bore_m + k)) * 2
    slow = LAMINAR_LIMIT * kinematic_m2s / bore_m * area  # where laminar flow ends
    high = max(fast, 2 * slow)
    return solve.root(short, 0.0, high, 1e-12 * high)


def loss_and_slope(
    flow_m3s: float,
    bore_m: float,
    length_m: float,
    roughness_m: float,
    kinematic_m2s: float,
    k: float = 0.0,
) -> tuple[float, float]:
    """Head loss and its slope dh/dQ, for a network solver: continuous and rising throughout.

    Equal to ``total_loss`` (``design_factor`` bridges Re 2040 to 4000).  Odd in the flow.
    flow_m3s: m3/s, either sign; others as ``total_loss``.  Returns (m, s/m2).
    Raises RangeError as ``friction_factor`` does.
    Source: ``total_loss``; ``design_factor``.
    """
    flow = abs(flow_m3s)
    area = math.pi / 4 * bore_m**2
    per_re = kinematic_m2s / bore_m * area  # m3/s per unit of Re
    re = max(flow / per_re, 1e-9)
    scale = length_m / bore_m * (kinematic_m2s / bore_m) ** 2 / (2 * GRAVITY)
    value, slope = _f_re2(re, roughness_m / bore_m)
    local = k * (kinematic_m2s / bore_m) ** 2 / (2 * GRAVITY)
    head = scale * value + local * re * re
    rise = (scale * slope + 2 * local * re) / per_re
    return math.copysign(head, flow_m3s) if flow_m3s else 0.0, rise


def _f_re2(re: float, relative: float) -> tuple[float, float]:
    """f Re^2 and its slope by Re, bridged between laminar and turbulent."""
    if re <= LAMINAR_LIMIT:
        return 64.0 * re, 64.0
    if re >= TURBULENT_FROM:
        f = friction_factor(re, relative)
        x = 1.0 / math.sqrt(f)
        inside = relative / ROUGH + SMOOTH * x / re
        # implicit derivative of Colebrook: dx/dRe
        share = 2.0 / (LN10 * inside)
        dx = share * SMOOTH * x / re**2 / (1.0 + share * SMOOTH / re)
        return f * re * re, 2 * f * re - 2 * f / x * dx * re * re
    low, high = 64.0 * LAMINAR_LIMIT, friction_factor(TURBULENT_FROM, relative) * TURBULENT_FROM**2
    slope = (high - low) / (TURBULENT_FROM - LAMINAR_LIMIT)
    return low + slope * (re - LAMINAR_LIMIT), slope
