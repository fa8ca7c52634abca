"""The disk of this computer, call by call."""

from __future__ import annotations

import errno
import os
import stat
from collections.abc import Iterator
from pathlib import Path

import pytest

from core.storage.disk import Disk, RealDisk, Status

DISK: Disk = RealDisk()


@pytest.fixture
def umask() -> Iterator[None]:
    before = os.umask(0o027)
    yield
    os.umask(before)


def test_status_of_a_file(tmp_path: Path) -> None:
    path = tmp_path / "a.eave"
    path.write_text("a")
    path.chmod(0o640)
    assert DISK.status(str(path)) == Status(
        folder=False, ordinary=True, permissions=0o640, writable=True
    )


def test_status_of_a_folder_and_of_nothing(tmp_path: Path) -> None:
    status = DISK.status(str(tmp_path))
    assert status is not None
    assert (status.folder, status.ordinary) == (True, False)
    assert DISK.status(str(tmp_path / "none.eave")) is None
    (tmp_path / "file").write_text("")
    assert DISK.status(str(tmp_path / "file" / "a.eave")) is None


def test_status_of_a_pipe_does_not_wait_for_it(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    status = DISK.status(str(tmp_path / "pipe"))
    assert status is not None
    assert (status.folder, status.ordinary) == (False, False)


def test_link_is_followed(tmp_path: Path) -> None:
    (tmp_path / "a.eave").write_text("a")
    (tmp_path / "link").symlink_to("a.eave")
    assert DISK.resolved(str(tmp_path / "link")) == os.path.realpath(tmp_path / "a.eave")
    status = DISK.status(str(tmp_path / "link"))
    assert status is not None
    assert status.ordinary


def test_no_more_is_read_than_asked_for(tmp_path: Path) -> None:
    (tmp_path / "a.eave").write_bytes(b"0123456789")
    assert DISK.read(str(tmp_path / "a.eave"), 4) == b"0123"
    assert DISK.read(str(tmp_path / "a.eave"), 99) == b"0123456789"


@pytest.mark.usefixtures("umask")
def test_new_file_has_the_permissions_that_the_umask_leaves(tmp_path: Path) -> None:
    handle = DISK.create(str(tmp_path / "a.eave"))
    DISK.close(handle)
    assert stat.S_IMODE((tmp_path / "a.eave").stat().st_mode) == 0o640


def test_new_file_takes_no_ones_place(tmp_path: Path) -> None:
    (tmp_path / "a.eave").write_text("a")
    (tmp_path / "link").symlink_to("nowhere")
    for name in ("a.eave", "link"):
        with pytest.raises(FileExistsError):
            DISK.create(str(tmp_path / name))
    assert (tmp_path / "a.eave").read_text() == "a"


def test_write_and_replace(tmp_path: Path) -> None:
    (tmp_path / "a.eave").write_text("old")
    handle = DISK.create(str(tmp_path / "part"))
    assert DISK.write(handle, memoryview(b"new")) == 3
    DISK.set_permissions(handle, 0o600)
    DISK.sync(handle)
    DISK.close(handle)
    DISK.replace(str(tmp_path / "part"), str(tmp_path / "a.eave"))
    DISK.sync_folder(str(tmp_path))
    assert (tmp_path / "a.eave").read_text() == "new"
    assert stat.S_IMODE((tmp_path / "a.eave").stat().st_mode) == 0o600
    assert os.listdir(tmp_path) == ["a.eave"]


def test_remove(tmp_path: Path) -> None:
    (tmp_path / "part").write_text("")
    DISK.remove(str(tmp_path / "part"))
    assert os.listdir(tmp_path) == []


@pytest.mark.parametrize(
    ("number", "told"), [(errno.EINVAL, False), (errno.ENOTSUP, False), (errno.EIO, True)]
)
def test_folder_that_cannot_be_synced_is_no_fault_of_the_disk(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, number: int, told: bool
) -> None:
    def fsync(_: int) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(os, "fsync", fsync)
    before = os.listdir("/dev/fd")
    if told:
        with pytest.raises(OSError, match=os.strerror(number)):
            DISK.sync_folder(str(tmp_path))
    else:
        DISK.sync_folder(str(tmp_path))
    assert len(os.listdir("/dev/fd")) == len(before)
