"""What stands on a page of paper, in mm from its lower left corner, worked out apart from core."""

from __future__ import annotations

import math
import re
from collections import Counter
from collections.abc import Iterator

from shapely import Polygon, STRtree

from core.drawing import Align, Dimension, Fill, Pen, Stroke, Text
from core.drawing.dimension import dimension_parts
from core.drawing.page import Page, Placed
from core.drawing.typeface import cap_height, text_width
from core.framing import Mark, Role
from core.job import Results, WallResult
from core.lengths import System
from core.wording import Wording

XY = tuple[float, float]


def wording_for(results: Results) -> Wording:
    """The usual words of the project's system, on its own tape."""
    catalogue = "us" if results.project.system is System.INCH else "metric"
    return Wording(catalogue, results.project.habits.tape)


def marks_on(page: Page) -> Iterator[tuple[Placed, Stroke | Fill | Text]]:
    """Everything on the page, dimensions taken apart, with the drawing that it belongs to."""
    for placed in page.placed:
        for element in placed.drawing:
            if isinstance(element, Dimension):
                for part in dimension_parts(element, placed.scale):
                    yield placed, part
            else:
                yield placed, element


def texts_on(page: Page) -> list[tuple[Text, Polygon]]:
    """Every text with the rectangle of its capitals, turned as the text is."""
    return [
        (element, Polygon(text_shape(placed, element)))
        for placed, element in marks_on(page)
        if isinstance(element, Text)
    ]


def text_shape(placed: Placed, text: Text) -> list[XY]:
    """The corners of a text's capitals on the paper."""
    x, y = (
        placed.origin[0] + placed.scale * text.at[0],
        placed.origin[1] + placed.scale * text.at[1],
    )
    width = text_width(text.text, text.size, text.bold, narrow=text.narrow)
    start = {Align.START: 0.0, Align.MIDDLE: -0.5, Align.END: -1.0}[text.align] * width
    high = cap_height(text.size)
    foot = -high / 2 if text.middle else 0.0
    turn = complex(math.cos(text.angle), math.sin(text.angle))
    box = ((start, foot), (start + width, foot), (start + width, foot + high), (start, foot + high))
    turned = (complex(x, y) + complex(a, b) * turn for a, b in box)
    return [(corner.real, corner.imag) for corner in turned]


def overlaps(page: Page, tolerance: float = 0.2) -> list[tuple[str, str, float]]:
    """Pairs of texts that overlap by more than `tolerance` mm2, and by how much."""
    texts = texts_on(page)
    tree = STRtree([shape for _, shape in texts])
    found = []
    for number, (text, shape) in enumerate(texts):
        for other in tree.query(shape):
            shared = shape.intersection(texts[other][1]).area
            if other > number and shared > tolerance:
                found.append((text.text, texts[other][0].text, round(shared, 2)))
    return found


def beyond(page: Page, margin: float) -> list[tuple[str, float, float]]:
    """The points that stand nearer to the page's edge than the margin, and what stands there."""
    found = []
    for placed, element in marks_on(page):
        for x, y in _points(placed, element):
            across = margin - 1e-6 <= x <= page.width - margin + 1e-6
            if not (across and margin - 1e-6 <= y <= page.height - margin + 1e-6):
                found.append((element.pen.value, x, y))
    return found


def _points(placed: Placed, element: Stroke | Fill | Text) -> list[XY]:
    if isinstance(element, Text):
        return text_shape(placed, element)
    points = element.points if isinstance(element, Stroke) else element.outline
    (x0, y0), scale = placed.origin, placed.scale
    return [(x0 + scale * x, y0 + scale * y) for x, y in points]


def pages_of(pages: tuple[Page, ...], wall: WallResult) -> list[Page]:
    """The pages of one wall."""
    title = f"{wall.wall.letter} {wall.wall.name}"
    return [page for page in pages if page.title == title]


def labels_on(pages: list[Page]) -> set[str]:
    """The labels on pages, runs such as A2–A4 counted out."""
    said = " ".join(text.text for page in pages for text, _ in texts_on(page))
    found = set()
    for letter, first, last in re.findall(r"\b([A-Z]+)(\d+)(?:–[A-Z]+(\d+))?", said):
        found |= {f"{letter}{n}" for n in range(int(first), int(last or first) + 1)}
    return found


Figures = Counter[tuple[str, frozenset[str]]]
"""Figures of marks: the member's key, and the words of length and letter in any order."""


def mark_figures(page: Page) -> Figures:
    """The figures of the marks on a page."""
    texts = [text for text, _ in texts_on(page) if text.pen is Pen.MARK]
    return Counter((text.key, frozenset(text.text.split(" "))) for text in texts)


def marks_of(wall: WallResult) -> Figures:
    """The marks of a wall as their figures should stand on its elevation: all but the headers'."""
    members = wall.frame.members if wall.frame else ()
    headers = {m.key for m in members if m.role is Role.HEADER}
    return _figures(wall, tuple(mark for mark in wall.marks if mark.plate not in headers))


def rafter_marks_of(wall: WallResult) -> Figures:
    """The marks of the rafters over a wall's plates, which stand there where they have room."""
    return _figures(wall, wall.over_marks)


def _figures(wall: WallResult, marks: tuple[Mark, ...]) -> Figures:
    tape = wall.inputs.habits.tape
    return Counter(
        (m.member, frozenset(f"{tape.text(m.along)} {m.letter}".split(" "))) for m in marks
    )
