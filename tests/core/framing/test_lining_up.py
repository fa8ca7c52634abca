"""Studs opposite those of another wall."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import origin_in_line
from core.framing.layout import layout_lefts
from core.model import Side, Wall
from walls import US, Pair


def wall(start: Pair, end: Pair, side: Side = Side.LEFT, hung: float = 0.0) -> Wall:
    return US.wall(start, end, start=side, hung=hung)


MINE = wall((10, 100), (130, 100))


@pytest.mark.parametrize(
    ("other", "place"),
    [
        # Its first mark 16 from u = 20: at 36, 26 along mine.
        (wall((20, 200), (140, 200)), 26),
        # Seen from the other side: 140 - 16 = 124, 114 along mine.
        (wall((140, 200), (20, 200)), 114),
        # Half an inch of board moves it.
        (wall((20, 200), (140, 200), hung=0.5), 26.5),
        # From its right end, at 140: 124.
        (wall((20, 200), (140, 200), Side.RIGHT), 114),
        # Before my left end: 2 + 16 - 10 = 8 is within, 16 - 40 = -24 is not: -24 + 16 = -8.
        (wall((2, 200), (100, 200)), 8),
        (wall((-30, 200), (100, 200)), -8),
    ],
)
def test_place(other: Wall, place: float) -> None:
    found = origin_in_line(MINE, other)
    assert found is not None
    assert US.of(found) == pytest.approx(place)


@pytest.mark.parametrize(
    "other", [wall((20, 200), (140, 210)), wall((20, 0), (20, 90)), wall((20, 200), (35, 200))]
)
def test_none_across(other: Wall) -> None:
    assert origin_in_line(MINE, other) is None


def test_studs_then_stand_opposite() -> None:
    other = wall((23, 200), (143, 200), hung=0.625)
    origin = origin_in_line(MINE, other)
    assert origin is not None
    layout = msgspec.structs.replace(MINE.layout, origin=US.length(US.of(origin)))
    mine = {
        round(10 + US.of(x), 6)
        for _, x in layout_lefts(msgspec.structs.replace(MINE, layout=layout))
    }
    theirs = {round(23 + US.of(x), 6) for _, x in layout_lefts(other)}
    assert {x for x in theirs if 10 <= x <= 128.5} <= mine
