"""Where a moved thing comes to rest: what it is drawn to first, and the room it has."""

from __future__ import annotations

import pytest

from core.framing.snapping import Grip, Snap, Targets, settle

ROOM = ((0.0, 100.0), (200.0, 300.0))
TARGETS: Targets = (
    (Snap.LAYOUT, [(50.0, ""), (250.0, "")]),
    (Snap.FACE, [(52.0, "B/x"), (150.0, "B/y")]),
)
GRIP = Grip(step=10.0, reach=5.0)


@pytest.mark.parametrize(
    ("wanted", "grip", "left", "snap", "other"),
    [
        pytest.param(53.0, GRIP, 50.0, Snap.LAYOUT, "", id="the layout before a nearer face"),
        pytest.param(56.0, GRIP, 52.0, Snap.FACE, "B/x", id="a face in reach"),
        pytest.param(33.0, GRIP, 30.0, Snap.STEP, "", id="else a step"),
        pytest.param(53.0, Grip(10.0, 5.0, free=True), 53.0, Snap.FREE, "", id="free"),
        pytest.param(149.0, GRIP, 100.0, Snap.LIMIT, "", id="no face where there is no room"),
        pytest.param(180.0, GRIP, 200.0, Snap.LIMIT, "", id="to the nearer room"),
        pytest.param(-40.0, Grip(10.0, 5.0, free=True), 0.0, Snap.LIMIT, "", id="free, but within"),
    ],
)
def test_settle(wanted: float, grip: Grip, left: float, snap: Snap, other: str) -> None:
    moved = settle(wanted, ROOM, TARGETS, grip)
    assert (moved.left, moved.snap, moved.other) == (left, snap, other)


def test_where_no_room_is_told_it_goes_anywhere_and_snaps() -> None:
    assert settle(-40.0, (), (), GRIP).left == -40.0
    assert settle(53.0, (), TARGETS, GRIP).snap is Snap.LAYOUT
