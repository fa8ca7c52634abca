"""Shaping the section; inches.

The loft's room is 240 wide under 12 in 12 from eaves 48 high, its ridge at 120, 168 high, with a
flat ceiling at 108.
"""

from __future__ import annotations

from collections.abc import Callable

import msgspec
import pytest

from core.lengths import Length, Pitch, Unit, parse_pitch
from core.model import PitchBreak, Project, Side
from core.roof import section_of
from gui.edits import Refusal
from gui.edits.beyond import Beyond
from gui.edits.shaping import (
    remove_part,
    set_eave,
    set_flat_ceiling,
    set_high_side,
    set_pitch,
    set_ridge_across,
    set_ridge_height,
    set_width,
)
from gui.wordings import wording_of
from loft import loft
from walls import US, in_12

INCH = 25.4
LEFT, RIGHT = Side.LEFT, Side.RIGHT


def inches(value: float) -> Length:
    return Length.of_inches(value)


def pitch(text: str) -> Pitch:
    return parse_pitch(text, Unit.INCH)


def shed() -> Project:
    room = US.room(200, (60, in_12(3)))
    return msgspec.structs.replace(loft(), room=room, walls=())


def ridge(project: Project) -> tuple[float, float]:
    at = section_of(project.room).ridge
    assert at is not None
    return round(at[0] / INCH, 4), round(at[1] / INCH, 4)


def pitches(project: Project) -> tuple[str, ...]:
    slopes = (project.room.left, project.room.right)
    return tuple(slope.pitch.text for slope in slopes if slope is not None)


Edit = Callable[[Project], Project]


@pytest.mark.parametrize(
    ("edit", "at", "texts"),
    [
        # 72 + u = 48 + 240 - u at u = 108.
        (lambda p: set_eave(p, LEFT, inches(72)), (108, 180), ("12 in 12", "12 in 12")),
        # 48 + u/2 = 288 - u at u = 160.
        (lambda p: set_pitch(p, LEFT, 0, pitch("6 in 12")), (160, 128), ("6 in 12", "12 in 12")),
        # 90 over 120 on both sides.
        (lambda p: set_ridge_height(p, inches(138)), (120, 138), ("9 in 12", "9 in 12")),
        (
            lambda p: set_ridge_height(p, inches(140)),
            (120, 140),
            ("92 in / 120 in", "92 in / 120 in"),
        ),
        # 120 over 80 and over 160.
        (lambda p: set_ridge_across(p, inches(80)), (80, 168), ("18 in 12", "9 in 12")),
        (lambda p: set_ridge_across(p, inches(80), RIGHT), (160, 168), ("9 in 12", "18 in 12")),
        # 48 + u = 48 + 280 - u.
        (lambda p: set_width(p, inches(280)), (140, 188), ("12 in 12", "12 in 12")),
        (lambda p: set_flat_ceiling(p, inches(96)), (120, 168), ("12 in 12", "12 in 12")),
    ],
)
def test_the_ridge_after_an_edit(
    edit: Edit, at: tuple[float, float], texts: tuple[str, ...]
) -> None:
    project = edit(loft())
    assert (ridge(project), pitches(project)) == (at, texts)


def test_the_upper_pitch_of_a_gambrel_is_what_the_ridge_changes() -> None:
    """20 in 12 to 100 at 36, then to the ridge: 100 + 84/2 = 142 at 6 in 12."""
    room = US.room(240, (40, in_12(20)), (40, in_12(20)))
    change = PitchBreak(inches(36), in_12(4))
    assert room.left is not None
    slope = msgspec.structs.replace(room.left, breaks=(change,))
    room = msgspec.structs.replace(room, left=slope, right=slope)
    project = set_ridge_height(msgspec.structs.replace(loft(), room=room, walls=()), inches(142))
    assert project.room.left is not None
    assert project.room.left.pitch.text == "20 in 12"
    assert project.room.left.breaks[0].pitch.text == "6 in 12"
    assert ridge(project) == (120, 142)
    again = set_pitch(project, LEFT, 1, pitch("4 in 12"))
    assert again.room.left is not None
    assert again.room.left.breaks[0].pitch.text == "4 in 12"


def test_the_high_side_of_a_shed_turns_its_slope() -> None:
    # 60 to 160 over 200: 6 in 12.
    assert pitches(set_high_side(shed(), RIGHT, inches(160))) == ("6 in 12",)


@pytest.mark.parametrize(
    ("edit", "said"),
    [
        # The right slope is 288 high at the left eave; the ridge stays 1 mm off the wall.
        (lambda p: set_eave(p, LEFT, inches(300)), 'Left eave: 300" does not fit, the nearest'),
        (lambda p: set_eave(p, LEFT, inches(300)), 'is 287 7/8"'),
        (lambda p: set_eave(p, LEFT, inches(300)), "meet inside the room"),
        (lambda p: set_eave(p, RIGHT, inches(-2)), 'is 0"'),
        # What stops it first is the ceiling.
        (lambda p: set_ridge_height(p, inches(40)), 'is 108"'),
        (lambda p: set_ridge_height(p, inches(40)), "over the floor and under the ridge"),
        (lambda p: set_flat_ceiling(p, inches(170)), 'Flat ceiling: 170" does not fit'),
        (lambda p: set_flat_ceiling(p, inches(170)), 'is 168"'),
        # The wall of the loft ends at 132.
        (lambda p: set_width(p, inches(100)), "An end of wall B"),
    ],
)
def test_what_does_not_fit_is_refused_with_the_nearest_that_does(edit: Edit, said: str) -> None:
    project = loft()
    with pytest.raises(Beyond) as refusal:
        edit(project)
    assert said in wording_of(project).say(refusal.value.message)


@pytest.mark.parametrize(
    ("edit", "read", "nearest"),
    [
        (lambda p: set_eave(p, LEFT, inches(300)), lambda r: r.left.eave_height, 287.875),
        (lambda p: set_eave(p, RIGHT, inches(-2)), lambda r: r.right.eave_height, 0),
        (lambda p: set_flat_ceiling(p, inches(170)), lambda r: r.flat_ceiling, 168),
        (lambda p: set_flat_ceiling(p, inches(-1)), lambda r: r.flat_ceiling, 1 / 16),
        # Wall B ends at 132; it may end a millimetre outside, which is no whole sixteenth.
        (lambda p: set_width(p, inches(100)), lambda r: r.width, 132),
    ],
)
def test_the_nearest_is_at_hand(
    edit: Edit, read: Callable[[object], Length], nearest: float
) -> None:
    with pytest.raises(Beyond) as refusal:
        edit(loft())
    assert read(refusal.value.nearest.room).mm / INCH == pytest.approx(nearest)


def test_a_pitch_too_flat_for_a_ridge_is_refused() -> None:
    """From 48 to 120 at the right eave over 240: the left slope is over 72/240, 3.6 in 12."""
    project = set_eave(loft(), RIGHT, inches(120))
    with pytest.raises(Beyond) as refusal:
        set_pitch(project, LEFT, 0, pitch("3 in 12"))
    said = wording_of(project).say(refusal.value.message)
    # 3 10/16 is the first sixteenth over 3.6.
    assert "Left pitch: 3 in 12 does not fit, the nearest that does is 3 5/8 in 12." in said
    left = refusal.value.nearest.room.left
    assert left is not None
    assert left.pitch.text == "3 5/8 in 12"


def test_a_room_that_was_no_better_before_is_not_refused() -> None:
    """A left eave over the right slope: what a file states can be mended step by step."""
    room = US.room(240, (300, in_12(6)), (48, in_12(6)))
    project = msgspec.structs.replace(loft(), room=room, walls=())
    after = set_eave(project, LEFT, inches(290))
    assert after.room.left is not None
    assert after.room.left.eave_height == inches(290)


def test_what_is_not_there_cannot_be_shaped() -> None:
    with pytest.raises(LookupError, match="right"):
        set_eave(shed(), RIGHT, inches(50))
    with pytest.raises(LookupError, match="ridge"):
        set_ridge_height(shed(), inches(150))


def test_a_flat_ceiling_comes_in_and_goes() -> None:
    project = set_flat_ceiling(shed(), inches(90))
    assert project.room.flat_ceiling == inches(90)
    again = remove_part(project, "ceiling")
    assert again is not None
    assert again.room.flat_ceiling is None
    assert remove_part(again, "ceiling") is None
    assert remove_part(again, "eave/left") is None
    with pytest.raises(Beyond):
        set_flat_ceiling(shed(), inches(120))


def test_a_refusal_here_is_a_refusal_everywhere() -> None:
    assert issubclass(Beyond, Refusal)
