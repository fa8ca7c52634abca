"""The tapes along sole plate and slopes, with the marks on them as a real tape shows them."""

import math

from core.drawing.course import BAND, FOOT, LEAD, OFF, Course, Lane
from core.drawing.crowd import Crowd, Quad, shape
from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.placing import spread
from core.drawing.typeface import text_width
from core.drawing.view import View
from core.framing import Frame, Mark, Member, Role, keys, underside
from core.kept import Kept
from core.lengths import System, Tape
from core.model import Side
from core.roof import RoofLine, Segment
from core.roof.line import TOUCH
from core.wording import Wording

LIFT = 1.5
"""The step by which figures are lifted over what stands over another plate, mm on paper."""

Said = tuple[float, str]
"""What a mark says: its running distance, mm, and its letter."""

STEP = 0.1
"""Figures that crowd are set aside from their marks by whole steps, mm on paper."""

PITCH, TIGHT, CLOSE = 1.0, 0.86, 0.74
"""From one figure to the next, by their size: where there is room, at need, and at the least."""


def sole_tape(
    wall_run: float,
    marks: list[Mark],
    view: View,
    wording: Wording,
    low: float = 0.0,
    kept: Kept | None = None,
) -> Drawing:
    """The tape under the sole plate, its marks, and their running figures below it.

    It lies level under the lowest place of the floor, at the height `low`, mm.
    """
    course = Course((0.0, low), wall_run, (1.0, 0.0), (0.0, -1.0), -math.pi / 2)
    places = [(m, m.x) for m in marks]
    return _tape(course, places, view, wording, kept or Kept())


def rafter_tapes(
    foot: tuple[Segment, ...],
    marks: tuple[Mark, ...],
    view: View,
    wording: Wording,
    kept: Kept | None = None,
) -> Drawing:
    """A tape under each stretch of the rafters that a wall stands on, with its marks."""
    drawing: list[Element] = []
    for segment in foot:
        left, run = segment.left, math.hypot(1.0, segment.along)
        way = (1.0 / run, segment.along / run)
        course = Course(
            (left, segment.at(left)),
            (segment.right - left) * run,
            way,
            (way[1], -way[0]),
            segment.angle - math.pi / 2,
        )
        own = [(m, (m.x - left) * run) for m in marks if left <= m.x <= segment.right]
        drawing += _tape(course, own, view, wording, kept or Kept()) if own else ()
    return tuple(drawing)


def top_tapes(
    frame: Frame,
    line: RoofLine,
    marks: tuple[Mark, ...],
    view: View,
    wording: Wording,
    kept: Kept | None = None,
    rafters: tuple[Mark, ...] = (),
) -> Drawing:
    """A tape over the top plates of the lowest layer, with its marks and running figures.

    One runs over all pieces that meet over studs, as it does when they lie end to end to be
    marked; beyond a purlin another one begins. Where a figure would meet what stands over another
    plate it is lifted along its own way. The marks of `rafters` that plates cross have their
    figures where there is room for all of them beside the studs', else they are lines alone.
    """
    kept = kept or Kept()
    runs: dict[str, list[Member]] = {}
    for plate in frame.members:
        if plate.role is Role.TOP_PLATE:
            runs.setdefault(keys.stretch(plate.key), []).append(plate)
    marked: dict[str, list[Mark]] = {key: [] for key in runs}
    stretches = {plate: keys.stretch(plate) for plate in {mark.plate for mark in marks}}
    for mark in marks:
        marked.get(stretches[mark.plate], []).append(mark)
    unders = {
        key: tuple(corner for piece in pieces for corner in underside(piece))
        for key, pieces in runs.items()
        if marked[key]
    }
    courses = {key: _over(under, line, view) for key, under in unders.items()}
    crowd = Crowd(kept)
    for key, course in courses.items():
        crowd.add(key, shape(_band(course, view)))
    drawing: list[Element] = []
    for key, course in courses.items():
        left, right = unders[key][0][0], unders[key][-1][0]
        own = [(m, (m.x - left) * course.length / (right - left)) for m in marked[key]]
        crossed = [m for m in rafters if kept.of(keys.stretch, m.plate) == key]
        over = [(m, (m.x - left) * course.length / (right - left)) for m in crossed]
        drawing += [_rafter_line(course, m, along, view) for m, along in over]
        own += over if _roomy(course, len(own) + len(over), view) else []
        drawing += _tape(course, own, view, wording, kept, crowd)
    return tuple(drawing)


def _roomy(course: Course, count: int, view: View) -> bool:
    """Whether so many figures have room over a tape at their full distance."""
    room = course.high - course.low if math.isfinite(course.high - course.low) else course.length
    return (count - 1) * view.model(view.size * PITCH) <= room


def _rafter_line(course: Course, mark: Mark, along: float, view: View) -> Element:
    """A rafter's line across a tape, with its tail over the rafter."""
    near, far = view.model(OFF - 1.2), view.model(OFF + BAND)
    tail = along + view.model(1.1) * (1 if mark.x_side is Side.RIGHT else -1)
    flag = (course.bend(tail, near), course.bend(along, near), course.bend(along, far))
    return Stroke(flag, Pen.RAFTER, mark.member)


def _over(under: tuple[XY, ...], line: RoofLine, view: View) -> Course:
    """The course of the tape over top plates, from break to break of their underside."""
    left, right = under[0][0], under[-1][0]
    segment = _straight(under, line)
    run = math.hypot(1.0, segment.along)
    way = (1.0 / run, segment.along / run)
    length, half = (right - left) * run, view.model(view.size * PITCH / 2)
    first, last = line.segments[0].left, line.segments[-1].right
    return Course(
        (left, segment.at(left)),
        length,
        way,
        (-way[1], way[0]),
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
    course: Course,
    marks: list[tuple[Mark, float]],
    view: View,
    wording: Wording,
    kept: Kept,
    crowd: Crowd | None = None,
) -> Drawing:
    """A tape with its ticks, its marks and their figures; each mark with its place along it."""
    origin = marks[0][0].origin if marks else Side.LEFT
    drawing: list[Element] = [*kept.of(_blank, course, origin, view, wording)]
    in_order = sorted(marks, key=lambda m: m[1])
    plate = keys.stretch(marks[0][0].plate) if marks else ""
    for (mark, along), place in zip(in_order, _places(course, in_order, view), strict=True):
        said = (mark.along, mark.letter)
        lift = 0.0
        if crowd is not None:
            lane = kept.of(_lane, course, place, said, view, wording)
            lift = crowd.lift(plate, lane.shapes, view.model(LIFT))
        side, places = mark.x_side, (along, place)
        drawing += kept.of(_mark, course, mark.member, side, said, places, lift, view, wording)
    return tuple(drawing)


def _blank(course: Course, origin: Side, view: View, wording: Wording) -> Drawing:
    """A tape with its ticks and nothing marked on it."""
    near, far = view.model(OFF), view.model(OFF + BAND)
    band = _band(course, view)
    drawing: list[Element] = [Fill(band, Pen.TAPE), Stroke(band, Pen.TAPE, closed=True)]
    for along, share in _ticks(course.length, origin, view, wording):
        foot = course.bend(along, near + (far - near) * (1 - share))
        drawing.append(Stroke((foot, course.bend(along, far)), Pen.TAPE))
    return tuple(drawing)


def _band(course: Course, view: View) -> Quad:
    """The outline of a tape."""
    near, far, bend, end = view.model(OFF), view.model(OFF + BAND), course.bend, course.length
    return bend(0.0, near), bend(end, near), bend(end, far), bend(0.0, far)


def _turned(course: Course) -> bool:
    """Whether figures are written toward the tape: outward they would stand on their heads."""
    return not 1e-9 - math.pi / 2 <= course.outward <= math.pi / 2 + 1e-9


def _lane(course: Course, place: float, said: Said, view: View, wording: Wording) -> Lane:
    return Lane.of(course, place, figure(*said, _turned(course), wording), view)


def figure(along: float, letter: str, turned: bool, wording: Wording) -> str:
    """A mark's running figure and its letter, which stands next to the tape."""
    written = wording.length(along)
    return f"{written} {letter}" if turned else f"{letter} {written}"


def longest_within(run: float, tape: Tape) -> float:
    """The running distance within a wall that has the longest figure on this tape, mm.

    It is the last step before a whole inch, or before a whole ten of mm.
    """
    whole = 25.4 if tape.system is System.INCH else 10.0
    return max(0.0, math.floor(run / whole) * whole - tape.step_mm)


def figure_width(along: float, letter: str, size: float, wording: Wording) -> float:
    """How wide a mark's figure is, in the unit of `size`."""
    return text_width(figure(along, letter, True, wording), size, narrow=True)


def _mark(
    course: Course,
    member: str,
    x_side: Side,
    said: Said,
    places: tuple[float, float],
    lift: float,
    view: View,
    wording: Wording,
) -> tuple[Element, ...]:
    """A mark's line across the tape, its tail on the X side, its leader and its figure.

    `places` are those of the line and of the figure; the leader is longer by `lift`, mm.
    """
    bend, outward, (along, place) = course.bend, course.outward, places
    near, far, tip = (view.model(d) for d in (OFF - 1.2, OFF + BAND, OFF + BAND + LEAD))
    turned = _turned(course)
    text = figure(*said, turned, wording)
    align = Align.END if turned else Align.START
    angle = outward if not turned else outward + (math.pi if outward < 0 else -math.pi)
    tail = along + view.model(1.1) * (1 if x_side is Side.RIGHT else -1)
    flag = [bend(tail, near), bend(along, near), bend(along, far), bend(place, tip)]
    flag += [bend(place, tip + lift)] if lift else []
    at = bend(place, tip + lift + view.model(FOOT))
    return (
        Stroke(tuple(flag), Pen.MARK, member),
        Text(text, at, view.size, Pen.MARK, member, align, angle, narrow=True, middle=True),
    )


def _places(course: Course, marks: list[tuple[Mark, float]], view: View) -> list[float]:
    """Where along a tape the figures of its marks stand: near them, yet apart from each other.

    Only between two other plates are they set as close as they can be read.
    """
    hemmed = math.isfinite(course.high - course.low)
    wide, least = (view.model(view.size * s) for s in (PITCH, CLOSE if hemmed else TIGHT))
    room = course.high - course.low if hemmed else course.length
    gap = min(wide, max(least, room / max(1, len(marks) - 1)))
    alongs, step = [along for _, along in marks], view.model(STEP)
    spread_out = spread(alongs, gap, course.low, course.high)
    # Where one mark moves, all that crowd with it would move by next to nothing.
    pairs = zip(alongs, spread_out, strict=True)
    return [along + round((place - along) / step) * step for along, place in pairs]


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
