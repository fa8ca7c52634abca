"""What openings with a raked head give rise to, in inches.

The roof over the wall rises 9 in 12 from 57 at its left end: 32 along the wall are 24 up.
"""

from __future__ import annotations

import msgspec
import pytest

from core.checks import Severity
from core.lengths import System, Tape
from core.model import HeadLie, Leaf, Opening, OpeningKind
from core.wording import Wording
from walls import US, in_12, result

WORDS = Wording("us", Tape.usual(System.INCH))
SHED = US.room(288, (12, in_12(9)))
GABLE = US.room(240, (12, in_12(9)), (12, in_12(9)))
LEAF = Leaf(*map(US.length, (30, 58, 2, 2)))


def raked(left: float = 48, **more: object) -> Opening:
    door = US.opening("door-1", left, 32, 60)
    return msgspec.structs.replace(door, head_lie=HeadLie.RAKED, **more)


def said(opening: Opening, gable: bool = False) -> list[tuple[Severity, str]]:
    wall = US.wall((60, 100), (180, 100), openings=(opening,))
    found = result(GABLE if gable else SHED, wall).cautions
    return [(c.severity, WORDS.say(c.message)) for c in found if c.key == "B/door-1"]


@pytest.mark.parametrize(
    ("opening", "heights"),
    [
        # The rough opening alone: 60 and 60 + 24.
        (raked(), ('60"', '84"')),
        # A leaf of 30 rises by 22 1/2 over its own width.
        (raked(leaf=LEAF), ('58"', '80 1/2"')),
    ],
)
def test_the_leaf_is_a_special_one(opening: Opening, heights: tuple[str, str]) -> None:
    ((severity, sentence),) = said(opening)
    assert severity is Severity.WARNING
    for part in ("wall B", "door 1", "special", "36.9°", *heights):
        assert part in sentence


def test_where_nothing_hangs_there_is_no_leaf() -> None:
    assert said(raked(kind=OpeningKind.CASED)) == []


def test_across_the_ridge_it_does_not_fit() -> None:
    """The ridge is over 60. Before it there is room from the end, 4 1/2, or as low as 61 7/8 under
    57 - 1 7/8 + 3x/4, which is 9; to 60 - 1 1/2 - 32. Beyond it is the mirror image."""
    ((severity, sentence),) = said(raked(), gable=True)
    assert severity is Severity.UNBUILDABLE
    assert 'from 9" to 26 1/2" or from 61 1/2" to 79"' in sentence
    assert "make its head level" in sentence


def test_where_it_fits_nowhere() -> None:
    ((severity, sentence),) = said(raked(width=US.length(60)), gable=True)
    assert severity is Severity.UNBUILDABLE
    assert "fits nowhere" in sentence
    assert "make its head level" in sentence
