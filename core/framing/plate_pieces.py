"""Plates and sills longer than their stock: pieces that meet square over what carries them."""

import math
from collections.abc import Iterable

import msgspec

from core.framing import keys
from core.framing.bending import height_on, stretch_at, underside
from core.framing.dividing import divided, piece_of
from core.framing.ending import Line, along, direction, ended, reach, whole
from core.framing.fitted import reaches_plates
from core.framing.frame import Frame
from core.framing.marks import Mark
from core.framing.member import SQUARE, XY, Member, Role
from core.framing.notching import lines_lost
from core.model import PlateRules, Side

NEAR = 1.0
"""Joints of two layers nearer than this (mm) lie over the same stud."""

_PLATES = (Role.SOLE_PLATE, Role.TOP_PLATE, Role.SILL)
_BEAR = (Role.STUD, Role.KING, Role.CRIPPLE)


class Joint(msgspec.Struct, frozen=True):
    """A place to join a plate, square to it: over the middle of a stud, `along` the plate, mm.

    `at` is the place on its near underside, `way` the direction of the plate there.
    """

    along: float
    stud: str
    at: XY
    way: XY


def in_pieces(
    frame: Frame, marks: tuple[Mark, ...], rules: PlateRules
) -> tuple[Frame, tuple[Mark, ...]]:
    """The frame with each longer plate as its pieces from left to right, and marks named by these.

    Top plates are joined from the lowest layer up, so that each layer's joints keep their lap from
    those of the layer under it. A piece ends at the last stud in reach. Distances of marks run on
    over the pieces, which are laid out end to end. The frame tells which plates no stud joins.
    """
    if rules.longest is None:
        return frame, marks
    studs = [m for m in frame.members if m.role in _BEAR]
    found = _joints_of_all([m for m in frame.members if m.role in _PLATES], studs, rules)
    pieces = {m.key: _cut(m, found.get(m.key) or ()) for m in frame.members if m.key in found}
    too_long = tuple(sorted(key for key, joints in found.items() if joints is None))
    named = tuple(
        msgspec.structs.replace(mark, plate=piece_of(mark, pieces[mark.plate]).key)
        if mark.plate in pieces
        else mark
        for mark in marks
    )
    return msgspec.structs.replace(divided(frame, pieces), too_long=too_long), named


def _joints_of_all(
    plates: Iterable[Member], studs: list[Member], rules: PlateRules
) -> dict[str, tuple[Joint, ...] | None]:
    """The joints of every plate by its key; None of one that cannot be joined."""
    found: dict[str, tuple[Joint, ...] | None] = {}
    layers: dict[str, list[Joint]] = {}
    for plate in sorted(plates, key=lambda p: p.key, reverse=True):
        under = [j for layer in _layers_under(plate) for j in layers.get(layer, ())]
        bearing = [stud for stud in studs if _bears(stud, plate)]
        found[plate.key] = joints = _joints(plate, bearing, under, rules)
        layers.setdefault(keys.layer(plate.key), []).extend(joints or ())
    return found


def _bears(stud: Member, plate: Member) -> bool:
    """Whether a joint of a plate may lie over the middle of a stud.

    The stud has its whole section where it meets the plate. A sill is joined over its own cripples.
    """
    if plate.role is Role.SILL:
        return keys.is_under(stud.key, plate.key)
    if stud.role is Role.CRIPPLE:
        return False
    if plate.role is Role.SOLE_PLATE:
        return not keys.is_over(stud.key)
    return reaches_plates(stud) and not lines_lost(stud.notches)


def _layers_under(plate: Member) -> tuple[str, ...]:
    """The layer of top plate right under a plate's own, if there may be one."""
    if plate.role is not Role.TOP_PLATE:
        return ()
    run, _, number = keys.layer(plate.key).rpartition("/")
    return (f"{run}/{int(number) + 1}",)


def _joints(
    plate: Member, studs: list[Member], under: list[Joint], rules: PlateRules
) -> tuple[Joint, ...] | None:
    """The fewest joints that leave no piece longer than the stock; None where none will do.

    Each is at the last stud in reach, but the last piece bears on three studs where it can.
    """
    longest = rules.longest.mm if rules.longest is not None else math.inf
    lap = max(rules.lap.mm if rules.lap is not None else 0.0, NEAR)
    start, end = reach(plate)
    first, last = whole(plate)
    over = [_over(plate, stud) for stud in studs]
    over = [joint for joint in over if first + NEAR < joint.along < last - NEAR]
    places = [j for j in over if all(_apart(j, other) >= lap - 1e-6 for other in under)]
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


def _apart(joint: Joint, other: Joint) -> float:
    """How far apart the joints of two layers are along the plates, mm."""
    return abs(Line(joint.at, joint.way).beyond(other.at))


def _beyond(joint: Joint, over: list[Joint]) -> int:
    """How many studs stand further along the plate."""
    return sum(other.along > joint.along + NEAR for other in over)


def _cut(plate: Member, joints: tuple[Joint, ...]) -> list[Member]:
    """The pieces of a plate: the first keeps its key, the others add the stud they begin over."""
    pieces, rest = [], plate
    for joint in joints:
        line = Line(joint.at, joint.way)
        pieces.append(ended(rest, (line, line), Side.RIGHT, SQUARE[0]))
        rest = ended(rest, (line, line), Side.LEFT, SQUARE[0])
        rest = msgspec.structs.replace(rest, key=keys.piece(plate.key, joint.stud))
    return [*pieces, rest]


def _over(plate: Member, stud: Member) -> Joint:
    """The joint on the plate's near underside over the middle of a stud."""
    under, middle = underside(plate), (stud.left + stud.right) / 2
    at = (middle, height_on(under, middle))
    way = direction(*stretch_at(under, middle))
    return Joint(along(under, at, middle), stud.key, at, way)
