"""The sentences of this room, and faults made of them."""

from __future__ import annotations

import string

import pytest

from core.lengths import LengthError, PitchError, Unit, parse, parse_pitch
from core.storage.faults import Fault
from core.storage.sentences import SENTENCES, Why, fault, stated_fault


def names_in(text: str) -> set[str]:
    return {name for _, name, _, _ in string.Formatter().parse(text) if name}


def test_every_reason_has_its_sentence() -> None:
    assert set(SENTENCES) == set(Why)


@pytest.mark.parametrize("why", Why)
def test_reason_and_remedy_are_clauses_that_join_to_one_sentence(why: Why) -> None:
    for clause in SENTENCES[why]:
        assert clause
        assert not clause.endswith((".", ";", " "))
        assert "; " not in clause
        assert "\n" not in clause


@pytest.mark.parametrize("why", Why)
def test_values_all_find_their_place(why: Why) -> None:
    reason, remedy = SENTENCES[why]
    values = {name: f"<{name}>" for name in names_in(reason) | names_in(remedy)}
    told = fault("project.name", why, **values)
    assert told.place == "project.name"
    assert all(value in told.reason + told.remedy for value in values.values())
    assert not names_in(told.reason + told.remedy)


def test_what_others_wrote_is_shortened_and_what_we_wrote_is_not() -> None:
    long = "left or " * 20
    told = fault("project.system", Why.BAD_CHOICE, text="x\n" * 100, allowed=long)
    assert told.remedy == f"write {long}"
    assert "\n" not in told.reason
    assert len(told.reason) < 90


def test_what_the_system_said_is_shortened_too() -> None:
    told = fault("", Why.READING_FAILED, detail="no\nway " * 100)
    assert "\n" not in told.reason
    assert len(told.reason) < 90


def test_sentence_of_a_length_is_parted_at_its_remedy() -> None:
    with pytest.raises(LengthError) as refused:
        parse("16 foo; bar", Unit.MM)
    told = stated_fault("project.room.width", refused.value.sentence)
    assert told.reason.startswith("“16 foo; bar” has")
    assert told.remedy.startswith("write ")
    assert str(told) == refused.value.sentence


def test_sentence_of_a_pitch_is_parted_at_its_remedy() -> None:
    with pytest.raises(PitchError) as refused:
        parse_pitch("85°", Unit.MM)
    told = stated_fault("project.room.left.pitch", refused.value.sentence)
    assert told.remedy.startswith("write the rise first")


def test_sentence_without_a_remedy_gets_one() -> None:
    assert stated_fault("a", "It is wrong.") == Fault("a", "It is wrong", "write another value")
