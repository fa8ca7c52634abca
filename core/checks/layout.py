"""The cautions that a wall's layout gives rise to, and its bare marks in words."""

from core.checks.caution import Caution, Severity
from core.framing import BareMark, BoardEdge, Frame, bare_marks, board_edges, spoken
from core.framing.board_edges import LEAST
from core.model import Wall
from core.wording import Message, Mm, message


def edge_cautions(wall: Wall, frame: Frame) -> list[Caution]:
    """The board edges that a stud moved, left out or given way to leaves without bearing."""
    return [_edge(wall, edge) for edge in board_edges(wall, frame) if not edge.borne]


def bare_messages(
    wall: Wall, frame: Frame, label_of: dict[str, str]
) -> tuple[tuple[BareMark, Message], ...]:
    """Every layout mark that carries no member, with the reason in words."""
    return tuple((bare, _bare(wall, bare, label_of)) for bare in bare_marks(wall, frame))


def _bare(wall: Wall, bare: BareMark, label_of: dict[str, str]) -> Message:
    by = (bare.by or "").removeprefix(f"{wall.letter}/")
    what = label_of.get(bare.by or "", spoken(by))
    reason = message(f"layout.{bare.why.value.replace(' ', '-')}", what=what)
    at = Mm(bare.left + wall.stud.thickness.mm / 2)
    if bare.off > 0:
        off = Mm(bare.off)
        return message("layout.bare-off", place=bare.place, at=at, reason=reason, off=off)
    return message("layout.bare", place=bare.place, at=at, reason=reason)


def _edge(wall: Wall, edge: BoardEdge) -> Caution:
    """What a board edge has to be nailed to, and where a stud would carry both boards."""
    at, key = Mm(edge.at), edge.member or wall.letter
    if edge.left + edge.right <= 0 and edge.member is None:
        text = message("board.no-stud", letter=wall.letter, at=at, place=edge.place)
        return Caution(Severity.WARNING, key, text)
    need = min(LEAST, wall.stud.thickness.mm / 2)
    text = message(
        "board.off",
        letter=wall.letter,
        at=at,
        place=edge.place,
        left=Mm(edge.left),
        right=Mm(edge.right),
        low=Mm(edge.at - wall.stud.thickness.mm + need),
        high=Mm(edge.at - need),
    )
    return Caution(Severity.WARNING, key, text)
