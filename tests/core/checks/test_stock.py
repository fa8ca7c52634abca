"""Pieces longer than the stock stated: which are told, with what, and what is joined instead."""

from __future__ import annotations

import msgspec
import pytest

from core.checks import Severity
from core.framing import keys
from core.job import WallResult, work_out
from core.lengths import System, Tape
from core.model import (
    Blocking,
    Habits,
    HeaderKind,
    Joint,
    Opening,
    PlateRules,
    Project,
    SiteRecord,
    Wall,
)
from core.site.nails import lengths
from core.wording import Wording
from walls import US, in_12

WORDS = Wording("us", Tape.usual(System.INCH))
FLAT = US.room(264, left=(96, in_12(0)))
SHED = US.room(264, left=(60, in_12(6)))
"""Rising 1 in 2 from 60 at the eave."""


def found(wall: Wall, stock: float | None, flat: bool = True) -> WallResult:
    rules = PlateRules(None if stock is None else US.length(stock))
    room = FLAT if flat else SHED
    project = Project("t", System.INCH, room, (wall,), Habits(plates=rules))
    return work_out(project, SiteRecord()).walls[0]


def told(wall: Wall, stock: float | None, flat: bool = True) -> list[tuple[str, str]]:
    cautions = [c for c in found(wall, stock, flat).cautions if c.message.id.startswith("stock.")]
    assert {c.severity for c in cautions} <= {Severity.WARNING}
    return [(c.key, WORDS.say(c.message)) for c in cautions]


def long_wall(*openings: Opening) -> Wall:
    return US.wall((0, 9), (168, 9), openings=openings)


@pytest.mark.parametrize("stock", [None, 93])
def test_with_no_limit_and_at_the_limit_nothing_is_told(stock: float | None) -> None:
    """Studs under 96 less two plates of 1 1/2: 93 long."""
    assert told(long_wall(), stock) == []


def test_studs_are_told_together_with_the_longest() -> None:
    """From u = 0 to 96 the roof rises from 60 to 108. A stud's top is over its right edge; the
    plate takes 1 1/2 x sqrt(5) / 2 = 1.677, the sole 1 1/2. The end stud: 108 - 3.177 = 104.823;
    that of place 5 ends at 80 3/4: 60 + 40.375 - 3.177 = 97.198. Place 4, at 64 3/4, is 89.2."""
    wall = US.wall((0, 9), (96, 9))
    ((key, sentence),) = told(wall, 96, flat=False)
    assert key == "B/end/right"
    for part in ("wall B", "2 studs", '96"', '94 1/2"', '104 13/16"', "longer stock"):
        assert part in sentence
    ((key, sentence),) = told(wall, 100, flat=False)
    assert key == "B/end/right"
    assert "the stud with its left edge at" in sentence


def test_a_header_is_never_spliced() -> None:
    """An opening 100 wide: its header is 103. Trimmers, kings and studs are short enough."""
    door = US.opening("door-1", 30, 100, 80, header=US.header(HeaderKind.ON_EDGE, (1.5, 7.25), 2))
    ((key, sentence),) = told(long_wall(door), 96)
    assert key == "B/door-1/header/1"
    for part in ("header of door 1", '103"', '96"', "never spliced"):
        assert part in sentence


WINDOW = US.opening("window-1", 30, 110, 80, sill=36)


def test_a_sill_is_joined_over_a_cripple() -> None:
    """110 between trimmers from 30 to 140, its cripples' middles at 32, 48, ... 128. Stock of 100
    reaches to 130: 128 is the last, yet beyond it no other cripple stands; the one before the last
    but one leaves two beyond: 96. So pieces of 66 and 44."""
    result = found(long_wall(WINDOW), 100)
    assert result.frame is not None
    sills = [m for m in result.frame.members if m.key.startswith("B/window-1/sill")]
    assert [(m.key, round(US.of(m.overall), 6)) for m in sills] == [
        ("B/window-1/sill/1", 66),
        ("B/window-1/sill/1/window-1/below/6", 44),
    ]
    assert len({result.label_of[m.key] for m in sills}) == 2
    assert [key for key, _ in told(long_wall(WINDOW), 100)] == ["B/window-1/header/1"]
    # Only its two ends are nailed to trimmers.
    nailed = lengths(Joint.SILL_TO_TRIMMER, result.wall, result.frame)
    assert len(list(nailed)) == 2


def test_a_sill_that_no_cripple_joins() -> None:
    """Stock of 15 reaches no further than to 45, and the next cripple is 16 on."""
    found_sills = [s for k, s in told(long_wall(WINDOW), 15) if k == "B/window-1/sill/1"]
    assert ['no cripple stands where pieces of 15"' in s for s in found_sills] == [True]


def test_blocks_longer_than_the_stock() -> None:
    """Studs left out from 48 to 96 leave a bay of 46 1/2 with a block in it."""
    wall = msgspec.structs.replace(
        long_wall(), left_out=(4, 5), blocking=Blocking((US.length(48),))
    )
    sentences = dict(told(wall, 40))
    key = keys.block("B", "row-1", "layout/3")
    for part in ("the block or backing", '48 3/4"', '46 1/2"', '40"'):
        assert part in sentences[key]
