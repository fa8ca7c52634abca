"""The cross-section of a top plate under a sloping roof, drawn, with what it says in words."""

import math

from core.drawing import timber
from core.drawing.elements import Align, Dimension, Drawing, Element, Fill, Stroke, Text
from core.drawing.extent import extent
from core.drawing.pen import Pen
from core.drawing.view import View
from core.drawing.writing import LINE, SIZE, wrapped
from core.framing import Edge, Frame, PlateSection
from core.model import PlateLie, Side
from core.roof import RoofLine, Segment
from core.wording import Message, Mm, Rad, Wording, message

PAST = 5.0
"""How far the roof goes on past plates and studs, mm on paper."""

STUD = 12.0
"""How much of the stud is shown under the plates, mm on paper."""

STRING = 5.0
"""Between two dimension lines, mm on paper."""

NOTES = 52.0
"""The width of the words beside the drawing, mm on paper."""


def steepest(frame: Frame | None) -> PlateSection | None:
    """The section that is shown: the one under the steepest slope through the wall, or None."""
    sections = frame.sections if frame else ()
    return max(sections, key=lambda s: abs(s.tilt), default=None)


def plate_detail(section: PlateSection, view: View, wording: Wording) -> Drawing:
    """The cross-section with its title and its words to the right; model mm at the view's scale."""
    picture = section_picture(section, view, wording)
    _, _, right, top = extent(picture, view.scale)
    x, y = right + view.model(3.0), top - view.model(LINE)
    title = wording.word("plates.title")
    notes = [line for note in section_notes(section, wording) for line in wrapped(note, NOTES)]
    lines = [(title, True), *((line, False) for line in notes)]
    return (
        *picture,
        *(
            Text(line, (x, y - view.model(n * LINE)), SIZE, Pen.NOTE, bold=bold, narrow=True)
            for n, (line, bold) in enumerate(lines)
        ),
    )


def section_notes(section: PlateSection, wording: Wording) -> list[str]:
    """What the cross-section says: the lie, how each edge stands to the studs, the width needed."""
    name = section.lie.value if section.lie else "tilted"
    tilt = Rad(abs(section.tilt))
    width = Mm(section.rip.width if section.rip else section.have)
    uphill_first = [("plates.uphill", section.near), ("plates.eave-side", section.far)]
    if section.uphill is Side.RIGHT:
        uphill_first = [("plates.uphill", section.far), ("plates.eave-side", section.near)]
    said = [
        message(f"plates.{name}", tilt=tilt, width=width),
        *(_edge(message(word), edge) for word, edge in uphill_first),
        message("plates.width", need=Mm(section.need), have=Mm(section.have)),
    ]
    return [wording.say(m) for m in said]


def _edge(name: Message, edge: Edge) -> Message:
    if abs(edge.underside - edge.top) < 1e-6:
        return message("plates.edge", edge=name, reach=_reach(edge.top))
    return message(
        "plates.edge-sloped", edge=name, underside=_reach(edge.underside), top=_reach(edge.top)
    )


def _reach(proud: float) -> Message:
    if abs(proud) < 1e-6:
        return message("plates.flush")
    return message("plates.proud" if proud > 0 else "plates.short", by=Mm(abs(proud)))


def section_picture(section: PlateSection, view: View, wording: Wording) -> Drawing:
    """The roof, the plates and the head of a stud, seen along the wall with face A on the left."""
    corners = [c for layer in section.layers for c in layer]
    left = min(0.0, *(x for x, _ in corners)) - view.model(PAST)
    right = max(section.stud, *(x for x, _ in corners)) + view.model(PAST)
    slope = math.tan(section.tilt)
    roof = RoofLine((Segment(left, right, 0.0, slope, 0.0),))
    foot = min(y for _, y in corners) - view.model(STUD)
    drawing: list[Element] = [*timber.roof(roof, view), *_stud(section, foot)]
    for layer in section.layers:
        drawing += (Fill(layer, Pen.TOP_PLATE), Stroke(layer, Pen.TOP_PLATE, closed=True))
    drawing += _dimensions(section, foot, view, wording)
    at = (-view.model(2.0), foot + view.model(1.0))
    face = wording.word("plates.face-a")
    drawing.append(Text(face, at, view.size, Pen.LABEL, align=Align.END, bold=True))
    return tuple(drawing)


def _stud(section: PlateSection, foot: float) -> Drawing:
    """The head of the stud; it goes on below."""
    under_near = section.layers[-1][0]
    slope = 0.0 if section.lie is PlateLie.LEVEL else math.tan(section.tilt)
    tops = [under_near[1] + slope * (x - under_near[0]) for x in (0.0, section.stud)]
    outline = ((0.0, foot), (0.0, tops[0]), (section.stud, tops[1]), (section.stud, foot))
    return Fill(outline, Pen.STUD), Stroke(outline, Pen.STUD)


def _dimensions(section: PlateSection, foot: float, view: View, wording: Wording) -> Drawing:
    """The plate's broad face over the roof, the stud's width below, and how far edges stand out.

    A level plate shows no width there, where the roof stands in the way.
    """
    drawing: list[Element] = []
    if section.lie is not PlateLie.LEVEL:
        *_, far, near = section.layers[0]
        text = wording.length(math.dist(near, far))
        drawing.append(Dimension(near, far, view.model(6.0), text, view.size))
    stud = (0.0, foot), (section.stud, foot)
    under = Dimension(*stud, -view.model(STRING), wording.length(section.stud), view.size)
    return (*drawing, under, *_proud(section, view, wording))


def _proud(section: PlateSection, view: View, wording: Wording) -> Drawing:
    """How far each edge stands proud of the stud, on a line below the plates beside the stud."""
    under_near, under_far, *_ = section.layers[-1]
    drawing: list[Element] = []
    for face, edge, sign in ((0.0, section.near, -1.0), (section.stud, section.far, 1.0)):
        proud = max(edge.underside, edge.top)
        if proud > 0.5:
            low = min(under_near[1], under_far[1]) - view.model(1.0)
            at = (face, low), (face + sign * proud, low)
            aside = -sign * view.model(3.0)
            drawing.append(Dimension(*at, aside, wording.length(proud), view.size))
    return tuple(drawing)
