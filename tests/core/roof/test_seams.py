"""Where the roof turns, steps, and has a given height, seen from above; inches."""

from __future__ import annotations

import msgspec
import pytest

from core.model import Dormer, DormerKind, PitchBreak, Room, Side, Wing
from core.roof import contour, roof_of, seams
from walls import US, in_12

Lines = set[tuple[tuple[float, float], tuple[float, float]]]

GABLE = US.room(240.0, (48.0, in_12(12)), (48.0, in_12(12)), length=400.0)
"""Rises from 48 to 168 at u = 120."""

SLOPE = US.slope(48.0, in_12(12))

SHED = US.room(240.0, (48.0, in_12(6)), length=400.0)


def ground(
    room: Room, *more: tuple[float, float, float, float]
) -> tuple[tuple[tuple[float, float], ...], ...]:
    rects = ((0.0, 0.0, US.of(room.width.mm), US.of(room.length.mm)), *more)
    return tuple(
        tuple((u * 25.4, v * 25.4) for u, v in ((a, b), (c, b), (c, d), (a, d)))
        for a, b, c, d in rects
    )


def inches(lines: tuple[tuple[tuple[float, float], tuple[float, float]], ...]) -> Lines:
    """The lines in whole inches, each from its lower end, -0 told as 0."""
    ends = (
        sorted((round(u / 25.4) + 0.0, round(v / 25.4) + 0.0) for u, v in line) for line in lines
    )
    return {(a, b) for a, b in ends}


@pytest.mark.parametrize(
    ("room", "wanted"),
    [
        (GABLE, {((120, 0), (120, 400))}),
        (SHED, set()),
        # A hip of the same pitch: from both corners at 45 degrees to the ridge 120 in.
        (
            msgspec.structs.replace(GABLE, start_hip=SLOPE),
            {((0, 0), (120, 120)), ((120, 120), (240, 0)), ((120, 120), (120, 400))},
        ),
        # A gambrel on the left turns 60 in from the eave, at 108; at 3 in 12 it is at 168 only
        # 240 further on, so it meets the right slope at u + u/4 ... : 93 + u/4 = 288 - u, u = 156.
        (
            msgspec.structs.replace(
                GABLE,
                left=msgspec.structs.replace(
                    SLOPE, breaks=(PitchBreak(US.length(60.0), in_12(3)),)
                ),
            ),
            {((60, 0), (60, 400)), ((156, 0), (156, 400))},
        ),
    ],
)
def test_ridges_hips_and_changes_of_pitch(room: Room, wanted: Lines) -> None:
    assert inches(seams(roof_of(room), ground(room))) == wanted


def test_a_dormer_has_a_valley_or_its_like_and_two_cheeks() -> None:
    # A shed dormer from 100 to 200 along, its front 12 in from the eave, 4 in. thick: 84 high at
    # u = 12, rising 3 in 12 to where it meets 48 + u: 81 + u/4 = 48 + u, u = 44.
    start, width, face, depth, high = map(US.length, (100.0, 100.0, 12.0, 4.0, 84.0))
    shed = DormerKind.SHED
    dormer = Dormer("dormer-1", shed, Side.LEFT, start, width, face, depth, high, in_12(3))
    room = msgspec.structs.replace(GABLE, dormers=(dormer,))
    found = inches(seams(roof_of(room), ground(room)))
    cheeks = {((8, 100), (44, 100)), ((8, 200), (44, 200))}
    front = {((8, 100), (8, 200))}
    assert found == {((120, 0), (120, 400)), ((44, 100), (44, 200)), *cheeks, *front}


def test_a_wing_meets_the_room_in_two_valleys() -> None:
    # Out of the right side from 100 to 220 along, both eaves 48, 12 in 12: its ridge at 160 is 108
    # high and meets the room's slope, 288 - u, at u = 180; the valleys run there from the corners.
    start, width, reach = map(US.length, (100.0, 120.0, 60.0))
    wing = Wing("wing-1", Side.RIGHT, start, width, reach, SLOPE, SLOPE)
    room = msgspec.structs.replace(GABLE, wings=(wing,))
    found = inches(seams(roof_of(room), ground(room, (240.0, 100.0, 300.0, 220.0))))
    assert {((180, 160), (240, 100)), ((180, 160), (240, 220)), ((180, 160), (300, 160))} <= found


@pytest.mark.parametrize(
    ("height", "wanted"),
    [
        (60.0, {((12, 0), (12, 400)), ((228, 0), (228, 400))}),
        (48.0, {((0, 0), (0, 400)), ((240, 0), (240, 400))}),
        (40.0, set()),
        (200.0, set()),
    ],
)
def test_a_height_is_a_line_on_every_slope(height: float, wanted: Lines) -> None:
    assert inches(contour(roof_of(GABLE), height * 25.4, ground(GABLE))) == wanted


def test_a_height_turns_the_corner_under_a_hip() -> None:
    room = msgspec.structs.replace(GABLE, start_hip=SLOPE)
    # 60 high is 12 in from every eave: from the gable wall at the end to 12 in from the hip's.
    wanted = {((12, 12), (12, 400)), ((12, 12), (228, 12)), ((228, 12), (228, 400))}
    assert inches(contour(roof_of(room), 60 * 25.4, ground(room))) == wanted
