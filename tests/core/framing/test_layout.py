"""Where the layout puts studs, and the person's changes to it."""

from __future__ import annotations

import msgspec
import pytest

from core.framing.layout import Place, between_ends, end_lefts, layout_lefts, stud_places
from core.model import Side, Wall
from walls import UK, US, Shop

LEFT, RIGHT = Side.LEFT, Side.RIGHT


def lefts(shop: Shop, wall: Wall) -> list[float]:
    """The left edges of the layout in order of place, in the shop's unit."""
    places = layout_lefts(wall)
    assert [number for number, _ in places] == list(range(1, len(places) + 1))
    return [round(shop.of(left), 6) for _, left in places]


@pytest.mark.parametrize(
    ("spacing", "start", "expected"),
    [
        (12, LEFT, [11.25, 23.25, 35.25, 47.25, 59.25, 71.25, 83.25, 95.25]),
        (16, LEFT, [15.25, 31.25, 47.25, 63.25, 79.25, 95.25]),
        # The fifth centre of 19.2 is the edge of an 8-ft sheet, 96.
        (19.2, LEFT, [18.45, 37.65, 56.85, 76.05, 95.25]),
        (24, LEFT, [23.25, 47.25, 71.25, 95.25]),
        # From the right end: 100 - 16 n - 0.75.
        (16, RIGHT, [83.25, 67.25, 51.25, 35.25, 19.25, 3.25]),
        (19.2, RIGHT, [80.05, 60.85, 41.65, 22.45, 3.25]),
        (24, RIGHT, [75.25, 51.25, 27.25, 3.25]),
    ],
)
def test_inches(spacing: float, start: Side, expected: list[float]) -> None:
    assert lefts(US, US.wall((0, 9), (100, 9), spacing=spacing, start=start)) == expected


@pytest.mark.parametrize(
    ("spacing", "start", "expected"),
    [
        (400, LEFT, [381, 781, 1181, 1581, 1981]),
        (450, LEFT, [431, 881, 1331, 1781]),
        (600, LEFT, [581, 1181, 1781]),
        (400, RIGHT, [1681, 1281, 881, 481, 81]),
        (450, RIGHT, [1631, 1181, 731, 281]),
        (600, RIGHT, [1481, 881, 281]),
    ],
)
def test_millimetres(spacing: float, start: Side, expected: list[float]) -> None:
    assert lefts(UK, UK.wall((0, 9), (2100, 9), spacing=spacing, start=start)) == expected


@pytest.mark.parametrize(
    ("hung", "start", "first"), [(0.5, LEFT, 15.75), (0.625, LEFT, 15.875), (0.5, RIGHT, 82.75)]
)
def test_hung_board_moves_the_layout(hung: float, start: Side, first: float) -> None:
    assert lefts(US, US.wall((0, 9), (100, 9), start=start, hung=hung))[0] == first


@pytest.mark.parametrize(
    ("run", "last"),
    [
        (96.75, 6),  # the stud centred on 96 just reaches the end
        (96.7, 5),
        (16.75, 1),
        (15, 0),  # a wall shorter than the spacing
        (2, 0),
    ],
)
def test_places_end_with_the_wall(run: float, last: int) -> None:
    assert len(layout_lefts(US.wall((0, 9), (run, 9)))) == last


@pytest.mark.parametrize(
    ("run", "causes"),
    [
        (98.25, ["1", "2", "3", "4", "5", "6"]),  # the sixth ends at 96.75, the end stud begins
        (98, ["1", "2", "3", "4", "5"]),  # it would overlap the end stud by a quarter
        (96.75, ["1", "2", "3", "4", "5"]),
        (18.25, ["1"]),
        (18, []),
        (3, []),
    ],
)
def test_places_overlapping_an_end_stud_are_dropped(run: float, causes: list[str]) -> None:
    assert [p.cause for p in stud_places(US.wall((0, 9), (run, 9)))] == causes


def test_from_the_right_the_left_end_drops_the_last() -> None:
    # 98 - 96 - 0.75 = 1.25, within the left end stud.
    wall = US.wall((0, 9), (98, 9), start=RIGHT)
    assert [p.cause for p in stud_places(wall)] == ["1", "2", "3", "4", "5"]


def test_moves_gaps_and_additions() -> None:
    wall = US.wall(
        (0, 9),
        (60, 9),
        moved=((2, 30.0), (9, 40.0)),
        left_out=(1,),
        added=(("extra-1", 20.0), ("extra-2", 55.0)),
    )
    # Place 9 lies beyond the wall: there is nothing to move.
    places = [
        Place("B/layout/2", "2", US.length(30).mm, True),
        Place("B/layout/3", "3", US.length(47.25).mm, False),
        Place("B/extra-1", "extra-1", US.length(20).mm, True),
        Place("B/extra-2", "extra-2", US.length(55).mm, True),
    ]
    assert stud_places(wall) == tuple(places)


def test_a_dropped_place_comes_back_when_it_is_moved() -> None:
    wall = US.wall((0, 9), (98, 9), moved=((6, 90.0),))
    assert [p.key for p in stud_places(wall)][-1] == "B/layout/6"


def test_left_out_beats_moved() -> None:
    wall = US.wall((0, 9), (60, 9), moved=((2, 30.0),), left_out=(2,))
    assert [p.cause for p in stud_places(wall)] == ["1", "3"]


@pytest.mark.parametrize(
    ("left", "clear"), [(1.5, True), (1.4, False), (57, True), (57.1, False), (0, False)]
)
def test_between_ends(left: float, clear: bool) -> None:
    # In a wall of 60 the end studs take 0 to 1.5 and 58.5 to 60.
    assert between_ends(US.wall((0, 9), (60, 9)), US.length(left).mm) is clear


@pytest.mark.parametrize(
    ("run", "expected"),
    [
        (60, [(LEFT, 0), (RIGHT, 58.5)]),
        (3, [(LEFT, 0), (RIGHT, 1.5)]),
        (2.5, [(LEFT, 0)]),  # both would overlap: one is left
    ],
)
def test_end_studs(run: float, expected: list[tuple[Side, float]]) -> None:
    found = end_lefts(US.wall((0, 9), (run, 9)))
    assert [(side, round(US.of(left), 6)) for side, left in found] == expected


@pytest.mark.parametrize(
    ("origin", "start", "expected"),
    [
        # Centres in line with 10: 10, 26, 42, 58, 74, 90.
        (10, LEFT, [9.25, 25.25, 41.25, 57.25, 73.25, 89.25]),
        (74, LEFT, [9.25, 25.25, 41.25, 57.25, 73.25, 89.25]),
        (-6, LEFT, [9.25, 25.25, 41.25, 57.25, 73.25, 89.25]),
        # The same centres, counted from the right.
        (10, RIGHT, [89.25, 73.25, 57.25, 41.25, 25.25, 9.25]),
        # At 0.75 the first stud stands in the place of the end stud; at 0.5 it would reach out.
        (0.75, LEFT, [0, 16, 32, 48, 64, 80, 96]),
        (0.5, LEFT, [15.75, 31.75, 47.75, 63.75, 79.75, 95.75]),
    ],
)
def test_in_line_with_a_stated_point(origin: float, start: Side, expected: list[float]) -> None:
    wall = US.wall((0, 9), (100, 9), start=start, hung=0.5)
    layout = msgspec.structs.replace(wall.layout, origin=US.length(origin))
    assert lefts(US, msgspec.structs.replace(wall, layout=layout)) == expected
