"""The timber around openings: kings, trimmers, headers, sills and cripples, height by height."""

from __future__ import annotations

import pytest

from core.framing import Frame, Role
from core.model import HeaderKind, Opening
from walls import US, frame_of, in_12

FLAT = US.room(264, left=(96, in_12(0)))
"""A level roof at 96: studs reach 94.5 and stand on the sole plate at 1.5."""

# cause -> left, right, bottom, top
Places = dict[str, tuple[float, float, float, float]]


def frame_with(*openings: Opening, **stated: tuple[tuple[str, float], ...]) -> Frame:
    return frame_of(FLAT, US.wall((0, 9), (120, 9), openings=openings, **stated))  # type: ignore[arg-type]


def around(frame: Frame, name: str) -> Places:
    """What stands around an opening, by the rest of its key, in inches."""
    return {
        m.key.removeprefix(f"B/{name}/"): (
            round(US.of(m.left), 4),
            round(US.of(m.right), 4),
            round(US.of(m.bottom), 4),
            round(US.of(m.top), 4),
        )
        for m in frame.members
        if m.key.startswith(f"B/{name}/")
    }


SIDES: Places = {
    "king/left": (37, 38.5, 1.5, 94.5),
    "trimmer/left": (38.5, 40, 1.5, 82.5),
    "trimmer/right": (72, 73.5, 1.5, 82.5),
    "king/right": (73.5, 75, 1.5, 94.5),
}
"""Both sides of an opening 32 wide at 40, head at 82.5."""


@pytest.mark.parametrize(
    ("header", "expected"),
    [
        pytest.param(
            US.header(),
            {
                "header/1": (38.5, 73.5, 82.5, 84),
                "above/3": (47.25, 48.75, 84, 94.5),
                "above/4": (63.25, 64.75, 84, 94.5),
            },
            id="flat",
        ),
        pytest.param(
            US.header(plies=2),
            {
                "header/1": (38.5, 73.5, 82.5, 84),
                "header/2": (38.5, 73.5, 84, 85.5),
                "above/3": (47.25, 48.75, 85.5, 94.5),
                "above/4": (63.25, 64.75, 85.5, 94.5),
            },
            id="flat, two plies on each other",
        ),
        pytest.param(
            US.header(HeaderKind.ON_EDGE, (1.5, 5.5), 2),
            {
                "header/1": (38.5, 73.5, 82.5, 88),
                "above/3": (47.25, 48.75, 88, 94.5),
                "above/4": (63.25, 64.75, 88, 94.5),
            },
            id="on edge",
        ),
        pytest.param(US.header(HeaderKind.NONE), {}, id="none: nothing to stand on above it"),
    ],
)
def test_door(header: object, expected: Places) -> None:
    door = US.opening("door-1", 40, 32, 82.5, header=header)  # type: ignore[arg-type]
    assert around(frame_with(door), "door-1") == {**SIDES, **expected}


def test_plies_on_edge_are_one_member_that_counts_them() -> None:
    door = US.opening("door-1", 40, 32, 82.5, header=US.header(HeaderKind.ON_EDGE, (1.5, 5.5), 2))
    header = frame_with(door).member("B/door-1/header/1")
    assert header is not None
    assert (header.count, US.of(header.width)) == (2, 5.5)


def test_studs_of_the_layout_give_way() -> None:
    # 37 to 75 takes the places of studs 3 (47.25) and 4 (63.25); 2 and 5 stay.
    keys = [m.key for m in frame_with(US.opening("door-1", 40, 32, 82.5)).members]
    assert [n for n in range(1, 8) if f"B/layout/{n}" in keys] == [1, 2, 5, 6, 7]


@pytest.mark.parametrize(
    ("kind", "above"),
    [
        (
            HeaderKind.FLAT,
            {
                "header/1": (38.5, 73.5, 70, 71.5),
                "above/3": (47.25, 48.75, 71.5, 94.5),
                "above/4": (63.25, 64.75, 71.5, 94.5),
            },
        ),
        (HeaderKind.NONE, {}),
    ],
)
def test_window(kind: HeaderKind, above: Places) -> None:
    window = US.opening("window-1", 40, 32, 70, sill=30, header=US.header(kind))
    sides = {name: place if "king" in name else (*place[:3], 70) for name, place in SIDES.items()}
    assert around(frame_with(window), "window-1") == {
        **sides,
        **above,
        "sill/1": (40, 72, 28.5, 30),
        "below/3": (47.25, 48.75, 1.5, 28.5),
        "below/4": (63.25, 64.75, 1.5, 28.5),
    }


@pytest.mark.parametrize(
    ("left", "above", "below"),
    [
        # The opening is 20 wide; the only places near are 3 (47.25) and 4 (63.25).
        pytest.param(48.75, ["3", "4"], ["4"], id="over the left trimmer"),
        pytest.param(50.25, ["4"], ["4"], id="in place of the left king"),
        pytest.param(49.5, ["4"], ["4"], id="half over the trimmer, half over the king"),
        pytest.param(48, ["3", "4"], ["4"], id="half over the trimmer, half over the opening"),
        pytest.param(47.25, ["3", "4"], ["3", "4"], id="just inside on the left"),
        pytest.param(43.25, ["3", "4"], ["3"], id="over the right trimmer"),
        pytest.param(44.75, ["3", "4"], ["3", "4"], id="just inside on the right"),
    ],
)
def test_cripples_stand_where_they_bear(left: float, above: list[str], below: list[str]) -> None:
    window = US.opening("window-1", left, 20, 70, sill=30)
    found = around(frame_with(window), "window-1")
    assert [name.removeprefix("above/") for name in found if name.startswith("above/")] == above
    assert [name.removeprefix("below/") for name in found if name.startswith("below/")] == below


@pytest.mark.parametrize(
    ("head", "role"),
    [
        (91.5, Role.CRIPPLE),  # 93 to 94.5: as long as it is thick
        (91.75, Role.BLOCK),  # 1 1/4 would split
        (92.75, Role.BLOCK),  # 1/4, 6.35 mm
        (92.8, None),  # 0.2, 5.08 mm: less than can be fixed
        (93, None),  # the header touches the plate
    ],
)
def test_short_cripples_become_blocks(head: float, role: Role | None) -> None:
    frame = frame_with(US.opening("door-1", 40, 32, head))
    assert frame.openings[0].fit.fits
    found = frame.member("B/door-1/above/3")
    assert (found.role if found else None) is role


@pytest.mark.parametrize(
    ("sill", "role"), [(4.5, Role.CRIPPLE), (4, Role.BLOCK), (3.25, Role.BLOCK), (3.2, None)]
)
def test_short_cripples_below_become_blocks(sill: float, role: Role | None) -> None:
    # The sill's underside is 1 1/2 lower, the sole plate 1 1/2 high.
    frame = frame_with(US.opening("window-1", 40, 32, 70, sill=sill))
    found = frame.member("B/window-1/below/3")
    assert (found.role if found else None) is role


def test_cripples_follow_a_sloping_plate() -> None:
    # 48 + 0.75 x: at 47.25 the plate's underside is 48 + 35.4375 - 1.875 = 81.5625.
    room = US.room(264, left=(48, in_12(9)))
    door = US.opening("door-1", 40, 32, 60)
    cripple = frame_of(room, US.wall((0, 9), (120, 9), openings=(door,))).member("B/door-1/above/3")
    assert cripple is not None
    # On the header at 61.5: 20.0625 at the left, 21.1875 at the right.
    assert [US.of(e) for e in cripple.edges[:2]] == pytest.approx([20.0625, 21.1875])


def test_an_added_stud_in_an_opening_becomes_cripples() -> None:
    window = US.opening("window-1", 40, 32, 70, sill=30)
    found = around(frame_with(window, added=(("extra-1", 54.0),)), "window-1")
    assert found["above/extra-1"] == (54, 55.5, 71.5, 94.5)
    assert found["below/extra-1"] == (54, 55.5, 1.5, 28.5)


def test_an_added_cripple_that_overlaps_another_has_no_room() -> None:
    window = US.opening("window-1", 40, 32, 70, sill=30)
    frame = frame_with(window, added=(("extra-1", 48.0), ("extra-2", 48.75)))
    assert frame.no_room == ("B/extra-1",)
    found = around(frame, "window-1")
    assert "above/extra-1" not in found
    assert found["above/extra-2"] == (48.75, 50.25, 71.5, 94.5)
