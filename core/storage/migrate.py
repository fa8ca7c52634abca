"""The format of a file: which version it states, and bringing older ones up to date."""

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Final, TypeAlias

from core.storage.document import VERSION, format_text, version_of
from core.storage.faults import Fault, StorageError
from core.storage.plain import Plain
from core.storage.sentences import Why, fault

Migration: TypeAlias = Callable[[dict[str, Plain]], dict[str, Plain]]
"""From the plain data of one version, without `format`, to that of the next.

It may assume that the data fits its version: where that is not so, it may fail with any of
`MISFITS`, which is told to the person.
"""

MIGRATIONS: Final[Mapping[int, Migration]] = MappingProxyType({})
"""The migrations by the version they start from; empty, as long as there is one version."""

MISFITS: Final = (LookupError, TypeError, ValueError, AttributeError)


def migrate(
    data: Plain,
    path: str,
    migrations: Mapping[int, Migration] = MIGRATIONS,
    current: int = VERSION,
) -> dict[str, Plain]:
    """The data of a file in the `current` version, without its `format`; `data` stays as it is.

    Raises:
        StorageError: when there is no format, or it is unknown, newer, or too old to be brought
            up to date.
    """
    text = _format(data, path, current)
    assert isinstance(data, dict)
    version = version_of(text)
    if version is None:
        raise _refused(path, Why.BAD_FORMAT, text, current)
    if version > current:
        raise _refused(path, Why.NEWER, text, current)
    body = {key: value for key, value in data.items() if key != "format"}
    for step in range(version, current):
        if step not in migrations:
            raise _refused(path, Why.OLDER, text, current)
        try:
            body = migrations[step](body)
        except MISFITS as error:
            raise _refused(path, Why.NOT_MIGRATED, text, current) from error
    return body


def _format(data: Plain, path: str, current: int) -> str:
    """The format as it is stated."""
    text = data.get("format") if isinstance(data, dict) else None
    if isinstance(text, str):
        return text
    raise StorageError(path, (_no_format(current),))


def _no_format(current: int) -> Fault:
    return fault("format", Why.NO_FORMAT, current=format_text(current))


def _refused(path: str, why: Why, text: str, current: int) -> StorageError:
    return StorageError(path, (fault("format", why, text=text, current=format_text(current)),))
