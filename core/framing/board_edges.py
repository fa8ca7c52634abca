"""Where edges of boards come to lie on the layout, and how much timber they have there."""

import msgspec

from core.framing import keys
from core.framing.frame import Frame
from core.framing.layout import CLEAR, layout_lefts
from core.framing.member import Role
from core.model import Side, Wall, usual_board

LEAST = 25.4 * 3 / 8
"""The least timber on either side of a board edge, mm: fasteners stay 3/8 in. off the edge of a
board (2018 IRC R702.3.6, said there of ceilings)."""


class BoardEdge(msgspec.Struct, frozen=True):
    """A board edge on the mark of a place: where it lies, and the timber on either side of it, mm.

    `member` is the key of the stud of this place, None where none stands.
    """

    place: int
    at: float
    left: float
    right: float
    member: str | None

    @property
    def borne(self) -> bool:
        """Whether both boards have timber enough to be nailed to."""
        return min(self.left, self.right) >= LEAST - CLEAR


def board_edges(wall: Wall, frame: Frame) -> tuple[BoardEdge, ...]:
    """The board edges on the layout's marks, but for those within a rough opening.

    Boards begin where layout starts, and every one ends on a mark that is whole boards away.
    """
    half = wall.stud.thickness.mm / 2
    spans = _timber(frame)
    edges = []
    for place, left in layout_lefts(wall):
        at = left + half
        if _ends_a_board(wall, at) and not _in_opening(frame, at):
            low, high = next((s for s in spans if s[0] <= at <= s[1]), (at, at))
            key = keys.layout(wall.letter, place)
            there = key if frame.member(key) is not None else None
            edges.append(BoardEdge(place, at, at - low, high - at, there))
    return tuple(edges)


def _ends_a_board(wall: Wall, at: float) -> bool:
    layout = wall.layout
    board = (wall.goes_by.board or usual_board(layout.spacing)).mm
    if layout.origin is not None:
        start = layout.origin.mm
    else:
        hung = layout.hung_board.mm
        start = hung if layout.start is Side.LEFT else wall.run - hung
    rest = abs(at - start) % board
    return abs(at - start) > CLEAR and min(rest, board - rest) <= 1e-3


def _in_opening(frame: Frame, at: float) -> bool:
    stated = (p.opening for p in frame.openings if p.fit.fits)
    return any(o.left.mm <= at <= o.left.mm + o.width.mm for o in stated)


def _timber(frame: Frame) -> list[tuple[float, float]]:
    """The stretches of upright timber from sole plate to top plate, touching ones as one."""
    roles = (Role.STUD, Role.KING, Role.TRIMMER)
    spans: list[tuple[float, float]] = []
    for left, right in sorted((m.left, m.right) for m in frame.members if m.role in roles):
        if spans and left <= spans[-1][1] + CLEAR:
            spans[-1] = (spans[-1][0], max(spans[-1][1], right))
        else:
            spans.append((left, right))
    return spans
