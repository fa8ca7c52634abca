"""The terms of a standing member's ends: what is over its top, and what it stands on."""

import math
from itertools import pairwise

import msgspec

from core.framing import keys
from core.framing.fitted import crown, reaches_plates
from core.framing.given import Given
from core.framing.ground import foot as standing_on
from core.framing.heads import plumb_rise
from core.framing.member import XY, Member, Role
from core.framing.nailed import slipped
from core.framing.notching import before_notches
from core.framing.placed import PlacedOpening
from core.framing.plates import nailed_under
from core.framing.working import Term, degrees
from core.roof import RoofLine, Segment, floor_line
from core.wording import Message, Mm, message

NEXT_TO_NOTHING = 1e-6
"""A difference of less than this (mm) is none."""


class Place(msgspec.Struct, frozen=True):
    """A place on a member's end: x along the wall, on face A (0) or the far face (1)."""

    x: float
    face: int


def top_and_foot(stick: Member, face: int) -> tuple[tuple[XY, ...], tuple[XY, ...]]:
    """The corners of a standing member's top and of its foot on one face, from left to right."""
    outline = before_notches(stick)[face]
    top = crown(outline)
    return top[::-1], outline[: len(outline) - len(top)]


def height_at(corners: tuple[XY, ...], x: float) -> float:
    """The height at x of a line through these corners, mm."""
    for (x0, y0), (x1, y1) in pairwise(corners):
        if x0 < x < x1:
            return y0 + (y1 - y0) * ((x - x0) / (x1 - x0))
    return next(y for place, y in corners if place == x)


def top_terms(given: Given, stick: Member, place: Place) -> tuple[Term, ...]:
    """The height of a standing member's top above the subfloor, from what is over it."""
    y = height_at(top_and_foot(stick, place.face)[0], place.x)
    if stick.stops:
        terms = _under_purlin(given, stick, y)
    elif reaches_plates(stick) or (stick.role is Role.BLOCK and keys.on_header(stick.key)):
        terms = _under_plates(given, stick, place, y)
    else:
        terms = _under_opening(given, stick, place.x)
    return _that_add_up(terms, y, message("working.top"))


def foot_terms(given: Given, stick: Member, place: Place) -> tuple[Term, ...]:
    """The height of what a standing member stands on, taken off, from the floor up."""
    y = height_at(top_and_foot(stick, place.face)[1], place.x)
    opening = _opening_of(given, stick)
    if keys.is_over(stick.key):
        terms = _over_purlin(given, stick)
    elif given.foot is not None:
        terms = _on_rafters(given, stick, place)
    elif opening is not None and keys.on_header(stick.key):
        head, rise = _head(opening, place.x)
        header = Term(message("working.header"), -plumb_rise(opening.opening.header, opening.rake))
        terms = [
            msgspec.structs.replace(head, value=-head.value),
            msgspec.structs.replace(rise, value=-rise.value),
            header,
        ]
    else:
        terms = _on_sole(given, place, y)
    return _that_add_up(terms, -y, message("working.foot"))


def _under_purlin(given: Given, stick: Member, y: float) -> list[Term]:
    """The purlin that stops a stud, and how far under it the stud ends."""
    beside = [p for p in given.purlins if p.left < stick.right and p.right > stick.left]
    near = min(beside, key=lambda p: abs(p.bottom - p.gap - y), default=None)
    if near is None:
        return []
    terms = [
        Term(message("working.purlin-underside", purlin=keys.spoken(near.id)), near.bottom),
        Term(message("working.gap-kept"), -near.gap),
    ]
    rest = y - math.fsum(term.value for term in terms)
    if any(tried.key == stick.key for tried in given.frame.measured):
        return [*terms, Term(message("working.measured-stud"), rest)]
    return terms


def _over_purlin(given: Given, stick: Member) -> list[Term]:
    """The purlin that a piece stands over, taken off, and the gap between them."""
    found = next((p for p in given.purlins if stick.key.endswith(f"/{p.id}")), None)
    if found is None:
        return []
    return [
        Term(message("working.purlin-top", purlin=keys.spoken(found.id)), -found.top),
        Term(message("working.gap-kept"), -found.gap),
    ]


def on_the_slope(thickness: float, secant: float, name: str, count: int = 1) -> Message:
    """The name of timber that is measured plumb where it lies on a slope."""
    sloping = secant > 1.0 + 1e-9
    slope = degrees(math.acos(1.0 / secant)) if sloping else ""
    message_id = f"working.{name}{'-sloping' if sloping else ''}"
    if not sloping:
        return message(message_id, count=count)
    return message(message_id, count=count, thick=Mm(count * thickness), slope=slope)


def _that_add_up(terms: list[Term], whole: float, name: Message) -> tuple[Term, ...]:
    """The terms without those that are nothing; one for the whole where they do not add up."""
    if abs(math.fsum(term.value for term in terms) - whole) > NEXT_TO_NOTHING:
        return (Term(name, whole),)
    return tuple(term for term in terms if abs(term.value) > NEXT_TO_NOTHING)


def _opening_of(given: Given, stick: Member) -> PlacedOpening | None:
    """The opening whose framing a member is part of."""
    cause = stick.key.split("/")[1]
    return next((p for p in given.frame.openings if p.opening.id == cause), None)


def _head(placed: PlacedOpening, x: float) -> tuple[Term, Term]:
    """The height of an opening's head where it is stated, and what a raked one rises up to x."""
    low = placed.left if placed.rake > 0 else placed.right
    head = Term(message("working.head"), placed.opening.head.mm)
    slope = degrees(math.atan(abs(placed.rake)))
    return head, Term(message("working.rake", slope=slope), placed.rake * (x - low))


def _under_opening(given: Given, stick: Member, x: float) -> list[Term]:
    """What a trimmer or a cripple under a sill reaches."""
    placed = _opening_of(given, stick)
    if placed is None:
        return []
    if stick.role is Role.TRIMMER:
        return [*_head(placed, x)]
    return [
        Term(message("working.sill"), placed.opening.sill.mm),
        Term(message("working.sill-timber"), -given.wall.stud.thickness.mm),
    ]


def _under_plates(given: Given, stick: Member, place: Place, y: float) -> list[Term]:
    """The roof over the place, less gap and plates, and how the length was fitted."""
    wall = given.wall
    face, aside = _face_over(given, stick, place, y)
    at = Place(place.x, face)
    under = _over(_undersides(given)[face], stick, place.x)
    hung, index = _hung(given, face, under)
    if hung is None:
        return []
    plates = wall.top_plate.count * wall.top_plate.timber.thickness.mm * under.secant
    terms = _down_to_plates(given, at, index, hung)
    count = wall.top_plate.count
    name = on_the_slope(
        wall.top_plate.timber.thickness.mm, under.secant, "plates" if count > 1 else "plate", count
    )
    terms += [Term(name, -plates), Term(message("working.through-stud"), aside)]
    return terms + _fitted(given, stick, y - math.fsum(term.value for term in terms))


def _undersides(given: Given) -> tuple[RoofLine, RoofLine]:
    return given.frame.near, given.frame.far


def _face_over(given: Given, stick: Member, place: Place, y: float) -> tuple[int, float]:
    """The face of the wall whose line a place is cut to, and how much the plane rises on to it.

    A stud turned flat is as thick through the wall as others are along it: one of its faces lies
    within the wall.
    """
    line = _over(_undersides(given)[place.face], stick, place.x)
    gap = given.wall.fit.mm if given.wall.fit else 0.0
    if not stick.key.endswith("/flat") or abs(line.at(place.x) - gap - y) <= NEXT_TO_NOTHING:
        return place.face, 0.0
    other = _over(_undersides(given)[1 - place.face], stick, place.x)
    return 1 - place.face, other.across * stick.thickness * (1.0 if place.face == 1 else -1.0)


def _over(line: RoofLine, stick: Member, x: float) -> Segment:
    """The segment that a stick is cut to at x."""
    spans = line.between(stick.left, stick.right)
    return min(spans, key=lambda s: max(s.left - x, x - s.right, 0.0))


def _hung(given: Given, face: int, under: Segment) -> tuple[Segment | None, int]:
    """The segment under which the plates hang whose underside this is, and its number."""
    roof = given.roof
    if given.foot is None:
        roof = (slipped(given.wall, roof[0]), slipped(given.wall, roof[1]))
    plate = given.wall.top_plate
    for index, segment in enumerate(nailed_under(given.wall, *roof)[face].segments):
        alike = max(abs(segment.along - under.along), abs(segment.across - under.across)) < 1e-9
        down = segment.height - plate.count * plate.timber.thickness.mm * segment.secant
        if alike and abs(down - under.height) <= NEXT_TO_NOTHING:
            return segment, index
    return None, 0


def _down_to_plates(given: Given, place: Place, index: int, hung: Segment) -> list[Term]:
    """From the roof down to the top of the plates: a gap left, or a plate that lies level."""
    wall, x = given.wall, place.x
    # A wall that stands on rafters goes up with them, and takes no slip.
    gap = wall.slip_gap.mm if wall.slip_gap and given.foot is None else 0.0
    roof = given.roof[place.face]
    if wall.top_plate.is_level:
        high = roof.height(x)
        index = next((n for n, s in enumerate(roof.segments) if x <= s.right), -1)
        level = Term(message("working.level-plate"), hung.at(x) + gap - high)
        return [*_roof(given, place, index, high), Term(message("working.gap"), -gap), level]
    return [
        *_roof(given, place, index, roof.segments[index].at(x)),
        Term(message("working.gap"), -gap),
    ]


def _roof(given: Given, place: Place, index: int, high: float) -> list[Term]:
    """The roof above a place: as stated, and what the tape said otherwise."""
    name, x = given.above[place.face][index], place.x
    roof = given.roof[place.face]
    here = [s.at(x) for s in roof.segments if s.left - 1e-6 <= x <= s.right + 1e-6]
    if here and all(abs(high - y) > NEXT_TO_NOTHING for y in here):
        return [Term(message("working.carried-on", what=name), high)]
    if given.stated is None or not given.wall.roof_points:
        return [Term(message("working.above", what=name), high)]
    found = given.roof[0].height(x) - given.stated.height(x)
    stated = message("working.above-stated", what=name)
    return [Term(stated, high - found), Term(message("working.measured-roof"), found)]


def _fitted(given: Given, stick: Member, rise: float) -> list[Term]:
    """How much a stud was made longer than from floor to plates: its fit, or what was measured."""
    gap = given.wall.fit.mm if given.wall.fit else 0.0
    terms = []
    if abs(rise) > NEXT_TO_NOTHING:
        terms.append(Term(message("working.fit" if gap > 0 else "working.fit-tight"), -gap))
        rise += gap
    if abs(rise) <= NEXT_TO_NOTHING:
        return terms
    for tried in given.frame.measured:
        if tried.key == stick.key:
            return [*terms, Term(message("working.measured-stud"), rise)]
    if any(stick.key in tried.corrected for tried in given.frame.measured):
        return [*terms, Term(message("working.test-stud"), rise)]
    return terms


def _on_rafters(given: Given, stick: Member, place: Place) -> list[Term]:
    """The rafter that a cheek's stud stands on, or beside."""
    if given.foot is None:
        return []
    under = _over(given.foot[place.face], stick, place.x)
    deep = given.depth * under.secant
    rafter = on_the_slope(given.depth, under.secant, "rafter")
    return [
        Term(message("working.rafter-underside"), deep - under.at(place.x)),
        Term(rafter, -deep),
    ]


def _on_sole(given: Given, place: Place, y: float) -> list[Term]:
    """The sole plate, and a floor that is not where it is stated to be."""
    thick = given.wall.sole_plate.thickness.mm
    if isinstance(standing_on(given.wall), float):
        return [Term(message("working.sole"), -thick)]
    floor = floor_line(given.wall)
    here = floor.height(place.x)
    under = next((s for s in floor.segments if place.x <= s.right), floor.segments[-1])
    plain = abs(y - here - thick * under.secant) <= NEXT_TO_NOTHING
    sole = on_the_slope(thick, under.secant, "sole") if plain else message("working.sole-bend")
    return [Term(message("working.floor"), -here), Term(sole, here - y)]
