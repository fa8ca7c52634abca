"""The sheets of whole jobs, read back by other people's PDF readers and measured on the paper."""

import io
import re
from functools import cache
from pathlib import Path
from typing import Any

import pdfplumber
import pypdf
import pytest

import jobs
from core.drawing import Dimension, Text
from core.drawing.page import Page
from core.drawing.paper import Paper
from core.drawing.sheet import sheets
from core.output.figures import figures
from core.output.pdf import write_pdf
from tools import run_tool

MM = 72 / 25.4  # points in a mm
TRUE = 0.1  # mm on paper
TIMBER, FINE = 0.35, 0.18  # line widths, mm
Corners = list[tuple[float, float]]


@pytest.fixture(params=["inch", "metric"])
def name(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@cache
def pages_of(name: str) -> tuple[Page, ...]:
    results, wording = jobs.job(name)
    return sheets(results, wording, Paper.usual(results.project.system))


@cache
def bytes_of(name: str) -> bytes:
    return written(name)


def written(name: str) -> bytes:
    out = io.BytesIO()
    write_pdf(pages_of(name), out, title=jobs.job(name).results.project.name)
    return out.getvalue()


@cache
def read_back(name: str) -> tuple[pdfplumber.page.Page, ...]:
    return tuple(pdfplumber.open(io.BytesIO(bytes_of(name))).pages)


def saved(name: str, folder: Path) -> str:
    path = folder / "sheets.pdf"
    path.write_bytes(bytes_of(name))
    return str(path)


def squeezed(text: str) -> str:
    """The text without blanks: readers differ in where they see one."""
    return "".join(text.split())


def framed_walls(name: str) -> list[tuple[dict[str, Any], pdfplumber.page.Page]]:
    """The walls that have a frame, with the page that shows each: the first with its title."""
    titles = [page.title for page in pages_of(name)]
    walls = [w for w in figures(*jobs.job(name))["walls"] if w["members"]]
    return [(w, read_back(name)[titles.index(f"{w['letter']} {w['name']}")]) for w in walls]


def stated_scale(page: pdfplumber.page.Page) -> float:
    """Paper over model, from the words on the page: 1:25, or 3/8" = 1'-0"."""
    text = " ".join(word["text"] for word in page.extract_words())
    if metric := re.search(r"\b1:(\d+)", text):
        return 1 / int(metric[1])
    us = re.search(r"(?:(\d+) )?(?:(\d+)/(\d+)|(\d+))\" = 1'-0\"", text)
    assert us is not None, text
    whole, over, under, alone = (int(part or 0) for part in us.groups())
    return (whole + alone + (over / under if under else 0)) / 12


def shapes(page: pdfplumber.page.Page, width: float) -> list[Corners]:
    """The points of what is drawn with a line so many mm wide, mm from the lower left corner."""
    drawn = [*page.curves, *page.rects, *page.lines]
    return [
        [(x / MM, (float(page.height) - y) / MM) for x, y in shape["pts"]]
        for shape in drawn
        if shape["stroke"] and abs(shape["linewidth"] - width * MM) < 0.01
    ]


def sizes(shape: Corners) -> tuple[float, float]:
    """How wide and how high a shape is, mm."""
    xs, ys = zip(*shape, strict=True)
    return max(xs) - min(xs), max(ys) - min(ys)


def covered(corner: tuple[float, float], shape: Corners) -> bool:
    return any(max(abs(corner[0] - x), abs(corner[1] - y)) < TRUE for x, y in shape)


def foot(shape: Corners) -> tuple[float, float]:
    return min(x for x, _ in shape), min(y for _, y in shape)


def test_timber_measures_true_to_the_stated_scale(name: str) -> None:
    """Every member's corners, from the sole plate's lower left corner, to a tenth of a mm."""
    for wall, page in framed_walls(name):
        scale, outlines = stated_scale(page), shapes(page, TIMBER)
        sole = next(m for m in wall["members"] if m["role"] == "sole plate")
        wanted = (wall["length"] * scale, sole["section"][0] * scale)
        like_it = [s for s in outlines if sizes(s) == pytest.approx(wanted, abs=TRUE)]
        x0, y0 = min((foot(s) for s in like_it), key=lambda at: at[1])
        for member in wall["members"]:
            corners = [(x0 + x * scale, y0 + y * scale) for x, y in member["near"]]
            found = [s for s in outlines if all(covered(c, s) for c in corners)]
            assert [s for s in found if all(covered(p, corners) for p in s)], member["key"]


def test_the_overall_dimension_measures_true(name: str) -> None:
    for wall, page in framed_walls(name):
        wanted = wall["length"] * stated_scale(page)
        assert any(abs(sizes(s)[0] - wanted) < TRUE for s in shapes(page, FINE)), wall["letter"]


def test_the_check_bar_measures_what_it_says(name: str) -> None:
    wanted = {"inch": 2 * 25.4, "metric": 50.0}[name]
    for _, page in framed_walls(name):
        flat = [sizes(s) for s in shapes(page, FINE)]
        assert any(abs(w - wanted) < TRUE and h < TRUE for w, h in flat)


def texts_of(page: Page) -> list[str]:
    """Everything that is written on a page."""
    elements = [element for placed in page.placed for element in placed.drawing]
    return [squeezed(e.text) for e in elements if isinstance(e, Text | Dimension) and e.text]


def test_every_text_can_be_searched(name: str) -> None:
    reader = pypdf.PdfReader(io.BytesIO(bytes_of(name)))
    for page, shown in zip(pages_of(name), reader.pages, strict=True):
        found = squeezed(shown.extract_text())
        assert len(texts_of(page)) > 10
        assert [text for text in texts_of(page) if text not in found] == []


def test_another_reader_finds_the_texts_too(name: str, tmp_path: Path) -> None:
    told = run_tool("poppler-utils", "pdftotext", "-raw", saved(name, tmp_path), "-")
    for page, found in zip(pages_of(name), told.split("\f"), strict=False):
        missing = [text for text in texts_of(page) if text not in squeezed(found)]
        assert missing == []


def test_every_wall_has_its_name_label_and_lengths_on_its_page(name: str) -> None:
    wording = jobs.job(name).wording
    reader = pypdf.PdfReader(io.BytesIO(bytes_of(name)))
    for wall, page in framed_walls(name):
        found = squeezed(reader.pages[page.page_number - 1].extract_text())
        assert squeezed(wall["name"]) in found
        longest = max(wall["members"], key=lambda m: m["long_point"])
        assert squeezed(wording.length(longest["long_point"])) in found


def test_a_page_a_wall_with_bookmark_and_label(name: str) -> None:
    reader = pypdf.PdfReader(io.BytesIO(bytes_of(name)))
    titles = [page.title for page in pages_of(name)]
    assert len(titles) >= 3
    assert [getattr(entry, "title", None) for entry in reader.outline] == titles
    assert reader.page_labels == titles


def test_the_file_is_sound(name: str, tmp_path: Path) -> None:
    assert "No syntax or stream encoding errors found" in run_tool(
        "qpdf", "qpdf", "--check", saved(name, tmp_path)
    )


def test_every_font_is_in_the_file(name: str, tmp_path: Path) -> None:
    rows = run_tool("poppler-utils", "pdffonts", saved(name, tmp_path)).splitlines()[2:]
    assert rows
    # name, type, encoding, then whether embedded, a subset, and with a map to Unicode
    assert [row for row in rows if not re.search(r"Eavewright.* yes yes yes ", row)] == []


def test_the_same_job_gives_the_same_bytes(name: str) -> None:
    assert written(name) == written(name)
