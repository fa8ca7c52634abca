"""The working of every number of a wall, worked out when it is asked for."""

import enum
import math
from collections import Counter
from collections.abc import Sequence

from core.framing import (
    Given,
    Mark,
    Member,
    Role,
    Term,
    Unit,
    Which,
    Working,
    box_workings,
    cut_workings,
    degrees,
    fit_workings,
    length_working,
    mark_workings,
    notch_workings,
    past_stops,
    rip_workings,
    rough_opening_workings,
    setting_workings,
)
from core.job.given import given_of
from core.job.results import Results, WallResult
from core.model import USUAL_SAW
from core.site import density, weight
from core.wording import Mm, message


class Number(enum.Enum):
    """The numbers that are shown of a thing, and of a wall."""

    LONG = "long point"
    SHORT = "short point"
    OVERALL = "overall"
    CUTS = "cuts"
    SAW = "past the saw's stops"
    BUILT_UP = "built up"
    MARK = "mark"
    NOTCH = "notch"
    RAFTERS = "rafters over it"
    ROUGH_OPENING = "rough opening"
    OPENING_LEFT = "left edge of an opening"
    FITS = "where it fits"
    BOX_HEIGHT = "height of a box"
    BOX_EDGES = "edges of a box"
    BOX_HEIGHTS = "bottom and top of a box"
    FIXTURE_HEIGHT = "height of a fixture"
    BACKED_BY = "what backs a fixture"
    WALL_LENGTH = "length of a wall"
    STUDS = "studs"
    LONGEST = "longest stud"
    SHORTEST = "shortest stud"
    WEIGHT = "weight of the timber"


_OF_MEMBERS = {
    Number.LONG: Which.LONG,
    Number.SHORT: Which.SHORT,
    Number.OVERALL: Which.OVERALL,
}
_OF_BOXES = {
    Number.BOX_HEIGHT: "height",
    Number.BOX_EDGES: "edges",
    Number.BOX_HEIGHTS: "heights",
}


def workings(
    results: Results, letter: str, key: str | None, number: Number, plate: str = ""
) -> tuple[Working, ...]:
    """How a number of the thing with this key comes about, or of the wall where it is None.

    A mark is named by the key of its plate, a notch by the id of its purlin. Numbers that are
    several have a working each; nothing where the thing is not framed or has no such number.
    """
    if key is None and number is Number.WEIGHT:
        return _weight(results, letter)
    return workings_of(results.wall(letter), given_of(results, letter), key, number, plate)


def workings_of(
    result: WallResult, given: Given | None, key: str | None, number: Number, plate: str = ""
) -> tuple[Working, ...]:
    """The same for whoever asks for many numbers of one wall: `given` is what `given_of` gives."""
    if key is None:
        return _of_wall(result, given, number)
    if given is None:
        return ()
    member = given.frame.member(key)
    if member is not None and number is Number.NOTCH:
        return notch_workings(given, member, plate)
    if member is not None:
        marks = [m for m in result.marks if (m.member, m.plate) == (key, plate)]
        return _of_member(result, given, member, number, marks)
    return _of_stated(result, given, key, number)


def _of_member(
    result: WallResult, given: Given, member: Member, number: Number, marks: Sequence[Mark]
) -> tuple[Working, ...]:
    if number in _OF_MEMBERS:
        return (length_working(given, member, _OF_MEMBERS[number]),)
    if number is Number.CUTS:
        return (*cut_workings(member), *rip_workings(given, member))
    if number is Number.SAW:
        found = past_stops(member, result.inputs.habits.saw or USUAL_SAW)
        return tuple(w for facet, setting in found for w in setting_workings(facet, setting))
    if number is Number.MARK:
        return tuple(working for mark in marks for working in mark_workings(given, mark))
    if number is Number.BUILT_UP:
        return _built_up(member)
    return _rafters(given, member) if number is Number.RAFTERS else ()


def _of_stated(result: WallResult, given: Given, key: str, number: Number) -> tuple[Working, ...]:
    """Of an opening, a box or a fixture."""
    for placed in given.frame.openings:
        if placed.key == key and number is Number.ROUGH_OPENING:
            return rough_opening_workings(placed.opening)
        if placed.key == key and number is Number.OPENING_LEFT:
            return (_stated(placed.opening.left.mm),)
        if placed.key == key and number is Number.FITS:
            return fit_workings(given, placed)
    for box in result.boxes:
        if box.key == key and number in _OF_BOXES:
            return box_workings(given, box)[_OF_BOXES[number]]
    for fixture in result.wall.fixtures:
        of_it = f"{result.wall.letter}/{fixture.id}"
        if key == of_it and number is Number.FIXTURE_HEIGHT:
            return (_stated(fixture.height.mm),)
        if key == of_it and number is Number.BACKED_BY:
            pieces = (m for m in given.frame.members if m.key.startswith(f"{of_it}/"))
            return tuple(length_working(given, m, Which.LONG) for m in pieces)
    return ()


def _stated(mm: float) -> Working:
    return Working(message("working.stated"), (Term(message("working.as-stated"), mm),))


def _built_up(member: Member) -> tuple[Working, ...]:
    """The thickness of plies with spacers between them."""
    plies = message("working.plies", count=member.count, thick=Mm(member.thickness))
    between = message("working.spacers", count=member.count - 1, thick=Mm(member.spacer))
    terms = (
        Term(plies, member.count * member.thickness),
        Term(between, (member.count - 1) * member.spacer),
    )
    return (Working(message("working.built-up"), terms),)


def _rafters(given: Given, plate: Member) -> tuple[Working, ...]:
    """How far along a top plate the middle of each rafter over it is."""
    (left, low), (right, high), *_ = plate.near
    run = math.hypot(1.0, (high - low) / (right - left))
    made = []
    for crossing in given.frame.nailed.over_plate.crossings:
        x = (crossing.left + crossing.right) / 2
        if left <= x <= right:
            slope = degrees(math.atan(abs(high - low) / (right - left)))
            name = message("working.run", run=Mm(x - left), slope=slope)
            title = message("working.rafter-number", number=crossing.number)
            made.append(Working(title, (Term(name, (x - left) * run),)))
    return tuple(made)


def _of_wall(result: WallResult, given: Given | None, number: Number) -> tuple[Working, ...]:
    if number is Number.WALL_LENGTH:
        return (_wall_length(result),)
    if given is None:
        return ()
    studs = [m for m in given.frame.members if m.role is Role.STUD]
    if number is Number.STUDS:
        return (_count(result.wall.letter, studs),)
    chosen = {Number.LONGEST: max, Number.SHORTEST: min}.get(number)
    if chosen is None or not studs:
        return ()
    return (length_working(given, chosen(studs, key=lambda m: m.long_point), Which.LONG),)


def _wall_length(result: WallResult) -> Working:
    """Along the chalk line: straight across or along the room, else by Pythagoras."""
    (u0, v0), (u1, v1) = result.wall.chalk
    across, along = abs(u1 - u0), abs(v1 - v0)
    title = message("working.chalk-line")
    if min(across, along) > 1e-6:
        root = message("working.root", across=Mm(across), along=Mm(along))
        return Working(title, (Term(root, result.wall.run),))
    far, near = sorted((u0, u1) if across > along else (v0, v1), reverse=True)
    ends = (Term(message("working.far-end"), far), Term(message("working.near-end"), -near))
    return Working(title, ends)


def _count(letter: str, studs: Sequence[Member]) -> Working:
    """How many studs there are, by what put them there."""
    counts = Counter(_cause(letter, stud.key) for stud in studs)
    terms = tuple(
        Term(message(f"working.count-{cause}"), counts[cause], Unit.COUNT)
        for cause in ("ends", "layout", "doubled", "meetings", "added")
        if counts[cause]
    )
    return Working(message("working.count"), terms, Unit.COUNT)


def _weight(results: Results, letter: str) -> tuple[Working, ...]:
    """What the timber of a wall weighs, role by role; nothing for a wall with no frame."""
    frame = results.wall(letter).frame
    if frame is None:
        return ()
    each = density(results.project.species)
    roles: dict[Role, list[float]] = {}
    for member in frame.members:
        roles.setdefault(member.role, []).append(weight(member, each))
    terms = tuple(
        Term(message(f"role.{role.value.replace(' ', '-')}"), math.fsum(found), Unit.WEIGHT)
        for role, found in roles.items()
    )
    return (Working(message("working.weight"), terms, Unit.WEIGHT),)


def _cause(letter: str, key: str) -> str:
    if key.endswith("/double"):
        return "doubled"
    cause = key.removeprefix(f"{letter}/").split("/")[0]
    return {"end": "ends", "layout": "layout", "meets": "meetings"}.get(cause, "added")
