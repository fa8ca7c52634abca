"""How a working is printed: terms to 1/64 in. or 0.1 mm, and the rounding to the tape last."""

from __future__ import annotations

import math

import pytest

from core.framing import Term, Unit, Working, degrees, printed
from core.lengths import Length, System, Tape
from core.wording import Wording, message

INCH = 25.4
US = Wording("us", Tape.usual(System.INCH))
UK = Wording("metric", Tape.usual(System.METRIC))
TITLE = message("working.tip-to-tip")


def sum_of(*values: float, unit: Unit = Unit.LENGTH) -> Working:
    names = ("working.head", "working.header", "working.sole", "working.gap")
    terms = (Term(message(name), v, unit) for name, v in zip(names, values, strict=False))
    return Working(TITLE, tuple(terms), unit)


@pytest.mark.parametrize(
    ("wording", "each", "values", "lines", "result"),
    [
        # 80 - 1 1/2 is on the tape: nothing is rounded.
        (US, INCH, (80.0, -1.5), ['80"', '− 1 1/2"'], '78 1/2"'),
        # 54 31/48 is 54.6458: 41/64 is 54.6406, 1/16 gives 54 5/8.
        (US, INCH, (57.0, -2.354166), ['57"', '− 2 23/64"', '− 1/64"'], '54 5/8"'),
        # Each term is a third of a 64th over: the lines say 3 1/64 for 3 1/64.
        (US, INCH, (1 + 1 / 192,) * 3, ['1"', '+ 1"', '+ 1"'], '3"'),
        (UK, 1.0, (2000.04, -38.04, -0.26), ["2000", "− 38", "− 0.3", "+ 0.3"], "1962"),
        # What is taken off first has its sign as well.
        (UK, 1.0, (-38.0, 100.0), ["− 38", "+ 100"], "62"),
    ],
)
def test_lines_add_up_as_they_are_printed(
    wording: Wording, each: float, values: tuple[float, ...], lines: list[str], result: str
) -> None:
    shown = printed(sum_of(*(value * each for value in values)), wording)
    assert [line.text for line in shown.lines] == lines
    assert shown.result == result
    assert sum(line.steps for line in shown.lines) == shown.steps


def test_the_last_line_is_the_rounding() -> None:
    shown = printed(sum_of(57.0 * INCH, -2.354166 * INCH), US)
    assert [line.name for line in shown.lines] == [
        "head of the opening above the subfloor",
        "header over it",
        "rounding to the tape",
    ]


def test_feet_stay_feet() -> None:
    tape = Tape(System.INCH, Length.of_inches(1 / 16), feet=True)
    shown = printed(sum_of(80.0 * INCH, -1.5 * INCH), Wording("us", tape))
    assert [line.text for line in shown.lines] == ["6'-8\"", '− 1 1/2"']
    assert shown.result == "6'-6 1/2\""


def test_pieces_are_counted() -> None:
    shown = printed(sum_of(2, 9, unit=Unit.COUNT), US)
    assert [line.text for line in shown.lines] == ["2", "+ 9"]
    assert (shown.result, shown.steps) == ("11", 11)


def test_an_angle_is_worked_in_steps() -> None:
    steps = (
        Term(message("working.rises", rise="9"), 0.75, Unit.RATIO),
        Term(message("working.bevel", ratio="0.7500"), math.atan(0.75), Unit.ANGLE),
    )
    shown = printed(Working(message("working.bevel-title"), steps, Unit.ANGLE), US)
    assert shown.text.splitlines() == [
        "Bevel",
        "the roof rises 9 in 12\t0.7500",
        "bevel: arctan 0.7500\t36.87°",
        "=\t36.9°",
    ]


@pytest.mark.parametrize(
    ("radians", "text"),
    [(math.atan(0.75), "36.87°"), (math.radians(45), "45°"), (math.radians(7.1254), "7.125°")],
)
def test_degrees_to_work_on_with(radians: float, text: str) -> None:
    assert degrees(radians) == text


def test_a_finer_tape_is_the_same_tape() -> None:
    tape = Tape(System.INCH, Length.of_inches(1 / 8), feet=True)
    assert tape.finest == Tape(System.INCH, Length.of_inches(1 / 64), feet=True)
    assert tape.steps(25.4) == 8
    assert tape.finest.steps(-25.4) == -64
    assert Tape.usual(System.METRIC).finest.steps(38.04) == 380


@pytest.mark.parametrize(
    ("wording", "kg", "lines", "result"),
    [
        # 20.42, 3.06 and 4.08 lb make 27.56, which is shown as 28 lb.
        (US, (9.2624, 1.388, 1.8506), ["20.4", "+ 3.1", "+ 4.1", "+ 0.4"], "28 lb"),
        (UK, (9.26, 1.39), ["9.3", "+ 1.4", "+ 0.3"], "11 kg"),
        # Under ten a weight is shown to a tenth.
        (UK, (4.04, 1.04), ["4.0", "+ 1.0", "+ 0.1"], "5.1 kg"),
    ],
)
def test_weights_add_up_to_a_tenth(
    wording: Wording, kg: tuple[float, ...], lines: list[str], result: str
) -> None:
    shown = printed(sum_of(*kg, unit=Unit.WEIGHT), wording)
    assert [line.text for line in shown.lines] == lines
    assert shown.result == result
    assert sum(line.steps for line in shown.lines) == shown.steps
