"""The tapes along sole plate and slopes, with the marks on them as a real tape shows them."""

import math
from collections.abc import Callable

import msgspec

from core.drawing.crowd import Crowd, Quad
from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.placing import spread
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View
from core.framing import Frame, Mark, Member, Role, keys, underside
from core.model import Side
from core.roof import RoofLine, Segment
from core.roof.line import TOUCH
from core.wording import Wording

OFF = 1.9
"""From the timber to the near edge of a tape, mm on paper."""

BAND = 3.0
"""The width of a tape, mm on paper."""

LEAD = 2.6
"""The length of the leader from a tape to its figure, mm on paper."""

FOOT = 0.8
"""From a leader to the figure it leads to, mm on paper."""

LIFT = 1.5
"""The step by which figures are lifted over what stands over another plate, mm on paper."""

PITCH, TIGHT, CLOSE = 1.0, 0.86, 0.74
"""From one figure to the next, by their size: where there is room, at need, and at the least."""

Bend = Callable[[float, float], XY]
"""From a place along a tape and a distance off the timber to the model point; model mm."""


class _Course(msgspec.Struct, frozen=True):
    """Where a tape lies, model mm: its length, and the angle that leads away from the timber.

    Its figures stay between `low` and `high`, so that they keep off those of the next plate.
    """

    length: float
    bend: Bend
    outward: float
    low: float = -math.inf
    high: float = math.inf


def sole_tape(
    wall_run: float, marks: list[Mark], view: View, wording: Wording, low: float = 0.0
) -> Drawing:
    """The tape under the sole plate, its marks, and their running figures below it.

    It lies level under the lowest place of the floor, at the height `low`, mm.
    """

    def bend(along: float, off: float) -> XY:
        return along, low - off

    places = [(m, m.x) for m in marks]
    return _tape(_Course(wall_run, bend, -math.pi / 2), places, view, wording)


def rafter_tapes(
    foot: tuple[Segment, ...], marks: tuple[Mark, ...], view: View, wording: Wording
) -> Drawing:
    """A tape under each stretch of the rafters that a wall stands on, with its marks."""
    drawing: list[Element] = []
    for segment in foot:
        left, run = segment.left, math.hypot(1.0, segment.along)
        under = (segment.along / run, -1.0 / run)

        def bend(
            along: float,
            off: float,
            segment: Segment = segment,
            run: float = run,
            under: XY = under,
        ) -> XY:
            x = segment.left + along / run
            return x + under[0] * off, segment.at(x) + under[1] * off

        course = _Course((segment.right - left) * run, bend, segment.angle - math.pi / 2)
        own = [(m, (m.x - left) * run) for m in marks if left <= m.x <= segment.right]
        drawing += _tape(course, own, view, wording) if own else ()
    return tuple(drawing)


def top_tapes(
    frame: Frame, line: RoofLine, marks: tuple[Mark, ...], view: View, wording: Wording
) -> Drawing:
    """A tape over the top plates of the lowest layer, with its marks and running figures.

    One runs over all pieces that meet over studs, as it does when they lie end to end to be
    marked; beyond a purlin another one begins. Where a figure would meet what stands over another
    plate it is lifted along its own way.
    """
    runs: dict[str, list[Member]] = {}
    for plate in frame.members:
        if plate.role is Role.TOP_PLATE:
            runs.setdefault(keys.stretch(plate.key), []).append(plate)
    marked = {key: [m for m in marks if keys.stretch(m.plate) == key] for key in runs}
    unders = {
        key: tuple(corner for piece in pieces for corner in underside(piece))
        for key, pieces in runs.items()
        if marked[key]
    }
    courses = {key: _over(under, line, view) for key, under in unders.items()}
    crowd = Crowd()
    for key, course in courses.items():
        crowd.add(key, _band(course, view))
    drawing: list[Element] = []
    for key, course in courses.items():
        left, right = unders[key][0][0], unders[key][-1][0]
        own = [(m, (m.x - left) * course.length / (right - left)) for m in marked[key]]
        drawing += _tape(course, own, view, wording, crowd)
    return tuple(drawing)


def _over(under: tuple[XY, ...], line: RoofLine, view: View) -> _Course:
    """The course of the tape over top plates, from break to break of their underside."""
    left, right = under[0][0], under[-1][0]
    segment = _straight(under, line)
    run = math.hypot(1.0, segment.along)
    over = (-segment.along / run, 1.0 / run)

    def bend(along: float, off: float) -> XY:
        x = left + along / run
        return x + over[0] * off, segment.at(x) + over[1] * off

    length, half = (right - left) * run, view.model(view.size * PITCH / 2)
    first, last = line.segments[0].left, line.segments[-1].right
    return _Course(
        length,
        bend,
        segment.angle + math.pi / 2,
        half if left > first + TOUCH else -math.inf,
        length - half if right < last - TOUCH else math.inf,
    )


def _straight(under: tuple[XY, ...], line: RoofLine) -> Segment:
    """The straight line that plates' tape lies on: the roof line, or a chord over bent ones."""
    (x0, y0), *_, (x1, y1) = under
    stated = _segment(line, (x0 + x1) / 2)
    along = (y1 - y0) / (x1 - x0)
    if all(abs(y0 + along * (x - x0) - y) < TOUCH for x, y in under):
        return stated
    height = max(y - along * x for x, y in line.points() if x0 <= x <= x1)
    return Segment(x0, x1, height, along, stated.across)


def _segment(line: RoofLine, x: float) -> Segment:
    return next((s for s in line.segments if s.left <= x <= s.right), line.segments[-1])


def _tape(
    course: _Course,
    marks: list[tuple[Mark, float]],
    view: View,
    wording: Wording,
    crowd: Crowd | None = None,
) -> Drawing:
    """A tape with its ticks, its marks and their figures; each mark with its place along it."""
    near, far = view.model(OFF), view.model(OFF + BAND)
    band = _band(course, view)
    drawing: list[Element] = [Fill(band, Pen.TAPE), Stroke(band, Pen.TAPE, closed=True)]
    origin = marks[0][0].origin if marks else Side.LEFT
    for along, share in _ticks(course.length, origin, view, wording):
        foot = course.bend(along, near + (far - near) * (1 - share))
        drawing.append(Stroke((foot, course.bend(along, far)), Pen.TAPE))
    in_order = sorted(marks, key=lambda m: m[1])
    for (mark, along), place in zip(in_order, _places(course, in_order, view), strict=True):
        drawing += _mark(course, mark, (along, place), view, wording, crowd)
    return tuple(drawing)


def _band(course: _Course, view: View) -> Quad:
    """The outline of a tape."""
    near, far, bend, end = view.model(OFF), view.model(OFF + BAND), course.bend, course.length
    return bend(0.0, near), bend(end, near), bend(end, far), bend(0.0, far)


def _mark(
    course: _Course,
    mark: Mark,
    places: tuple[float, float],
    view: View,
    wording: Wording,
    crowd: Crowd | None,
) -> tuple[Element, ...]:
    """A mark's line across the tape, its tail on the X side, its leader and its figure.

    `places` are those of the line and of the figure. Figures are written outward from the tape, or
    toward it where they would stand on their heads.
    """
    bend, outward, (along, place) = course.bend, course.outward, places
    near, far, tip = (view.model(d) for d in (OFF - 1.2, OFF + BAND, OFF + BAND + LEAD))
    turned = not 1e-9 - math.pi / 2 <= outward <= math.pi / 2 + 1e-9
    align = Align.END if turned else Align.START
    angle = outward if not turned else outward + (math.pi if outward < 0 else -math.pi)
    figure = (wording.length(mark.along), mark.letter)
    text = " ".join(figure if turned else reversed(figure))
    lift = 0.0
    if crowd is not None:
        width = text_width(text, view.size, narrow=True)
        lift = crowd.lift(
            keys.stretch(mark.plate), _lane(course, place, width, view), view.model(LIFT)
        )
    tail = along + view.model(1.1) * (1 if mark.x_side is Side.RIGHT else -1)
    flag = [bend(tail, near), bend(along, near), bend(along, far), bend(place, tip)]
    flag += [bend(place, tip + lift)] if lift else []
    at = bend(place, tip + lift + view.model(FOOT))
    return (
        Stroke(tuple(flag), Pen.MARK, mark.member),
        Text(text, at, view.size, Pen.MARK, mark.member, align, angle, narrow=True, middle=True),
    )


def _lane(
    course: _Course, place: float, width: float, view: View
) -> Callable[[float], tuple[Quad, Quad]]:
    """The rectangles of a figure `width` mm wide on paper and of its leader, by how far lifted."""
    half, thin = view.model(cap_height(view.size) / 2), view.model(0.15)
    far, foot, wide = (view.model(d) for d in (OFF + BAND, OFF + BAND + LEAD + FOOT, width))

    def strip(aside: float, low: float, high: float) -> Quad:
        ends = ((place - aside, low), (place + aside, low), (place + aside, high))
        first, second, third = (course.bend(*end) for end in ends)
        return first, second, third, course.bend(place - aside, high)

    def shapes(lift: float) -> tuple[Quad, Quad]:
        return strip(half, foot + lift, foot + lift + wide), strip(thin, far, foot + lift)

    return shapes


def _places(course: _Course, marks: list[tuple[Mark, float]], view: View) -> list[float]:
    """Where along a tape the figures of its marks stand: near them, yet apart from each other.

    Only between two other plates are they set as close as they can be read.
    """
    hemmed = math.isfinite(course.high - course.low)
    wide, least = (view.model(view.size * s) for s in (PITCH, CLOSE if hemmed else TIGHT))
    room = course.high - course.low if hemmed else course.length
    gap = min(wide, max(least, room / max(1, len(marks) - 1)))
    return spread([along for _, along in marks], gap, course.low, course.high)


def _ticks(length: float, origin: Side, view: View, wording: Wording) -> list[tuple[float, float]]:
    """Ticks of a tape as (place, share of its width), no closer than 1.8 mm on paper."""
    inch = wording.tape.step.unit.value == "in"
    steps = (25.4, 50.8, 101.6, 304.8) if inch else (10.0, 50.0, 100.0, 500.0)
    step = next((s for s in steps if s * view.scale >= 1.8), steps[-1])
    long_every = 304.8 if inch else 100.0 if step < 100.0 else 500.0
    count = int(length / step + 1e-6)
    ticks = []
    for n in range(1, count + 1):
        share = 0.65 if abs(math.remainder(n * step, long_every)) < 1e-6 else 0.3
        place = n * step if origin is Side.LEFT else length - n * step
        ticks.append((place, share))
    return ticks
