"""Every mark of the layout carries a member, or the reason why not is told."""

from __future__ import annotations

import msgspec
import pytest
from hypothesis import given

from core.checks import bare_messages
from core.framing import Why, bare_marks
from core.framing.layout import layout_lefts
from core.model import HeaderKind, Near, Opening, Room, Wall, WallRules
from wall_cases import housed
from walls import US, frame_of, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
NONE = US.header(HeaderKind.NONE)


@pytest.mark.parametrize(
    ("wall", "expected"),
    [
        pytest.param(US.wall((0, 9), (60, 9)), [], id="every mark is taken"),
        pytest.param(
            US.wall((0, 9), (60, 9), left_out=(2,)), [(2, Why.LEFT_OUT, None, 0)], id="left out"
        ),
        # Mark 6 is centred on 96; the end stud stands from 96.5.
        pytest.param(US.wall((0, 9), (98, 9)), [(6, Why.END, "end/right", 0.5)], id="end stud"),
        # The same with its centre on the end stud, 95.75 to 97.25.
        pytest.param(US.wall((0, 9), (97.25, 9)), [(6, Why.END, "end/right", 0)], id="on it"),
        pytest.param(
            US.wall((0, 9), (60, 9), openings=(US.opening("d", 20, 20, 80),)),
            # Mark 1, 15.25 to 16.75, stands clear of the king at 17.
            [],
            id="clear of a king",
        ),
        # The king stands from 15 to 16.5 and holds the centre 16.
        pytest.param(
            US.wall((0, 9), (60, 9), openings=(US.opening("d", 18, 20, 80),)),
            [(1, Why.KING, "d/king/left", 0)],
            id="king",
        ),
        # From 16.5 to 18: the centre 16 lies half an inch beside it.
        pytest.param(
            US.wall((0, 9), (60, 9), openings=(US.opening("d", 19.5, 20, 80),)),
            [(1, Why.KING, "d/king/left", 0.5)],
            id="king beside the centre",
        ),
        # No header: the trimmer stands from 30.75 to 32.25, mark 2 from 31.25 to 32.75.
        pytest.param(
            US.wall((0, 9), (90, 9), openings=(US.opening("d", 32.25, 20, 80, header=NONE),)),
            [(2, Why.TRIMMER, "d/trimmer/left", 0), (3, Why.OPENING, "d", 0)],
            id="trimmer and doorway without a header",
        ),
        # The header's top at 94.4, the plate's underside at 94.5.
        pytest.param(
            US.wall((0, 9), (60, 9), openings=(US.opening("d", 24, 20, 92.9),)),
            [(2, Why.SHORT, "d", 0)],
            id="too little between header and plate",
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), added=(("x", 20.0),), moved=((2, 20.5),)),
            # Both are stated, the moved one comes first.
            [],
            id="moved",
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), moved=((1, 31.0), (2, 32.0))),
            [(2, Why.TAKEN, "layout/1", 0)],
            id="moved onto another",
        ),
    ],
)
def test_why(wall: Wall, expected: list[tuple[int, Why, str | None, float]]) -> None:
    found = bare_marks(wall, frame_of(FLAT, wall))
    told = [
        (b.place, b.why, b.by and b.by.removeprefix("B/"), round(US.of(b.off), 4)) for b in found
    ]
    assert told == expected


def test_merged() -> None:
    rules = WallRules(near_ends=Near.MERGE, closer_than=US.length(3))
    wall = msgspec.structs.replace(US.wall((0, 9), (100, 9)), rules=rules)
    # Mark 6 ends at 96.75, the end stud begins at 98.5: its face is 2.5 off the centre 96.
    (bare,) = bare_marks(wall, frame_of(FLAT, wall))
    assert (bare.why, bare.by) == (Why.MERGED, "B/end/right")
    assert US.of(bare.off) == pytest.approx(2.5)


def test_too_low() -> None:
    room = US.room(264, left=(0, in_12(2)))
    wall = US.wall((0, 9), (60, 9))
    assert [(b.place, b.why) for b in bare_marks(wall, frame_of(room, wall))] == [(1, Why.LOW)]


def test_in_words() -> None:
    door: Opening = US.opening("door-1", 24, 20, 92.9)
    found = result(FLAT, US.wall((0, 9), (98, 9), openings=(door,), left_out=(5,)))
    assert found.frame is not None
    told = bare_messages(found.wall, found.frame, found.label_of)
    ids = [(m.id, dict(m.values)["reason"].id) for _, m in told]  # type: ignore[union-attr]
    assert ids == [
        ("layout.bare", "layout.short"),
        ("layout.bare", "layout.left-out"),
        ("layout.bare-off", "layout.end"),
    ]


@given(housed())
def test_every_mark_carries_a_member_or_a_reason(case: tuple[Room, Wall]) -> None:
    room, wall = case
    found = result(room, wall)
    if found.frame is None:
        return
    bare = {b.place for b in bare_marks(wall, found.frame)}
    for number, _ in layout_lefts(wall):
        key = f"B/layout/{number}"
        cripples = [m for m in found.frame.members if m.key.endswith(f"/above/{number}")]
        cripples += [m for m in found.frame.members if m.key.endswith(f"/below/{number}")]
        stands = found.frame.member(key) is not None or bool(cripples)
        assert stands != (number in bare)
    for mark in bare_marks(wall, found.frame):
        near = mark.by is not None and found.frame.member(mark.by) is not None
        alone = (Why.LEFT_OUT, Why.LOW, Why.OPENING, Why.SHORT)
        assert near or mark.why in alone
