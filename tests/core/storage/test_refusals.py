"""What the system refuses, in plain words."""

from __future__ import annotations

import errno
import os

import pytest

from core.storage.refusals import opening_refused, refused, saving_refused
from core.storage.sentences import Why


def error(number: int) -> OSError:
    return OSError(number, os.strerror(number), "/somewhere/else")


@pytest.mark.parametrize(
    ("number", "start"),
    [
        (errno.ENOENT, "a.eave: there is no such file; check the name and the folder."),
        (errno.EISDIR, "a.eave: this is a folder; name a file"),
        (errno.EACCES, "a.eave: you have no permission to read this file; ask its owner"),
        (errno.EPERM, "a.eave: you have no permission to read this file"),
        (errno.ENAMETOOLONG, "a.eave: no file can have this name; choose"),
        (errno.EIO, f"a.eave: it cannot be read ({os.strerror(errno.EIO)}); try again"),
        (errno.ELOOP, f"a.eave: it cannot be read ({os.strerror(errno.ELOOP)}); try again"),
    ],
)
def test_opening(number: int, start: str) -> None:
    assert str(opening_refused("a.eave", error(number))).startswith(start)


@pytest.mark.parametrize(
    ("number", "start"),
    [
        (errno.ENOENT, "a.eave: its folder is not there; make the folder"),
        (errno.ENOTDIR, "a.eave: its folder is not there"),
        (errno.EACCES, "a.eave: nothing may be written in its folder, and nothing was changed;"),
        (errno.EPERM, "a.eave: nothing may be written in its folder"),
        (errno.EROFS, "a.eave: nothing may be written in its folder"),
        (errno.ENOSPC, "a.eave: the disk is full, and nothing was changed; free some space"),
        (errno.EDQUOT, "a.eave: the disk is full, and nothing was changed"),
        (errno.ENAMETOOLONG, "a.eave: no file can have this name"),
        (
            errno.EIO,
            f"a.eave: it cannot be written ({os.strerror(errno.EIO)}), and nothing was changed;",
        ),
    ],
)
def test_saving(number: int, start: str) -> None:
    assert str(saving_refused("a.eave", error(number))).startswith(start)


def test_name_that_no_system_takes() -> None:
    assert "no file can have this name" in str(opening_refused("a\0b", ValueError("NUL")))
    assert "no file can have this name" in str(saving_refused("a\0b", ValueError("NUL")))


def test_error_without_words_is_named_by_its_kind() -> None:
    assert "(TimeoutError)" in str(saving_refused("a.eave", TimeoutError()))


def test_refused_file_as_a_whole() -> None:
    (fault,) = refused("a.eave", Why.EMPTY).faults
    assert fault.place == ""
