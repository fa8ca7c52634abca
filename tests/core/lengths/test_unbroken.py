"""No line ends within a length: a fraction carried to the next line would be overlooked."""

from __future__ import annotations

import pytest

from core.lengths import unbroken


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ('has to be 3 7/8" wide', ["has", "to", "be", '3~7/8"', "wide"]),
        ("at 17' 2 11/16\", then", ["at", "17'~2~11/16\",", "then"]),
        ("7' 10\" @ 6'", ["7'~10\"", "@", "6'"]),
        ("from 3 1/2 in on", ["from", "3~1/2~in", "on"]),
        ("nearest 1 mm; 23 lb.", ["nearest", "1~mm;", "23~lb."]),
        # What is no length stays as it is.
        ("turn 1 of 5 inside", ["turn", "1", "of", "5", "inside"]),
        ("B8 7 studs", ["B8", "7", "studs"]),
    ],
)
def test_words_between_which_a_line_may_end(text: str, words: list[str]) -> None:
    assert unbroken(text).split(" ") == [word.replace("~", "\u00a0") for word in words]
