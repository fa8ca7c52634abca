"""What a new project begins with: it can be built, saved and read back."""

from __future__ import annotations

from pathlib import Path

import pytest

from core.job import work_out
from core.lengths import System
from core.model import OpeningKind, SiteRecord
from core.storage import Document, load, save
from gui.edits import add_box, add_opening, new_project


@pytest.mark.parametrize("system", list(System))
def test_a_new_project_can_be_built(system: System) -> None:
    results = work_out(new_project(system, "New", "Partition"), SiteRecord())
    assert results.buildable
    assert [wall.wall.letter for wall in results.walls] == ["A"]


@pytest.mark.parametrize("system", list(System))
def test_with_one_of_everything_it_can_be_saved_and_read_back(
    system: System, tmp_path: Path
) -> None:
    project = new_project(system, "New", "Partition")
    for kind in (OpeningKind.DOOR, OpeningKind.WINDOW):
        project = add_opening(project, "A", kind)
    project = add_box(project, "A")
    document = Document(project, SiteRecord())
    save(tmp_path / "new.eave", document)
    assert load(tmp_path / "new.eave") == document
    assert work_out(project, SiteRecord()).buildable
