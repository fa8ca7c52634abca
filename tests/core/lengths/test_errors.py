"""The errors and their sentences."""

import pickle

import pytest

from core.lengths import LengthError, PitchError, Unit, parse, parse_pitch
from core.lengths.errors import refused, refused_pitch, shown
from core.lengths.sentences import SENTENCES, Reason


def test_an_error_carries_text_reason_and_sentence() -> None:
    error = refused(Reason.FRACTION_PARTS, "1.5/2")
    assert isinstance(error, ValueError)
    assert (error.text, error.reason) == ("1.5/2", "fraction-parts")
    assert str(error) == (
        "“1.5/2” has a fraction that is not made of two whole numbers; write it as in 3/8."
    )


def test_a_refused_pitch_can_be_caught_as_a_refused_length() -> None:
    assert isinstance(refused_pitch(Reason.PITCH_NO_RUN, "9 in 0"), LengthError)


@pytest.mark.parametrize("error", [refused(Reason.EMPTY, ""), refused_pitch(Reason.EMPTY, "")])
def test_an_error_survives_the_way_between_processes(error: LengthError) -> None:
    back = pickle.loads(pickle.dumps(error))
    assert type(back) is type(error)
    assert (back.text, back.reason, str(back)) == (error.text, error.reason, str(error))


def test_every_reason_has_one_sentence_with_a_remedy() -> None:
    assert set(SENTENCES) == set(Reason)
    for text in SENTENCES.values():
        assert text.endswith(".")
        assert ". " not in text
        assert text.count("; ") == 1


SHOWN = [
    ("5 yd", "5 yd"),
    (" 5\n yd\t", "5 yd"),
    ("\x00\ud800", "��"),
    ("{part}", "{part}"),
    ("x" * 40, "x" * 40),
    ("x" * 41, "x" * 39 + "…"),
]


@pytest.mark.parametrize(("text", "as_shown"), SHOWN)
def test_a_text_stands_on_one_line_of_a_sentence(text: str, as_shown: str) -> None:
    assert shown(text) == as_shown


def test_braces_in_a_text_are_left_alone() -> None:
    with pytest.raises(LengthError, match=r"“\{limit\}” has “\{”"):
        parse("{limit}", Unit.MM)
    with pytest.raises(PitchError, match=r"“\{text\}”"):
        parse_pitch("{text}", Unit.MM)
