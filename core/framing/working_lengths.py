"""The terms of a member's lengths: long point, short point, and from tip to tip."""

import enum
import math
from collections.abc import Iterator

from core.framing.bending import courses
from core.framing.given import Given
from core.framing.member import XY, Member, Role
from core.framing.working import Term, Working, degrees
from core.framing.working_heights import Place, foot_terms, height_at, top_and_foot, top_terms
from core.framing.working_places import stretches
from core.model import Opening
from core.wording import Message, Mm, message

_NONE = 1e-6
"""A length of less than this (mm) is none."""


class Which(enum.Enum):
    """Which of a member's lengths is asked for."""

    LONG = "long point"
    SHORT = "short point"
    OVERALL = "overall"


def length_working(given: Given, member: Member, which: Which) -> Working:
    """How one of a member's lengths comes about; its terms add up to it."""
    if member.lies:
        return _lying(given, member, which)
    if member.lean:
        value = {
            Which.LONG: member.long_point,
            Which.SHORT: member.short_point,
            Which.OVERALL: member.overall,
        }[which]
        return Working(message("working.along-it"), (Term(message("working.leaning"), value),))
    if which is Which.OVERALL:
        return _tip_to_tip(given, member)
    chosen = max if which is Which.LONG else min
    _, x, face = chosen(_lengths(member), key=lambda found: (round(found[0], 6), 0))
    place = Place(x, face)
    terms = (*top_terms(given, member, place), *foot_terms(given, member, place))
    length = member.long_point if which is Which.LONG else member.short_point
    # An end that hardly bends is cut straight; the length at the break is from the bend.
    bend = length - math.fsum(term.value for term in terms)
    straight = (Term(message("working.cut-straight"), bend),) if abs(bend) > _NONE else ()
    return Working(_where(member, place), (*terms, *straight))


def _lengths(stick: Member) -> Iterator[tuple[float, float, int]]:
    """The lengths at every corner of either face, with their place."""
    for face in (0, 1):
        top, foot = top_and_foot(stick, face)
        for x in sorted({x for x, _ in (*top, *foot)}):
            yield height_at(top, x) - height_at(foot, x), x, face


def _where(stick: Member, place: Place) -> Message:
    face = message("working.face-a" if place.face == 0 else "working.face-far")
    if place.x == stick.left:
        return message("working.at-left", face=face)
    if place.x == stick.right:
        return message("working.at-right", face=face)
    return message("working.at-break", from_left=Mm(place.x - stick.left), face=face)


def _tip_to_tip(given: Given, stick: Member) -> Working:
    """From the lowest point of a standing member to its highest."""
    tops = ((y, x, face) for face in (0, 1) for x, y in top_and_foot(stick, face)[0])
    feet = ((y, x, face) for face in (0, 1) for x, y in top_and_foot(stick, face)[1])
    _, x, face = max(tops, key=lambda found: round(found[0], 6))
    _, low, low_face = min(feet, key=lambda found: round(found[0], 6))
    terms = (
        *top_terms(given, stick, Place(x, face)),
        *foot_terms(given, stick, Place(low, low_face)),
    )
    return Working(message("working.tip-to-tip"), terms)


def _lying(given: Given, member: Member, which: Which) -> Working:
    index = member.edges.index((min if which is Which.SHORT else max)(member.edges))
    course = _courses(member)[index]
    if "/rafters/" in member.key:
        clear = Term(message("working.between-rafters"), member.long_point)
        return Working(message("working.along-it"), (clear,))
    terms = _level(given, member, course) or stretches(course, course[0][0], course[-1][0])
    askew = member.edges[index] - math.fsum(term.value for term in terms)
    if abs(askew) > _NONE:
        terms = (*terms, Term(message("working.breaks-askew"), askew))
    title = message(_EDGES[index])
    if which is not Which.OVERALL:
        return Working(title, terms)
    past = member.overall - math.fsum(term.value for term in terms)
    tips = (Term(message("working.tips-past"), past),) if abs(past) > _NONE else ()
    return Working(message("working.tip-to-tip"), (*terms, *tips))


_EDGES = (
    "working.near-underside",
    "working.near-top",
    "working.far-underside",
    "working.far-top",
)


def _courses(member: Member) -> tuple[tuple[XY, ...], ...]:
    """The four long edges: near underside, near top, far underside, far top."""
    return (*courses(member.near), *courses(member.far))


def _level(given: Given, member: Member, course: tuple[XY, ...]) -> tuple[Term, ...]:
    """The terms of a member that lies level all along; none for one that does not."""
    if any(abs(y - course[0][1]) > 1e-9 for _, y in course):
        return ()
    left, right = course[0][0], course[-1][0]
    opening = _opening_of(given, member)
    if opening is not None and member.role in (Role.HEADER, Role.SILL):
        terms = _over_opening(given, member, opening)
        if abs(math.fsum(term.value for term in terms) - (right - left)) <= _NONE:
            return terms
    if abs(right - given.wall.run) <= _NONE:
        end = Term(message("working.wall-length"), right)
    else:
        between = member.role in (Role.BLOCKING, Role.BACKING)
        end = Term(message("working.bay-right" if between else "working.ends-at"), right)
    if abs(left) <= _NONE:
        return (end,)
    between = member.role in (Role.BLOCKING, Role.BACKING)
    start = Term(message("working.bay-left" if between else "working.begins-at"), -left)
    return end, start


def _over_opening(given: Given, member: Member, opening: Opening) -> tuple[Term, ...]:
    """The opening, and for a header what it bears on at both sides."""
    width = Term(message("working.opening-width"), opening.width.mm)
    if member.role is Role.SILL:
        return (width,)
    bearing = given.wall.stud.thickness.mm
    return width, Term(message("working.bearings", thick=Mm(bearing)), 2 * bearing)


def _opening_of(given: Given, member: Member) -> Opening | None:
    cause = member.key.split("/")[1]
    return next((o for o in given.wall.openings if o.id == cause), None)


def rip_workings(given: Given, member: Member) -> tuple[Working, ...]:
    """How wide a plate is ripped: the studs' width over the cosine of the slope through it."""
    if member.rip is None:
        return ()
    name = message(
        "working.rip", width=Mm(given.wall.stud.width.mm), slope=degrees(abs(member.rip.bevel))
    )
    return (Working(message("working.ripped-width"), (Term(name, member.rip.width),)),)
