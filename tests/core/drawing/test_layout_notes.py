"""What the foot of a sheet says of layout, rules and sole plate."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing.layout_notes import layout_notes
from core.lengths import System, Tape
from core.model import Near, Wall, WallRules
from core.wording import Wording
from walls import US, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
DOOR = US.opening("door-1", 70, 20, 80)
PLAIN = US.wall((0, 9), (60, 9))


def ruled(wall: Wall, rules: WallRules) -> Wall:
    return msgspec.structs.replace(wall, rules=rules)


def lined_up(wall: Wall, at: float) -> Wall:
    layout = msgspec.structs.replace(wall.layout, origin=US.length(at))
    return msgspec.structs.replace(wall, layout=layout)


@pytest.mark.parametrize(
    ("wall", "notes"),
    [
        (PLAIN, []),
        (lined_up(PLAIN, 8), ['Layout lines up with 8" from the left end']),
        (
            ruled(PLAIN, WallRules(near_kings=Near.KEEP)),
            ["Layout studs that overlap a king stand tight beside it"],
        ),
        (
            ruled(PLAIN, WallRules(near_ends=Near.MERGE, closer_than=US.length(3))),
            ['Layout studs less than 3" from an end stud are left out'],
        ),
        # The end stud of 98 begins at 96.5, half an inch beside mark 6 at 96.
        (
            US.wall((0, 9), (98, 9)),
            [
                'Layout without a stud: Mark 6, center at 96": the end stud B7 stands there,'
                ' 1/2" beside a board edge there'
            ],
        ),
        (
            US.wall((0, 9), (120, 9), openings=(DOOR,)),
            ['Sole plate runs through: cut it out from 70" to 90" once the wall stands'],
        ),
        (
            ruled(US.wall((0, 9), (120, 9), openings=(DOOR,)), WallRules(cut_sole_first=True)),
            [
                "Sole plate cut before it is laid: set its pieces along the chalk line, marks run"
                " from the wall's end"
            ],
        ),
    ],
)
def test_notes(wall: Wall, notes: list[str]) -> None:
    wording = Wording("us", Tape.usual(System.INCH))
    assert layout_notes(result(FLAT, wall), wording) == notes
