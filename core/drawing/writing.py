"""Writing on the paper itself: lines of text, wrapped texts, and a ruled table."""

import re

from core.drawing.elements import XY, Align, Drawing, Element, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.table import HEADS, Row
from core.drawing.typeface import text_width
from core.lengths import HARD, unbroken
from core.wording import Wording

SIZE = 3.5
"""The size of small text, mm: capitals 2.5 mm high."""

LINE = 4.2
"""From one line to the next, mm."""

BLANK = 15.0
"""The width of the column left blank for measured lengths, mm."""

PAD = 1.0
"""Beside the text of a cell, mm."""

LABELS = 48.0
"""The most that labels of pieces alike may take up in a line of the table, mm."""


_BLANKS = re.compile(r"[ \t\n]+")


def wrapped(text: str, width: float, *, bold: bool = False) -> list[str]:
    """A text broken at its blanks into lines no wider than `width` mm of narrow small text.

    No line ends within a length.
    """
    lines: list[str] = []
    for word in (w.replace(HARD, " ") for w in _BLANKS.split(unbroken(text)) if w):
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and text_width(longer, SIZE, bold, narrow=True) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def shortened(text: str, width: float, size: float = SIZE, *, bold: bool = False) -> str:
    """A narrow text cut off with an ellipsis where it is wider than `width` mm."""
    if text_width(text, size, bold, narrow=True) <= width:
        return text
    while text and text_width(f"{text}…", size, bold, narrow=True) > width:
        text = text[:-1]
    return f"{text.rstrip()}…"


def block(lines: list[str], at: XY, *, pen: Pen = Pen.NOTE, bold: bool = False) -> Drawing:
    """Lines of narrow small text under each other; `at` is the foot of the first."""
    return tuple(
        Text(line, (at[0], at[1] - n * LINE), SIZE, pen, bold=bold, narrow=True)
        for n, line in enumerate(lines)
    )


def rule(start: XY, end: XY, pen: Pen = Pen.RULE) -> Stroke:
    """A straight rule."""
    return Stroke((start, end), pen)


def broken(rows: tuple[Row, ...]) -> tuple[Row, ...]:
    """The rows, those with many labels carried on in rows that hold nothing else."""
    lines: list[Row] = []
    for row in rows:
        first, *others = wrapped(row.cells[0], LABELS, bold=True)
        rest = ("",) * (len(row.cells) - 1)
        lines.append(Row(row.keys, (first, *row.cells[1:]), bool(others)))
        lines += [Row((), (other, *rest), other is not others[-1]) for other in others]
    return tuple(lines)


def column_widths(rows: tuple[Row, ...], wording: Wording) -> tuple[float, ...]:
    """The widths the cells of the table ask for, mm."""
    heads = [wording.word(head) for head in HEADS]
    widths = []
    for n, head in enumerate(heads):
        texts = [head, *(row.cells[n] for row in rows)]
        widths.append(max(text_width(t, SIZE, True, narrow=True) for t in texts) + 2 * PAD)
    widths[-1] = max(widths[-1], BLANK)
    return tuple(widths)


def table(
    rows: tuple[Row, ...], widths: tuple[float, ...], top_left: XY, wording: Wording
) -> Drawing:
    """A ruled table with its heads, downward from its top left corner; one LINE a row."""
    x0, y0 = top_left
    edges = [x0]
    for width in widths:
        edges.append(edges[-1] + width)
    drawing: list[Element] = []
    head = Row((), tuple(wording.word(h) for h in HEADS))
    for n, row in enumerate((head, *rows)):
        foot = y0 - (n + 1) * LINE
        drawing += _cells(row.cells, edges, foot, head=n == 0)
        if not row.goes_on or n == len(rows):
            drawing.append(rule((x0, foot), (edges[-1], foot)))
    bottom = y0 - (len(rows) + 1) * LINE
    drawing += [rule((x, y0), (x, bottom)) for x in edges]
    drawing.append(rule((x0, y0), (edges[-1], y0)))
    return tuple(drawing)


def _cells(cells: tuple[str, ...], edges: list[float], foot: float, *, head: bool) -> Drawing:
    """Texts to the left of their cells; the two lengths to the right and bold."""
    drawing = []
    for n, cell in enumerate(cells):
        if cell:
            right = n in (2, 3)
            x = edges[n + 1] - PAD if right else edges[n] + PAD
            align = Align.END if right else Align.START
            bold = head or right or n == 0
            at = (x, foot + 0.95)
            drawing.append(Text(cell, at, SIZE, Pen.NOTE, align=align, bold=bold, narrow=True))
    return tuple(drawing)
