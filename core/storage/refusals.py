"""What the system refused, as a sentence for the person."""

import errno
from collections.abc import Mapping
from typing import Final

from core.storage.faults import StorageError
from core.storage.sentences import Why, fault

_OPENING: Final = {
    errno.ENOENT: Why.NOT_FOUND,
    errno.ENOTDIR: Why.NOT_FOUND,
    errno.EISDIR: Why.IS_FOLDER,
    errno.EACCES: Why.MAY_NOT_READ,
    errno.EPERM: Why.MAY_NOT_READ,
    errno.ENAMETOOLONG: Why.BAD_NAME,
}
_SAVING: Final = {
    errno.ENOENT: Why.FOLDER_MISSING,
    errno.ENOTDIR: Why.FOLDER_MISSING,
    errno.EISDIR: Why.IS_FOLDER,
    errno.EACCES: Why.MAY_NOT_WRITE,
    errno.EPERM: Why.MAY_NOT_WRITE,
    errno.EROFS: Why.MAY_NOT_WRITE,
    errno.ENOSPC: Why.DISK_FULL,
    errno.EDQUOT: Why.DISK_FULL,
    errno.ENAMETOOLONG: Why.BAD_NAME,
}


def refused(path: str, why: Why, **values: str | int) -> StorageError:
    """The error that refuses a file as a whole, ready to be raised."""
    return StorageError(path, (fault("", why, **values),))


def opening_refused(path: str, error: OSError | ValueError) -> StorageError:
    """The error for what the system said when a file was opened."""
    return _told(path, error, _OPENING, Why.READING_FAILED)


def saving_refused(path: str, error: OSError | ValueError) -> StorageError:
    """The error for what the system said when a file was saved."""
    return _told(path, error, _SAVING, Why.WRITING_FAILED)


def _told(
    path: str, error: OSError | ValueError, known: Mapping[int, Why], otherwise: Why
) -> StorageError:
    # A ValueError is the system's word for a name with a NUL in it.
    if not isinstance(error, OSError):
        return refused(path, Why.BAD_NAME)
    detail = error.strerror or type(error).__name__
    return refused(path, known.get(error.errno or 0, otherwise), detail=detail)
