"""Studs cut to what the tape said: the stated fit, measured studs, and what a test stud corrects.

Only members that reach the top plates are fitted; their cuts stay, their tops go up or down.
"""

import math
from itertools import pairwise

import msgspec

from core.framing import keys
from core.framing.bending import underside
from core.framing.cuts import foot_facet, stud_facet
from core.framing.member import SQUARE_WITHIN, XY, Facet, Member, Role
from core.kept import Kept
from core.model import MeasuredStud, Wall
from core.roof import Segment
from core.roof.measured import difference_at


class Tried(msgspec.Struct, frozen=True):
    """A measured stud: the long point worked out for it, and the one it is cut to, mm.

    `corrected` are the keys of the neighbours that a test stud corrects by the difference.
    """

    key: str
    worked: float
    length: float
    corrected: tuple[str, ...]

    @property
    def difference(self) -> float:
        """How much longer it is than worked out, mm."""
        return self.length - self.worked


def fitted(
    wall: Wall, members: tuple[Member, ...], kept: Kept
) -> tuple[tuple[Member, ...], tuple[Tried, ...]]:
    """The members with their lengths fitted, and the studs that were measured.

    All are short of the plates by the stated fit. Under a top plate that holds test studs, each
    further stud is corrected by what these differ by: between two of them in proportion, beyond
    them by the nearer one's. A measured stud has the measured length itself.
    """
    gap = wall.fit.mm if wall.fit is not None else 0.0
    if gap == 0.0 and not wall.measured_studs:
        return members, ()
    reaching = [kept.of(raised, m, -gap) for m in members if reaches_plates(m)]
    if not wall.measured_studs:
        cut = {m.key: m for m in reaching}
        return tuple(cut.get(m.key, m) for m in members), ()
    stated = {s.key: s for s in wall.measured_studs}
    plates = [m for m in members if m.role is Role.TOP_PLATE]
    groups: dict[str, list[Member]] = {}
    for member in reaching:
        groups.setdefault(_plate_over(member, plates), []).append(member)
    found = [_under_one_plate(group, stated) for group in groups.values()]
    found += [_stopped(m, stated[m.key]) for m in members if m.stops and m.key in stated]
    cut = {m.key: m for made, _ in found for m in made}
    return tuple(cut.get(m.key, m) for m in members), tuple(t for _, tried in found for t in tried)


def _stopped(member: Member, stud: MeasuredStud) -> tuple[list[Member], list[Tried]]:
    """A stud that ends under a beam, as measured; it tells nothing of those under the plates."""
    made = raised(member, stud.length.mm - member.long_point)
    return [made], [Tried(member.key, member.long_point, stud.length.mm, ())]


def _under_one_plate(
    group: list[Member], stated: dict[str, MeasuredStud]
) -> tuple[list[Member], list[Tried]]:
    """The members under one plate, each measured, corrected by the test studs, or as it is."""
    tests = tuple(
        (_middle(m), stated[m.key].length.mm - m.long_point)
        for m in sorted(group, key=_middle)
        if m.key in stated and stated[m.key].is_test
    )
    others = tuple(m.key for m in group if m.key not in stated)
    made, tried = [], []
    for member in group:
        rise = difference_at(tests, _middle(member)) if tests else 0.0
        if stud := stated.get(member.key):
            rise = stud.length.mm - member.long_point
            corrected = others if stud.is_test else ()
            tried.append(Tried(member.key, member.long_point, stud.length.mm, corrected))
        made.append(raised(member, rise))
    return made, tried


def reaches_plates(member: Member) -> bool:
    """Whether a member's top is cut to the top plates."""
    if member.stops:
        return False
    if member.role is Role.CRIPPLE:
        return keys.on_header(member.key)
    return member.role in (Role.STUD, Role.KING)


def raised(member: Member, rise: float) -> Member:
    """The member `rise` mm longer at its top; the member itself where nothing would be left."""
    if rise == 0.0 or member.short_point + rise <= 0.0:
        return member
    near_left, near_right, far_left, far_right = (edge + rise for edge in member.edges)
    return msgspec.structs.replace(
        member,
        near=_raised(member.near, rise),
        far=_raised(member.far, rise),
        edges=(near_left, near_right, far_left, far_right),
        long_point=member.long_point + rise,
        short_point=member.short_point + rise,
        overall=member.overall + rise,
    )


def crown(outline: tuple[XY, ...]) -> tuple[XY, ...]:
    """The corners of a standing member's top, from right to left."""
    return _ends(outline)[1]


def foot_of(outline: tuple[XY, ...]) -> tuple[XY, ...]:
    """The corners of a standing member's foot, from left to right."""
    return _ends(outline)[0]


def one_cut(member: Member) -> Member:
    """The member with a single cut at an end whose facets differ by next to nothing.

    A measured line turns so little at a stud that no saw is set anew for it: the cut is straight
    from edge to edge.
    """
    at_foot, at_top = _alike(member.first_cut), _alike(member.last_cut)
    if not at_foot and not at_top:
        return member
    near, far = (_chords(outline, at_foot, at_top) for outline in (member.near, member.far))
    foot, top = _ends(near)
    first = (foot_facet(_chord(foot, member.first_cut)),) if at_foot else member.first_cut
    last = (stud_facet(_chord(top, member.last_cut)),) if at_top else member.last_cut
    only_edges = len(first) == len(last) == 1
    return msgspec.structs.replace(
        member,
        near=near,
        far=far,
        long_point=max(member.edges) if only_edges else member.long_point,
        short_point=min(member.edges) if only_edges else member.short_point,
        first_cut=first,
        last_cut=last,
    )


def _alike(cut: tuple[Facet, ...]) -> bool:
    """Whether a cut has several facets that are next to alike."""
    if len(cut) == 1:
        return False
    bevels, mitres = [f.bevel for f in cut], [f.mitre for f in cut]
    return all(max(angles) - min(angles) <= SQUARE_WITHIN for angles in (bevels, mitres))


def _chord(corners: tuple[XY, ...], cut: tuple[Facet, ...]) -> Segment:
    """The straight line between two corners, as a plane that slopes across as the facets do."""
    (x0, y0), (x1, y1) = sorted(corners)
    across = sum(math.tan(facet.mitre) for facet in cut) / len(cut)
    return Segment(x0, x1, y0, (y1 - y0) / (x1 - x0), across)


def _ends(outline: tuple[XY, ...]) -> tuple[tuple[XY, ...], tuple[XY, ...]]:
    """The corners of a standing member's foot from left to right, and of its top back again."""
    right = max(x for x, _ in outline)
    sides = list(enumerate(pairwise(outline)))
    turn = next((n for n, (a, b) in sides if a[0] == b[0] == right), None)
    if turn is None:
        # A stud that leans: its side is the first that is steep.
        turn = next(n for n, (a, b) in sides if b[1] - a[1] > 2.0 * abs(b[0] - a[0]))
    return outline[: turn + 1], outline[turn + 1 :]


def _chords(outline: tuple[XY, ...], at_foot: bool, at_top: bool) -> tuple[XY, ...]:
    """The outline with a straight foot or top."""
    foot, top = _ends(outline)
    straight = (foot[0], foot[-1]) if at_foot else foot
    return (*straight, *((top[0], top[-1]) if at_top else top))


def _raised(outline: tuple[XY, ...], rise: float) -> tuple[XY, ...]:
    foot, top = _ends(outline)
    return (*foot, *((x, y + rise) for x, y in top))


def _middle(member: Member) -> float:
    return (member.left + member.right) / 2


def _plate_over(member: Member, plates: list[Member]) -> str:
    """What names the top plates over the middle of a member: their key without the layer."""
    for plate in plates:
        under = underside(plate)
        if under[0][0] <= _middle(member) <= under[-1][0]:
            return keys.plate_run(plate.key)
    return ""
