"""What a section states in figures: heights, widths, pitches with their triangles, headroom."""

import math
from collections.abc import Iterator
from fractions import Fraction

from core.drawing.dimension import LIFT
from core.drawing.elements import XY, Align, Dimension, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View
from core.lengths import Pitch, System, write_degrees
from core.lengths.writing import mixed
from core.model import Room, Side, Slope
from core.roof import Rise, RoofLine, RoomSection, Segment, below, underside
from core.wording import Mm, Wording, message

STRING = 9.0
"""From the section to its first string of dimensions, and from one to the next, mm on paper."""

LEG = 9.0
"""The longer leg of a pitch triangle, mm on paper."""

LOWER, UPPER = 0.42, 0.3
"""How far up its stretch a triangle stands: from the eave, and above a change of pitch."""

OFF = 2.2
"""Between rafters and pitch triangle, and between lines and texts, mm on paper."""

HEADROOM = {System.INCH: 60 * 25.4, System.METRIC: 1500.0}
"""Below these heights floor is seldom counted as room: 5 ft is the cut-off of the International
Residential Code (2012, R305.1) as quoted at thebuildingcodeforum.com; 1.5 m from memory."""


def section_figures(
    room: Room, cut: RoomSection, view: View, wording: Wording, beyond: float
) -> Drawing:
    """All figures of a section; `beyond` is how far it is drawn past the room, mm."""
    return (
        *_headroom(room, cut, view, wording),
        *_ceiling(room, cut, view, wording),
        *_across(cut, view, wording),
        *_up(room, cut, view, wording, beyond),
        *(e for rise in cut.rises for e in _triangle(room, cut, rise, view, wording)),
    )


def pitch_of(room: Room, rise: Rise) -> Pitch:
    """The pitch that a stretch of a slope is stated to have."""
    slope: Slope = getattr(room, rise.side.value)
    return slope.breaks[rise.number - 1].pitch if rise.number else slope.pitch


def rise_text(pitch: Pitch) -> str:
    """The rise in a run of 12, to the nearest sixteenth.

    >>> from core.lengths import Unit, parse_pitch
    >>> rise_text(parse_pitch("8 1/2 in 12", Unit.INCH))
    '8 1/2'
    """
    return mixed(Fraction(round(pitch.rise_in_12 * 16), 16))


def angle_text(pitch: Pitch) -> str:
    """The angle in degrees, to the nearest tenth, without a needless nought: ``38°``."""
    return write_degrees(pitch.angle).replace(".0°", "°")


def level_stretch(line: RoofLine, height: float, width: float) -> tuple[float, float] | None:
    """From where to where a level line lies under another, mm across; None where it never does."""
    level = RoofLine((Segment(0.0, width, height, 0.0, 0.0),))
    found = below(level, line)
    return (found[0].left, found[-1].right) if found else None


def _headroom(room: Room, cut: RoomSection, view: View, wording: Wording) -> Drawing:
    """A level line at the least height that counts, and how wide the room is there."""
    height = HEADROOM[wording.tape.system]
    found = level_stretch(cut.over, height, cut.width)
    if found is None:
        return ()
    left, right = found
    said = wording.say(message("section.headroom", width=Mm(right - left), height=Mm(height)))
    # Under its line, where no slope comes down on it.
    at = (left + view.model(2 * OFF), height - view.model(cap_height(view.size) + 1.2))
    line = Stroke(((left, height), (right, height)), Pen.HEADROOM, "headroom")
    x = _ceiling_at(room, cut)
    end = right if x is None else min(right, x - view.model(cap_height(view.size) + LIFT))
    if at[0] + view.model(text_width(said, view.size, narrow=True) + OFF) > end:
        return (line,)
    return line, Text(said, at, view.size, Pen.NOTE, "headroom", narrow=True)


def _ceiling(room: Room, cut: RoomSection, view: View, wording: Wording) -> Drawing:
    """The height of the flat ceiling, inside the room where it is level."""
    x = _ceiling_at(room, cut)
    if room.flat_ceiling is None or x is None:
        return ()
    height = room.flat_ceiling.mm
    return (_dimension((x, 0.0), (x, height), 0.0, "ceiling", view, wording),)


def _ceiling_at(room: Room, cut: RoomSection) -> float | None:
    """Where across the height of the flat ceiling is told; None where there is none to be seen."""
    if room.flat_ceiling is None:
        return None
    found = level_stretch(cut.rafters, room.flat_ceiling.mm, cut.width)
    return found[0] + (found[1] - found[0]) * 0.72 if found else None


def _across(cut: RoomSection, view: View, wording: Wording) -> Iterator[Element]:
    """The runs to changes of pitch, under them those to the ridge, and under them the width."""
    breaks = [rise for rise in cut.rises if rise.number]
    strings = max((rise.number for rise in breaks), default=0)

    def along(left: float, right: float, string: int, key: str) -> Dimension:
        low = -view.model(STRING * string + view.size)
        return _dimension((left, 0.0), (right, 0.0), low, key, view, wording)

    for rise in breaks:
        ends = sorted((rise.foot[0], 0.0 if rise.side is Side.LEFT else cut.width))
        yield along(ends[0], ends[1], rise.number, f"break/{rise.side.value}/{rise.number}")
    if cut.ridge is not None:
        strings += 1
        yield along(0.0, cut.ridge[0], strings, "run/left")
        yield along(cut.ridge[0], cut.width, strings, "run/right")
    yield along(0.0, cut.width, strings + 1, "width")


def _up(
    room: Room, cut: RoomSection, view: View, wording: Wording, beyond: float
) -> Iterator[Element]:
    """Heights at both eaves, at the outer sides; the ridge's on a second string to the right."""
    ends = (
        (Side.LEFT, -beyond, room.left, cut.rafters.height(0.0), 1.0),
        (Side.RIGHT, cut.width + beyond, room.right, cut.rafters.height(cut.width), -1.0),
    )
    for side, x, slope, height, way in ends:
        key = f"eave/{side.value}" if slope is not None else f"high/{side.value}"
        aside = way * view.model(STRING)
        yield _dimension((x, 0.0), (x, height), aside, key, view, wording)
    if cut.ridge is not None:
        u, height = cut.ridge
        x = cut.width + beyond
        yield Stroke(((u, height), (x, height)), Pen.DIMENSION, "ridge")
        yield _dimension((x, 0.0), (x, height), -view.model(2 * STRING), "ridge", view, wording)


def _triangle(room: Room, cut: RoomSection, rise: Rise, view: View, wording: Wording) -> Drawing:
    """The triangle of a pitch over its stretch, its right angle up and outward."""
    pitch, way = pitch_of(room, rise), 1.0 if rise.side is Side.LEFT else -1.0
    leg = view.model(LEG) / max(1.0, pitch.tangent)
    up = leg * pitch.tangent
    x, y = _over_rise(room, cut, rise, view)
    foot, head = (x - way * leg / 2, y - up / 2), (x + way * leg / 2, y + up / 2)
    corner = (foot[0], head[1])
    key = f"pitch/{rise.side.value}/{rise.number}"
    return (
        Fill((foot, head, corner), Pen.DIMENSION, key),
        Stroke((foot, head, corner), Pen.DIMENSION, key, closed=True),
        *_triangle_texts(pitch, (foot, head, corner), way, key, view, wording),
    )


def _over_rise(room: Room, cut: RoomSection, rise: Rise, view: View) -> XY:
    """The middle of the triangle's long side: just off the rafters' upper edge, square to it.

    It stands below the middle of its stretch, so that the level line from the ridge passes over it.
    """
    high = underside(cut.rafters, -room.rafter.timber.width.mm)
    share = UPPER if rise.number else LOWER
    u = rise.foot[0] + (rise.head[0] - rise.foot[0]) * share
    along = (rise.head[1] - rise.foot[1]) / (rise.head[0] - rise.foot[0])
    off = view.model(OFF) / math.sqrt(1.0 + along**2)
    top = max(s.at(u) for s in high.segments if s.left <= u <= s.right)
    return u - along * off, top + off


def _triangle_texts(
    pitch: Pitch, corners: tuple[XY, XY, XY], way: float, key: str, view: View, wording: Wording
) -> Drawing:
    """Rise and 12 at the legs of the triangle; in a metric room its angle over the level leg."""
    foot, head, corner = corners
    over = ((head[0] + corner[0]) / 2, corner[1] + view.model(1.0))
    if wording.tape.system is System.METRIC:
        return (_text(angle_text(pitch), over, key, Align.MIDDLE, view),)
    beside = (corner[0] - way * view.model(1.2), (foot[1] + corner[1]) / 2)
    low = (beside[0], beside[1] - view.model(cap_height(view.size)) / 2)
    align = Align.END if way > 0 else Align.START
    run = Text("12", over, view.size, Pen.NOTE, align=Align.MIDDLE)
    return run, _text(rise_text(pitch), low, key, align, view)


def _text(text: str, at: XY, key: str, align: Align, view: View) -> Text:
    return Text(text, at, view.size, Pen.DIMENSION, key, align=align)


def _dimension(
    start: XY, end: XY, aside: float, key: str, view: View, wording: Wording
) -> Dimension:
    text = wording.length(math.dist(start, end))
    return Dimension(start, end, aside, text, view.size, Pen.DIMENSION, key)
