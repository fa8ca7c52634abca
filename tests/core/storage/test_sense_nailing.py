"""The sense of a schedule of nails: one table for each rule."""

from __future__ import annotations

import pytest

from core.lengths import Length
from core.model import Joint, Nailing
from core.storage.sense_nailing import nailing_faults

SOLE = Joint.STUD_TO_SOLE


@pytest.mark.parametrize(
    "row",
    [
        Nailing(SOLE),
        Nailing(SOLE, nail="16d common", count=1),
        Nailing(SOLE, nail="x" * 60, count=100, every=Length.of_inches(16)),
    ],
)
def test_rows_that_make_sense(row: Nailing) -> None:
    assert list(nailing_faults((row,), "n")) == []


@pytest.mark.parametrize(
    ("row", "place", "reason"),
    [
        (Nailing(SOLE, nail=" "), "n[0].nail", "“” does not do for the name of a nail"),
        (Nailing(SOLE, count=0), "n[0].count", "0 is not from 1 to 100"),
        (Nailing(SOLE, count=101), "n[0].count", "101 is not from 1 to 100"),
        (Nailing(SOLE, every=Length(10.0)), "n[0].every", "10 mm is less than 50 mm"),
    ],
)
def test_rows_that_make_none(row: Nailing, place: str, reason: str) -> None:
    (found,) = nailing_faults((row,), "n")
    assert (found.place, found.reason) == (place, reason)


def test_a_joint_stands_in_it_once() -> None:
    (found,) = nailing_faults((Nailing(SOLE), Nailing(SOLE)), "n")
    assert found.place == "n[1].joint"
    assert found.reason == "“stud to sole plate” is in this list already"
