"""Why a layout mark carries no member, and what carries a board edge there."""

import enum

import msgspec

from core.framing import keys
from core.framing.frame import Frame
from core.framing.layout import CLEAR, layout_lefts
from core.framing.member import Member, Role
from core.model import HeaderKind, Wall


class Why(enum.Enum):
    """What keeps a stud from a layout mark."""

    LEFT_OUT = "left out"
    END = "end"
    KING = "king"
    TRIMMER = "trimmer"
    OPENING = "opening"
    SHORT = "short"
    MERGED = "merged"
    TAKEN = "taken"
    LOW = "low"


class BareMark(msgspec.Struct, frozen=True):
    """A layout mark without a member: its place, the left edge it has, mm, and why.

    `by` is the key of the member or opening that stands there instead, if any. A board edge on the
    mark lies `off` mm beside that member; 0 where it lands on it.
    """

    key: str
    place: int
    left: float
    why: Why
    by: str | None
    off: float


def bare_marks(wall: Wall, frame: Frame) -> tuple[BareMark, ...]:
    """Every mark of the layout that no member stands at, in the order of their places."""
    carried = {_place_of(member.key) for member in frame.members}
    bare = [(n, left) for n, left in layout_lefts(wall) if str(n) not in carried]
    return tuple(_bare(wall, frame, number, left) for number, left in bare)


def _place_of(key: str) -> str | None:
    """The layout place that a stud, cripple or block stands for."""
    parts = key.split("/")
    if parts[1] == "layout":
        return parts[2]
    return parts[3] if len(parts) == 4 and parts[2] in ("above", "below") else None


def _bare(wall: Wall, frame: Frame, number: int, left: float) -> BareMark:
    key = keys.layout(wall.letter, number)
    why, by = _why(wall, frame, number, left)
    centre = left + wall.stud.thickness.mm / 2
    member = frame.member(by) if by is not None else None
    off = max(0.0, member.left - centre, centre - member.right) if member is not None else 0.0
    return BareMark(key, number, left, why, by, off)


def _why(wall: Wall, frame: Frame, number: int, left: float) -> tuple[Why, str | None]:
    key = keys.layout(wall.letter, number)
    if number in wall.left_out:
        return Why.LEFT_OUT, None
    if key in frame.too_low:
        return Why.LOW, None
    left = {m.place: m.left.mm for m in wall.moved}.get(number, left)
    return _in_opening(wall, frame, left) or _by_upright(wall, frame, left)


def _in_opening(wall: Wall, frame: Frame, left: float) -> tuple[Why, str] | None:
    """Over or under which opening a cripple is too short to stand, or has nothing to stand on."""
    thickness = wall.stud.thickness.mm
    for placed in (p for p in frame.openings if p.fit.fits):
        opening = placed.opening
        low, high = opening.left.mm, opening.left.mm + opening.width.mm
        headed = opening.header.kind is not HeaderKind.NONE
        reach = thickness if headed else 0.0
        if low - reach - CLEAR <= left and left + thickness <= high + reach + CLEAR:
            return (Why.SHORT if headed else Why.OPENING), placed.key
    return None


def _by_upright(wall: Wall, frame: Frame, left: float) -> tuple[Why, str | None]:
    """The upright that stands at a mark or, where none does, the nearest to it."""
    right = left + wall.stud.thickness.mm
    uprights = [m for m in frame.members if m.role in _WHY]
    over = [m for m in uprights if m.left < right - CLEAR and m.right > left + CLEAR]
    if over:
        found = min(over, key=lambda m: (list(_WHY).index(m.role), m.left))
        return (Why.END if _is_end(found) else _WHY[found.role]), found.key
    near = min(uprights, key=lambda m: max(left - m.right, m.left - right), default=None)
    return (Why.MERGED, near.key) if near is not None else (Why.LOW, None)


_WHY = {Role.KING: Why.KING, Role.STUD: Why.TAKEN, Role.TRIMMER: Why.TRIMMER}


def _is_end(member: Member) -> bool:
    return member.key.split("/")[1] == "end"
