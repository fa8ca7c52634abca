"""Totals of walls and of the job are counted from what follows from the project."""

from __future__ import annotations

from core.job import Totals, job_totals, wall_totals
from jobs import job


def test_of_a_wall() -> None:
    # The knee wall: both ends, and 24, 48, 72, 96 and 120 in. of its 144.
    knee = job("inch").results.wall("B")
    assert wall_totals(knee) == Totals(studs=7, cautions=0, unbuildable=0)


def test_a_door_that_does_not_fit_cannot_be_built() -> None:
    stair = wall_totals(job("inch").results.wall("C"))
    assert stair.unbuildable == 1
    assert stair.cautions >= stair.unbuildable


def test_of_a_wall_with_no_frame() -> None:
    nowhere = wall_totals(job("inch").results.wall("D"))
    assert nowhere.studs == 0
    assert nowhere.unbuildable >= 1


def test_of_the_job() -> None:
    results = job("inch").results
    walls = [wall_totals(result) for result in results.walls]
    assert job_totals(results) == Totals(
        sum(wall.studs for wall in walls),
        sum(wall.cautions for wall in walls),
        sum(wall.unbuildable for wall in walls),
    )
