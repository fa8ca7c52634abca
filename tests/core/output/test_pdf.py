"""Hand-made pages written to PDF and read back by two other libraries."""

import io
import math
import os
import re
import subprocess
import sys
from typing import Any

import pdfplumber
import pypdf
import pytest

from core.drawing import Align, Dimension, Drawing, Element, Fill, Pen, Stroke, Text
from core.drawing.page import Page, Placed
from core.drawing.typeface import cap_height, text_width
from core.output.pdf import write_pdf

MM = 72 / 25.4  # points in a mm


def page(*elements: Element, scale: float = 1.0, title: str = "A partition") -> Page:
    """A page 200 mm by 100 mm; model point (0, 0) lands at (20, 10) mm."""
    return Page(title, 200.0, 100.0, (Placed(elements, scale, (20.0, 10.0)),))


def written(*pages: Page, title: str = "The sail loft") -> bytes:
    out = io.BytesIO()
    write_pdf(pages, out, title=title)
    return out.getvalue()


def seen(*elements: Element, scale: float = 1.0) -> pdfplumber.page.Page:
    """The page as the reader sees it, with the elements on it."""
    return pdfplumber.open(io.BytesIO(written(page(*elements, scale=scale)))).pages[0]


def corners(shape: dict[str, Any]) -> list[tuple[float, float]]:
    """The points of a shape in mm from the lower left corner of the page."""
    return [(x / MM, 100.0 - y / MM) for x, y in shape["pts"]]


def test_a_stroke_lies_where_the_page_puts_it() -> None:
    """At one to twenty (40, 60) in the model is (2, 3) on paper, so at (22, 13)."""
    stroke = Stroke(((0, 0), (40, 60), (40, 200)), Pen.STUD)
    (shape,) = seen(stroke, scale=1 / 20).curves
    flat = [number for corner in corners(shape) for number in corner]
    assert flat == pytest.approx([20, 10, 22, 13, 22, 20], abs=1e-3)


@pytest.mark.parametrize(
    ("pen", "width"), [(Pen.ROOF, 0.70), (Pen.STUD, 0.35), (Pen.OPENING, 0.50), (Pen.TAPE, 0.18)]
)
def test_line_widths(pen: Pen, width: float) -> None:
    (shape,) = seen(Stroke(((0, 0), (50, 0)), pen)).lines
    assert shape["linewidth"] == pytest.approx(width * MM, abs=1e-3)


def test_what_cannot_be_built_is_dashed_and_what_follows_is_not() -> None:
    broken, whole = seen(
        Stroke(((0, 0), (50, 0)), Pen.UNBUILDABLE), Stroke(((0, 9), (50, 9)), Pen.STUD)
    ).lines
    assert broken["dash"][0] == pytest.approx([3.0 * MM, 1.5 * MM], abs=1e-3)
    assert whole["dash"][0] == []


def test_fills_have_no_edge_and_lie_under_what_is_drawn_later() -> None:
    square = ((0, 0), (30, 0), (30, 40), (0, 40))
    fill, edge = seen(Fill(square, Pen.KING), Stroke(square, Pen.KING, closed=True)).rects
    assert [(shape["fill"], shape["stroke"]) for shape in (fill, edge)] == [
        (True, False),
        (False, True),
    ]
    assert fill["non_stroking_color"] == pytest.approx(0.82)
    assert edge["stroking_color"] == pytest.approx(0.0)
    assert (edge["width"] / MM, edge["height"] / MM) == pytest.approx((30, 40), abs=1e-3)


@pytest.mark.parametrize("element", [Stroke(((0, 0),), Pen.STUD), Fill(((0, 0), (1, 1)), Pen.STUD)])
def test_what_has_no_extent_is_left_out(element: Element) -> None:
    shown = seen(element)
    assert (shown.lines, shown.rects, shown.curves) == ([], [], [])


@pytest.mark.parametrize("align", list(Align))
@pytest.mark.parametrize("degrees", [0, 90, -90, 36.87, 180])
@pytest.mark.parametrize("middle", [False, True])
def test_texts_stand_at_their_place(align: Align, degrees: float, middle: bool) -> None:
    """The first letter's origin, seen along the text and across it from the place it stands at."""
    angle = math.radians(degrees)
    text = Text("A7", (50, 40), 5.0, Pen.LABEL, align=align, angle=angle, middle=middle)
    first = seen(text).chars[0]
    a, b, _, _, x, y = first["matrix"]
    assert (a, b) == pytest.approx((math.cos(angle), math.sin(angle)), abs=1e-5)
    off = (x / MM - 70, y / MM - 50)
    along = off[0] * math.cos(angle) + off[1] * math.sin(angle)
    across = off[1] * math.cos(angle) - off[0] * math.sin(angle)
    width = text_width("A7", 5.0)
    back = {Align.START: 0.0, Align.MIDDLE: width / 2, Align.END: width}[align]
    assert along == pytest.approx(-back, abs=1e-3)
    assert across == pytest.approx(-cap_height(5.0) / 2 if middle else 0.0, abs=1e-3)


def test_the_size_of_a_text_belongs_to_the_paper() -> None:
    """3.5 mm at any scale, and as wide as it was measured."""
    chars = seen(Text("B12", (0, 0), 3.5, Pen.LABEL), scale=1 / 48).chars
    assert chars[0]["size"] == pytest.approx(3.5 * MM, abs=1e-3)
    width = (chars[-1]["x1"] - chars[0]["x0"]) / MM
    assert width == pytest.approx(text_width("B12", 3.5), abs=1e-2)


@pytest.mark.parametrize(
    ("bold", "narrow", "face"),
    [
        (False, False, "EavewrightSheet-Regular"),
        (True, False, "EavewrightSheet-Bold"),
        (False, True, "EavewrightSheetNarrow-Regular"),
        (True, True, "EavewrightSheetNarrow-Bold"),
    ],
)
def test_every_face_is_embedded_as_a_subset(bold: bool, narrow: bool, face: str) -> None:
    text = Text("57 3/16", (0, 0), 3.5, Pen.LENGTH, bold=bold, narrow=narrow)
    reader = pypdf.PdfReader(io.BytesIO(written(page(text))))
    fonts = [f.get_object() for f in reader.pages[0]["/Resources"]["/Font"].values()]  # type: ignore[index]
    assert [re.sub(r"^/[A-Z]{6}\+", "", f["/BaseFont"]) for f in fonts] == [face]
    assert all("/FontFile2" in f["/FontDescriptor"] for f in fonts)
    assert all(re.match(r"/[A-Z]{6}\+", f["/BaseFont"]) for f in fonts)


@pytest.mark.parametrize(
    "text", ['B7 57 3/16"', "57 ³⁄₁₆″", "4'-9 1/2\"", "36.9° △ ✓ → A", "Türöffnung 838 × 2035"]
)
def test_texts_can_be_searched(text: str) -> None:
    upright = Text(text, (50, 10), 3.5, Pen.LENGTH, angle=math.pi / 2)
    reader = pypdf.PdfReader(io.BytesIO(written(page(upright))))
    assert text in reader.pages[0].extract_text()


def test_a_dimension_is_drawn_with_its_parts() -> None:
    """At one to ten: the line, two extension lines, two ticks, and the figure."""
    span = Dimension((0, 0), (1000, 0), -100, "1000", 3.5)
    shown = seen(span, scale=0.1)
    assert len(shown.lines) == 5
    line = shown.lines[0]
    assert (line["x1"] - line["x0"]) / MM == pytest.approx(100.0, abs=1e-3)
    assert "".join(c["text"] for c in shown.chars) == "1000"


def test_the_document_has_title_bookmarks_and_page_labels() -> None:
    pages = (page(title="A rake partition"), page(title="B Kniestock, Süd"))
    reader = pypdf.PdfReader(io.BytesIO(written(*pages, title="Der Segelboden – Ausbau")))
    assert reader.metadata is not None
    assert reader.metadata.title == "Der Segelboden – Ausbau"
    titles = ["A rake partition", "B Kniestock, Süd"]
    assert [getattr(entry, "title", None) for entry in reader.outline] == titles
    assert [reader.get_destination_page_number(e) for e in reader.outline] == [0, 1]  # type: ignore[arg-type]
    assert reader.page_labels == titles


def test_viewers_are_asked_to_print_unscaled() -> None:
    reader = pypdf.PdfReader(io.BytesIO(written(page())))
    assert reader.root_object["/ViewerPreferences"]["/PrintScaling"] == "/None"  # type: ignore[index]


def test_pages_have_their_own_sizes() -> None:
    pages = (Page("a", 279.4, 215.9, ()), Page("b", 210.0, 297.0, ()))
    reader = pypdf.PdfReader(io.BytesIO(written(*pages)))
    sizes = [(float(p.mediabox.width) / MM, float(p.mediabox.height) / MM) for p in reader.pages]
    assert sizes == [pytest.approx((279.4, 215.9)), pytest.approx((210, 297))]


def test_without_a_page_there_is_nothing_to_print() -> None:
    with pytest.raises(ValueError, match="no sheet to print"):
        write_pdf((), io.BytesIO(), title="empty")


EVERYTHING: Drawing = (
    *(Fill(((0, n), (9, n), (9, n + 1)), pen) for n, pen in enumerate(Pen)),
    *(Stroke(((0, n), (9, n)), pen) for n, pen in enumerate(Pen)),
    *(Text(pen.value, (0, n), 3.5, pen, bold=n % 2 > 0) for n, pen in enumerate(Pen)),
    Dimension((0, 0), (10, 0), -5, "10", 3.5),
)


def test_the_same_pages_give_the_same_bytes() -> None:
    assert written(page(*EVERYTHING)) == written(page(*EVERYTHING))


def test_the_bytes_do_not_hang_on_the_run() -> None:
    """Another process, with its sets in another order, writes the same."""
    code = (
        "import io, hashlib; from core.drawing import *; from core.drawing.page import *;"
        "from core.output.pdf import write_pdf; out = io.BytesIO();"
        "drawing = tuple(Text(p.value + 'äö½', (0, n), 3.5, p, bold=n % 2 > 0)"
        " for n, p in enumerate(Pen));"
        "write_pdf((Page('A', 200, 100, (Placed(drawing, 1, (0, 0)),)),), out, title='loft');"
        "print(hashlib.sha256(out.getvalue()).hexdigest())"
    )
    runs = [
        subprocess.run(
            [sys.executable, "-c", code],
            env={**os.environ, "PYTHONHASHSEED": seed},
            capture_output=True,
            check=True,
            text=True,
        ).stdout
        for seed in ("1", "2")
    ]
    assert runs[0] == runs[1] != ""
