"""The files that leave the program, as bytes, for the window and the command line alike; no Qt."""

import importlib.resources
import io
import os
from pathlib import Path

import resources
from core.drawing import View
from core.drawing.arrange import side_by_side
from core.drawing.elevation import elevation
from core.drawing.paper import Paper
from core.drawing.sheet import sheets
from core.job import Results
from core.lengths import System
from core.storage.whole import write_whole
from core.wording import Wording, message

_SCALE = {System.INCH: 1 / 24, System.METRIC: 1 / 25}
"""The scale that texts in the line drawing are sized for: 1/2 in. to the foot, or 1:25."""

_GAP = 1000.0
"""From wall to wall in the line drawing, mm."""


class NothingToShow(Exception):
    """No wall of the project can be drawn."""


def sheets_bytes(results: Results, wording: Wording, paper: Paper, date: str) -> bytes:
    """The printed sheets as PDF; NothingToShow without a wall."""
    from core.output.pdf import write_pdf

    pages = sheets(results, wording, paper, date)
    if not pages:
        raise NothingToShow
    out = io.BytesIO()
    write_pdf(pages, out, title=results.project.name)
    return out.getvalue()


def drawing_bytes(results: Results, wording: Wording) -> bytes:
    """The line drawing of all walls side by side as DXF; NothingToShow without a wall."""
    from core.output.dxf import write_dxf

    system = results.project.system
    scale = _SCALE[system]
    drawn = [elevation(wall, View(scale), wording) for wall in results.walls]
    walls = tuple(drawing for drawing in drawn if drawing)
    if not walls:
        raise NothingToShow
    out = io.StringIO()
    placed = side_by_side(walls, _GAP)
    write_dxf(placed, out, scale=scale, metric=system is System.METRIC)
    return out.getvalue().encode("utf-8")


def demo_bytes(*, metric: bool) -> bytes:
    """The demo project as its file stands in the package."""
    name = "kite-loft" if metric else "sail-loft"
    return (importlib.resources.files(resources) / "demos" / f"{name}.eave").read_bytes()


def save_output(path: Path, data: bytes, source: Path | None = None) -> None:
    """Writes the bytes to a file, whole or not at all.

    OutputError if that is the project file itself, StorageError if the disk refuses.
    """
    if source is not None and same_file(path, source):
        raise OutputError(path)
    write_whole(path, data)


def same_file(path: Path, other: Path) -> bool:
    """Whether two paths name one file, by whatever way."""
    try:
        return os.path.samefile(path, other)
    except OSError:
        return os.path.abspath(path) == os.path.abspath(other)


class OutputError(Exception):
    """An output that would be written over the project."""

    def __init__(self, path: Path) -> None:
        super().__init__(path)
        self.message = message("output.over-project", file=str(path))
