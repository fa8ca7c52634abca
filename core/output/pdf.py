"""Pages to a PDF file: true to scale, with searchable text in the packaged fonts."""

from __future__ import annotations

import io
import math
from typing import TYPE_CHECKING, BinaryIO

from core.drawing import Dimension, Element, Fill, Stroke, Text
from core.drawing.dimension import dimension_parts
from core.drawing.elements import XY
from core.drawing.extent import text_corners
from core.drawing.page import Page, Placed
from core.drawing.typeface import font_file
from core.output.paper_pens import PAPER_PENS

if TYPE_CHECKING:
    from reportlab.pdfgen.canvas import Canvas

_POINT = 72 / 25.4
"""Points in a mm: PDF counts in 1/72 in. (ISO 32000-1, 8.3.2.3)."""


def write_pdf(pages: tuple[Page, ...], out: BinaryIO, *, title: str) -> None:
    """Write the pages as a PDF document, the same bytes for the same pages.

    Each page has a bookmark and a page label, both its title. Viewers are asked to print it
    unscaled.

    Raises:
        ValueError: when there are no pages.
    """
    if not pages:
        raise ValueError("there is no sheet to print; the job needs at least one wall")
    from reportlab.pdfgen.canvas import Canvas

    _register_fonts()
    canvas = Canvas(
        out,
        invariant=1,
        pageCompression=1,
        # Without a first font of ours the file names one that it does not hold.
        initialFontName=_font_name(False, False),  # type: ignore[arg-type]  # stubs say a number
    )
    canvas.setTitle(title)
    canvas.setAuthor("")
    canvas.setSubject("")
    canvas.setCreator("Eavewright")
    canvas.setViewerPreference("DisplayDocTitle", "true")
    canvas.setViewerPreference("PrintScaling", "None")
    canvas.showOutline()
    for number, page in enumerate(pages):
        _page(canvas, page, number)
    canvas.save()


def _page(canvas: Canvas, page: Page, number: int) -> None:
    canvas.setPageSize((page.width * _POINT, page.height * _POINT))
    bookmark = f"page-{number + 1}"
    canvas.bookmarkPage(bookmark)
    canvas.addOutlineEntry(page.title, bookmark)
    canvas.addPageLabel(number, prefix=page.title)
    for placed in page.placed:
        for element in placed.drawing:
            _element(canvas, placed, element)
    canvas.showPage()


def _element(canvas: Canvas, placed: Placed, element: Element) -> None:
    match element:
        case Fill():
            _fill(canvas, placed, element)
        case Stroke():
            _stroke(canvas, placed, element)
        case Text():
            _text(canvas, placed, element)
        case Dimension():
            for part in dimension_parts(element, placed.scale):
                _element(canvas, placed, part)


def _fill(canvas: Canvas, placed: Placed, fill: Fill) -> None:
    if len(fill.outline) > 2:
        canvas.setFillGray(PAPER_PENS[fill.pen].fill)
        _path(canvas, placed, fill.outline, closed=True, stroke=0, fill=1)


def _stroke(canvas: Canvas, placed: Placed, stroke: Stroke) -> None:
    if len(stroke.points) > 1:
        pen = PAPER_PENS[stroke.pen]
        canvas.setLineWidth(pen.width * _POINT)
        canvas.setStrokeGray(pen.grey)
        canvas.setDash([length * _POINT for length in pen.dash])
        _path(canvas, placed, stroke.points, closed=stroke.closed, stroke=1, fill=0)


def _path(
    canvas: Canvas, placed: Placed, points: tuple[XY, ...], *, closed: bool, stroke: int, fill: int
) -> None:
    path = canvas.beginPath()
    first, *others = (_points(placed.on_paper(point)) for point in points)
    path.moveTo(*first)
    for point in others:
        path.lineTo(*point)
    if closed:
        path.close()
    canvas.drawPath(path, stroke=stroke, fill=fill)


def _text(canvas: Canvas, placed: Placed, text: Text) -> None:
    along = (math.cos(text.angle), math.sin(text.angle))
    start = _points(placed.on_paper(text_corners(text, placed.scale)[0]))
    written = canvas.beginText()
    written.setTextTransform(along[0], along[1], -along[1], along[0], *start)
    written.setFont(_font_name(text.bold, text.narrow), text.size * _POINT)
    written.setFillGray(PAPER_PENS[text.pen].grey)
    written.textOut(text.text)
    canvas.drawText(written)


def _points(paper: XY) -> XY:
    return paper[0] * _POINT, paper[1] * _POINT


def _register_fonts() -> None:
    """Make the packaged faces known to the PDF library, once: its list of fonts is its own."""
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont

    known = set(pdfmetrics.getRegisteredFontNames())
    for bold in (False, True):
        for narrow in (False, True):
            name = _font_name(bold, narrow)
            if name not in known:
                data = font_file(bold, narrow=narrow).read_bytes()
                pdfmetrics.registerFont(TTFont(name, io.BytesIO(data)))


def _font_name(bold: bool, narrow: bool) -> str:
    return font_file(bold, narrow=narrow).name.removesuffix(".ttf")
