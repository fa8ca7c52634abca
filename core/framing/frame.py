"""The frame of a wall: every member in its place, and what could not be framed as stated."""

from collections.abc import Iterator
from functools import cached_property

import msgspec

from core.framing import keys
from core.framing.cut_short import stopped
from core.framing.doubles import doubles
from core.framing.fit import fit
from core.framing.fitted import Tried, fitted, one_cut
from core.framing.ground import foot
from core.framing.heads import Over, rake_at
from core.framing.layout import CLEAR, Place, end_lefts, stud_places
from core.framing.leaning import Lean, against, leaning_stud, leans_of, reached
from core.framing.member import Member, Role
from core.framing.nailed import Nailed, Surroundings, nailed_in, slipped, studs_at_meetings
from core.framing.near import at_kings, end_spans
from core.framing.openings import Framed, cripples, doorways, framed
from core.framing.openings import around as timber_around
from core.framing.placed import PlacedOpening
from core.framing.plate_section import PlateSection, plate_sections
from core.framing.plates import NO_RULES, nailed_under, plates_underside, top_plates
from core.framing.sharing import without_shared
from core.framing.soles import sole_plates
from core.framing.sticks import standing
from core.kept import Kept
from core.model import EndStud, PlateRules, Wall
from core.roof import RoofLine

_ALONE = Surroundings()


class Frame(msgspec.Struct, frozen=True, dict=True):
    """The members of a wall from left to right, its openings, and the studs with no room.

    `near` and `far` are the undersides of the plates on both faces; `no_room` holds the keys of
    stated studs that another member stands in the way of, `too_low` of studs under too low a roof.
    `measured` are the studs that were measured and cut to that. `nailed` tells of blocking and
    backing, whose members stand among the others. `sections` show how the top plates lie where the
    roof slopes through the wall; `too_long` are the keys of plates that no stud joins from the
    stock stated. `no_room_under` are keys of studs left out because there is no room for them under
    a purlin that stops them, each with the purlin's id. `leans` are the surfaces out of plumb that
    it ends against.
    """

    near: RoofLine
    far: RoofLine
    members: tuple[Member, ...]
    openings: tuple[PlacedOpening, ...]
    no_room: tuple[str, ...]
    too_low: tuple[str, ...]
    measured: tuple[Tried, ...] = ()
    nailed: Nailed = Nailed()
    sections: tuple[PlateSection, ...] = ()
    too_long: tuple[str, ...] = ()
    no_room_under: tuple[tuple[str, str], ...] = ()
    leans: tuple[Lean, ...] = ()

    def member(self, key: str) -> Member | None:
        """The member with this key, or None."""
        return self._by_key.get(key)

    @cached_property
    def _by_key(self) -> dict[str, Member]:
        return {member.key: member for member in reversed(self.members)}

    @cached_property
    def soles(self) -> tuple[Member, ...]:
        """The sole plate, or its pieces between doorways."""
        return tuple(m for m in self.members if m.role is Role.SOLE_PLATE)


def frame_wall(
    wall: Wall,
    near: RoofLine,
    far: RoofLine,
    around: Surroundings = _ALONE,
    rules: PlateRules = NO_RULES,
    kept: Kept | None = None,
) -> Frame:
    """The frame of `wall` under its roof lines over face A and the far face.

    Openings that do not fit are left unframed and the studs run on as if they were not there, so
    that nothing is drawn that cannot be built. Plates are whole: purlins and stock divide them.
    Sticks are taken from what is `kept` of earlier frames where they are the same.
    """
    kept = kept or Kept()
    near, far = slipped(wall, near), slipped(wall, far)
    sections = plate_sections(wall, near)
    near, far = nailed_under(wall, near, far)
    leans = leans_of(wall, near)
    near, far = reached(near, leans), reached(far, leans)
    over = (plates_underside(wall, near, rules), plates_underside(wall, far, rules))
    openings = _placed(wall, over)
    extents = tuple(framed(wall, p) for p in openings if p.fit.fits)
    ends, low_ends = _ends(wall, over, leans, kept)
    whole = [m for f in extents for m in timber_around(wall, f, over, kept)]
    fixed = without_shared(ends, whole)
    studs, no_room, low = _studs(wall, over, extents, kept)
    spans = tuple((f.left, f.right) for f in extents)
    seconds, crowded = doubles(wall, (*ends, *fixed, *studs), spans, over)
    upright = (*ends, *fixed, *studs, *seconds)
    met = studs_at_meetings(wall, around, over, upright)
    standing_members = sorted((*upright, *met), key=lambda m: (m.left, m.bottom))
    soles = sole_plates(wall, doorways(extents))
    tops = against(wall, top_plates(wall, near, far, rules), leans)
    members = (*standing_members, *tops, *soles)
    straight = tuple(m if m.lies else kept.of(one_cut, m) for m in members)
    short, under = stopped(straight, around.purlins)
    cut, tried = fitted(wall, short, kept)
    nailed = nailed_in(wall, around, over, near, cut, kept)
    members = (*cut, *nailed.members)
    no_room, low = (*no_room, *crowded), (*low_ends, *low)
    return Frame(
        over[0],
        over[1],
        members,
        openings,
        no_room,
        low,
        tried,
        nailed,
        sections,
        no_room_under=under,
        leans=leans,
    )


def _placed(wall: Wall, over: Over) -> tuple[PlacedOpening, ...]:
    """The openings in their stated order; each has to stay clear of the ones before it."""
    placed: list[PlacedOpening] = []
    for opening in wall.openings:
        before = tuple(p.opening for p in placed if p.fit.fits)
        key = keys.opening(wall.letter, opening.id)
        found = fit(wall, opening, over, before)
        rake = rake_at(opening, wall.stud.thickness.mm, over)
        placed.append(PlacedOpening(key, opening, found, rake or 0.0))
    return tuple(placed)


def _ends(
    wall: Wall, over: Over, leans: tuple[Lean, ...], kept: Kept
) -> tuple[list[Member], list[str]]:
    on = foot(wall)
    made, low = [], []
    leaning = {lean.side: lean for lean in leans if lean.stud is EndStud.LEANING}
    for side, left in end_lefts(wall):
        key = keys.end(wall.letter, side)
        if side in leaning:
            member = leaning_stud(key, wall.stud, leaning[side], on, over)
        else:
            member = kept.of(standing, key, Role.STUD, wall.stud, left, on, over)
        if member is None:
            low.append(key)
        else:
            made.append(member)
    return made, low


def _studs(
    wall: Wall, over: Over, extents: tuple[Framed, ...], kept: Kept
) -> tuple[list[Member], tuple[str, ...], tuple[str, ...]]:
    """Studs and cripples at the wanted places; then the keys with no room, and those too low."""
    on = foot(wall)
    made: list[Member] = []
    no_room, low = [], []
    taken = list(end_spans(wall))
    for place in _by_the_rules(wall, extents):
        inside = _opening_at(place, wall, extents)
        if inside is None:
            stud = kept.of(standing, place.key, Role.STUD, wall.stud, place.left, on, over)
            pieces: tuple[Member, ...] = () if stud is None else (stud,)
        else:
            pieces = cripples(wall, inside, place, over, kept)
            if not pieces:
                no_room += [place.key] if place.stated else []
                continue
        if _clashes(place, wall, taken):
            no_room.append(place.key)
        else:
            taken.append((place.left, place.left + wall.stud.thickness.mm))
            made += pieces
            low += [] if pieces else [place.key]
    return made, tuple(no_room), tuple(low)


def _by_the_rules(wall: Wall, extents: tuple[Framed, ...]) -> Iterator[Place]:
    """The wanted places, those of the layout by the wall's rule for kings."""
    outer = tuple((f.left, f.right) for f in extents)
    for place in stud_places(wall):
        at = place.left if place.stated else at_kings(wall, place.left, outer)
        if at is not None:
            yield msgspec.structs.replace(place, left=at)


def _opening_at(place: Place, wall: Wall, extents: tuple[Framed, ...]) -> Framed | None:
    """The opening whose framing this place touches: the layout gives way to it."""
    right = place.left + wall.stud.thickness.mm
    return next(
        (f for f in extents if place.left < f.right - CLEAR and right > f.left + CLEAR), None
    )


def _clashes(place: Place, wall: Wall, taken: list[tuple[float, float]]) -> bool:
    right = place.left + wall.stud.thickness.mm
    outside = place.left < -CLEAR or right > wall.run + CLEAR
    return outside or any(place.left < b - CLEAR and right > a + CLEAR for a, b in taken)
