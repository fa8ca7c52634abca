"""Writing on the paper itself: lines, wrapped texts, a ruled table."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing import Align, Stroke, Text
from core.drawing.table import HEADS, Row
from core.drawing.typeface import text_width
from core.drawing.writing import (
    BLANK,
    LABELS,
    LINE,
    PAD,
    SIZE,
    block,
    broken,
    column_widths,
    rule,
    shortened,
    table,
    wrapped,
)
from core.lengths import System, Tape
from core.wording import Wording

WORDS = Wording("us", Tape.usual(System.INCH))


def width(text: str, *, bold: bool = False) -> float:
    """The width of narrow small text, mm."""
    return text_width(text, SIZE, bold, narrow=True)


# Narrow figures are 488 of 1000 units wide, the blank 230: "11" is 3.416 mm, "11 11" 7.637.
@pytest.mark.parametrize(
    ("text", "wide", "expected"),
    [
        ("", 20.0, []),
        ("11", 3.5, ["11"]),
        ("11 11", 7.7, ["11 11"]),
        ("11 11", 7.6, ["11", "11"]),
        ("11 11 11", 7.7, ["11 11", "11"]),
        ("  11   11 ", 7.7, ["11 11"]),
        # A word too wide for any line stands on one of its own.
        ("1 11111 1", 4.0, ["1", "11111", "1"]),
    ],
)
def test_wrapped(text: str, wide: float, expected: list[str]) -> None:
    assert wrapped(text, wide) == expected


@given(st.lists(st.text("abW1", min_size=1, max_size=6), max_size=20), st.floats(15.0, 80.0))
def test_wrapped_keeps_every_word_in_its_order(words: list[str], wide: float) -> None:
    lines = wrapped(" ".join(words), wide)
    assert " ".join(lines).split() == words
    assert all(width(line) <= wide for line in lines)
    # No line could have taken the first word of the next as well.
    for line, following in pairwise(lines):
        assert width(f"{line} {following.split()[0]}") > wide


@pytest.mark.parametrize(
    ("text", "wide", "expected"),
    [
        ("11111", 8.6, "11111"),  # 8.54 mm
        ("11111", 8.5, "111…"),  # the ellipsis has 576 units: 3 * 1.708 + 2.016 = 7.14
        ("11 11", 7.6, "11…"),  # no blank before the ellipsis
        ("", 5.0, ""),
    ],
)
def test_shortened(text: str, wide: float, expected: str) -> None:
    assert shortened(text, wide) == expected


@given(st.text("abcW 1", max_size=30), st.floats(5.0, 60.0), st.booleans())
def test_shortened_fits(text: str, wide: float, bold: bool) -> None:
    short = shortened(text, wide, 5.6, bold=bold)
    assert text_width(short, 5.6, bold, narrow=True) <= wide
    assert short == text or text.startswith(short[:-1])


def test_block() -> None:
    """Lines go down from the first by 4.2 mm."""
    one, two = block(["above", "below"], (10.0, 50.0), bold=True)
    assert isinstance(one, Text)
    assert isinstance(two, Text)
    assert [(t.text, t.at) for t in (one, two)] == [
        ("above", (10.0, 50.0)),
        ("below", (10.0, 50.0 - 4.2)),
    ]
    assert (one.size, one.bold, one.narrow) == (3.5, True, True)


def test_rule() -> None:
    assert rule((0, 1), (2, 3)).points == ((0, 1), (2, 3))


ROWS = (
    Row(("A/sole",), ("A9", "sole plate", '96"', "", "square", "")),
    Row(("A/end/left",), ("A1", "stud", '57 3/4"', '56 5/8"', "bevel 36.9°", "")),
)


def test_columns_are_as_wide_as_their_widest_cell() -> None:
    """A bold text and a mm on either side; the last column is left to write in."""
    widest = ["Piece", "sole plate", '57 3/4"', '56 5/8"', "Saw, from square", "Measured"]
    expected = [width(text, bold=True) + 2 for text in widest]
    assert column_widths(ROWS, WORDS) == pytest.approx(expected)
    assert column_widths(ROWS, WORDS)[-1] >= BLANK
    assert [WORDS.word(head) for head in HEADS] == ["Piece", "What", "Long", "Short", *widest[4:]]


def test_a_table() -> None:
    """Three lines of 4.2 mm down from (8, 100); the lengths to the right of their columns."""
    widths = (20.0, 30.0, 15.0, 15.0, 40.0, 20.0)
    drawing = table(ROWS, widths, (8.0, 100.0), WORDS)
    texts = {t.text: t for t in drawing if isinstance(t, Text)}
    feet = {name: texts[name].at[1] for name in ("Piece", "A9", "A1")}
    assert feet == pytest.approx({n: 100 - k * LINE + 0.95 for k, n in enumerate(feet, start=1)})
    assert (texts["A1"].at[0], texts["A1"].align) == (8 + PAD, Align.START)
    assert (texts['57 3/4"'].at[0], texts['57 3/4"'].align) == (8 + 65 - PAD, Align.END)
    assert (texts['56 5/8"'].at[0], texts['56 5/8"'].align) == (8 + 80 - PAD, Align.END)
    assert [t.text for t in texts.values() if not t.bold] == [
        "sole plate",
        "square",
        "stud",
        "bevel 36.9°",
    ]


def _rules(rows: tuple[Row, ...]) -> list[float]:
    """The heights of the level rules of a table whose top is at 100 mm."""
    drawing = table(rows, (20.0,) * 6, (8.0, 100.0), WORDS)
    strokes = [s.points for s in drawing if isinstance(s, Stroke)]
    return sorted({a[1] for a, b in strokes if a[1] == b[1]}, reverse=True)


def test_a_table_is_ruled_around_every_row() -> None:
    assert _rules(ROWS) == pytest.approx([100, 100 - LINE, 100 - 2 * LINE, 100 - 3 * LINE])


def test_a_row_that_goes_on_is_not_ruled_off() -> None:
    """But a table is closed at its foot, whatever it ends with."""
    first = Row(("A/1",), ("9 × A1,", "stud", '80"', "", "square", ""), goes_on=True)
    second = Row((), ("A3", "", "", "", "", ""))
    assert _rules((first, second)) == pytest.approx([100, 100 - LINE, 100 - 3 * LINE])
    assert _rules((first,)) == pytest.approx([100, 100 - LINE, 100 - 2 * LINE])


def test_few_labels_need_no_more_rows() -> None:
    assert broken(ROWS) == ROWS


def test_many_labels_go_on_in_the_next_row() -> None:
    labels = [f"D{n}" for n in range(10, 50, 2)]
    row = Row(tuple(labels), (f"20 × {', '.join(labels)}", "cripple", '9"', "", "square", ""))
    lines = broken((row, ROWS[0]))
    assert " ".join(line.cells[0] for line in lines[:-1]) == row.cells[0]
    assert all(width(line.cells[0], bold=True) <= LABELS for line in lines)
    assert lines[0].keys == row.keys
    assert lines[0].cells[1:] == row.cells[1:]
    assert all(line.keys == () and not any(line.cells[1:]) for line in lines[1:-1])
    assert [line.goes_on for line in lines] == [True] * (len(lines) - 2) + [False, False]
    assert lines[-1] == ROWS[0]


def test_no_line_ends_within_a_length() -> None:
    # "at 17' 2" would fit in the first line, but the fraction goes with its inches.
    text = "at 17' 2 11/16\""
    lines = wrapped(text, width("at 17' 2") + 0.1)
    assert lines == ["at", "17' 2 11/16\""]
