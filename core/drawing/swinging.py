"""A wall seen from its end while it swings up: lying, where it is tightest, and standing.

Drawn in model mm across the wall: x from face A, positive away from it, y up from the floor.
"""

from itertools import pairwise

from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.framing import Frame
from core.roof import roof_line
from core.site import Laid, Surroundings, Swing, path
from core.site.outline import top_places
from core.site.raising import rounded_up
from core.site.swing import UPRIGHT, Place
from core.wording import Mm, Wording, message

STEPS = 30
"""Straight pieces of the arc."""

BESIDE = 300.0
"""How much of floor and roof is shown beyond the wall's reach, mm."""

SIZE = 3.5
"""The size of the texts, mm on paper."""


def swing_drawing(
    around: Surroundings, frame: Frame, swing: Swing, step: float, wording: Wording
) -> Drawing:
    """The swing on one side, cut where the wall comes nearest to the roof.

    Heights under the gap that is needed are rounded up to the tape's `step`, mm.
    """
    section = _section(around, frame, swing.worst.x)
    outline = [*section]
    reach = max(p.y for p in section) + BESIDE
    low, high = (-reach, around.depth + BESIDE)
    if swing.laid is Laid.FAR_FACE:
        low, high = (-BESIDE, around.depth + reach)
    drawing: list[Element] = [
        *_ground(around, swing, low, high),
        Stroke(_at(around, outline, swing.laid, 0.0), Pen.STUD, closed=True),
        Fill(_at(around, outline, swing.laid, UPRIGHT), Pen.STUD),
        Stroke(_at(around, outline, swing.laid, UPRIGHT), Pen.STUD, closed=True),
        Stroke(_arc(around, swing), Pen.DIMENSION),
    ]
    if not swing.passes:
        tight = _at(around, outline, swing.laid, swing.angle)
        drawing.append(Stroke(tight, Pen.UNBUILDABLE, closed=True))
    return (*drawing, *_texts(around, swing, step, wording))


def _section(around: Surroundings, frame: Frame, x: float) -> list[Place]:
    """The corners of the wall cut across at an x, from its foot at face A round."""
    tops = [p for p in top_places(frame, around.depth, sampled=True) if abs(p.x - x) < 1e-3]
    highest = {p.d: max(q.y for q in tops if q.d == p.d) for p in tops}
    over = [Place(x, highest[d], d) for d in sorted(highest, reverse=True)]
    return [Place(x, 0.0, 0.0), Place(x, 0.0, around.depth), *over]


def _ground(around: Surroundings, swing: Swing, low: float, high: float) -> Drawing:
    """The floor and the roof across the wall."""
    x = swing.worst.x
    floor = Stroke(((low, 0.0), (high, 0.0)), Pen.FLOOR)
    try:
        line = roof_line(around.roof, around.plan(x, low), around.plan(x, high))
    except ValueError:
        return (floor,)
    (higher,) = around.offsets((x,))
    points = [(low + along, y + higher) for along, y in line.points()]
    shown = [piece for a, b in pairwise(points) if (piece := _above_floor(a, b)) is not None]
    return (floor, *(Stroke(piece, Pen.ROOF) for piece in shown))


def _above_floor(a: XY, b: XY) -> tuple[XY, XY] | None:
    """What of a line lies above the floor."""
    if a[1] <= 0.0 and b[1] <= 0.0:
        return None
    if a[1] >= 0.0 and b[1] >= 0.0:
        return (a, b)
    share = a[1] / (a[1] - b[1])
    foot = (a[0] + share * (b[0] - a[0]), 0.0)
    return (foot, b) if a[1] < 0.0 else (a, foot)


def _at(around: Surroundings, places: list[Place], laid: Laid, angle: float) -> tuple[XY, ...]:
    """Where points of the wall are at an angle."""
    ways = (path(around, place, laid) for place in places)
    return tuple((way.aside.at(angle), way.up.at(angle)) for way in ways)


def _arc(around: Surroundings, swing: Swing) -> tuple[XY, ...]:
    """The way of the point that comes nearest to the roof."""
    way = path(around, swing.worst, swing.laid)
    angles = [n / STEPS * UPRIGHT for n in range(STEPS + 1)]
    return tuple((way.aside.at(a), way.up.at(a)) for a in angles)


def _texts(around: Surroundings, swing: Swing, step: float, wording: Wording) -> Drawing:
    """The side it lies on, and the gap it needs beside where it stands."""
    sign = -1.0 if swing.laid is Laid.FACE_A else 1.0
    foot = 0.0 if swing.laid is Laid.FACE_A else around.depth
    face = wording.say(message("up.face-a" if sign < 0 else "up.far-face"))
    lies = (foot + sign * swing.worst.y / 2, around.depth + swing.worst.y * 0.04)
    told: list[Element] = [Text(face, lies, SIZE, Pen.LABEL, align=Align.MIDDLE)]
    if swing.needed is not None and swing.needed > 1e-3:
        needed = rounded_up(swing.needed, step)
        at = (foot + sign * around.depth * 2, swing.worst.y * 0.5)
        align = Align.END if sign < 0 else Align.START
        said = wording.say(message("up.needs", needed=Mm(needed)))
        told.append(Text(said, at, SIZE, Pen.LENGTH, align=align, bold=True))
    return tuple(told)
