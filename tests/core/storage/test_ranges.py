"""Lengths and counts at the edges of their ranges."""

from __future__ import annotations

import pytest

from core.lengths import Length
from core.storage.ranges import above_zero, at_most, count_within, few_enough, mm_text, within


def sentences(faults: object) -> list[str]:
    return [str(fault) for fault in faults]  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    ("mm", "told"),
    [
        (0.001, []),
        (1000.0, []),
        (0.0, ["0 mm is not above zero; write more than zero."]),
        (-5.0, ["-5 mm is not above zero; write more than zero."]),
        (1000.5, ["1000.5 mm is more than 1000 mm; write 1000 mm or less."]),
    ],
)
def test_above_zero(mm: float, told: list[str]) -> None:
    assert sentences(above_zero(Length(mm), 1000.0, "a")) == told


@pytest.mark.parametrize(
    ("mm", "told"),
    [
        (50.0, []),
        (150.0, []),
        (49.0, ["49 mm is less than 50 mm; write 50 mm or more."]),
        (151.0, ["151 mm is more than 150 mm; write 150 mm or less."]),
    ],
)
def test_within(mm: float, told: list[str]) -> None:
    assert sentences(within(Length(mm), 50.0, 150.0, "a")) == told


def test_length_is_told_in_its_own_unit() -> None:
    told = sentences(within(Length.of_inches(-33), 0.0, 100.0, "a"))
    assert told == ["-33 in is less than 0; write 0 or more."]


def test_at_most_takes_anything_below() -> None:
    assert sentences(at_most(Length(-1000.0), 5.0, "a")) == []


@pytest.mark.parametrize(("count", "good"), [(0, False), (1, True), (4, True), (5, False)])
def test_count_within(count: int, good: bool) -> None:
    told = [] if good else [f"{count} is not from 1 to 4; write 1 to 4."]
    assert sentences(count_within(count, 1, 4, "a")) == told


@pytest.mark.parametrize(("count", "good"), [(0, True), (200, True), (201, False)])
def test_few_enough(count: int, good: bool) -> None:
    told = [] if good else ["201 are more than the 200 that may be here; take some out."]
    assert sentences(few_enough((1,) * count, 200, "a")) == told


def test_limit_in_a_sentence() -> None:
    assert (mm_text(300.0), mm_text(0.0)) == ("300 mm", "0")
