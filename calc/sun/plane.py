"""A plane that faces the sun more or less: what falls on it and how hot a module gets.

A plane's slope is 0 lying flat and pi/2 upright; its azimuth is where it faces, from north,
clockwise.  Angles are radians.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc import practice
from calc.errors import require

LOWEST = 0.01745  # cos z, below which the sky about the sun counts as no brighter: as in pvlib
FAIMAN_0 = 25.0  # W/m2 K, U0 of Faiman (2008)
FAIMAN_1 = 6.84  # W s/m3 K, U1 of Faiman (2008)


@dataclass(frozen=True)
class Plane:
    """A panel's plane: ``slope``, ``azimuth``, rad; ``albedo``: the ground before it, share."""

    slope: float
    azimuth: float
    albedo: float = practice.ALBEDO

    def __post_init__(self) -> None:
        require("slope", self.slope, 0.0, math.pi / 2, "angle", "0 is flat, 90 degrees upright.")
        require("azimuth", self.azimuth, -math.pi, 2 * math.pi, "angle", "From north, clockwise.")
        require("albedo", self.albedo, 0.0, 1.0, "percent")


def incidence(plane: Plane, zenith: float, azimuth: float) -> float:
    """The angle between the sun and the line straight out of a plane.

    cos theta = cos z cos beta + sin z sin beta cos(gamma_s - gamma)
    zenith, azimuth: of the sun, rad; beta, gamma: the plane's slope and azimuth.
    Returns rad, 0 to pi; above pi/2 the sun is behind it.  Raises RangeError outside.
    Source: Duffie and Beckman, Solar Engineering, eq. 1.6.3.

    >>> round(math.degrees(incidence(Plane(math.radians(30), math.pi), math.radians(30), math.pi)))
    0
    """
    require("zenith", zenith, 0.0, math.pi, "angle")
    cosine = math.cos(zenith) * math.cos(plane.slope)
    cosine += math.sin(zenith) * math.sin(plane.slope) * math.cos(azimuth - plane.azimuth)
    return math.acos(max(-1.0, min(1.0, cosine)))


def on_plane(
    plane: Plane,
    cos_incidence: float,
    cos_zenith: float,
    normal: float,
    beam: float,
    diffuse: float,
    level: float,
) -> float:
    """All that falls on a plane: beam, sky and ground.

    G = I_b cos theta + D (A R_b + (1 - A) (1 + cos beta)/2) + H rho (1 - cos beta)/2,
    A = I_b / I_0, R_b = cos theta / cos z
    cos_incidence, cos_zenith: numbers, -1 to 1; normal: I_0, W/m2, 1 to 1500, outside the air;
    beam: I_b, W/m2, 0 to 1500, on a plane facing the sun; diffuse: D, W/m2, 0 to 1500, level: H,
    W/m2, 0 to 2000: diffuse and all on level ground.
    cos z is not taken below 0.01745 in R_b, as in pvlib.  Returns W/m2.  Raises RangeError
    outside.  Source: J. E. Hay and J. A. Davies (1980), first Canadian solar radiation data
    workshop, 59-72; the ground as Liu and Jordan (1963).

    >>> round(on_plane(Plane(0.0, 0.0), 0.5, 0.5, 1367.0, 600.0, 100.0, 400.0), 9)
    400.0
    """
    require("normal", normal, 1.0, 1500.0, "number")
    require("beam", beam, 0.0, 1500.0, "number")
    require("diffuse", diffuse, 0.0, 1500.0, "number")
    require("level", level, 0.0, 2000.0, "number")
    facing = max(0.0, cos_incidence)
    clear = beam / normal
    ratio = facing / max(cos_zenith, LOWEST)
    tilted = math.cos(plane.slope)
    sky = diffuse * (clear * ratio + (1 - clear) * (1 + tilted) / 2)
    return beam * facing + sky + level * plane.albedo * (1 - tilted) / 2


def module_temperature(light: float, air_k: float, wind_ms: float = practice.MODULE_WIND) -> float:
    """How hot a module gets in the open.

    T = T_a + G / (25 + 6.84 v)
    light: G, W/m2, on its plane, 0 to 1600; air_k: T_a, K, 180 to 340; wind_ms: v, m/s, 0 to 40.
    Returns K.  Raises RangeError outside.
    Source: D. Faiman, Progress in Photovoltaics 16 (2008) 307-315.

    >>> round(module_temperature(1000.0, 300.0, 1.0), 1)
    331.4
    """
    require("light", light, 0.0, 1600.0, "number")
    require("air_k", air_k, 180.0, 340.0, "temperature")
    require("wind_ms", wind_ms, 0.0, 40.0, "speed")
    return air_k + light / (FAIMAN_0 + FAIMAN_1 * wind_ms)
