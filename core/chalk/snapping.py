"""Catching a point or the end of a chalk line at what is near: lines, directions, round lengths."""

import enum
import math

import msgspec

from core.chalk.guides import EDGES, XY, Guide, Kind

_STRAIGHT = 1e-9
"""The least sine between two lines that cross."""

_ON = 0.5
"""How near (mm) a line lies on an edge of the room."""


class Grip(msgspec.Struct, frozen=True):
    """Tape step and reach of the snapping, mm; `free` snaps to nothing but the finest step."""

    step: float
    reach: float
    free: bool = False


class Direction(enum.Enum):
    """How a chalk line runs: square to the eave walls, along the ridge, as another wall does."""

    ACROSS = "across"
    ALONG = "along"
    PARALLEL = "parallel"
    SQUARE = "square"
    DIAGONAL = "diagonal"
    ASKEW = "askew"


class Caught(msgspec.Struct, frozen=True):
    """A point, and the lines it was caught at: none, one, or two that cross in it."""

    point: XY
    on: tuple[Guide, ...] = ()


class Line(msgspec.Struct, frozen=True):
    """A chalk line from its left end, how it runs (beside which wall), and what it ends at."""

    left: XY
    right: XY
    direction: Direction = Direction.ASKEW
    beside: str = ""
    on: tuple[Guide, ...] = ()

    @property
    def run(self) -> float:
        """Its length, mm."""
        return math.dist(self.left, self.right)

    @property
    def along(self) -> XY:
        """Its direction, of length one; to the right for a line without length."""
        run = self.run
        if run <= 0.0:
            return (1.0, 0.0)
        return (self.right[0] - self.left[0]) / run, (self.right[1] - self.left[1]) / run


def catch(point: XY, lines: tuple[Guide, ...], grip: Grip) -> Caught:
    """Where a point comes to rest: where two lines cross, on a line, or at whole steps.

    Beside a line it rests at whole steps along it, counted from where the plan begins.
    """
    if grip.free:
        return Caught(_stepped(point, grip.step))
    near = _near(point, lines, grip.reach)
    for n, first in enumerate(near):
        for second in near[n + 1 :]:
            crossing = _crossing(first, second)
            if crossing is not None and math.dist(crossing, point) <= 2 * grip.reach:
                return Caught(crossing, (first, second))
    if near:
        return Caught(near[0].foot(_stepped(near[0].foot(point), grip.step)), (near[0],))
    return Caught(_stepped(point, grip.step))


def catch_end(start: XY, point: XY, lines: tuple[Guide, ...], grip: Grip) -> Line:
    """The chalk line from `start` whose other end is wanted at `point`.

    It takes the direction of the room or of a wall that is near, square or parallel; along that it
    ends at a line that it crosses, else at a round length. Held freely it goes where it is wanted.
    """
    if grip.free:
        return Line(start, point)
    way = _direction(start, point, lines, grip.reach * 1.5)
    if way is None:
        caught = catch(point, lines, grip)
        if caught.on:
            return Line(start, caught.point, on=caught.on)
        return Line(start, _at_round_length(start, point, grip.step))
    along, direction, beside = way
    straight = catch_along(start, along, point, lines, grip)
    return msgspec.structs.replace(straight, direction=direction, beside=beside)


def catch_along(start: XY, along: XY, point: XY, lines: tuple[Guide, ...], grip: Grip) -> Line:
    """The chalk line from `start` in a direction, so long that its end is beside `point`.

    It ends at a line that it crosses, else at a round length.
    """
    wanted = (point[0] - start[0]) * along[0] + (point[1] - start[1]) * along[1]
    run, on = _end_along(start, along, wanted, () if grip.free else lines, grip)
    return Line(start, (start[0] + along[0] * run, start[1] + along[1] * run), on=on)


def next_along(point: XY, along: XY, lines: tuple[Guide, ...]) -> Caught | None:
    """The first line that is met from a point in a direction; None if there is none ahead."""
    found = []
    for guide in lines:
        to = _to(point, along, guide, _ON)
        if to is not None and to > 1.0:
            found.append((to, guide))
    if not found:
        return None
    to, guide = min(found, key=lambda f: f[0])
    return Caught((point[0] + along[0] * to, point[1] + along[1] * to), (guide,))


def moved(
    left: XY, right: XY, by: XY, width: float, lines: tuple[Guide, ...], grip: Grip
) -> tuple[Line, float]:
    """A line moved by (u, v) mm, and how far it went; its faces are caught at parallel lines.

    Each end is caught at lines that it runs into. What is not caught goes by whole steps from
    where it stood. `width` is how far behind the line its far face stands.
    """
    line = Line(left, right)
    along = line.along
    away = (-along[1], along[0])
    forth, back = (by[0] * d[0] + by[1] * d[1] for d in (along, away))
    if grip.free:
        on: tuple[Guide, ...] = ()
    else:
        back, first = _sideways(line, width, back, lines, grip)
        forth, second = _lengthways(line, (away, back), forth, lines, grip)
        on = (*first, *second)
    by = (along[0] * forth + away[0] * back, along[1] * forth + away[1] * back)
    ends = [(p[0] + by[0], p[1] + by[1]) for p in (left, right)]
    return Line(ends[0], ends[1], on=on), math.hypot(forth, back)


def against(line: Line, width: float, edges: tuple[Guide, ...]) -> Line:
    """A line drawn on an edge of the room, brought in so that the timber stands against the edge.

    Its face A is then to the room. Any other line stays as it is.
    """
    for edge in edges:
        if edge.kind not in EDGES:
            continue
        ends = (line.left, line.right)
        if all(abs(edge.aside(p)) <= _ON and edge.reaches(p, _ON) for p in ends):
            inward = (-edge.along[1] * width, edge.along[0] * width)
            left, right = sorted(ends, key=lambda p: -edge.place(p))
            return msgspec.structs.replace(
                line,
                left=(left[0] + inward[0], left[1] + inward[1]),
                right=(right[0] + inward[0], right[1] + inward[1]),
                on=(edge, *(g for g in line.on if g != edge)),
            )
    return line


def _sideways(
    line: Line, width: float, wanted: float, lines: tuple[Guide, ...], grip: Grip
) -> tuple[float, tuple[Guide, ...]]:
    """How far a line goes to its left: so that a face is on a parallel line, or whole steps."""
    along = line.along
    away = (-along[1], along[0])
    tries = []
    for guide in lines:
        if abs(_cross(along, guide.along)) > _STRAIGHT:
            continue
        for depth in (0.0, width):
            face = (line.left[0] + away[0] * depth, line.left[1] + away[1] * depth)
            place = guide.at[0] - face[0], guide.at[1] - face[1]
            to = place[0] * away[0] + place[1] * away[1]
            tries.append((abs(to - wanted), to, guide))
    found = [t for t in tries if t[0] <= grip.reach]
    if found:
        _, to, guide = min(found, key=lambda t: round(t[0], 3))
        return to, (guide,)
    return round(wanted / grip.step) * grip.step, ()


def _lengthways(
    line: Line,
    shifted: tuple[XY, float],
    wanted: float,
    lines: tuple[Guide, ...],
    grip: Grip,
) -> tuple[float, tuple[Guide, ...]]:
    """How far a line goes along itself: so that an end is at a line across it, or whole steps."""
    along, ((au, av), back) = line.along, shifted
    tries = []
    for end in (line.left, line.right):
        point = (end[0] + au * back, end[1] + av * back)
        for guide in lines:
            to = _to(point, along, guide, grip.reach)
            if to is not None:
                tries.append((abs(to - wanted), to, guide))
    found = [t for t in tries if t[0] <= grip.reach]
    if found:
        _, to, guide = min(found, key=lambda t: round(t[0], 3))
        return to, (guide,)
    return round(wanted / grip.step) * grip.step, ()


def _end_along(
    start: XY, along: XY, wanted: float, lines: tuple[Guide, ...], grip: Grip
) -> tuple[float, tuple[Guide, ...]]:
    """How long a line gets in a direction: to a line that it meets, else a round length."""
    tries = []
    for guide in lines:
        to = _to(start, along, guide, grip.reach)
        if to is not None and to > grip.step and abs(to - wanted) <= grip.reach:
            tries.append((abs(to - wanted), to, guide))
    if tries:
        _, to, guide = min(tries, key=lambda t: round(t[0], 3))
        return to, (guide,)
    return max(round(wanted / grip.step), 0) * grip.step, ()


def _to(point: XY, along: XY, guide: Guide, beyond: float) -> float | None:
    """How far from a point in a direction a guide is crossed, mm; None where it is not."""
    turn = _cross(along, guide.along)
    if abs(turn) <= _STRAIGHT:
        return None
    away = (guide.at[0] - point[0], guide.at[1] - point[1])
    to = _cross(away, guide.along) / turn
    at = (point[0] + along[0] * to, point[1] + along[1] * to)
    return to if guide.reaches(at, beyond) else None


def _direction(
    start: XY, point: XY, lines: tuple[Guide, ...], reach: float
) -> tuple[XY, Direction, str] | None:
    """The direction that a line to a point is nearest to, if it is within `reach` mm of one."""
    half = math.sqrt(0.5)
    ways: list[tuple[XY, Direction, str]] = [
        ((1.0, 0.0), Direction.ACROSS, ""),
        ((0.0, 1.0), Direction.ALONG, ""),
    ]
    for guide in lines:
        if guide.kind is Kind.FACE_A and min(abs(guide.along[0]), abs(guide.along[1])) > 1e-6:
            square = (-guide.along[1], guide.along[0])
            ways.append((guide.along, Direction.PARALLEL, guide.name))
            ways.append((square, Direction.SQUARE, guide.name))
    ways += [((half, half), Direction.DIAGONAL, ""), ((half, -half), Direction.DIAGONAL, "")]
    to = (point[0] - start[0], point[1] - start[1])
    asides = [(abs(_cross(way, to)), n) for n, (way, _, _) in enumerate(ways)]
    aside, n = min(asides)
    if aside > reach:
        return None
    along, direction, beside = ways[n]
    ahead = along[0] * to[0] + along[1] * to[1]
    return (along if ahead >= 0 else (-along[0], -along[1])), direction, beside


def _near(point: XY, lines: tuple[Guide, ...], reach: float) -> list[Guide]:
    """The lines within reach of a point, the nearest first, each place of them once."""
    found = [
        (abs(line.aside(point)), n, line)
        for n, line in enumerate(lines)
        if abs(line.aside(point)) <= reach and line.reaches(point, reach)
    ]
    return [line for _, _, line in sorted(found, key=lambda f: f[:2])]


def _crossing(a: Guide, b: Guide) -> XY | None:
    turn = _cross(a.along, b.along)
    if abs(turn) <= _STRAIGHT:
        return None
    place = _cross((b.at[0] - a.at[0], b.at[1] - a.at[1]), b.along) / turn
    return a.at[0] + a.along[0] * place, a.at[1] + a.along[1] * place


def _at_round_length(start: XY, point: XY, step: float) -> XY:
    run = math.dist(start, point)
    if run <= step / 2:
        return start
    share = round(run / step) * step / run
    return start[0] + (point[0] - start[0]) * share, start[1] + (point[1] - start[1]) * share


def _stepped(point: XY, step: float) -> XY:
    return round(point[0] / step) * step, round(point[1] / step) * step


def _cross(a: XY, b: XY) -> float:
    return a[0] * b[1] - a[1] * b[0]
