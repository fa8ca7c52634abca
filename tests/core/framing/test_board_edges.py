"""Where board edges land, and what timber they have on either side."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import board_edges
from core.model import Layout, Room, Side, Wall, WallRules
from walls import UK, US, Pair, frame_of, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
METRIC = UK.room(6600, left=(2400, in_12(0)))


def edges(room: Room, wall: Wall) -> list[tuple[int, float, Pair]]:
    of = US.of if room is FLAT else UK.of
    found = board_edges(wall, frame_of(room, wall))
    return [
        (e.place, round(of(e.at), 4), (round(of(e.left), 4), round(of(e.right), 4))) for e in found
    ]


def through(wall: Wall, origin: float) -> Wall:
    layout = msgspec.structs.replace(wall.layout, origin=US.length(origin))
    return msgspec.structs.replace(wall, layout=layout)


@pytest.mark.parametrize(
    ("wall", "expected"),
    [
        # 48 in. boards on 16 in. centres end on marks 3 and 6, half on each side of the centre.
        pytest.param(
            US.wall((0, 9), (120, 9)), [(3, 48, (0.75, 0.75)), (6, 96, (0.75, 0.75))], id="16"
        ),
        pytest.param(
            US.wall((0, 9), (120, 9), spacing=19.2), [(5, 96, (0.75, 0.75))], id="19.2: at 96 alone"
        ),
        # From the right end boards are counted from there: 120 - 48 and 120 - 96.
        pytest.param(
            US.wall((0, 9), (120, 9), start=Side.RIGHT),
            [(3, 72, (0.75, 0.75)), (6, 24, (0.75, 0.75))],
            id="from the right",
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), hung=0.5), [(3, 48.5, (0.75, 0.75))], id="past hung board"
        ),
        # Moved to 47.75: the centre is a quarter from its left edge.
        pytest.param(
            US.wall((0, 9), (60, 9), moved=((3, 47.75),)), [(3, 48, (0.25, 1.25))], id="moved"
        ),
        pytest.param(US.wall((0, 9), (60, 9), moved=((3, 50.0),)), [(3, 48, (0, 0))], id="off it"),
        pytest.param(US.wall((0, 9), (60, 9), left_out=(3,)), [(3, 48, (0, 0))], id="left out"),
        pytest.param(
            US.wall((0, 9), (60, 9), left_out=(3,), added=(("x", 47.0), ("y", 48.5))),
            [(3, 48, (1, 2))],
            id="two studs side by side",
        ),
        pytest.param(
            US.wall((0, 9), (90, 9), openings=(US.opening("d", 40, 20, 80),)), [], id="in a doorway"
        ),
        pytest.param(through(US.wall((0, 9), (60, 9)), 8.0), [(4, 56, (0.75, 0.75))], id="point"),
    ],
)
def test_edges(wall: Wall, expected: list[tuple[int, float, Pair]]) -> None:
    assert edges(FLAT, wall) == expected


def test_millimetres() -> None:
    wall = UK.wall((0, 9), (3000, 9))
    assert edges(METRIC, wall) == [(3, 1200, (19, 19)), (6, 2400, (19, 19))]


def test_a_stated_board() -> None:
    wall = UK.wall((0, 9), (3000, 9))
    wall = msgspec.structs.replace(wall, rules=WallRules(board=UK.length(800)))
    assert [place for place, _, _ in edges(METRIC, wall)] == [2, 4, 6]


@pytest.mark.parametrize(
    ("left", "warned"),
    [
        # 3/8 on either side: from 48 - 1.5 + 0.375 = 46.875 to 48 - 0.375 = 47.625.
        (46.875, []),
        (47.625, []),
        (47.7, ["board.off"]),
        (46.8, ["board.off"]),
        (50, ["board.off"]),
    ],
)
def test_a_move_off_the_bearing_is_warned_of(left: float, warned: list[str]) -> None:
    found = result(FLAT, US.wall((0, 9), (60, 9), moved=((3, left),)))
    assert [c.message.id for c in found.cautions] == warned
    for caution in found.cautions:
        values = dict(caution.message.values)
        assert US.of(values["low"].mm) == pytest.approx(46.875)  # type: ignore[union-attr]
        assert US.of(values["high"].mm) == pytest.approx(47.625)  # type: ignore[union-attr]


def test_a_move_between_board_edges_is_free() -> None:
    assert result(FLAT, US.wall((0, 9), (60, 9), moved=((2, 25.0),))).cautions == ()


def test_a_missing_stud_under_an_edge_is_warned_of() -> None:
    found = result(FLAT, US.wall((0, 9), (60, 9), left_out=(3,)))
    assert [(c.key, c.message.id) for c in found.cautions] == [("B", "board.no-stud")]


def test_the_usual_layout_states_no_origin() -> None:
    assert Layout(US.length(16)).origin is None
