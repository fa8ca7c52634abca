"""Nails for every joint of a wall, by a schedule that the person may change."""

import enum
import math
from collections.abc import Iterable

import msgspec

from core.framing import Frame, Member, Role, keys
from core.model import Joint, Nailing, OpeningKind, Wall
from core.wording import Message, message

SPACED = 406.4
"""16 in. on centre, mm."""

TIGHT = 1.0
"""Ends nearer than this (mm) touch."""


class Source(enum.Enum):
    """How well a row of the schedule is founded."""

    SEEN = "seen"
    MEMORY = "memory"
    PRACTICE = "practice"
    STATED = "stated"


class NailLine(msgspec.Struct, frozen=True):
    """Nails of one kind of joint in a wall: the nail, how many in each place, places, and total.

    `every` is the spacing along the joint, mm; None where each joint is one place.
    """

    joint: Joint
    nail: Message
    count: int
    every: float | None
    places: int
    source: Source

    @property
    def total(self) -> int:
        """All nails of this kind of joint."""
        return self.count * self.places


class _Rule(msgspec.Struct, frozen=True):
    nail: str
    count: int
    every: float | None
    source: Source


_USUAL = {
    # IRC Table R602.3(1), 2018/2021. Two 16d from plate into stud end was seen in a study guide
    # (virginiarbc.examzify.com); the rest is from memory, to be confirmed with the adopted code.
    Joint.SOLE_TO_FLOOR: _Rule("nail.16d", 1, SPACED, Source.MEMORY),
    Joint.STUD_TO_SOLE: _Rule("nail.16d", 2, None, Source.SEEN),
    Joint.STUD_TO_TOP: _Rule("nail.16d", 2, None, Source.SEEN),
    Joint.TOP_TO_TOP: _Rule("nail.16d", 1, SPACED, Source.MEMORY),
    Joint.TRIMMER_TO_KING: _Rule("nail.16d", 1, 609.6, Source.MEMORY),
    Joint.HEADER_TO_KING: _Rule("nail.16d", 3, None, Source.MEMORY),
    # 16 in. on centre along each edge: two in each place.
    Joint.HEADER_PLIES: _Rule("nail.16d", 2, SPACED, Source.MEMORY),
    # Common practice, no source.
    Joint.CRIPPLE: _Rule("nail.16d", 2, None, Source.PRACTICE),
    Joint.SILL_TO_TRIMMER: _Rule("nail.16d", 2, None, Source.PRACTICE),
}


def nails(wall: Wall, frame: Frame, stated: tuple[Nailing, ...]) -> tuple[NailLine, ...]:
    """The nails of a wall, one line for each kind of joint, in the order of the work.

    What holds the top plates to the roof is not among them: what is there differs too much.
    """
    changed = {nailing.joint: nailing for nailing in stated}
    return tuple(_line(joint, changed.get(joint), wall, frame) for joint in _USUAL)


def _line(joint: Joint, own: Nailing | None, wall: Wall, frame: Frame) -> NailLine:
    usual = _USUAL[joint]
    own = own or Nailing(joint)
    every = usual.every
    if every is not None and own.every is not None:
        every = own.every.mm
    changed = own != Nailing(joint)
    return NailLine(
        joint,
        message(usual.nail) if own.nail is None else message("nail.own", text=own.nail),
        usual.count if own.count is None else own.count,
        every,
        sum(places(length, every) for length in lengths(joint, wall, frame)),
        Source.STATED if changed else usual.source,
    )


def is_spaced(joint: Joint) -> bool:
    """Whether the nails of a joint stand in places spaced along it."""
    return _USUAL[joint].every is not None


def places(length: float, every: float | None) -> int:
    """How many places along a joint are nailed: one at each end, `every` at most between; mm.

    >>> places(2438.4, 406.4), places(300.0, 406.4), places(300.0, None)
    (7, 2, 1)
    """
    return 1 if every is None else math.ceil(length / every - 1e-6) + 1


def lengths(joint: Joint, wall: Wall, frame: Frame) -> Iterable[float]:
    """The joints of one kind in a wall, each as the length over which the pieces touch, mm."""
    upright = [m for m in frame.members if not m.lies and m.near]
    flat = [m for m in frame.members if m.lies and m.near]
    if joint is Joint.SOLE_TO_FLOOR:
        return _floor_stretches(wall, frame)
    if joint is Joint.STUD_TO_SOLE:
        return [m.thickness for m in upright if _on_a_sole(m, flat)]
    if joint is Joint.STUD_TO_TOP:
        return [m.thickness for m in upright if _under_plates(m, frame)]
    if joint is Joint.TOP_TO_TOP:
        return [m.long_point for m in flat if m.role is Role.TOP_PLATE and _lower_layer(m)]
    if joint is Joint.CRIPPLE:
        return [m.thickness for m in upright if m.role is Role.CRIPPLE]
    if joint is Joint.TRIMMER_TO_KING:
        return [m.long_point for m in upright if m.role is Role.TRIMMER]
    if joint is Joint.HEADER_PLIES:
        return [m.long_point for m in flat if m.role is Role.HEADER for _ in range(_seams(m))]
    return _both_ends(Role.SILL if joint is Joint.SILL_TO_TRIMMER else Role.HEADER, flat)


def _both_ends(role: Role, flat: list[Member]) -> list[float]:
    """Both ends of each, those of a sill in pieces once for all of them."""
    whole = (m for m in flat if m.role is role and keys.layer(m.key) == m.key)
    return [m.thickness for m in whole for _ in range(2)]


def _seams(header: Member) -> int:
    """Between plies that stand side by side; those that lie on each other are members each."""
    return header.count - 1


def _on_a_sole(member: Member, flat: list[Member]) -> bool:
    """Whether an upright member stands on a sole plate, which may follow a floor out of level."""
    soles = [m for m in flat if m.role is Role.SOLE_PLATE]
    first, last = member.near[:2] if member.lean else ((member.left, 0.0), (member.right, 0.0))
    return any(
        m.left - TIGHT <= first[0] and last[0] <= m.right + TIGHT and member.bottom <= m.top + TIGHT
        for m in soles
    )


def _under_plates(member: Member, frame: Frame) -> bool:
    """Whether an upright member reaches the underside of the top plates."""
    if member.role is Role.TRIMMER:
        return False
    middle = (member.left + member.right) / 2
    return member.top >= frame.near.height(middle) - member.thickness - TIGHT


def _lower_layer(plate: Member) -> bool:
    """Whether a top plate hangs under another."""
    return not keys.is_uppermost(plate.key)


def _floor_stretches(wall: Wall, frame: Frame) -> list[float]:
    """The stretches of sole plate that stay once it is cut out of the doorways, mm."""
    doors = sorted(
        (p.opening.left.mm, p.opening.left.mm + p.opening.width.mm)
        for p in frame.openings
        if p.fit.fits and p.opening.sill.mm == 0.0 and p.opening.kind is not OpeningKind.WINDOW
    )
    edges = [0.0, *(x for door in doors for x in door), wall.run]
    return [b - a for a, b in zip(edges[::2], edges[1::2], strict=True) if b - a > TIGHT]
