"""The shape of a member's cut end, as it is seen on face A and from the side."""

import math

import msgspec

from core.framing.bending import courses
from core.framing.fitted import crown
from core.framing.member import XY, Facet, Member
from core.model import Side


class CutEnd(msgspec.Struct, frozen=True):
    """One end of a member; `side` is RIGHT for the last cut (top or right end), LEFT for the first.

    Corners are (across, out): across from the left edge of a standing member or from the underside
    of a lying one, out along the member past the shortest corner; mm. `near` is the end on face A,
    `far` that on the far face, `deep` how far apart they are. `lengths` are those at the corners of
    `near`, then of `far`. `both` tells that the other end is cut alike.
    """

    side: Side
    wide: float
    deep: float
    near: tuple[XY, ...]
    far: tuple[XY, ...]
    lengths: tuple[tuple[float, ...], tuple[float, ...]]
    facets: tuple[Facet, ...]
    both: bool = False

    @property
    def face_up(self) -> str:
        """The face that lies up on the saw; "any" where it makes no difference."""
        return next((f.face_up for f in self.facets if f.face_up != "any"), "any")


def cut_ends(member: Member) -> tuple[CutEnd, ...]:
    """The ends of a member that are not square, the last one first; one where both are alike."""
    ends = [
        _lying(member, side) if member.lies else _standing(member, side)
        for side, cut in ((Side.RIGHT, member.last_cut), (Side.LEFT, member.first_cut))
        if not all(facet.is_square for facet in cut)
    ]
    if len(ends) == 2 and _angles(ends[0]) == _angles(ends[1]):
        return (msgspec.structs.replace(ends[0], both=True),)
    return tuple(ends)


def _angles(end: CutEnd) -> list[tuple[float, float]]:
    return sorted((round(abs(f.bevel), 6), round(abs(f.mitre), 6)) for f in end.facets)


def _standing(member: Member, side: Side) -> CutEnd:
    at_top = side is Side.RIGHT
    faces = []
    for outline in (member.near, member.far):
        top = crown(outline)[::-1]
        foot = outline[: len(outline) - len(top)]
        faces.append(top if at_top else foot)
    way = 1.0 if at_top else -1.0
    short = min(way * y for face in faces for _, y in face)
    near, far = (tuple((x - member.left, way * y - short) for x, y in face) for face in faces)
    # A corner within a broken end has a length of its own; at the edges they are the member's.
    base = member.edges[0] - near[0][1]
    lengths = tuple(base + out for _, out in near), tuple(base + out for _, out in far)
    return _end(member, side, member.right - member.left, near, far, lengths)


def _lying(member: Member, side: Side) -> CutEnd:
    at_right = side is Side.RIGHT
    way = 1.0 if at_right else -1.0
    under = courses(member.near)[0]
    (x0, y0), (x1, y1) = under[-2:] if at_right else under[:2]
    run = math.dist((x0, y0), (x1, y1))
    axis = ((x1 - x0) / run, (y1 - y0) / run)
    faces = []
    for outline in (member.near, member.far):
        pair = (course[-1 if at_right else 0] for course in courses(outline))
        faces.append([way * (x * axis[0] + y * axis[1]) for x, y in pair])
    short = min(out for face in faces for out in face)
    places = (0.0, member.thickness)
    near, far = (
        tuple((a, out - short) for a, out in zip(places, face, strict=True)) for face in faces
    )
    lengths = (member.edges[0], member.edges[1]), (member.edges[2], member.edges[3])
    return _end(member, side, member.thickness, near, far, lengths)


def _end(
    member: Member,
    side: Side,
    wide: float,
    near: tuple[XY, ...],
    far: tuple[XY, ...],
    lengths: tuple[tuple[float, ...], tuple[float, ...]],
) -> CutEnd:
    turned = abs(wide - member.thickness) > 1e-6
    deep = member.thickness if turned else member.width
    facets = member.last_cut if side is Side.RIGHT else member.first_cut
    return CutEnd(side, wide, deep, near, far, lengths, facets)
