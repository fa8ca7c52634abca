"""The caution about stock too narrow for the plates it is to make; inches."""

from __future__ import annotations

import msgspec
import pytest

from core.checks import Severity
from core.job import work_out
from core.lengths import System, Tape
from core.model import Habits, PlateLie, PlateRules, Project, SiteRecord
from core.wording import Wording
from walls import US, Pair, in_12, result

WORDS = Wording("us", Tape.usual(System.INCH))
ROOM = US.room(264, (12, in_12(9)), (12, in_12(9)))


@pytest.mark.parametrize(
    ("lie", "plate", "sentence"),
    [
        # 3 1/2 / 0.8 = 4 3/8.
        (
            None,
            (1.5, 3.5),
            'The tilted top plate of wall B has to be 4 3/8" wide to cover the mitered stud ends,'
            ' and is 3 1/2": take a wider plate.',
        ),
        (None, (1.5, 5.5), None),
        # 4 3/8 + 1 1/2 x 0.75 = 5 1/2: a 2x6 just does, a 2x5 does not.
        (PlateLie.RIPPED, (1.5, 5.5), None),
        (
            PlateLie.RIPPED,
            (1.5, 4.5),
            'The top plate of wall B has to be ripped from stock 5 1/2" wide to come out flush with'
            ' both faces of the studs, and is 4 1/2": take wider stock.',
        ),
        (PlateLie.LEVEL, (1.5, 3.5), None),
        (
            PlateLie.LEVEL,
            (1.5, 2.5),
            'The level top plate of wall B has to be 3 1/2" wide to cover the stud ends, and is'
            ' 2 1/2": take a wider plate.',
        ),
    ],
)
def test_narrow_stock(lie: PlateLie | None, plate: Pair, sentence: str | None) -> None:
    wall = US.wall((48, 0), (48, 288), plate=plate)
    top_plate = msgspec.structs.replace(wall.top_plate, lie=lie)
    found = result(ROOM, msgspec.structs.replace(wall, top_plate=top_plate)).cautions
    assert [WORDS.say(c.message) for c in found] == ([] if sentence is None else [sentence])
    assert {c.severity for c in found} <= {Severity.WARNING}


@pytest.mark.parametrize(("lie", "ids"), [(None, ["wall.ridge-inside"]), (PlateLie.LEVEL, [])])
def test_a_level_plate_may_pass_under_the_ridge(lie: PlateLie | None, ids: list[str]) -> None:
    # The ridge at u = 132; the wall's timber from u = 130 to 133 1/2, face A at 133 1/2.
    wall = US.wall((133.5, 0), (133.5, 288), plate=(1.5, 5.5))
    top_plate = msgspec.structs.replace(wall.top_plate, lie=lie)
    found = result(ROOM, msgspec.structs.replace(wall, top_plate=top_plate))
    assert [c.message.id for c in found.cautions] == ids


def test_a_plate_that_cannot_be_joined() -> None:
    # Stock of 24 is joined at 16 and 32 in the lower layer; nothing is 24 from both.
    rules = PlateRules(US.length(24), US.length(24))
    wall = US.wall((0, 9), (48, 9), plates=2)
    room = US.room(264, left=(96, in_12(0)))
    project = Project("t", System.INCH, room, (wall,), Habits(plates=rules))
    found = work_out(project, SiteRecord()).walls[0].cautions
    graver = [c for c in found if c.severity is Severity.UNBUILDABLE]
    assert [c.key for c in graver] == ["B/top/1/1"]
    assert WORDS.say(found[0].message) == (
        'A plate of wall B is 48" long, and no stud stands where pieces of 24" or less could meet'
        ' with joints 24" apart: state longer stock or a shorter lap, or add a stud.'
    )
