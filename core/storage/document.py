"""The document: what one project file holds."""

import re
from typing import Final

import msgspec

from core.model import Project, SiteRecord

FORMAT: Final = "eavewright"
"""The name of the file format, before the stroke in the file's `format`."""

VERSION: Final = 1
"""The version of the format that is written."""

_STATED: Final = re.compile(rf"{FORMAT}/([1-9][0-9]{{0,5}})")


class Document(msgspec.Struct, frozen=True):
    """A project, which undo takes back, and the record of the site, which it does not."""

    project: Project
    site: SiteRecord


def format_text(version: int = VERSION) -> str:
    """The `format` of a file of this version.

    >>> format_text()
    'eavewright/1'
    """
    return f"{FORMAT}/{version}"


def version_of(text: str) -> int | None:
    """The version that a `format` states, None where it is not one of ours.

    >>> version_of("eavewright/2"), version_of("eavewright/02"), version_of("loft/1")
    (2, None, None)
    """
    stated = _STATED.fullmatch(text)
    return int(stated[1]) if stated else None
