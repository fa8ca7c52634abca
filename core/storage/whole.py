"""Writing a file whole: the old file or the new one, never a part."""

import contextlib
import os
from typing import Final

from core.storage.disk import Disk, RealDisk
from core.storage.refusals import refused, saving_refused
from core.storage.sentences import Why

_NAME: Final = ".eavewright-{}.part"
"""The name of an unfinished file, hidden; short, so that it is no longer than a system allows."""

_TRIES: Final = 100


def write_whole(path: str | os.PathLike[str], data: bytes, disk: Disk | None = None) -> None:
    """Put the bytes into a file, in place of the old one if there is one.

    They are written to a hidden file in the same folder and brought to the disk, and only then
    take the old file's name. A symbolic link stays, and the file that it names is replaced. The
    permissions of the old file are kept.

    Raises:
        StorageError: when it cannot be written; the old file is as it was, and no other is left.
            One exception: where the folder cannot be brought to the disk at the very end, the new
            file stands in the old one's place, whole, and the error says so.
    """
    name, disk = os.fspath(path), disk or RealDisk()
    try:
        target = disk.resolved(name)
        permissions = _permissions(target, name, disk)
        _replace(target, data, permissions, name, disk)
    except (OSError, ValueError) as error:
        raise saving_refused(name, error) from error
    try:
        disk.sync_folder(os.path.dirname(target))
    except OSError as error:
        raise refused(name, Why.NOT_CONFIRMED, detail=error.strerror or str(error)) from error


def _permissions(target: str, name: str, disk: Disk) -> int | None:
    """The permission bits of the file to be replaced, None where there is none."""
    status = disk.status(target)
    if status is None:
        return None
    if status.folder or not status.ordinary:
        raise refused(name, Why.IS_FOLDER if status.folder else Why.NO_ORDINARY_FILE)
    if not status.writable:
        raise refused(name, Why.PROTECTED)
    return status.permissions


def _replace(target: str, data: bytes, permissions: int | None, name: str, disk: Disk) -> None:
    """Write a hidden file beside the target and give it the target's name, or leave no trace."""
    part, handle = _create_part(os.path.dirname(target), name, disk)
    try:
        _fill(handle, data, permissions, disk)
        disk.replace(part, target)
    except BaseException:
        with contextlib.suppress(OSError):
            disk.remove(part)
        raise


def _create_part(folder: str, name: str, disk: Disk) -> tuple[str, int]:
    """The path and handle of a new hidden file; others may be saving in the same folder."""
    for number in range(_TRIES):
        part = os.path.join(folder, _NAME.format(number))
        with contextlib.suppress(FileExistsError):
            return part, disk.create(part)
    raise refused(name, Why.LEFTOVERS, pattern=_NAME.format("*"))


def _fill(handle: int, data: bytes, permissions: int | None, disk: Disk) -> None:
    """Write all bytes, bring them to the disk and close the file, whatever happens."""
    try:
        # First, so that a private project is private while it is written.
        if permissions is not None:
            disk.set_permissions(handle, permissions)
        rest = memoryview(data)
        while rest:
            rest = rest[disk.write(handle, rest) :]
        disk.sync(handle)
    except BaseException:
        with contextlib.suppress(OSError):
            disk.close(handle)
        raise
    disk.close(handle)
