"""Lengths, pitches and choices as they stand in a file."""

from __future__ import annotations

import pytest

from core.lengths import Length, Pitch, Unit
from core.model import Side
from core.storage.faults import Faults
from core.storage.scalars import choice, length, pitch
from core.storage.shapes import Choice


def only_fault(faults: Faults) -> str:
    (fault,) = faults.found
    assert fault.place == "a.b"
    return str(fault)


@pytest.mark.parametrize(
    ("text", "stated"),
    [
        ("16 in", Length.of_inches(16)),
        ('16"', Length.of_inches(16)),
        ("3/16 in", Length.of_inches(3 / 16)),
        ("-3 1/2 in", Length.of_inches(-3.5)),
        ("5'", Length.of_inches(60, Unit.FEET)),
        ("5' 3 1/2", Length.of_inches(63.5, Unit.FEET)),
        ("2438 mm", Length(2438.0)),
        ("160 cm", Length(1600.0, Unit.CM)),
        ("1,6 m", Length(1600.0, Unit.M)),
        ("0 mm", Length(0.0)),
    ],
)
def test_length_with_its_unit(text: str, stated: Length) -> None:
    faults = Faults(10)
    assert length(text, "a.b", faults) == stated
    assert not faults


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("16", "“16” has no unit; write 16 in or 16 mm."),
        ("1613,5", "“1613,5” has no unit; write 1613 1/2 in or 1613.5 mm."),
        ("0", "“0” has no unit; write 0 in or 0 mm."),
        # Millimetres are not written with fractions, so only inches can be meant.
        ("63 1/2", "“63 1/2” has no unit; write 63 1/2 in."),
        ("", "Nothing is written here; write a length such as 5' 3 1/2\" or 1613 mm."),
        (
            "16 foo",
            "“16 foo” has “foo”, which is not a unit known here; write in, ft, mm, cm or m, as in"
            " 63 1/2 in.",
        ),
    ],
)
def test_length_refused(text: str, sentence: str) -> None:
    faults = Faults(10)
    length(text, "a.b", faults)
    assert only_fault(faults) == sentence


@pytest.mark.parametrize(
    ("text", "stated"),
    [
        ("9 in 12", Pitch(0.75, "9 in 12")),
        ("150 mm / 250 mm", Pitch(0.6, "150 mm / 250 mm")),
        ("33 in at 0 in, 69 in at 48 in", Pitch(0.75, "33 in at 0 in, 69 in at 48 in")),
        ("0 in 12", Pitch(0.0, "0 in 12")),
    ],
)
def test_pitch(text: str, stated: Pitch) -> None:
    faults = Faults(10)
    assert pitch(text, "a.b", faults) == stated
    assert not faults


@pytest.mark.parametrize(
    ("text", "start"),
    [
        ("33 at 0, 69 at 48", "“33 at 0, 69 at 48” has heights without a unit; write them as in"),
        ("85°", "“85°” is 80 degrees or steeper"),
        ("", "Nothing is written here; write a pitch such as"),
        ("steep", "“steep”"),
    ],
)
def test_pitch_refused(text: str, start: str) -> None:
    faults = Faults(10)
    pitch(text, "a.b", faults)
    assert only_fault(faults).startswith(start)


def test_choice() -> None:
    faults = Faults(10)
    assert choice(Choice(Side), "right", "a.b", faults) is Side.RIGHT
    assert not faults


@pytest.mark.parametrize("text", ["Left", "LEFT", "middle", "", " left"])
def test_choice_refused_with_what_may_be_written(text: str) -> None:
    faults = Faults(10)
    assert choice(Choice(Side), text, "a.b", faults) is None
    assert only_fault(faults) == f"“{text.strip()}” is no choice here; write “left” or “right”."
