"""Plates longer than their stock: pieces that meet square over a stud, joints of layers apart."""

import math
from collections.abc import Iterable
from itertools import pairwise

import msgspec

from core.framing import keys
from core.framing.member import SQUARE, XY, Member, Role
from core.model import PlateRules

NEAR = 1.0
"""Joints of two layers nearer than this (mm) lie over the same stud."""


class Joint(msgspec.Struct, frozen=True):
    """A place to join a plate: over the middle of a stud, `along` the plate's axis, mm."""

    along: float
    stud: str


class Made(msgspec.Struct, frozen=True):
    """The plates in the pieces they are made of; `too_long` are keys that could not be joined."""

    members: tuple[Member, ...]
    too_long: tuple[str, ...]


def in_pieces(plates: tuple[Member, ...], uprights: Iterable[Member], rules: PlateRules) -> Made:
    """The plates in the given order, each longer one as its pieces from left to right.

    Top plates are joined from the lowest layer up, so that each layer's joints keep their lap from
    those of the layer under it. A piece ends at the last stud in reach.
    """
    if rules.longest is None:
        return Made(plates, ())
    studs = [m for m in uprights if m.role in (Role.STUD, Role.KING)]
    joints: dict[str, tuple[Joint, ...]] = {}
    too_long: list[str] = []
    under: tuple[Joint, ...] = ()
    run = ""
    for plate in sorted(plates, key=lambda p: p.key, reverse=True):
        under = under if keys.plate_run(plate.key) == run else ()
        run = keys.plate_run(plate.key)
        found = _joints(plate, studs, under, rules)
        if found is None:
            too_long.append(plate.key)
        joints[plate.key] = under = found or ()
    made = (piece for plate in plates for piece in _cut(plate, joints[plate.key]))
    return Made(tuple(made), tuple(sorted(too_long)))


def _joints(
    plate: Member, studs: list[Member], under: tuple[Joint, ...], rules: PlateRules
) -> tuple[Joint, ...] | None:
    """The fewest joints that leave no piece longer than the stock; None where none will do.

    Each is at the last stud in reach, but the last piece bears on three studs where it can.
    """
    longest = rules.longest.mm if rules.longest is not None else math.inf
    lap = max(rules.lap.mm if rules.lap is not None else 0.0, NEAR)
    start, end = _reach(plate)
    over = [_over(plate, stud) for stud in studs]
    first, last = _whole(plate)
    over = [joint for joint in over if first + NEAR < joint.along < last - NEAR]
    places = [
        joint
        for joint in over
        if all(abs(joint.along - other.along) >= lap - 1e-6 for other in under)
    ]
    chosen: list[Joint] = []
    while end - start > longest + 1e-6:
        near = [j for j in places if start < j.along <= start + longest + 1e-6]
        if not near:
            return None
        if end - max(j.along for j in near) <= longest:
            enough = min(2, max(_beyond(j, over) for j in near))
            near = [j for j in near if _beyond(j, over) >= enough]
        chosen.append(max(near, key=lambda j: j.along))
        start = chosen[-1].along
    return tuple(chosen)


def _beyond(joint: Joint, over: list[Joint]) -> int:
    """How many studs stand further along the plate."""
    return sum(other.along > joint.along + NEAR for other in over)


def _cut(plate: Member, joints: tuple[Joint, ...]) -> list[Member]:
    """The pieces of a plate: the first keeps its key, the others add the stud they begin over."""
    if not joints:
        return [plate]
    ends = [None, *joints, None]
    pieces = []
    for first, last in pairwise(ends):
        near, far = (_between(o, plate, first, last) for o in (plate.near, plate.far))
        lengths = [math.dist(a, b) for o in (near, far) for a, b in ((o[0], o[1]), (o[3], o[2]))]
        left, right = _reach(msgspec.structs.replace(plate, near=near, far=far))
        pieces.append(
            msgspec.structs.replace(
                plate,
                key=plate.key if first is None else keys.piece(plate.key, first.stud),
                near=near,
                far=far,
                edges=(lengths[0], lengths[1], lengths[2], lengths[3]),
                long_point=max(lengths),
                short_point=min(lengths),
                overall=right - left,
                first_cut=plate.first_cut if first is None else SQUARE,
                last_cut=plate.last_cut if last is None else SQUARE,
            )
        )
    return pieces


def _between(
    outline: tuple[XY, ...], plate: Member, first: Joint | None, last: Joint | None
) -> tuple[XY, ...]:
    """The outline of a plate on one face between two cuts square to its axis."""
    under_left, under_right, over_right, over_left = outline
    axis = _axis(plate)
    if first is not None:
        under_left, over_left = (
            _at(a, b, axis, first.along)
            for a, b in ((under_left, under_right), (over_left, over_right))
        )
    if last is not None:
        under_right, over_right = (
            _at(a, b, axis, last.along)
            for a, b in ((under_left, under_right), (over_left, over_right))
        )
    return under_left, under_right, over_right, over_left


def _axis(plate: Member) -> XY:
    """The direction of a plate in the wall, of length one."""
    (x0, y0), (x1, y1), *_ = plate.near
    run = math.dist((x0, y0), (x1, y1))
    return (x1 - x0) / run, (y1 - y0) / run


def _along(point: XY, axis: XY) -> float:
    return point[0] * axis[0] + point[1] * axis[1]


def _at(start: XY, end: XY, axis: XY, along: float) -> XY:
    """The point on the edge from start to end that lies so far along the axis."""
    share = (along - _along(start, axis)) / (_along(end, axis) - _along(start, axis))
    return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])


def _reach(plate: Member) -> tuple[float, float]:
    """The first and the last tip of a plate along its axis, mm."""
    axis = _axis(plate)
    places = [_along(point, axis) for point in (*plate.near, *plate.far)]
    return min(places), max(places)


def _whole(plate: Member) -> tuple[float, float]:
    """The stretch along its axis in which a plate has its whole section, between both cuts, mm."""
    axis = _axis(plate)
    corners = [[_along(point, axis) for point in o] for o in (plate.near, plate.far)]
    return max(c[n] for c in corners for n in (0, 3)), min(c[n] for c in corners for n in (1, 2))


def _over(plate: Member, stud: Member) -> Joint:
    """The joint on the plate's near underside over the middle of a stud."""
    (x0, y0), (x1, y1), *_ = plate.near
    middle = (stud.left + stud.right) / 2
    y = y0 + (y1 - y0) / (x1 - x0) * (middle - x0)
    return Joint(_along((middle, y), _axis(plate)), stud.key)
