"""The terms of places along a wall: where a stud stands, and its marks on the plates."""

import math
from collections.abc import Sequence
from itertools import pairwise

import msgspec

from core.framing import keys
from core.framing.bending import topside, underside
from core.framing.given import Given
from core.framing.layout import layout_lefts
from core.framing.marks import Mark
from core.framing.member import XY, Member, Role
from core.framing.near import end_spans
from core.framing.working import Term, Working, degrees
from core.model import Opening, Side
from core.wording import Message, Mm, message

_NONE = 1e-6
"""A distance of less than this (mm) is none."""


def left_terms(given: Given, stick: Member) -> tuple[Term, ...]:
    """The left edge of a standing member from the wall's left end, from what put it there."""
    found = _caused(given, stick)
    if found is None or abs(_sum(found) - stick.left) > _NONE:
        return (Term(message("working.stands-at"), stick.left),)
    return tuple(term for term in found if abs(term.value) > _NONE)


def mark_workings(given: Given, mark: Mark) -> tuple[Working, ...]:
    """How far a mark is along its plate, and for a sloping one along the floor before that."""
    member, plate = given.frame.member(mark.member), given.frame.member(mark.plate)
    if member is None:
        return ()
    if mark.along_top is None:
        return (Working(message("working.along-floor"), _from_end(given, mark, member)),)
    if given.foot is not None and plate is None:
        level = Working(message("working.along-floor"), _from_end(given, mark, member))
        return level, Working(message("working.along-rafter"), _on_rafter(given, mark))
    if plate is None:
        return ()
    floor = _from_place(given, mark, member, plate)
    header = plate.role is Role.HEADER
    title = message("working.along-header" if header else "working.along-plate")
    along = _along(given, mark, plate)
    if abs(_sum(along) - _sum(floor)) <= _NONE:
        return (Working(title, floor),)
    return Working(message("working.along-floor"), floor), Working(title, along)


def _marked(plate: Member) -> tuple[XY, ...]:
    """The course that is marked: a header's top, a plate's underside."""
    return topside(plate) if plate.role is Role.HEADER else underside(plate)


def stretches(course: Sequence[XY], start: float, end: float) -> tuple[Term, ...]:
    """The length of a course between two places, a term for each straight stretch of it.

    On a slope the distance on the floor is divided by the cosine.
    """
    made = []
    for (x0, y0), (x1, y1) in pairwise(course):
        left, right = max(x0, start), min(x1, end)
        if right - left <= _NONE:
            continue
        run, slope = right - left, abs(math.atan2(y1 - y0, x1 - x0))
        made.append(Term(_run(run, slope), run * math.hypot(1.0, (y1 - y0) / (x1 - x0))))
    return tuple(made)


def _run(run: float, slope: float) -> Message:
    if slope < 1e-9:
        return message("working.run-level")
    return message("working.run", run=Mm(run), slope=degrees(slope))


def _sum(terms: Sequence[Term]) -> float:
    return math.fsum(term.value for term in terms)


def _caused(given: Given, stick: Member) -> list[Term] | None:
    """The terms of a left edge by the key's cause; None where the key tells of none."""
    wall = given.wall
    key = keys.stud_of(stick.key)
    _, cause, *rest = key.split("/")
    if keys.is_double(key):
        return _doubled(given, stick)
    if cause == "end":
        return _at_end(given, stick, Side(rest[0]))
    if cause == "layout":
        return _laid_out(given, int(rest[0]), stick.left)
    opening = next((o for o in wall.openings if o.id == cause), None)
    if opening is not None and rest[0] in ("king", "trimmer"):
        return _beside(given, opening, rest)
    if opening is not None:
        if rest[-1].isdigit():
            return _laid_out(given, int(rest[-1]), stick.left)
        cause = rest[-1]
    if cause == "meets":
        return [Term(message("working.at-meeting", other=rest[0]), stick.left)]
    return [Term(message("working.as-stated"), a.left.mm) for a in wall.added if a.id == cause]


def _at_end(given: Given, stick: Member, side: Side) -> list[Term]:
    """An end stud, flush with the end, set in from a surface that leans in, or leaning itself."""
    run = given.wall.run
    whole = [] if side is Side.LEFT else [Term(message("working.wall-length"), run)]
    if stick.lean:
        end = 0.0 if side is Side.LEFT else run
        return [*whole, Term(message("working.leaning-edge"), stick.left - end)]
    before, after = end_spans(given.wall)
    if side is Side.LEFT:
        return [Term(message("working.set-in"), before[0])]
    set_in = Term(message("working.set-in"), after[1] - run)
    return [*whole, set_in, _thickness(given, -1)]


def _thickness(given: Given, sign: int) -> Term:
    return Term(message("working.stud-thickness"), sign * given.wall.stud.thickness.mm)


def _doubled(given: Given, stick: Member) -> list[Term] | None:
    beside = given.frame.member(keys.stud_of(stick.key).removesuffix(f"/{keys.DOUBLE}"))
    if beside is None:
        return None
    name = message("working.beside-stud", label=given.label(beside))
    if beside.lean and stick.left > beside.left:
        return [Term(name, beside.right)]
    at = Term(name, beside.left)
    return [at, _thickness(given, 1 if stick.left > beside.left else -1)]


def _beside(given: Given, opening: Opening, rest: list[str]) -> list[Term]:
    """A king or a trimmer, outward from the edge of its opening."""
    role, side = rest
    edge = Term(message("working.opening-left"), opening.left.mm)
    name, thick = message("working.trimmer"), given.wall.stud.thickness.mm
    if side == Side.LEFT.value:
        terms = [edge, Term(name, -thick)]
        return terms if role == "trimmer" else [*terms, Term(message("working.king"), -thick)]
    terms = [edge, Term(message("working.opening-width"), opening.width.mm)]
    return terms if role == "trimmer" else [*terms, Term(name, thick)]


def _laid_out(given: Given, place: int, left: float) -> list[Term]:
    """A stud of the layout: so many spacings to its middle, less half of it; or where it is put."""
    wall = given.wall
    for moved in wall.moved:
        if moved.place == place:
            return [Term(message("working.as-stated"), moved.left.mm)]
    wanted = dict(layout_lefts(wall)).get(place)
    if wanted is None:
        return []
    terms = _on_centre(given, place)
    shift = left - wanted
    return [*terms, Term(message("working.kept-tight"), shift)]


def _on_centre(given: Given, place: int) -> list[Term]:
    wall, layout = given.wall, given.wall.layout
    half = wall.stud.thickness.mm / 2
    each = message("working.spacings", count=place, each=Mm(layout.spacing.mm))
    if layout.origin is not None:
        centre = dict(layout_lefts(wall))[place] + half
        apart = centre - layout.origin.mm
        count = round(abs(apart) / layout.spacing.mm)
        off = message("working.spacings", count=count, each=Mm(layout.spacing.mm))
        terms = [Term(message("working.layout-point"), layout.origin.mm), Term(off, apart)]
    elif layout.start is Side.LEFT:
        terms = [
            Term(message("working.hung-board"), layout.hung_board.mm),
            Term(each, place * layout.spacing.mm),
        ]
    else:
        terms = [
            Term(message("working.wall-length"), wall.run),
            Term(message("working.hung-board"), -layout.hung_board.mm),
            Term(each, -place * layout.spacing.mm),
        ]
    return [*terms, Term(message("working.half-stud"), -half)]


def _lined(given: Given, mark: Mark, member: Member) -> tuple[Term, ...]:
    """The place of the line from the wall's left end: the stud's left edge, or its right one."""
    if member.lean:
        return _leaning_edge(given, mark, member)
    left = left_terms(given, member)
    wide = member.right - member.left
    if mark.edge is Side.LEFT:
        return left
    if left and left[-1].name == message("working.half-stud"):
        # Less half of it, and on by all of it: half of it on from its middle.
        return (*left[:-1], msgspec.structs.replace(left[-1], value=-left[-1].value))
    return (*left, Term(message("working.to-its-right"), wide))


def _leaning_edge(given: Given, mark: Mark, member: Member) -> tuple[Term, ...]:
    """Where the edge of an end stud that leans is at its foot, or at its top."""
    run = given.wall.run
    at_right = member.key.endswith(f"/{Side.RIGHT.value}")
    whole = (Term(message("working.wall-length"), run),) if at_right else ()
    edge = Term(message("working.leaning-edge"), mark.x - (run if at_right else 0.0))
    return (*whole, edge)


def _from_end(given: Given, mark: Mark, member: Member) -> tuple[Term, ...]:
    """The line from the end of the wall that the tape hooks on."""
    return _hooked(given, mark, _lined(given, mark, member), 0.0, given.wall.run)


def _from_place(given: Given, mark: Mark, member: Member, plate: Member) -> tuple[Term, ...]:
    """The line along the floor from below the end of a plate."""
    course = _marked(plate)
    low, high = _whole(given, mark, course)
    return _hooked(given, mark, _lined(given, mark, member), low, high)


def _whole(given: Given, mark: Mark, course: Sequence[XY]) -> tuple[float, float]:
    """The ends of the plate as it was before it was divided: marks run on over its pieces."""
    low, high = course[0][0], course[-1][0]
    member = given.frame.member(mark.member)
    x = mark.x
    if member is None:
        return low, high
    if mark.origin is Side.LEFT:
        return x - mark.along_sole, high
    return low, x + mark.along_sole


def _hooked(
    given: Given, mark: Mark, terms: tuple[Term, ...], low: float, high: float
) -> tuple[Term, ...]:
    """Terms from the wall's left end, told from the place that the tape hooks on."""
    if mark.origin is Side.LEFT:
        return _without_none((*terms, Term(message("working.plate-begins"), -low)))
    whole = message("working.wall-length")
    taken = [msgspec.structs.replace(term, value=-term.value) for term in terms]
    if abs(high - given.wall.run) > _NONE:
        return _without_none((Term(message("working.plate-ends"), high), *taken))
    # What a stud's own place counts from the wall's right end need not be counted there and back.
    counted = [term for term in taken if term.name == whole]
    kept = [term for term in taken if term.name != whole]
    return _without_none(tuple(kept) if counted else (Term(whole, high), *kept))


def _without_none(terms: tuple[Term, ...]) -> tuple[Term, ...]:
    kept = tuple(term for term in terms if abs(term.value) > _NONE)
    return kept or (Term(message("working.at-the-end"), 0.0),)


def _along(given: Given, mark: Mark, plate: Member) -> tuple[Term, ...]:
    """The distance on the plate: what there is on the floor, divided by the slope's cosine."""
    return (*_stretches_to(given, mark, plate), *_begun(mark))


def _begun(mark: Mark) -> tuple[Term, ...]:
    begins = Term(message("working.piece-begins"), -mark.begins)
    return (begins,) if abs(mark.begins) > _NONE else ()


def _stretches_to(given: Given, mark: Mark, plate: Member) -> tuple[Term, ...]:
    """The stretches along a plate to a mark; one on a piece of it counts on from those before."""
    low, high = _whole(given, mark, _marked(plate))
    start, end = (low, mark.x) if mark.origin is Side.LEFT else (mark.x, high)
    terms = stretches(_carried(_marked(plate), start, end), start, end)
    rest = (mark.along_top or 0.0) - _sum(terms)
    return terms if abs(rest) <= _NONE else (*terms, Term(message("working.pieces-before"), rest))


def _carried(course: Sequence[XY], start: float, end: float) -> tuple[XY, ...]:
    """The course with its end stretches carried on straight as far as is needed."""
    points = list(course)
    for index, beside, x in ((0, 1, start), (-1, -2, end)):
        (x0, y0), (x1, y1) = points[index], points[beside]
        further = x < x0 if index == 0 else x > x0
        if further and x1 != x0:
            points[index] = (x, y0 + (y1 - y0) * (x - x0) / (x1 - x0))
    return tuple(points)


def _on_rafter(given: Given, mark: Mark) -> tuple[Term, ...]:
    """The distance along the rafter that a wall stands on, from its low end."""
    foot = given.foot[0] if given.foot else None
    if foot is None:
        return ()
    ends = ((s, x) for s in foot.segments for x in (s.left, s.right))
    course = tuple((x, s.at(x)) for s, x in ends)
    start, end = (0.0, mark.x) if mark.origin is Side.LEFT else (mark.x, given.wall.run)
    return stretches(course, start, end)
