"""Pieces as they were printed or cut, and what of them is no longer as it was.

The room is 288 in. wide, its eaves 33 in. high under 9 in 12, flat at 94. Wall B starts 36 in. in,
so the roof over it is 33 + 0.75 * 36 = 60 in. at its left end and rises 0.75 in. an inch. Its stud
at layout place 1 has its right edge at 16 + 3/4 = 16 3/4: the roof there is 60 + 12.5625 = 72.5625;
less 1.5 * 1.25 = 1.875 for the plate and 1.5 for the sole plate its long point is 69.1875.
"""

from __future__ import annotations

import msgspec
import pytest

from core.job import (
    Change,
    What,
    changes_since_print,
    cut_changes,
    piece_made,
    since_cut,
    since_print,
    wall_made,
    with_cut,
    with_sheet,
    without_cut,
    work_out,
)
from core.lengths import Length, System, Tape
from core.model import CutPiece, PieceMade, PrintedWall, Project, Side, SiteRecord
from core.wording import Wording
from walls import US, in_12

ROOM = US.room(288, (33, in_12(9)), (33, in_12(9)), flat=94)
STUD, SOLE = "B/layout/1", "B/sole"
WORDS = Wording("us", Tape.usual(System.INCH))


def project(**changes: object) -> Project:
    wall = msgspec.structs.replace(US.wall((36, 60), (252, 60)), **changes)
    return Project("loft", System.INCH, ROOM, (wall,))


def inches(value: float) -> Length:
    return Length(value * 25.4)


def cut(key: str, at: Project) -> SiteRecord:
    """The record where this piece was cut while the project was so."""
    return with_cut(SiteRecord(), piece_made(work_out(at, SiteRecord()).wall("B"), key))


def test_a_piece_is_recorded_as_it_stands() -> None:
    made = piece_made(work_out(project(), SiteRecord()).wall("B"), STUD)
    # Short point at the left edge, 1 1/2 in. down the slope: 1.125 less.
    assert (made.key, made.marks) == (STUD, ())
    assert made.long_point.mm == pytest.approx(69.1875 * 25.4, abs=0.001)
    assert made.short_point.mm == pytest.approx(68.0625 * 25.4, abs=0.001)


def test_a_plate_is_recorded_with_its_marks() -> None:
    made = piece_made(work_out(project(), SiteRecord()).wall("B"), SOLE)
    along = {mark.member: mark.along.mm / 25.4 for mark in made.marks}
    # The near edges: the end stud's at 0, the next at 16 - 3/4.
    assert along["B/end/left"] == pytest.approx(0.0)
    assert along[STUD] == pytest.approx(15.25, abs=0.001)


def test_no_piece_is_made_of_what_is_not_there() -> None:
    with pytest.raises(KeyError):
        piece_made(work_out(project(), SiteRecord()).wall("B"), "B/layout/99")


def test_nothing_changed_as_long_as_nothing_changed() -> None:
    site = cut(STUD, project())
    assert cut_changes(site, work_out(project(), site)) == ()


TALLER = US.wall((40, 60), (252, 60))
"""4 in. farther in, the roof over every stud of the layout is 3 in. higher."""


def test_a_cut_stud_that_has_to_be_longer_is_told() -> None:
    site = cut(STUD, project())
    results = work_out(project(left_end=TALLER.left_end), site)
    (change,) = cut_changes(site, results)
    assert (change.key, change.what) == (STUD, What.LENGTH)
    assert change.was == pytest.approx(69.1875 * 25.4, abs=0.001)
    assert change.now == pytest.approx(72.1875 * 25.4, abs=0.001)
    said = [WORDS.say(c.message) for c in results.wall("B").cautions if c.key == STUD]
    assert said == ['B2 is cut 69 3/16" long and now has to be 72 3/16".']


def test_a_cut_plate_whose_mark_moves_is_told() -> None:
    at = work_out(project(), SiteRecord()).wall("B")
    site = with_cut(SiteRecord(), piece_made(at, SOLE))
    layout = msgspec.structs.replace(project().walls[0].layout, spacing=inches(24))
    (change,) = cut_changes(site, work_out(project(layout=layout), site))
    assert (change.what, change.stud) == (What.MARK, "B2")
    assert [change.was, change.now] == [
        pytest.approx(15.25 * 25.4, abs=0.001),
        pytest.approx(23.25 * 25.4, abs=0.001),
    ]


def test_a_cut_stud_that_is_left_out_is_told() -> None:
    site = cut(STUD, project())
    (change,) = cut_changes(site, work_out(project(left_out=(1,)), site))
    assert change.what is What.GONE
    assert (
        WORDS.say(since_cut(change))
        == f'{change.label} is cut, 69 3/16" long, and no longer wanted.'
    )


def test_cut_pieces_of_a_wall_that_is_gone_are_told() -> None:
    site = cut(STUD, project())
    none = msgspec.structs.replace(project(), walls=())
    assert [c.what for c in cut_changes(site, work_out(none, site))] == [What.GONE]


def test_a_difference_that_no_tape_shows_is_none() -> None:
    """Half a sixteenth is 0.79 mm: 0.7 mm are let pass, 0.9 are not."""
    now = piece_made(work_out(project(), SiteRecord()).wall("B"), STUD)
    for more, found in ((0.7, 0), (0.9, 1), (-0.9, 1)):
        was = msgspec.structs.replace(now, long_point=Length(now.long_point.mm + more))
        site = with_cut(SiteRecord(), was)
        assert len(cut_changes(site, work_out(project(), site))) == found


def test_a_sheet_printed_just_now_shows_all_as_it_is() -> None:
    result = work_out(project(), SiteRecord()).wall("B")
    assert changes_since_print(wall_made(result, "2026-03-01"), result) == ()


BOX = US.box("box-1", STUD, Side.RIGHT, 12)
LOWER = US.box("box-1", STUD, Side.RIGHT, 10)
OTHER_SIDE = US.box("box-1", STUD, Side.LEFT, 12)


@pytest.mark.parametrize(
    ("before", "after", "found"),
    [
        ({}, {"boxes": (BOX,)}, [("box 1", What.NEW)]),
        ({"boxes": (BOX,)}, {}, [("box 1", What.GONE)]),
        ({"boxes": (BOX,)}, {"boxes": (LOWER,)}, [("box 1", What.RAISED)]),
        ({"boxes": (BOX,)}, {"boxes": (OTHER_SIDE,)}, [("box 1", What.MOVED)]),
    ],
)
def test_boxes_that_changed_since_the_print(
    before: dict[str, object], after: dict[str, object], found: list[tuple[str, What]]
) -> None:
    sheet = wall_made(work_out(project(**before), SiteRecord()).wall("B"), "2026-03-01")
    now = work_out(project(**after), SiteRecord()).wall("B")
    assert [(c.name, c.what) for c in changes_since_print(sheet, now)] == found


def test_a_new_stud_is_told_with_its_marks_on_both_plates() -> None:
    sheet = wall_made(work_out(project(left_out=(2,)), SiteRecord()).wall("B"), "2026-03-01")
    changes = changes_since_print(sheet, work_out(project(), SiteRecord()).wall("B"))
    assert [c.what for c in changes] == [What.MARK, What.MARK, What.NEW]
    assert changes[-1].key == "B/layout/2"
    assert all(c.was is None for c in changes[:2])


def test_a_printed_wall_that_is_gone_has_lost_every_piece() -> None:
    sheet = wall_made(work_out(project(), SiteRecord()).wall("B"), "2026-03-01")
    found = changes_since_print(sheet, None)
    assert {c.what for c in found} == {What.GONE}
    assert len(found) == len(sheet.pieces)


def test_the_record_holds_each_piece_and_each_sheet_once() -> None:
    piece = PieceMade(STUD, "B2", inches(69), inches(68))
    longer = PieceMade(STUD, "B2", inches(70), inches(69))
    site = with_cut(with_cut(SiteRecord(), piece), longer, nailed=True)
    assert site.cut == (CutPiece(longer, True),)
    assert without_cut(site, STUD).cut == ()
    first, last = PrintedWall("B", "2026-03-01"), PrintedWall("B", "2026-03-02")
    assert with_sheet(with_sheet(SiteRecord(), first), last).sheets == (last,)


@pytest.mark.parametrize("what", What)
def test_every_change_has_its_words(what: What) -> None:
    change = Change("B/layout/1", "B2", what, 25.4, 50.8, "B3")
    assert "B2" in WORDS.say(since_print(change))
    box = msgspec.structs.replace(change, label="B/box-1")
    assert "box 1" in WORDS.say(since_print(box))
    if what not in (What.NEW, What.MOVED, What.RAISED):
        assert "B2" in WORDS.say(since_cut(change))
