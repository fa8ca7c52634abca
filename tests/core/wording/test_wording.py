"""Messages said in the words of a catalogue and the numbers of a tape."""

import math

import pytest

from core.lengths import Length, System, Tape
from core.wording import CATALOGUES, Message, Mm, Rad, Wording, message

US = Wording("us", Tape.usual(System.INCH))
METRIC = Wording("metric", Tape.usual(System.METRIC))
FEET = Wording("us", Tape(System.INCH, Length.of_inches(1 / 16), feet=True))


def test_a_message_keeps_its_values_by_name() -> None:
    made = message("opening.range", low=Mm(25.4), high=Mm(50.8))
    assert made == Message("opening.range", (("low", Mm(25.4)), ("high", Mm(50.8))))


def test_messages_are_values() -> None:
    """The same message is equal and hashes alike, so that results can be compared and kept."""
    one, other = (message("wall.no-roof", letter="B") for _ in range(2))
    assert one == other
    assert len({one, other}) == 1


@pytest.mark.parametrize(
    ("wording", "expected"),
    [
        # 1452.5625 mm are 57.1875 in.; a length in a sentence has its unit.
        (US, 'from 57 3/16" to 64"'),
        (FEET, "from 4'-9 3/16\" to 5'-4\""),
        (METRIC, "from 1453 mm to 1626 mm"),
    ],
)
def test_lengths_follow_the_tape(wording: Wording, expected: str) -> None:
    assert wording.say(message("opening.range", low=Mm(1452.5625), high=Mm(1625.6))) == expected


@pytest.mark.parametrize(("wording", "expected"), [(US, '57 3/16"'), (METRIC, "1453")])
def test_a_bare_length(wording: Wording, expected: str) -> None:
    assert wording.length(1452.5625) == expected


def test_angles_are_said_in_degrees() -> None:
    assert US.say(message("cut.bevel", bevel=Rad(math.atan(9 / 12)))) == "bevel 36.9°"


@pytest.mark.parametrize(
    ("ranges", "expected"),
    [
        ((), ""),
        ((1,), "from 100 mm to 200 mm"),
        ((1, 3), "from 100 mm to 200 mm or from 300 mm to 400 mm"),
    ],
)
def test_messages_within_messages(ranges: tuple[int, ...], expected: str) -> None:
    inner = tuple(message("opening.range", low=Mm(100 * n), high=Mm(100 * n + 100)) for n in ranges)
    outer = message("opening.does-not-fit", opening="door", letter="B", left=Mm(50), ranges=inner)
    said = METRIC.say(outer)
    assert said.endswith(f"it fits {expected}.")
    assert METRIC.say(message("cut.both-ends", cut=message("cut.square"))) == "both square"


def test_values_are_said_as_they_are() -> None:
    """Braces and percent signs in what a person wrote are not read as places for values."""
    said = US.say(message("sheet.wall", letter="B", name="{letter} 100% {0}"))
    assert said.endswith("{letter} 100% {0}")


@pytest.mark.parametrize(
    ("message_id", "us", "metric"),
    [
        ("role.header", "header", "lintel"),
        ("role.stud", "stud", "stud"),
        ("role.top-plate", "top plate", "head plate"),
        ("cut.square", "square", "square"),
    ],
)
def test_metric_words_are_taken_where_they_differ(message_id: str, us: str, metric: str) -> None:
    assert (US.word(message_id), METRIC.word(message_id)) == (us, metric)


def test_what_is_in_no_catalogue() -> None:
    with pytest.raises(KeyError, match=r"stud\.none"):
        US.word("stud.none")
    with pytest.raises(KeyError, match=r"stud\.none"):
        US.say(message("stud.none"))
    with pytest.raises(KeyError, match="letter"):
        US.say(message("wall.no-roof"))


def test_there_is_no_other_catalogue() -> None:
    assert CATALOGUES == ("us", "metric")
    with pytest.raises(KeyError, match="de"):
        Wording("de", Tape.usual(System.METRIC))
