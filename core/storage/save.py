"""Opening a project file, and saving it whole."""

import os

from core.storage import limits
from core.storage.disk import Disk, RealDisk
from core.storage.document import Document
from core.storage.plain import text_of
from core.storage.read import read_document
from core.storage.refusals import opening_refused, refused
from core.storage.sentences import Why
from core.storage.whole import write_whole


def load(path: str | os.PathLike[str], disk: Disk | None = None) -> Document:
    """The document in a file.

    Raises:
        StorageError: when it cannot be opened or is no project file, with all its faults.
    """
    name, disk = os.fspath(path), disk or RealDisk()
    try:
        status = disk.status(name)
        if status is None:
            raise refused(name, Why.NOT_FOUND)
        if status.folder or not status.ordinary:
            raise refused(name, Why.IS_FOLDER if status.folder else Why.NO_ORDINARY_FILE)
        # One byte too many is enough to know that it is too large.
        data = disk.read(name, limits.FILE_BYTES + 1)
    except (OSError, ValueError) as error:
        raise opening_refused(name, error) from error
    return read_document(data, name)


def save(path: str | os.PathLike[str], document: Document, disk: Disk | None = None) -> None:
    """Save a document in a file, whole; saving what could not be opened again is refused.

    Raises:
        StorageError: when it cannot be saved; the old file is then as it was (see `write_whole`).
    """
    write_whole(path, file_bytes(document, os.fspath(path)), disk)


def file_bytes(document: Document, path: str) -> bytes:
    """The bytes of a document's file, known to read back as the same document.

    Raises:
        StorageError: when they do not; `path` is only named.
    """
    # Half a character becomes its JSON escape, which is then found and refused with its place.
    data = text_of(document).encode("utf-8", errors="backslashreplace")
    if read_document(data, path) != document:
        raise refused(path, Why.NOT_READ_BACK)
    return data
