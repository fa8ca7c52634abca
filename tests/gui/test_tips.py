"""The trade's words, explained where they stand."""

from __future__ import annotations

import pytest

from core.lengths import System, Tape
from core.wording import Wording
from gui.tips import WORDS, glossary, tip_for

US = Wording("us", Tape.usual(System.INCH))
METRIC = Wording("metric", Tape.usual(System.METRIC))


@pytest.mark.parametrize(
    ("text", "first_words"),
    [
        ("Sole plate", ["sole plate"]),
        ("Studs on center", ["stud", "on center"]),
        ("King studs and trimmers", ["king stud", "trimmer"]),
        ("The KNEE WALL", ["knee wall"]),
        # A part of another word is no word of the trade.
        ("Studio with a pitcher", []),
        ("Name", []),
        ("", []),
        # No more than three at once.
        ("stud, header, sill, rafter", ["stud", "header", "sill"]),
        # The longer word before its part, and each once.
        ("a rough opening, another rough opening", ["rough opening"]),
    ],
)
def test_the_words_of_a_text_are_explained_in_their_order(
    text: str, first_words: list[str]
) -> None:
    lines = [line for line in tip_for(text, US).split("\n") if line]
    assert [line.partition(":")[0] for line in lines] == first_words


def test_metric_wording_has_its_own_words() -> None:
    assert tip_for("Noggins between studs", METRIC).startswith("noggin: ")
    assert "lintel" in tip_for("lintel", METRIC)
    assert tip_for("noggin", US) == ""


@pytest.mark.parametrize("words", [US, METRIC], ids=["us", "metric"])
def test_every_word_is_in_the_glossary_by_the_alphabet(words: Wording) -> None:
    made = glossary(words)
    assert len(made) == len(WORDS)
    assert list(made) == sorted(made)
    for _, means in made:
        assert means.endswith(".")
