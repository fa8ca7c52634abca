"""The calls on the disk that opening and saving are made of, so that tests can make each fail."""

import errno
import os
import stat
from typing import Protocol

import msgspec


class Status(msgspec.Struct, frozen=True):
    """What stands at a path: a folder, an ordinary file or neither, and its permission bits."""

    folder: bool
    ordinary: bool
    permissions: int
    writable: bool
    """Whether this user may write to it."""


class Disk(Protocol):
    """Every call raises OSError where the system refuses it, ValueError for a name with a NUL."""

    def resolved(self, path: str) -> str:
        """The path of the file itself, where `path` is a symbolic link or has one in it."""

    def status(self, path: str) -> Status | None:
        """What stands at a path, symbolic links followed; None for nothing."""

    def read(self, path: str, most: int) -> bytes:
        """The first bytes of a file, `most` of them at most."""

    def create(self, path: str) -> int:
        """A handle for writing to a new file; FileExistsError where something stands."""

    def write(self, handle: int, data: memoryview) -> int:
        """How many of the bytes were written; at least one, but it need not be all."""

    def set_permissions(self, handle: int, permissions: int) -> None:
        """Give a file its permission bits."""

    def sync(self, handle: int) -> None:
        """Wait until a file's bytes are on the disk."""

    def close(self, handle: int) -> None:
        """Let a file go; it is let go even where this fails."""

    def replace(self, source: str, target: str) -> None:
        """Give a file the name of another one, which is gone then, in one step."""

    def sync_folder(self, path: str) -> None:
        """Wait until the names in a folder are on the disk."""

    def remove(self, path: str) -> None:
        """Take a file away."""


class RealDisk:
    """The disk of this computer."""

    def resolved(self, path: str) -> str:
        """The path of the file itself, where `path` is a symbolic link or has one in it."""
        return os.path.realpath(path)

    def status(self, path: str) -> Status | None:
        """What stands at a path, symbolic links followed; None for nothing."""
        try:
            mode = os.stat(path).st_mode
        except (FileNotFoundError, NotADirectoryError):
            return None
        return Status(
            folder=stat.S_ISDIR(mode),
            ordinary=stat.S_ISREG(mode),
            permissions=stat.S_IMODE(mode),
            writable=os.access(path, os.W_OK),
        )

    def read(self, path: str, most: int) -> bytes:
        """The first bytes of a file, `most` of them at most."""
        with open(path, "rb") as file:
            return file.read(most)

    def create(self, path: str) -> int:
        """A handle for writing to a new file; FileExistsError where something stands."""
        # The system takes the person's umask off these bits.
        return os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL | os.O_CLOEXEC, 0o666)

    def write(self, handle: int, data: memoryview) -> int:
        """How many of the bytes were written; at least one, but it need not be all."""
        return os.write(handle, data)

    def set_permissions(self, handle: int, permissions: int) -> None:
        """Give a file its permission bits."""
        os.fchmod(handle, permissions)

    def sync(self, handle: int) -> None:
        """Wait until a file's bytes are on the disk."""
        os.fsync(handle)

    def close(self, handle: int) -> None:
        """Let a file go; it is let go even where this fails."""
        os.close(handle)

    def replace(self, source: str, target: str) -> None:
        """Give a file the name of another one, which is gone then, in one step."""
        os.replace(source, target)

    def sync_folder(self, path: str) -> None:
        """Wait until the names in a folder are on the disk, where its file system can."""
        handle = os.open(path, os.O_RDONLY | os.O_DIRECTORY | os.O_CLOEXEC)
        try:
            os.fsync(handle)
        except OSError as error:
            # Some network and memory-stick file systems do not sync folders; it is all they offer.
            if error.errno not in (errno.EINVAL, errno.ENOTSUP):
                raise
        finally:
            os.close(handle)

    def remove(self, path: str) -> None:
        """Take a file away."""
        os.remove(path)
