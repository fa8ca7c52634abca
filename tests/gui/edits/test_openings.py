"""Moving, setting and adding openings, in inches along the wall of `loft`.

The header's top, 1 1/2 over a head at 80, has to pass under the plate: 60 + x - 1 1/2 * sqrt 2 is
81 1/2 at x = 23.62; the header begins 1 1/2 left of the opening, so the opening may stand from
25 1/8. The right king ends 3 in. beside the opening and 1 1/2 from the wall's end: until 85 1/2.
"""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.job import work_out
from core.lengths import Length
from core.model import Header, HeaderKind, HeadLie, OpeningKind, Project, SiteRecord, Timber
from gui.edits import Refusal, add_opening, move_opening, set_opening
from gui.wordings import wording_of
from loft import INCH, loft

RANGE = 'from 25 1/8" to 85 1/2"'


def inches(value: float) -> Length:
    return Length.of_inches(value)


def sentence(project: Project, refusal: pytest.ExceptionInfo[Refusal]) -> str:
    return wording_of(project).say(refusal.value.message)


def fits(project: Project) -> list[bool]:
    frame = work_out(project, SiteRecord()).wall("B").frame
    return [placed.fit.fits for placed in frame.openings] if frame else []


def test_a_door_moves() -> None:
    project = move_opening(loft(), "B", "door-1", 68 * INCH)
    assert project.wall("B").opening("door-1").left == inches(68)


@pytest.mark.parametrize("left", [0.0, 25.0, 86.0, 300.0])
def test_where_it_does_not_fit_it_is_refused_with_the_places_where_it_does(left: float) -> None:
    with pytest.raises(Refusal) as refusal:
        move_opening(loft(), "B", "door-1", left * INCH)
    assert sentence(loft(), refusal).endswith(f"it fits {RANGE}.")


def two_doors() -> Project:
    """A second door, 20 wide, from 30: kings from 27 to 53, and 57 on for the first."""
    wall = loft().wall("B")
    second = add_opening(loft(), "B", OpeningKind.ACCESS_DOOR, 30 * INCH)
    narrow = set_opening(second, "B", "access-door-1", width=inches(20))
    assert narrow.wall("B").openings[0] == wall.openings[0]
    return narrow


@pytest.mark.parametrize("opening_id", ["door-1", "access-door-1"])
def test_an_opening_keeps_clear_of_those_stated_before_and_after_it(opening_id: str) -> None:
    with pytest.raises(Refusal) as refusal:
        move_opening(two_doors(), "B", opening_id, 45 * INCH)
    assert "does not fit" in sentence(two_doors(), refusal)


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        # At 60 the plates' underside is level at 106 1/2; the header takes 1 1/2 of it.
        ({"head": 106.0}, 'the most that fits here is 105".'),
        # From 60 to the last place of a right edge, 120 - 4 1/2.
        ({"width": 70.0}, 'the most that fits here is 55 1/2".'),
        ({"width": 0.0}, "needs a width of more than nothing."),
        ({"sill": 80.0}, 'needs its sill at 80" on or above the floor and below its head at 80".'),
        ({"sill": -1.0}, 'needs its sill at -1" on or above the floor and below its head at 80".'),
        ({"left": 10.0}, f"it fits {RANGE}."),
    ],
)
def test_a_field_that_does_not_fit_is_refused_with_what_would(
    changes: dict[str, float], words: str
) -> None:
    lengths = {name: inches(value) for name, value in changes.items()}
    with pytest.raises(Refusal) as refusal:
        set_opening(loft(), "B", "door-1", **lengths)
    assert sentence(loft(), refusal).endswith(words)


@pytest.mark.parametrize(
    "changes",
    [
        {"head": inches(105)},
        {"width": inches(55.5)},
        {"sill": inches(20)},
        {"kind": OpeningKind.WINDOW},
        {"header": Header(HeaderKind.NONE, Timber(inches(1.5), inches(3.5)))},
    ],
)
def test_what_fits_is_taken(changes: dict[str, Any]) -> None:
    project = set_opening(loft(), "B", "door-1", **changes)
    opening = project.wall("B").opening("door-1")
    assert {name: getattr(opening, name) for name in changes} == changes
    assert fits(project) == [True]


def test_a_header_on_edge_that_is_too_deep_is_refused() -> None:
    deep = Header(HeaderKind.ON_EDGE, Timber(inches(1.5), inches(30)))
    with pytest.raises(Refusal) as refusal:
        set_opening(loft(), "B", "door-1", header=deep)
    assert "fits nowhere" in sentence(loft(), refusal)


def test_what_fits_nowhere_already_may_be_mended_step_by_step() -> None:
    wall = loft().wall("B")
    # Its head is above the plates wherever it stands.
    stuck = msgspec.structs.replace(wall.openings[0], head=inches(130))
    project = loft().with_wall(msgspec.structs.replace(wall, openings=(stuck,)))
    assert fits(project) == [False]
    project = set_opening(project, "B", "door-1", left=inches(70))
    project = set_opening(project, "B", "door-1", head=inches(80))
    assert fits(project) == [True]


def test_what_no_file_may_hold_is_refused_even_then() -> None:
    with pytest.raises(Refusal) as refusal:
        set_opening(loft(), "B", "door-1", left=Length.of_mm(70_000))
    assert "does not fit" in sentence(loft(), refusal)
    wide = msgspec.structs.replace(loft().wall("B").openings[0], head=inches(130))
    wall = msgspec.structs.replace(loft().wall("B"), openings=(wide,))
    with pytest.raises(Refusal) as refusal:
        set_opening(loft().with_wall(wall), "B", "door-1", left=Length.of_mm(70_000))
    assert "70000 mm is more than 60000 mm" in sentence(loft(), refusal)


@pytest.mark.parametrize(
    ("kind", "opening_id", "width", "head", "sill"),
    [
        (OpeningKind.DOOR, "door-2", 34.0, 82.5, 0.0),
        (OpeningKind.ACCESS_DOOR, "access-door-1", 24.0, 30.0, 0.0),
        (OpeningKind.WINDOW, "window-1", 30.0, 72.0, 36.0),
    ],
)
def test_a_new_opening_stands_as_near_the_middle_as_it_fits(
    kind: OpeningKind, opening_id: str, width: float, head: float, sill: float
) -> None:
    roomy = set_opening(loft(), "B", "door-1", width=inches(12), left=inches(103.5))
    project = add_opening(roomy, "B", kind)
    new = project.wall("B").openings[-1]
    assert (new.id, new.kind) == (opening_id, kind)
    assert (new.width, new.head, new.sill) == (inches(width), inches(head), inches(sill))
    # The middle is at 60; the door at 103 1/2 leaves room up to 103 1/2 - 6.
    assert new.left.mm / INCH == pytest.approx(60 - width / 2)
    assert fits(project) == [True, True]


def test_where_no_opening_fits_adding_one_is_refused() -> None:
    with pytest.raises(Refusal) as refusal:
        add_opening(set_opening(loft(), "B", "door-1", width=inches(55)), "B", OpeningKind.DOOR)
    # A head at 82 1/2 needs the plate at 84: right of 26 1/8, and clear of the door at 60 it ends.
    assert sentence(loft(), refusal).startswith('No opening 34" wide')


def test_a_raked_head_stays_on_one_slope() -> None:
    """20 wide and raked: under 57.88 + x it needs 80 + 2.12, from 24.24; its right trimmer ends
    where the undersides break, at 48.62. Under the flat it is level: from there on, as before."""
    narrow = set_opening(loft(), "B", "door-1", width=inches(20))
    raked = set_opening(narrow, "B", "door-1", head_lie=HeadLie.RAKED)
    moved = move_opening(raked, "B", "door-1", 26 * INCH)
    frame = work_out(moved, SiteRecord()).wall("B").frame
    assert frame is not None
    assert [round(mm / INCH, 6) for mm in frame.openings[0].heads] == [80, 100]
    with pytest.raises(Refusal) as refusal:
        move_opening(moved, "B", "door-1", 40 * INCH)
    assert 'from 24 1/4" to 27 1/8" or from 50 1/8" to 95 1/2"' in sentence(moved, refusal)


def test_a_head_too_high_to_be_raked_is_told_the_most_that_fits() -> None:
    """A header 11 1/4 on edge is 15.91 plumb at 45 degrees; under 57.88 + 26 that leaves 67.97."""
    header = Header(HeaderKind.ON_EDGE, Timber(inches(1.5), inches(11.25)), 2)
    low = set_opening(loft(), "B", "door-1", width=inches(20), head=inches(71), header=header)
    there = move_opening(low, "B", "door-1", 26 * INCH)
    with pytest.raises(Refusal) as refusal:
        set_opening(there, "B", "door-1", head_lie=HeadLie.RAKED)
    assert 'the most that fits here is 67 15/16"' in sentence(there, refusal)
