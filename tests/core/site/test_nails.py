"""Nails counted by hand, and a schedule changed by the person."""

from __future__ import annotations

import pytest

from core.lengths import Length
from core.model import HeaderKind, Joint, Nailing
from core.site import NailLine, Source, nails
from core.site.nails import places
from core.wording import message
from walls import US, frame_of, in_12

LEVEL = US.room(264, (96, in_12(0)))


def lines(**stated: object) -> dict[Joint, NailLine]:
    """A wall 168 long and 96 high with a door and two top plates.

    The door is 34 wide from 56, its header two plies on edge with a header 37 long.
    """
    header = US.header(HeaderKind.ON_EDGE, (1.5, 3.5), 2)
    door = US.opening("door-1", 56, 34, 82.5, header=header)
    wall = US.wall((48, 100), (216, 100), openings=(door,), plates=2)
    own = tuple(stated.values())
    assert all(isinstance(n, Nailing) for n in own)
    found = nails(wall, frame_of(LEVEL, wall), own)  # type: ignore[arg-type]
    return {line.joint: line for line in found}


@pytest.mark.parametrize(
    ("joint", "count", "where"),
    [
        # 56 left of the door: 56 / 16 = 3.5, 4 steps and one more; right of it 78 / 16 = 4.875: 5.
        (Joint.SOLE_TO_FLOOR, 1, 5 + 6),
        # Layout 15.25 ... 159.25 is 10 studs; the two at 63.25 and 79.25 fall into the door, and
        # one at 47.25 - 48.75 stays, that at 95.25 too: 8, with 2 ends, 2 kings: 12 and 2 trimmers.
        (Joint.STUD_TO_SOLE, 2, 14),
        # The same without the trimmers, and the 2 cripples over the door.
        (Joint.STUD_TO_TOP, 2, 14),
        # 168 / 16 = 10.5: 11 steps and one more.
        (Joint.TOP_TO_TOP, 1, 12),
        # Trimmers are 82.5 - 1.5 = 81 long; 81 / 24 = 3.375: 4 steps and one more, twice.
        (Joint.TRIMMER_TO_KING, 1, 10),
        (Joint.HEADER_TO_KING, 3, 2),
        # One seam, 37 long: 37 / 16 = 2.3: 3 steps and one more, on both edges.
        (Joint.HEADER_PLIES, 2, 4),
        (Joint.CRIPPLE, 2, 2),
        (Joint.SILL_TO_TRIMMER, 2, 0),
    ],
)
def test_nails_of_a_wall_with_a_door(joint: Joint, count: int, where: int) -> None:
    line = lines()[joint]
    assert (line.count, line.places, line.total) == (count, where, count * where)


def test_every_joint_has_a_line() -> None:
    assert set(lines()) == set(Joint)


def test_what_was_seen_and_what_is_from_memory() -> None:
    # FACTS 3.4: only the end nailing of plate to stud was seen.
    found = lines()
    assert found[Joint.STUD_TO_TOP].source is Source.SEEN
    assert found[Joint.HEADER_TO_KING].source is Source.MEMORY
    assert found[Joint.CRIPPLE].source is Source.PRACTICE


def test_a_stated_row_changes_only_what_it_states() -> None:
    every = Nailing(Joint.SOLE_TO_FLOOR, every=Length.of_inches(12))
    screw = Nailing(Joint.STUD_TO_SOLE, nail="4 in. screw", count=3)
    found = lines(every=every, screw=screw)
    # 56 / 12 = 4.67: 5 and one; 78 / 12 = 6.5: 7 and one.
    assert found[Joint.SOLE_TO_FLOOR].total == 6 + 8
    assert found[Joint.SOLE_TO_FLOOR].nail == message("nail.16d")
    assert found[Joint.SOLE_TO_FLOOR].source is Source.STATED
    assert found[Joint.STUD_TO_SOLE].total == 3 * 14
    assert found[Joint.STUD_TO_SOLE].nail == message("nail.own", text="4 in. screw")
    assert found[Joint.STUD_TO_TOP].source is Source.SEEN


@pytest.mark.parametrize(
    ("length", "every", "wanted"),
    [(96, 16, 7), (97, 16, 8), (10, 16, 2), (10, None, 1)],
)
def test_places_along_a_joint(length: float, every: float | None, wanted: int) -> None:
    assert places(length, every) == wanted
