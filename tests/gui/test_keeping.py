"""What is remembered of a person, and what of a spoilt memory is passed over."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray

from gui.keeping import RECENT, Fleeting, Kept


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "settings.ini"


def project(folder: Path, name: str) -> Path:
    path = folder / name
    path.write_text("{}")
    return path


def test_everything_is_there_the_next_day(file: Path, tmp_path: Path) -> None:
    one, two = project(tmp_path, "one.eave"), project(tmp_path, "two, too.eave")
    kept = Kept.in_file(file)
    for path in (one, two):
        kept.note(path)
    kept.night, kept.text_step, kept.frame = True, 2, QByteArray(b"frame")
    kept.put_card_away()
    kept.sync()
    again = Kept.in_file(file)
    assert again.recent == (two, one)
    assert (again.night, again.text_step, again.frame) == (True, 2, QByteArray(b"frame"))
    assert again.welcomed


def test_a_fresh_memory_holds_nothing(file: Path) -> None:
    kept = Kept.in_file(file)
    assert kept.recent == ()
    assert (kept.night, kept.text_step, kept.frame, kept.welcomed) == (None, 0, None, False)


def test_a_file_opened_again_comes_first_and_once(file: Path, tmp_path: Path) -> None:
    kept = Kept.in_file(file)
    paths = [project(tmp_path, f"{n}.eave") for n in range(RECENT + 2)]
    for path in paths:
        kept.note(path)
    assert kept.recent == tuple(reversed(paths[2:]))
    kept.note(paths[5])
    assert kept.recent[0] == paths[5]
    assert len(set(kept.recent)) == RECENT


def test_a_file_that_is_gone_is_left_out(file: Path, tmp_path: Path) -> None:
    kept = Kept.in_file(file)
    path = project(tmp_path, "one.eave")
    kept.note(path)
    path.unlink()
    assert kept.recent == ()


def test_recent_files_can_be_forgotten(file: Path, tmp_path: Path) -> None:
    kept = Kept.in_file(file)
    path = project(tmp_path, "one.eave")
    kept.note(path)
    kept.forget_recent()
    assert kept.recent == ()
    assert path.exists()


def test_the_system_is_followed_again(file: Path) -> None:
    kept = Kept.in_file(file)
    kept.night = False
    assert kept.night is False
    kept.night = None
    assert kept.night is None


@pytest.mark.parametrize(
    "text",
    [
        "[General]\nrecent=@Invalid()\ntext=huge\nlight=dusk\nframe=7\nwelcomed=7\n",
        "[General]\nrecent=7, , \ntext=\n",
        "no settings at all\x00\x01",
    ],
)
def test_a_spoilt_memory_is_as_good_as_none(file: Path, text: str) -> None:
    file.write_text(text)
    kept = Kept.in_file(file)
    assert kept.recent == ()
    assert (kept.night, kept.text_step, kept.frame, kept.welcomed) == (None, 0, None, False)


def test_nobody_is_not_greeted() -> None:
    kept = Kept.nothing()
    assert kept.welcomed
    assert kept.recent == ()
    assert not Kept(Fleeting()).welcomed


def test_whether_members_are_listed_stays(tmp_path: Path) -> None:
    kept = Kept.in_file(tmp_path / "settings.ini")
    assert not kept.lists_members
    kept.lists_members = True
    kept.sync()
    assert Kept.in_file(tmp_path / "settings.ini").lists_members
