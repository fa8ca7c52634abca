"""The words that go with a project."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length, System, Tape
from core.model import Habits, TradeWords
from gui.wordings import plain_wording, wording_of
from loft import loft


@pytest.mark.parametrize(
    ("system", "header", "length"),
    [(System.INCH, "header", '63 1/2"'), (System.METRIC, "lintel", "1613")],
)
def test_words_and_numbers_follow_the_project(system: System, header: str, length: str) -> None:
    habits = Habits(Tape.usual(system))
    words = wording_of(msgspec.structs.replace(loft(), system=system, habits=habits))
    assert words.word("role.header") == header
    assert words.length(1612.9) == length


@pytest.mark.parametrize(
    ("system", "stated", "header", "length"),
    [
        (System.INCH, TradeWords.METRIC, "lintel", '63 1/2"'),
        (System.METRIC, TradeWords.US, "header", "1613"),
        (System.METRIC, TradeWords.METRIC, "lintel", "1613"),
    ],
)
def test_stated_words_go_before_those_of_the_units(
    system: System, stated: TradeWords, header: str, length: str
) -> None:
    habits = Habits(Tape.usual(system), words=stated)
    words = wording_of(msgspec.structs.replace(loft(), system=system, habits=habits))
    assert (words.word("role.header"), words.length(1612.9)) == (header, length)


def test_the_persons_own_tape_is_used() -> None:
    tape = Tape(System.INCH, Length.of_inches(0.5), feet=True)
    words = wording_of(msgspec.structs.replace(loft(), habits=Habits(tape)))
    assert words.length(1612.9) == "5'-3 1/2\""


def test_the_same_habits_give_the_same_wording() -> None:
    assert wording_of(loft()) is wording_of(loft())


def test_before_there_is_a_project_there_are_words() -> None:
    assert plain_wording().word("command.file")
