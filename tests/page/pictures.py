"""Reading a picture back from its SVG, and what holds of every picture."""

from itertools import combinations
from xml.etree import ElementTree

from calc.page.drawing import LEGIBLE, PHONE, svg, touch
from calc.page.shapes import Press, Stroke, Words, traced
from calc.page.text_boxes import Box, box_of

HALF = 0.5  # units: half a pixel; coordinates are written to a tenth
SLACK = 0.06  # units: coordinates are written to a tenth


def marks(drawing):
    """Every shape of a picture, those to press taken apart."""
    for shape in drawing.shapes:
        yield from shape.shapes if isinstance(shape, Press) else (shape,)


def named(drawing):
    """{name: attributes of the element in the SVG that carries it}."""
    root = ElementTree.fromstring(svg(drawing))
    found = [(one.get("data-sl-at"), dict(one.attrib)) for one in root.iter()]
    names = [name for name, _ in found if name]
    assert len(names) == len(set(names)), "two shapes with one name"
    return {name: attributes for name, attributes in found if name}


def texts(drawing):
    """The words of a picture as they are read."""
    root = ElementTree.fromstring(svg(drawing))
    return ["".join(one.itertext()) for one in root.iter("text")]


def off_scale(known):
    """The furthest y of (m, y) is from where the scale of the picture has that height."""
    (low, under), (high, over) = min(known), max(known)
    each = (over - under) / (high - low) if high > low else 0.0
    return max(abs(y - under - each * (height - low)) for height, y in known)


def faults(drawing):
    """What makes a picture hard to read, in words."""
    words = [one for one in marks(drawing) if isinstance(one, Words)]
    boxes = [(one.text, box_of(one)) for one in words]
    sheet = Box(-SLACK, -SLACK, drawing.width + SLACK, drawing.height + SLACK)
    least = LEGIBLE * drawing.width / PHONE - SLACK
    yield from (f"“{one.text}” is small" for one in words if one.size < least)
    yield from (f"“{text}” leaves the picture" for text, box in boxes if not box.within(sheet))
    for (text, box), (other, its) in combinations(boxes, 2):
        if box.grown(-SLACK).meets(its):
            yield f"“{text}” meets “{other}”"
    yield from _cut(drawing, boxes)
    yield from _hard_to_press(drawing, sheet)
    if not drawing.alt:
        yield "nothing is said to a screen reader"


def _cut(drawing, boxes):
    pipes = [m for m in marks(drawing) if isinstance(m, Stroke) and m.at.startswith("pipe")]
    for pipe in pipes:
        line = traced(pipe.points) if pipe.smooth else pipe.points
        for text, box in boxes:
            inner = box.grown(pipe.width / 2 - SLACK)
            if any(inner.cut_by(a, b) for a, b in zip(line, line[1:], strict=False)):
                yield f"“{text}” cuts {pipe.at}"


def _hard_to_press(drawing, sheet):
    pressed = [one for one in drawing.shapes if isinstance(one, Press)]
    rooms = [(o.name, Box(o.x, o.y, o.x + o.width, o.y + o.height)) for o in pressed]
    least = touch(drawing.width) - SLACK
    for name, box in rooms:
        if min(box.right - box.left, box.bottom - box.top) < least:
            yield f"“{name}” is too small for a finger"
        if not box.within(sheet):
            yield f"the room of “{name}” leaves the picture"
    for (name, box), (other, its) in combinations(rooms, 2):
        if box.grown(-SLACK).meets(its):
            yield f"“{name}” and “{other}” are pressed at one place"
