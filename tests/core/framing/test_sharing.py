"""Openings that share a king, and end studs that are kings."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import Role
from core.model import Opening, Wall, WallRules
from walls import US, Pair, frame_of, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
FIRST = US.opening("door-1", 40, 20, 80)
"""From 40 to 60: trimmers to 38.5 and 61.5, kings to 37 and 63."""


def ruled(*openings: Opening, share: bool = False, ends: bool = False) -> Wall:
    wall = US.wall((0, 9), (120, 9), openings=openings)
    return msgspec.structs.replace(wall, rules=WallRules(share_kings=share, end_as_king=ends))


def ranges(wall: Wall) -> list[Pair]:
    found = frame_of(FLAT, wall).openings[-1].fit.ranges
    return [(round(US.of(a), 4), round(US.of(b), 4)) for a, b in found]


@pytest.mark.parametrize(
    ("share", "expected"),
    [
        # Kings of its own: until 40 - 6 - 24, from 60 + 6, between 4.5 and 120 - 4.5 - 24.
        (False, [(4.5, 10), (66, 91.5)]),
        # And with trimmer, king and trimmer between: 40 - 4.5 - 24 and 60 + 4.5.
        (True, [(4.5, 10), (11.5, 11.5), (64.5, 64.5), (66, 91.5)]),
    ],
)
def test_where_a_second_opening_fits(share: bool, expected: list[Pair]) -> None:
    second = US.opening("door-2", 80, 24, 80)
    assert ranges(ruled(FIRST, second, share=share)) == expected


@pytest.mark.parametrize(
    ("allowed", "width", "expected"),
    [
        (False, 20, [(4.5, 95.5)]),
        # A trimmer beside the end stud: 1.5 + 1.5, and 120 - 3 - 20.
        (True, 20, [(3, 3), (4.5, 95.5), (97, 97)]),
        # 120 - 3 - 4.5: a king of its own at one end alone.
        (True, 112.5, [(3, 3), (4.5, 4.5)]),
        # 120 - 6: end studs are both kings.
        (True, 114, [(3, 3)]),
        (True, 113, []),
        (False, 114, []),
    ],
)
def test_where_an_opening_fits_at_the_ends(
    allowed: bool, width: float, expected: list[Pair]
) -> None:
    assert ranges(ruled(US.opening("d", 3, width, 80), ends=allowed)) == expected


def test_one_king_stands_between_two_openings() -> None:
    second = US.opening("door-2", 64.5, 24, 80)
    found = result(FLAT, ruled(FIRST, second, share=True))
    assert found.frame is not None
    assert found.cautions == ()
    roles = (Role.KING, Role.TRIMMER)
    between = {
        m.key.removeprefix("B/"): round(US.of(m.left), 6)
        for m in found.frame.members
        if m.role in roles and 59 < US.of(m.left) < 64.6
    }
    assert between == {
        "door-1/trimmer/right": 60,
        "door-1/king/right": 61.5,
        "door-2/trimmer/left": 63,
    }
    assert found.frame.member("B/door-2/king/left") is None


def test_an_end_stud_is_the_king() -> None:
    found = result(FLAT, ruled(US.opening("d", 3, 20, 80), ends=True))
    assert found.frame is not None
    assert found.cautions == ()
    assert found.frame.member("B/d/king/left") is None
    left = found.frame.member("B/d/trimmer/left")
    assert left is not None
    assert US.of(left.left) == pytest.approx(1.5)


def test_a_range_of_one_place_in_words() -> None:
    second = US.opening("door-2", 80, 24, 80)
    second = msgspec.structs.replace(second, left=US.length(30))
    found = result(FLAT, ruled(FIRST, second, share=True))
    (caution,) = found.cautions
    told = dict(caution.message.values)["ranges"]
    assert [m.id for m in told] == [  # type: ignore[union-attr]
        "opening.range",
        "opening.only-at",
        "opening.only-at",
        "opening.range",
    ]
