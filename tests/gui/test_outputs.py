"""What leaves the program, as bytes."""

from __future__ import annotations

import io
from pathlib import Path

import msgspec
import pytest
from ezdxf.entities.lwpolyline import LWPolyline
from ezdxf.filemanagement import read
from pypdf import PdfReader

from core.drawing.paper import Paper
from core.job import Results, work_out
from core.model import SiteRecord
from core.storage import read_document
from gui.edits import add_wall
from gui.outputs import (
    NothingToShow,
    OutputError,
    demo_bytes,
    drawing_bytes,
    same_file,
    save_output,
    sheets_bytes,
)
from gui.wordings import wording_of
from loft import loft


def results(walls: int) -> Results:
    project = msgspec.structs.replace(loft(), walls=())
    for _ in range(walls):
        project = add_wall(project, "Partition")
    return work_out(project, SiteRecord())


@pytest.mark.parametrize("walls", [1, 3])
def test_the_sheets_name_every_wall_and_the_date(walls: int) -> None:
    found = results(walls)
    data = sheets_bytes(found, wording_of(found.project), Paper.LETTER, "2026-02-28")
    pages = [page.extract_text() for page in PdfReader(io.BytesIO(data)).pages]
    for wall in found.walls:
        assert any(f"{wall.wall.letter}1" in page for page in pages)
    assert all("2026-02-28" in page for page in pages)


@pytest.mark.parametrize("walls", [1, 3])
def test_the_drawing_holds_the_walls_side_by_side(walls: int) -> None:
    found = results(walls)
    text = drawing_bytes(found, wording_of(found.project)).decode("utf-8")
    drawing = read(io.StringIO(text))
    # An inch project is drawn in inches; each wall is 240 long.
    assert drawing.header["$INSUNITS"] == 1
    xs = [
        point[0]
        for line in drawing.modelspace().query('LWPOLYLINE[layer=="SOLE-PLATE"]')
        if isinstance(line, LWPolyline)
        for point in line.get_points()
    ]
    assert max(xs) - min(xs) > walls * 240 - 1


def test_without_walls_there_is_nothing() -> None:
    found = results(0)
    words = wording_of(found.project)
    with pytest.raises(NothingToShow):
        sheets_bytes(found, words, Paper.A4, "")
    with pytest.raises(NothingToShow):
        drawing_bytes(found, words)


@pytest.mark.parametrize(("metric", "unit"), [(False, "in"), (True, "mm")])
def test_the_demos_are_whole_projects(metric: bool, unit: str) -> None:
    project = read_document(demo_bytes(metric=metric), "demo").project
    assert project.walls
    assert project.walls[0].stud.thickness.unit.value == unit


def test_the_same_file_is_known_by_whatever_name(tmp_path: Path) -> None:
    file, link = tmp_path / "a.eave", tmp_path / "link"
    file.write_bytes(b"project")
    link.symlink_to(file)
    assert same_file(file, link)
    assert same_file(tmp_path / "new", tmp_path / "." / "new")
    assert not same_file(file, tmp_path / "new")
    with pytest.raises(OutputError):
        save_output(link, b"sheets", file)
    save_output(tmp_path / "new", b"sheets", file)
    assert (tmp_path / "new").read_bytes() == b"sheets"
    assert file.read_bytes() == b"project"
