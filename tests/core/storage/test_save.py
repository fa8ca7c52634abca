"""Opening and saving a file: whole, or not at all, whatever the disk does."""

from __future__ import annotations

import errno
import os
import stat
from pathlib import Path

import msgspec
import pytest

from core.lengths import Length, Pitch
from core.model import PrintedLabel, SiteRecord, Slope
from core.storage import Document, StorageError, load, save, text_of
from core.storage.disk import RealDisk, Status

NUMBERS = [errno.ENOSPC, errno.EIO, errno.EACCES]


class WatchedDisk(RealDisk):
    """Notes every call of a save and takes 1000 bytes at a time; a call chosen by number fails."""

    def __init__(self, fails: int | None = None, number: int = errno.EIO, dead: bool = False):
        self.calls: list[str] = []
        self._fails, self._number = fails, number
        self._dead = dead
        """Whether all calls after the one fail as well, as when a memory stick is pulled out."""

    def _call(self, name: str) -> None:
        self.calls.append(name)
        late = len(self.calls) - 1 - (len(self.calls) if self._fails is None else self._fails)
        if late == 0 or (late > 0 and self._dead):
            raise OSError(self._number, os.strerror(self._number))

    def resolved(self, path: str) -> str:
        self._call("resolved")
        return super().resolved(path)

    def status(self, path: str) -> Status | None:
        self._call("status")
        return super().status(path)

    def create(self, path: str) -> int:
        self._call("create")
        return super().create(path)

    def set_permissions(self, handle: int, permissions: int) -> None:
        self._call("set_permissions")
        super().set_permissions(handle, permissions)

    def write(self, handle: int, data: memoryview) -> int:
        self._call("write")
        return super().write(handle, data[:1000])

    def sync(self, handle: int) -> None:
        self._call("sync")
        super().sync(handle)

    def close(self, handle: int) -> None:
        # The system lets a file go even where closing it fails.
        super().close(handle)
        self._call("close")

    def replace(self, source: str, target: str) -> None:
        self._call("replace")
        super().replace(source, target)

    def sync_folder(self, path: str) -> None:
        self._call("sync_folder")
        super().sync_folder(path)

    def remove(self, path: str) -> None:
        self._call("remove")
        super().remove(path)


@pytest.fixture
def changed(loft: Document) -> Document:
    """The loft with its name changed, and enough printed labels for several writes."""
    printed = tuple(PrintedLabel(f"B/layout/{n}", f"B{n}") for n in range(1, 20))
    project = msgspec.structs.replace(loft.project, name="The new sail loft")
    return Document(project, SiteRecord(printed))


@pytest.fixture
def saved(tmp_path: Path, loft: Document) -> Path:
    """The loft's file, alone in its folder."""
    path = tmp_path / "loft.eave"
    save(path, loft)
    return path


def open_files() -> int:
    return len(os.listdir("/dev/fd"))


def calls_of_a_save(saved: Path, document: Document) -> list[str]:
    """The calls that saving a document over a file of the same size makes."""
    disk = WatchedDisk()
    save(saved.with_name("other.eave"), document)
    save(saved.with_name("other.eave"), document, disk)
    saved.with_name("other.eave").unlink()
    return disk.calls


def test_saved_document_is_loaded_as_it_was(saved: Path, loft: Document) -> None:
    assert load(saved) == loft
    assert load(str(saved)) == loft
    assert saved.read_bytes() == text_of(loft).encode()
    assert os.listdir(saved.parent) == ["loft.eave"]


def test_same_document_same_bytes(saved: Path) -> None:
    before = saved.read_bytes()
    save(saved, load(saved))
    assert saved.read_bytes() == before


def test_hand_written_file_loses_nothing_when_saved(tmp_path: Path, loft_text: str) -> None:
    path = tmp_path / "hand.eave"
    path.write_text(loft_text, encoding="utf-8")
    stated = load(path)
    save(path, stated)
    assert load(path) == stated


def test_calls_of_a_save_are_those_that_make_it_safe(saved: Path, changed: Document) -> None:
    calls = calls_of_a_save(saved, changed)
    writes = calls.count("write")
    assert writes >= 3
    assert calls == [
        "resolved",
        "status",
        "create",
        "set_permissions",
        *["write"] * writes,
        "sync",
        "close",
        "replace",
        "sync_folder",
    ]


@pytest.mark.parametrize("number", NUMBERS, ids=errno.errorcode.get)
def test_fault_at_any_call_leaves_the_old_file_whole_and_no_litter(
    saved: Path, changed: Document, number: int
) -> None:
    """Only where the folder cannot be synced at the very end does the new file stand, whole."""
    old, new = saved.read_bytes(), text_of(changed).encode()
    handles = open_files()
    for index, call in enumerate(calls_of_a_save(saved, changed)):
        with pytest.raises(StorageError) as refused:
            save(saved, changed, WatchedDisk(index, number))
        assert saved.read_bytes() == (new if call == "sync_folder" else old), (index, call)
        told = "it was saved, but" if call == "sync_folder" else "nothing was changed"
        assert told in str(refused.value), (index, call)
        assert refused.value.path == str(saved)
        assert os.listdir(saved.parent) == ["loft.eave"], (index, call)
        assert open_files() == handles, (index, call)


@pytest.mark.parametrize("number", NUMBERS, ids=errno.errorcode.get)
def test_fault_at_any_call_of_a_first_save_leaves_nothing(
    tmp_path: Path, changed: Document, number: int
) -> None:
    path = tmp_path / "new.eave"
    disk = WatchedDisk()
    save(path, changed, disk)
    path.unlink()
    for index, call in enumerate(disk.calls):
        with pytest.raises(StorageError):
            save(path, changed, WatchedDisk(index, number))
        if call == "sync_folder":
            assert load(path) == changed
        else:
            assert os.listdir(tmp_path) == [], (index, call)


def test_disk_that_is_pulled_out_holds_a_whole_file(saved: Path, changed: Document) -> None:
    """From some call on nothing works, not even cleaning up: litter stays, the file is whole."""
    old, new = saved.read_bytes(), text_of(changed).encode()
    for index, call in enumerate(calls_of_a_save(saved, changed)):
        with pytest.raises(StorageError):
            save(saved, changed, WatchedDisk(index, dead=True))
        assert saved.read_bytes() == (new if call == "sync_folder" else old), (index, call)
        for litter in saved.parent.glob(".eavewright-*.part"):
            litter.unlink()


def test_what_a_dead_disk_left_is_in_nobodys_way(saved: Path, changed: Document) -> None:
    at_replace = calls_of_a_save(saved, changed).index("replace")
    with pytest.raises(StorageError):
        save(saved, changed, WatchedDisk(at_replace, dead=True))
    assert sorted(os.listdir(saved.parent)) == [".eavewright-0.part", "loft.eave"]
    save(saved, changed)
    assert load(saved) == changed
    assert sorted(os.listdir(saved.parent)) == [".eavewright-0.part", "loft.eave"]


class Stopped(BaseException):
    """The person presses Ctrl-C."""


def test_save_that_is_broken_off_leaves_no_litter(saved: Path, changed: Document) -> None:
    class Interrupted(RealDisk):
        def sync(self, handle: int) -> None:
            raise Stopped(handle)

    old, handles = saved.read_bytes(), open_files()
    with pytest.raises(Stopped):
        save(saved, changed, Interrupted())
    assert saved.read_bytes() == old
    assert os.listdir(saved.parent) == ["loft.eave"]
    assert open_files() == handles


def test_link_stays_and_its_target_is_replaced(saved: Path, changed: Document) -> None:
    link = saved.parent / "links" / "link.eave"
    link.parent.mkdir()
    link.symlink_to("../loft.eave")
    save(link, changed)
    assert link.is_symlink()
    assert load(saved) == changed
    assert os.listdir(link.parent) == ["link.eave"]


def test_link_to_nothing_gets_its_file(tmp_path: Path, loft: Document) -> None:
    (tmp_path / "link.eave").symlink_to("new.eave")
    save(tmp_path / "link.eave", loft)
    assert load(tmp_path / "new.eave") == loft
    assert (tmp_path / "link.eave").is_symlink()


def test_links_in_a_ring_are_refused(tmp_path: Path, loft: Document) -> None:
    (tmp_path / "a.eave").symlink_to("b.eave")
    (tmp_path / "b.eave").symlink_to("a.eave")
    for attempt in (lambda: load(tmp_path / "a.eave"), lambda: save(tmp_path / "a.eave", loft)):
        with pytest.raises(StorageError, match=r"it cannot be (read|written)"):
            attempt()
    assert sorted(os.listdir(tmp_path)) == ["a.eave", "b.eave"]


@pytest.mark.parametrize("permissions", [0o600, 0o640, 0o664, 0o755])
def test_permissions_of_the_old_file_are_kept(
    saved: Path, changed: Document, permissions: int
) -> None:
    saved.chmod(permissions)
    save(saved, changed)
    assert stat.S_IMODE(saved.stat().st_mode) == permissions


@pytest.mark.parametrize(("umask", "permissions"), [(0o022, 0o644), (0o077, 0o600)])
def test_new_file_has_the_permissions_that_the_umask_leaves(
    tmp_path: Path, loft: Document, umask: int, permissions: int
) -> None:
    before = os.umask(umask)
    try:
        save(tmp_path / "new.eave", loft)
    finally:
        os.umask(before)
    assert stat.S_IMODE((tmp_path / "new.eave").stat().st_mode) == permissions


def test_private_file_is_private_while_it_is_written(saved: Path, changed: Document) -> None:
    seen: list[int] = []

    class Looking(RealDisk):
        def write(self, handle: int, data: memoryview) -> int:
            seen.append(stat.S_IMODE(os.fstat(handle).st_mode))
            return super().write(handle, data)

    saved.chmod(0o600)
    save(saved, changed, Looking())
    assert set(seen) == {0o600}


def test_protected_file_is_not_replaced(saved: Path, changed: Document) -> None:
    """Replacing needs only the folder's permission; the file's own word counts all the same."""

    class Protected(RealDisk):
        def status(self, path: str) -> Status | None:
            status = super().status(path)
            return status and msgspec.structs.replace(status, writable=False)

    old = saved.read_bytes()
    with pytest.raises(StorageError, match="write-protected, and nothing was changed"):
        save(saved, changed, Protected())
    assert saved.read_bytes() == old


def test_leftovers_of_others_are_passed_over(saved: Path, changed: Document) -> None:
    (saved.parent / ".eavewright-0.part").write_text("somebody else is saving")
    save(saved, changed)
    assert load(saved) == changed
    assert (saved.parent / ".eavewright-0.part").read_text() == "somebody else is saving"


def test_folder_full_of_leftovers_is_told(saved: Path, changed: Document) -> None:
    for number in range(100):
        (saved.parent / f".eavewright-{number}.part").write_text("")
    with pytest.raises(StorageError, match=r"remove the hidden files \.eavewright-\*\.part"):
        save(saved, changed)


def test_longest_name_that_the_system_takes_can_be_saved(tmp_path: Path, loft: Document) -> None:
    path = tmp_path / f"{'x' * 250}.eave"
    save(path, loft)
    save(path, loft)
    assert load(path) == loft


@pytest.mark.parametrize(
    ("name", "load_says", "save_says"),
    [
        ("none/a.eave", "there is no such file", "its folder is not there"),
        ("loft.eave/a.eave", "there is no such file", "its folder is not there"),
        ("folder", "this is a folder", "this is a folder"),
        ("pipe", "this is not an ordinary file", "this is not an ordinary file"),
        ("x" * 300, "no file can have this name", "no file can have this name"),
        ("a\0b", "no file can have this name", "no file can have this name"),
        ("", "there is no such file", "this is a folder"),
    ],
)
def test_places_that_hold_no_file(
    saved: Path, loft: Document, name: str, load_says: str, save_says: str
) -> None:
    (saved.parent / "folder").mkdir()
    os.mkfifo(saved.parent / "pipe")
    path = str(saved.parent / name) if name else ""
    with pytest.raises(StorageError, match=load_says):
        load(path)
    with pytest.raises(StorageError, match=save_says):
        save(path, loft)
    assert sorted(os.listdir(saved.parent)) == ["folder", "loft.eave", "pipe"]


def test_file_that_may_not_be_read(saved: Path) -> None:
    class Forbidden(RealDisk):
        def read(self, path: str, most: int) -> bytes:
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES), path, most)

    with pytest.raises(StorageError, match="no permission to read this file"):
        load(saved, Forbidden())


def test_too_large_a_file_is_not_read_to_its_end(tmp_path: Path) -> None:
    path = tmp_path / "huge.eave"
    with path.open("wb") as file:
        # A hole of a terabyte: reading it all would not end well.
        file.truncate(2**40)
    with pytest.raises(StorageError, match="larger than 8 MiB"):
        load(path)


@pytest.mark.parametrize("data", [b"", b"{}", b'{"format": "eavewright/2"}', b"\xff"])
def test_file_that_is_refused_is_left_untouched(tmp_path: Path, data: bytes) -> None:
    path = tmp_path / "a.eave"
    path.write_bytes(data)
    before = path.stat()
    with pytest.raises(StorageError):
        load(path)
    assert path.read_bytes() == data
    assert path.stat().st_mtime_ns == before.st_mtime_ns
    assert os.listdir(tmp_path) == ["a.eave"]


def test_what_could_not_be_opened_again_is_not_saved(saved: Path, loft: Document) -> None:
    replace = msgspec.structs.replace
    project, room, old = loft.project, loft.project.room, saved.read_bytes()
    twice = replace(project, walls=project.walls * 2)
    half = replace(project, name="\ud800")
    unsloped = replace(project, room=replace(room, left=None, right=None))
    # A pitch whose text does not say its tangent.
    lying = replace(project, room=replace(room, left=Slope(Length(838.2), Pitch(0.5, "9 in 12"))))
    for spoilt, place, reason in [
        (twice, "project.walls[1].letter", "another wall has the letter B already"),
        (half, "project.name", "half a character"),
        (unsloped, "project.room", "no slope"),
        (lying, "", "does not read back as the same project"),
    ]:
        with pytest.raises(StorageError, match=reason) as refused:
            save(saved, Document(spoilt, loft.site))
        assert refused.value.faults[0].place == place
        assert saved.read_bytes() == old


def test_length_in_any_unit_is_saved_to_the_last_bit(saved: Path, loft: Document) -> None:
    odd = Length(7315.200000000001)
    room = msgspec.structs.replace(loft.project.room, width=odd)
    save(saved, Document(msgspec.structs.replace(loft.project, room=room), loft.site))
    assert load(saved).project.room.width == odd
