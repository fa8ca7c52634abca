"""Typing over the dimensions of what is held, and what is refused with what would do."""

from __future__ import annotations

import pytest

from core.lengths import Length, System, parse
from core.model import Project, Side
from gui.edits import Refusal, add_fixture, add_zone
from gui.sketcher.measures import Measure, Ruler, measures
from gui.sketcher.pulls import Hold
from gui.sketcher.restating import restate
from gui.wordings import wording_of
from loft import (
    BOX,
    DOOR,
    INCH,
    STUD,
    WINDOW,
    box_height,
    door_left,
    hold_of,
    loft,
    stud_left,
    with_window,
)


def measure_of(hold: Hold, ruler: Ruler) -> Measure:
    return next(m for m in measures(hold) if m.ruler is ruler)


def typed(text: str) -> Length:
    return parse(text, System.INCH.bare_unit)


def after(project: Project, key: str, ruler: Ruler, text: str) -> Project:
    hold = hold_of(project, key)
    return restate(hold, measure_of(hold, ruler), typed(text))


@pytest.mark.parametrize(
    ("ruler", "text", "left"),
    [
        (Ruler.LEFT_END, "30", 30.0),
        (Ruler.LEFT_END, "2' 6 1/2\"", 30.5),
        # 120 less 1 1/2 less 90.
        (Ruler.RIGHT_END, "90", 28.5),
        # Place 1 ends at 16 3/4, place 3 begins at 47 1/4.
        (Ruler.LEFT_NEIGHBOUR, "10", 26.75),
        (Ruler.RIGHT_NEIGHBOUR, "10", 35.75),
        (Ruler.RIGHT_NEIGHBOUR, "0", 45.75),
    ],
)
def test_a_stud(ruler: Ruler, text: str, left: float) -> None:
    assert stud_left(after(loft(), STUD, ruler, text)) == pytest.approx(left)


def test_what_is_typed_from_the_left_end_is_stated_as_it_was_written() -> None:
    project = after(loft(), DOOR, Ruler.LEFT_END, "5' 4\"")
    assert project.wall("B").opening("door-1").left == typed("5' 4\"")


@pytest.mark.parametrize(
    ("key", "ruler", "text", "sentence"),
    [
        # Left of place 2's own place stands place 1 from 15 1/4 to 16 3/4.
        (
            STUD,
            Ruler.LEFT_END,
            "16",
            'B3 has no place 16" from the left end, because B2 stands there: '
            'the nearest is 16 3/4".',
        ),
        (
            STUD,
            Ruler.RIGHT_END,
            "-2",
            'B3 has no place -2" from the right end, because B14 stands there: '
            'the nearest is 1 1/2".',
        ),
        # The header meets the slope at 25.1213, and 25 1/8 is the first sixteenth that is clear.
        (
            DOOR,
            Ruler.LEFT_END,
            "20",
            'door 1 has no place 20" from the left end, because the slope is too low beyond: '
            'the nearest is 25 1/8".',
        ),
        (
            DOOR,
            Ruler.RIGHT_END,
            "1",
            'door 1 has no place 1" from the right end, because the wall ends there: '
            'the nearest is 4 1/2".',
        ),
        # The right side of place 2 puts it at 32 3/4, the left side of place 3 at 45 1/4.
        (
            BOX,
            Ruler.LEFT_END,
            "36",
            'box 1 hangs on studs, and none puts it 36" from the left end: the nearest is 32 3/4".',
        ),
    ],
)
def test_what_has_no_place_is_refused_with_the_nearest(
    key: str, ruler: Ruler, text: str, sentence: str
) -> None:
    with pytest.raises(Refusal) as refused:
        after(loft(), key, ruler, text)
    assert wording_of(loft()).say(refused.value.message) == sentence


def test_the_nearest_that_is_named_would_do() -> None:
    assert door_left(after(loft(), DOOR, Ruler.LEFT_END, "25 1/8")) == pytest.approx(25.125)


def test_a_box_goes_to_the_side_of_a_stud_that_puts_it_there() -> None:
    project = after(loft(), BOX, Ruler.LEFT_END, "45 1/4")
    box = project.wall("B").box("box-1")
    assert (box.stud, box.side) == ("B/layout/3", Side.LEFT)


@pytest.mark.parametrize(
    ("ruler", "text", "height"),
    [
        (Ruler.FLOOR, "20", 20.0),
        # Its middle is 2 under its top, and the slope over its left edge at 90.6287.
        (Ruler.SLOPE, "40", 48.6287),
    ],
)
def test_the_height_of_a_box(ruler: Ruler, text: str, height: float) -> None:
    assert box_height(after(loft(), BOX, ruler, text)) == pytest.approx(height, abs=1e-4)


@pytest.mark.parametrize(
    ("ruler", "text", "head"),
    [(Ruler.HEAD, "82 1/2", 82.5), (Ruler.SLOPE, "25", 81.5)],
)
def test_the_head_of_a_door(ruler: Ruler, text: str, head: float) -> None:
    opening = after(loft(), DOOR, ruler, text).wall("B").opening("door-1")
    assert opening.head.mm == pytest.approx(head * INCH)
    assert opening.sill.mm == 0.0


@pytest.mark.parametrize(
    ("ruler", "text", "sill"),
    [(Ruler.FLOOR, "44", 44.0), (Ruler.SLOPE, "20", 46.5)],
)
def test_a_window_goes_up_as_a_whole(ruler: Ruler, text: str, sill: float) -> None:
    opening = after(with_window(), WINDOW, ruler, text).wall("B").opening("window-1")
    assert opening.sill.mm == pytest.approx(sill * INCH)
    assert opening.head.mm == pytest.approx((sill + 40.0) * INCH)


def test_a_head_too_high_is_refused_with_the_highest() -> None:
    # The plate's underside at 106 1/2 less a flat header's 1 1/2.
    with pytest.raises(Refusal) as refused:
        after(loft(), DOOR, Ruler.HEAD, "107")
    assert '105"' in wording_of(loft()).say(refused.value.message)


def test_backing_moves_along_and_up() -> None:
    project = add_fixture(loft(), "B")
    project = after(project, "B/backing-1", Ruler.LEFT_END, "35")
    project = after(project, "B/backing-1", Ruler.FLOOR, "30")
    (fixture,) = project.wall("B").fixtures
    assert fixture.left.mm == pytest.approx(35 * INCH)
    assert fixture.height.mm == pytest.approx(30 * INCH)


@pytest.mark.parametrize(
    ("ruler", "text", "place"),
    [
        (Ruler.LEFT_END, "20", [20.0, 12.0]),
        (Ruler.RIGHT_END, "20", [88.0, 12.0]),
        (Ruler.FLOOR, "30", [54.0, 30.0]),
        # 106 1/2 less 10, less 24 of zone.
        (Ruler.SLOPE, "10", [54.0, 72.5]),
    ],
)
def test_a_kept_clear_zone(ruler: Ruler, text: str, place: list[float]) -> None:
    project = after(add_zone(loft(), "B"), "B/kept-clear-1", ruler, text)
    (zone,) = project.wall("B").kept_clear
    assert [zone.left.mm / INCH, zone.bottom.mm / INCH] == pytest.approx(place)
