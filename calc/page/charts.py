"""Answer charts -> Vega-Lite specifications (plain dicts) in the reader's units.

Colours are CSS: ``currentColor`` for ink and ``var(--sl-...)`` for lines, so the
same drawing serves light, dark and paper.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from calc.page.chart_labels import EDGE, plot

if TYPE_CHECKING:
    from calc.page.answer import Chart, Series
    from calc.page.chart_labels import Place
    from calc.units import Reader

    Spec = dict[str, Any]  # a part of a Vega-Lite specification


# Our own order: accent first, then ink at falling strength; told apart by dash too.
COLOURS = tuple(f"var(--sl-line-{number})" for number in (1, 2, 3, 4, 5))
DASHES = ([1, 0], [7, 4], [2, 3], [9, 3, 2, 3], [12, 4])
_SCHEMA = "https://vega.github.io/schema/vega-lite/v6.json"


def spec(chart: Chart, reader: Reader, width: int = 330, height: int = 220) -> Spec:
    """The Vega-Lite specification of a ``calc.page.answer.Chart``."""
    x_unit, y_unit = reader.unit(chart.x_quantity), reader.unit(chart.y_quantity)
    axes = {
        "x": _axis("x", chart.x_label, x_unit.symbol),
        "y": _axis("y", chart.y_label, y_unit.symbol),
    }
    chart = drawn(chart, reader)
    names = [series.name for series in chart.series]
    layers = [_layer(series, axes, names) for series in chart.series]
    beside, along = plot(chart, width, height).labels()
    for (y, label), place in zip(chart.levels, along, strict=True):
        layers.append(_level(y, label, axes, place))
    for (x, y, label), place in zip(chart.marks, beside, strict=True):
        layers += _mark(x, y, label, axes, place)
    return {
        "$schema": _SCHEMA,
        "description": chart.alt,
        "width": width,
        "height": height,
        "background": None,
        "padding": 4,
        "layer": layers,
        "config": _CONFIG,
    }


_CONFIG = {
    "font": "system-ui, sans-serif",
    "view": {"stroke": None},
    "axis": {
        "labelColor": "currentColor",
        "titleColor": "currentColor",
        "domainColor": "var(--sl-rule)",
        "tickColor": "var(--sl-rule)",
        "gridColor": "var(--sl-rule)",
        "gridOpacity": 0.6,
        "labelFontSize": 13,
        "titleFontSize": 13,
        "titleFontWeight": "normal",
        "tickCount": 5,
    },
    "legend": {
        "orient": "bottom",
        "direction": "vertical",
        "labelColor": "currentColor",
        "labelFontSize": 13,
        "labelLimit": 330,
        "symbolStrokeWidth": 2.5,
        "symbolSize": 300,
        "title": None,
    },
    "text": {"fontSize": 13, "color": "currentColor"},
}


def drawn(chart: Chart, reader: Reader) -> Chart:
    """The chart in the reader's units, each number as it is written into the drawing."""
    across, up = reader.unit(chart.x_quantity), reader.unit(chart.y_quantity)

    def x_of(x: float) -> float:
        return _short(across.from_si(x))

    def y_of(y: float) -> float:
        return _short(up.from_si(y))

    series = (
        replace(one, xs=tuple(map(x_of, one.xs)), ys=tuple(map(y_of, one.ys)))
        for one in chart.series
    )
    return replace(
        chart,
        series=tuple(series),
        marks=tuple((x_of(x), y_of(y), label) for x, y, label in chart.marks),
        levels=tuple((y_of(y), label) for y, label in chart.levels),
    )


def _axis(channel: str, label: str, symbol: str) -> Spec:
    title = f"{label} ({symbol})" if symbol else label
    return {"field": channel, "type": "quantitative", "title": title, "scale": {"nice": True}}


def _layer(series: Series, axes: Spec, names: list[str]) -> Spec:
    rows = [
        {"x": x, "y": y, "series": series.name} for x, y in zip(series.xs, series.ys, strict=True)
    ]
    mark = {
        "line": {"type": "line", "strokeWidth": 2.5},
        "dashed": {"type": "line", "strokeWidth": 2.5},
        "points": {"type": "point", "filled": True, "size": 60},
        "area": {"type": "area", "opacity": 0.18, "line": True},
        "bars": {"type": "bar", "opacity": 0.75},
    }[series.style]
    index = names.index(series.name)
    colour, dash = COLOURS[index % len(COLOURS)], DASHES[index % len(COLOURS)]
    encoding = dict(axes)
    if series.style == "bars":
        mark = {**mark, "color": colour, "width": max(2, 300 // max(1, len(rows)))}
    elif len(names) > 1:
        scale = {"domain": names}
        palette = [COLOURS[i % len(COLOURS)] for i in range(len(names))]
        encoding["color"] = {
            "field": "series",
            "type": "nominal",
            "scale": {**scale, "range": palette},
        }
        if mark["type"] == "line":
            dashes = [DASHES[i % len(COLOURS)] for i in range(len(names))]
            encoding["strokeDash"] = {
                "field": "series",
                "type": "nominal",
                "scale": {**scale, "range": dashes},
            }
    else:
        mark = {**mark, "color": colour}
        if series.style == "dashed":
            mark["strokeDash"] = dash
    return {"data": {"values": rows}, "mark": mark, "encoding": encoding}


def _level(y: float, label: str, axes: Spec, place: Place) -> Spec:
    """A rule and its label, at the end and the height that ``place`` names."""
    to_left, down = place
    row = {"y": y, "label": label}
    rule = {"mark": {"type": "rule", "strokeDash": [4, 4], "color": "currentColor", "opacity": 0.7}}
    end = {"align": "left", "x": EDGE} if to_left else {"align": "right", "x": "width"}
    text = {"type": "text", "dy": down, **end}
    encoding = {"y": axes["y"]}
    words = {**encoding, "text": {"field": "label"}}
    return {
        "data": {"values": [row]},
        "layer": [
            {**rule, "encoding": encoding},
            *({"mark": mark, "encoding": words} for mark in _on_paper(text)),
        ],
    }


def _on_paper(text: Spec) -> tuple[Spec, Spec]:
    """A text mark over a rim of the paper's colour, so that lines do not run through it."""
    rim = {"stroke": "var(--sl-paper)", "strokeWidth": 3, "strokeJoin": "round"}
    return {**text, **rim}, text


def _mark(x: float, y: float, label: str, axes: Spec, place: Place) -> list[Spec]:
    """A dot and its label, as far right and down of it as ``place`` says, in pixels."""
    right, down = place
    data = {"values": [{"x": x, "y": y, "label": label}]}
    halo = {"stroke": "var(--sl-paper)", "strokeWidth": 2}
    point = {
        "type": "point",
        "filled": True,
        "size": 110,
        "color": "var(--sl-line-1)",
        "opacity": 1,
        **halo,
    }
    text = {
        "type": "text",
        "align": "left" if right > 0 else "right",
        "dx": right,
        "dy": down,
        "fontWeight": "bold",
    }
    return [
        {"data": data, "mark": point, "encoding": axes},
        *(
            {"data": data, "mark": mark, "encoding": {**axes, "text": {"field": "label"}}}
            for mark in _on_paper(text)
        ),
    ]


def _short(number: float) -> float:
    """Seven figures: enough for a drawing, and the same text on every machine."""
    return float(f"{number:.6e}")
