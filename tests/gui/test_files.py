"""Opening, saving, printing, and the guard over unsaved work."""

from __future__ import annotations

import re
from pathlib import Path

import msgspec
import pytest

from asked import Asked
from core.drawing.paper import Paper
from core.lengths import System
from core.model import SiteRecord
from core.storage import Document, load, save
from gui.asking import Leave
from gui.desk import Desk
from gui.edits import move_opening, new_project
from gui.files import Files, new_document
from gui.wordings import plain_wording
from loft import INCH, desk_of, loft


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A file that holds the loft under another name."""
    other = msgspec.structs.replace(loft(), name="other loft")
    save(tmp_path / "other.eave", Document(other, SiteRecord()))
    return tmp_path / "other.eave"


def change(desk: Desk) -> None:
    desk.commit("move door 1", move_opening(desk.project, "B", "door-1", 68 * INCH))


def test_opening_puts_the_file_on_the_desk(desk: Desk, path: Path) -> None:
    files = Files(desk, Asked(opens=path))
    assert files.open()
    assert (desk.project.name, files.path, files.name) == ("other loft", path, "other.eave")
    assert desk.is_clean


def test_a_file_that_cannot_be_opened_changes_nothing(desk: Desk, tmp_path: Path) -> None:
    broken = tmp_path / "broken.eave"
    broken.write_text("{", encoding="utf-8")
    asked = Asked(opens=broken)
    change(desk)
    files = Files(desk, asked)
    asked.leaves = Leave.DISCARD
    assert not files.open()
    assert (desk.project.name, files.path, desk.undo_text) == ("loft", None, "move door 1")
    assert len(asked.told) == 1
    assert "broken.eave" in asked.told[0]


def test_the_first_save_asks_where_and_the_next_does_not(desk: Desk, tmp_path: Path) -> None:
    target = tmp_path / "mine.eave"
    asked = Asked(saves=target)
    files = Files(desk, asked)
    change(desk)
    assert files.save()
    assert (load(target), desk.is_clean, files.name) == (desk.document, True, "mine.eave")
    desk.undo()
    assert files.save()
    assert load(target).project == loft()
    assert asked.questions == ["filter.eave"]


def test_a_file_is_suggested_by_the_projects_name(desk: Desk) -> None:
    asked = Asked()
    assert not Files(desk, asked).save()
    assert asked.suggested[0].name == "loft.eave"
    assert desk.undo_text is None


def test_a_save_that_fails_keeps_the_work_and_says_so(desk: Desk, tmp_path: Path) -> None:
    asked = Asked(saves=tmp_path / "nowhere" / "mine.eave")
    files = Files(desk, asked)
    change(desk)
    assert not files.save()
    assert (desk.is_clean, files.path, len(asked.told)) == (False, None, 1)
    assert "its folder is not there" in asked.told[0]


@pytest.mark.parametrize("act", ["new", "open"])
@pytest.mark.parametrize(
    ("answer", "left"), [(Leave.CANCEL, False), (Leave.DISCARD, True), (Leave.SAVE, True)]
)
def test_unsaved_work_is_never_left_unasked(
    desk: Desk, path: Path, tmp_path: Path, act: str, answer: Leave, left: bool
) -> None:
    target = tmp_path / "mine.eave"
    asked = Asked(opens=path, saves=target, leaves=answer)
    files = Files(desk, asked)
    change(desk)
    changed = desk.document
    done = files.begin(new_project(System.INCH, "new")) if act == "new" else files.open()
    assert asked.questions[0] == "leave loft"
    assert (done, desk.project.name != "loft") == (left, left)
    assert target.exists() == (answer is Leave.SAVE)
    if answer is Leave.SAVE:
        assert load(target) == changed


def test_if_the_save_is_called_off_the_work_is_not_left(desk: Desk, path: Path) -> None:
    files = Files(desk, Asked(opens=path, saves=None, leaves=Leave.SAVE))
    change(desk)
    assert not files.open()
    assert desk.project.name == "loft"


def test_saved_work_is_left_without_a_question(desk: Desk, path: Path) -> None:
    asked = Asked(opens=path)
    assert Files(desk, asked).open()
    assert asked.questions == ["open"]


@pytest.mark.parametrize(("system", "paper"), [(System.INCH, "letter"), (System.METRIC, "a4")])
def test_a_new_project_is_clean_and_has_its_systems_paper(
    desk: Desk, system: System, paper: str
) -> None:
    files = Files(desk, Asked())
    assert files.begin(new_document(system, plain_wording()).project)
    assert (desk.project.system, desk.is_clean, files.path) == (system, True, None)
    assert files.paper_used is Paper(paper)


def test_printing_writes_the_sheets_and_keeps_the_labels(desk: Desk, tmp_path: Path) -> None:
    target = tmp_path / "loft.pdf"
    files = Files(desk, Asked(saves=target))
    assert files.print_sheets()
    data = target.read_bytes()
    assert data.startswith(b"%PDF-")
    printed = {p.key: p.label for p in desk.site.printed}
    assert printed == desk.results.wall("B").label_of
    assert not desk.is_clean


def test_the_paper_chosen_is_printed_on(desk: Desk, tmp_path: Path) -> None:
    target = tmp_path / "loft.pdf"
    files = Files(desk, Asked(saves=target))
    files.paper = Paper.A3
    assert files.print_sheets()
    sizes = re.findall(rb"/MediaBox \[([ 0-9.]+)\]", target.read_bytes())
    # 420 by 297 mm in points, either way round.
    found = {tuple(sorted(round(float(n)) for n in s.split()[2:])) for s in sizes}
    assert found == {(842, 1191)}


def test_a_print_called_off_keeps_no_labels(desk: Desk) -> None:
    assert not Files(desk, Asked()).print_sheets()
    assert desk.site == SiteRecord()


def test_a_print_that_fails_keeps_no_labels(desk: Desk, tmp_path: Path) -> None:
    asked = Asked(saves=tmp_path / "nowhere" / "loft.pdf")
    assert not Files(desk, asked).print_sheets()
    assert desk.site == SiteRecord()
    assert len(asked.told) == 1


def test_nothing_is_ever_written_over_the_project(desk: Desk, path: Path) -> None:
    asked = Asked(saves=path)
    files = Files(desk, asked)
    files.open_path(path)
    before = path.read_bytes()
    assert not files.print_sheets()
    assert not files.save_drawing()
    assert path.read_bytes() == before
    assert all("this is the project itself" in sentence for sentence in asked.told)


def test_the_drawing_is_written(desk: Desk, tmp_path: Path) -> None:
    target = tmp_path / "loft.dxf"
    assert Files(desk, Asked(saves=target)).save_drawing()
    assert target.read_text(encoding="utf-8").rstrip().endswith("EOF")
    assert desk.is_clean


def test_without_walls_there_is_nothing_to_print(qapp: object, tmp_path: Path) -> None:
    assert qapp is not None
    asked = Asked(saves=tmp_path / "loft.pdf")
    files = Files(desk_of(msgspec.structs.replace(loft(), walls=())), asked)
    assert not files.print_sheets()
    assert not files.save_drawing()
    assert not (tmp_path / "loft.pdf").exists()
    assert len(asked.told) == 2


def test_what_a_drag_shows_is_neither_saved_nor_printed(desk: Desk, tmp_path: Path) -> None:
    files = Files(desk, Asked(saves=tmp_path / "mine.eave"))
    desk.preview(move_opening(loft(), "B", "door-1", 68 * INCH))
    assert files.save()
    assert load(tmp_path / "mine.eave").project == loft()
