"""Pitches as people would write them."""

from __future__ import annotations

import pytest

from core.lengths import System, Unit, parse_pitch
from core.model import Project
from gui.edits.pitches import FINE, WHOLE, next_whole, of_rise_and_run, stepped
from loft import loft
from walls import UK, at_degrees

INCH = 25.4
METRIC = Project("metric", System.METRIC, UK.room(6000, (800, at_degrees(40))))


@pytest.mark.parametrize(
    ("tangent", "system", "parts", "text"),
    [
        (0.76, System.INCH, 2, "9 in 12"),
        # 12 * 0.78 = 9.36: halves give 9 1/2, sixteenths 9 6/16.
        (0.78, System.INCH, 2, "9 1/2 in 12"),
        (0.78, System.INCH, 16, "9 3/8 in 12"),
        # atan 0.8 = 38.66 degrees.
        (0.8, System.METRIC, 1, "39°"),
        (0.8, System.METRIC, 10, "38.7°"),
        # The steepest below 80 degrees: 12 tan 80 = 68.06.
        (100.0, System.INCH, 2, "68 in 12"),
        (100.0, System.METRIC, 1, "79°"),
        (0.0, System.METRIC, 1, "0°"),
    ],
)
def test_the_nearest_pitch(tangent: float, system: System, parts: int, text: str) -> None:
    assert stepped(tangent, system, parts).text == text


@pytest.mark.parametrize(
    ("text", "system", "way", "after"),
    [
        ("9 in 12", System.INCH, 1, "9 1/2 in 12"),
        ("9 in 12", System.INCH, -1, "8 1/2 in 12"),
        ("9 3/8 in 12", System.INCH, 1, "9 1/2 in 12"),
        ("38.5°", System.METRIC, -1, "38°"),
        # There is nothing flatter than level, and nothing from 80 degrees on.
        ("0°", System.METRIC, -1, "0°"),
        ("79°", System.METRIC, 1, "79°"),
    ],
)
def test_the_next_whole_pitch(text: str, system: System, way: int, after: str) -> None:
    pitch = parse_pitch(text, Unit.MM)
    assert next_whole(pitch, system, way, WHOLE[system]).text == after


@pytest.mark.parametrize(
    ("project", "rise", "run", "text"),
    [
        (loft(), 108 * INCH, 144 * INCH, "9 in 12"),
        (loft(), 107 * INCH, 144 * INCH, "107 in / 144 in"),
        (METRIC, 2500.0, 2500.0, "45°"),
        (METRIC, 2501.0, 3000.0, "2501 mm / 3000 mm"),
    ],
)
def test_rise_over_run(project: Project, rise: float, run: float, text: str) -> None:
    pitch = of_rise_and_run(project, rise, run)
    assert pitch.text == text
    assert pitch.tangent == pytest.approx(rise / run)


# Falling; straight up; the wrong way; steeper than 80 degrees, whose tangent is 5.67.
@pytest.mark.parametrize(
    ("rise", "run"), [(-1.0, 100.0), (100.0, 0.0), (100.0, -5.0), (600.0, 100.0)]
)
def test_no_roof(rise: float, run: float) -> None:
    with pytest.raises(ValueError, match=r"slope|roof"):
        of_rise_and_run(loft(), rise, run)


def test_fine_pitches_are_finer_than_whole_ones() -> None:
    assert all(
        FINE[system] % WHOLE[system] == 0 < WHOLE[system] < FINE[system] for system in System
    )
