"""Starting the window from the command line."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from core.model import SiteRecord
from core.storage import Document, save
from gui.commands import main
from gui.keeping import Kept
from gui.window import Window
from loft import loft


@pytest.fixture
def windows(qapp: QApplication, monkeypatch: pytest.MonkeyPatch) -> list[Window]:
    """The windows that are open when the program would begin to wait for the person."""
    found: list[Window] = []

    def run() -> int:
        found.extend(w for w in qapp.topLevelWidgets() if isinstance(w, Window) and w.isVisible())
        for window in found:
            window.close()
        return 0

    monkeypatch.setattr(QApplication, "exec", staticmethod(run))
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    # The settings of whoever runs the tests are not theirs to touch.
    monkeypatch.setattr(Kept, "of_this_person", Kept.nothing)
    return found


def test_a_file_opens_in_the_window(windows: list[Window], tmp_path: Path) -> None:
    path = tmp_path / "loft.eave"
    save(path, Document(loft(), SiteRecord()))
    assert main([str(path)]) == 0
    (window,) = windows
    assert (window.files.path, window.desk.project) == (path, loft())


def test_without_a_file_a_new_room_opens(windows: list[Window]) -> None:
    assert main([]) == 0
    (window,) = windows
    assert (window.files.path, window.desk.project.name) == (None, "New room")
    assert window.desk.is_clean
    assert window.page is not None


def test_a_first_window_is_no_larger_than_the_screen(windows: list[Window]) -> None:
    # The screen of the tests is 800 by 800 px; the window would like to be 1400 by 860.
    assert main([]) == 0
    (window,) = windows
    least, screen = window.minimumSizeHint(), window.screen().availableSize()
    assert window.height() == max(screen.height(), least.height())
    assert window.width() == max(screen.width(), least.width())


def test_a_file_that_cannot_be_opened_opens_no_window(
    windows: list[Window], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([str(tmp_path / "missing.eave")]) == 2
    assert "there is no such file" in capsys.readouterr().err
    assert windows == []
