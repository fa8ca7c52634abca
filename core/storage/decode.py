"""From the bytes of a file to plain data, within limits, with every repeated key noted.

The JSON is read by the standard library: unlike msgspec it tells line and column of a mistake, and
it hands over the keys of an object before those that are repeated are lost.
"""

import json
import math
import re
from collections import Counter
from typing import Final

from core.storage import limits
from core.storage.faults import Fault, Faults, StorageError, item_place, key_place
from core.storage.plain import Plain
from core.storage.sentences import Why, fault

_BRACKETS: Final = re.compile(r'"[^"\\]*+(?:\\.[^"\\]*+)*+"?|[\[\]{}]', re.DOTALL)
"""A text, so that brackets in it are not counted, or a bracket; possessive, so never slow."""


class Keyed(dict[str, Plain]):
    """An object of the file, and the keys that it has more than once."""

    repeated: tuple[str, ...] = ()


def decode(data: bytes, path: str) -> Plain:
    """The plain data in the bytes of a file; its objects are `Keyed`.

    Raises:
        StorageError: when it is too large, empty, not UTF-8, too deep or not JSON.
    """
    if len(data) > limits.FILE_BYTES:
        limit = limits.FILE_BYTES // 1024**2
        raise StorageError(path, (fault("", Why.FILE_TOO_LARGE, limit=limit),))
    try:
        # Some editors put a byte order mark in front; it says nothing.
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise StorageError(path, (fault(f"byte {error.start + 1}", Why.NOT_UTF8),)) from error
    if not text.strip():
        raise StorageError(path, (fault("", Why.EMPTY),))
    if deep := _too_deep(text):
        raise StorageError(path, (deep,))
    return _parsed(text, path)


def check_plain(data: Plain, place: str, faults: Faults) -> None:
    """Add what no value of a project may have: too many items, repeated keys, no numbers.

    Raises:
        TooManyFaults: when the limit of faults is reached.
    """
    if isinstance(data, str):
        _check_text(data, place, faults)
    elif isinstance(data, float) and not math.isfinite(data):
        faults.add(fault(place, Why.NOT_FINITE, text=json.dumps(data)))
    elif isinstance(data, list | dict):
        _check_count(len(data), place, faults)
        _check_repeated(data, place, faults)
        for inner_place, item in _items(data, place):
            check_plain(item, inner_place, faults)


def _check_text(text: str, place: str, faults: Faults) -> None:
    if len(text) > limits.TEXT_CHARACTERS:
        values = {"found": len(text), "limit": limits.TEXT_CHARACTERS}
        faults.add(fault(place, Why.TEXT_TOO_LONG, **values))
    if any("\ud800" <= character <= "\udfff" for character in text):
        faults.add(fault(place, Why.HALF_CHARACTER))


def _check_count(found: int, place: str, faults: Faults) -> None:
    if found > limits.LIST_ITEMS:
        faults.add(fault(place, Why.TOO_MANY_ITEMS, found=found, limit=limits.LIST_ITEMS))


def _check_repeated(data: Plain, place: str, faults: Faults) -> None:
    for key in data.repeated if isinstance(data, Keyed) else ():
        faults.add(fault(key_place(place, key), Why.REPEATED_KEY))


def _items(data: list[Plain] | dict[str, Plain], place: str) -> list[tuple[str, Plain]]:
    """The items of a list or object with their places."""
    if isinstance(data, dict):
        return [(key_place(place, key), item) for key, item in data.items()]
    return [(item_place(place, index), item) for index, item in enumerate(data)]


def _too_deep(text: str) -> Fault | None:
    """The fault at the first bracket that opens too deep; counted before anything is built."""
    depth = 0
    for found in _BRACKETS.finditer(text):
        depth += {"[": 1, "{": 1, "]": -1, "}": -1}.get(found[0], 0)
        if depth > limits.NESTING:
            place = _line_and_column(text, found.start())
            return fault(place, Why.TOO_DEEP, limit=limits.NESTING)
    return None


def _line_and_column(text: str, at: int) -> str:
    return f"line {text.count(chr(10), 0, at) + 1}, column {at - text.rfind(chr(10), 0, at)}"


def _parsed(text: str, path: str) -> Plain:
    try:
        data: Plain = json.loads(text, object_pairs_hook=_keyed, parse_int=_whole)
    except json.JSONDecodeError as error:
        place = f"line {error.lineno}, column {error.colno}"
        detail = error.msg[:1].lower() + error.msg[1:]
        raise StorageError(path, (fault(place, Why.NOT_JSON, detail=detail),)) from error
    return data


def _keyed(pairs: list[tuple[str, Plain]]) -> Keyed:
    keyed = Keyed(pairs)
    if len(keyed) < len(pairs):
        times = Counter(key for key, _ in pairs)
        keyed.repeated = tuple(key for key, count in times.items() if count > 1)
    return keyed


def _whole(digits: str) -> int | float:
    """A whole number; as a float where it is too long to be one of a project."""
    return int(digits) if len(digits) <= limits.NUMBER_DIGITS else float(digits)
