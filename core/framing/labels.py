"""Labels: wall letter and number, short enough for a pencil, lasting once printed."""

from collections.abc import Mapping
from itertools import count

from core.framing.member import Member


def labels(letter: str, members: tuple[Member, ...], printed: Mapping[str, str]) -> dict[str, str]:
    """The label of every member by key, numbered in the order given.

    A key that was `printed` keeps its label; a label that was printed is never given to another
    piece, even when the piece it named is gone.

    >>> labels("B", (), {"B/end/left": "B1"})
    {}
    """
    taken = set(printed.values())
    free = (f"{letter}{n}" for n in count(1) if f"{letter}{n}" not in taken)
    return {m.key: printed[m.key] if m.key in printed else next(free) for m in members}
