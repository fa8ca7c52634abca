"""The cautions about pieces longer than the stock stated that nobody splices."""

from core.checks.caution import Caution, Severity
from core.framing import Frame, Member, Role, spoken
from core.model import Habits, Wall
from core.wording import Message, Mm, message

_UPRIGHT = (Role.STUD, Role.KING, Role.TRIMMER, Role.CRIPPLE)
_BLOCKS = (Role.BLOCKING, Role.BACKING)


def long_pieces(wall: Wall, frame: Frame, habits: Habits) -> list[Caution]:
    """The studs, headers, sills and blocks longer than the stock, as they are cut from it.

    Plates are joined over studs and sills over cripples; rows of blocking are cut at studs anyway.
    Studs are told together with the longest of them, blocks too; every header and sill alone.
    """
    rules = habits.plates
    if rules is None or rules.longest is None:
        return []
    stock = rules.longest.mm
    long = [m for m in frame.members if m.overall > stock + 1e-6]
    together = [[m for m in long if m.role in roles] for roles in (_UPRIGHT, _BLOCKS)]
    sills = (m for m in long if m.role is Role.SILL and m.key in frame.too_long)
    alone = (*(m for m in long if m.role is Role.HEADER), *sills)
    return [
        *(_longest(wall, found, stock) for found in together if found),
        *(Caution(Severity.WARNING, m.key, _alone(wall, m, stock)) for m in alone),
    ]


def _longest(wall: Wall, found: list[Member], stock: float) -> Caution:
    """One caution for pieces of one kind, about the longest of them."""
    longest = max(found, key=lambda m: (round(m.overall, 6), -m.left))
    upright = longest.role in _UPRIGHT
    if len(found) == 1:
        message_id = "stock.stud" if upright else "stock.block"
    else:
        message_id = "stock.studs" if upright else "stock.blocks"
    text = message(
        message_id,
        letter=wall.letter,
        count=len(found),
        at=Mm(longest.left),
        length=Mm(longest.overall),
        stock=Mm(stock),
    )
    return Caution(Severity.WARNING, longest.key, text)


def _alone(wall: Wall, piece: Member, stock: float) -> Message:
    """What to do about a header or a sill."""
    return message(
        "stock.header" if piece.role is Role.HEADER else "stock.sill",
        letter=wall.letter,
        opening=spoken(piece.key.split("/")[1]),
        length=Mm(piece.overall),
        stock=Mm(stock),
    )
