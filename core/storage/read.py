"""From the bytes of a file to a document, or to every fault with its place.

The decoder goes by the shapes of the model's types. It never stops at a fault: what it hands on
then is no value, and is never used, because faults were found.
"""

import difflib
from collections.abc import Mapping

import msgspec

from core.storage import limits
from core.storage.decode import check_plain, decode
from core.storage.document import VERSION, Document
from core.storage.examples import example, field_example, found, wanted
from core.storage.faults import (
    SHOWN,
    Faults,
    StorageError,
    TooManyFaults,
    item_place,
    key_place,
)
from core.storage.migrate import MIGRATIONS, Migration, migrate
from core.storage.plain import Plain
from core.storage.scalars import choice, length, pitch
from core.storage.sense import project_faults
from core.storage.sense_site import site_faults
from core.storage.sentences import Why, fault, stated_fault
from core.storage.shapes import (
    Choice,
    LengthText,
    Maybe,
    PitchText,
    Record,
    Row,
    Several,
    Shape,
    Text,
    Whole,
    YesNo,
    shape_of,
)


def read_document(
    data: bytes,
    path: str,
    migrations: Mapping[int, Migration] = MIGRATIONS,
    current: int = VERSION,
) -> Document:
    """The document in the bytes of a file; `path` is only named in errors.

    Raises:
        StorageError: with every fault of form, or of sense where the form lets it be asked for.
    """
    body = decode(data, path)
    faults = Faults(limits.FAULTS)
    document = None
    try:
        check_plain(body, "", faults)
        document = read(shape_of(Document), migrate(body, path, migrations, current), "", faults)
        if isinstance(document, Document):
            for senseless in project_faults(document.project):
                faults.add(senseless)
            for senseless in site_faults(document.site):
                faults.add(senseless)
    except TooManyFaults:
        pass
    if faults:
        raise StorageError(path, faults.found)
    assert isinstance(document, Document)
    return document


def read(shape: Shape, data: Plain, place: str, faults: Faults) -> object:
    """The value that plain data states for a shape; faults are added, and then it means nothing.

    Raises:
        TooManyFaults: when the limit of faults is reached.
    """
    match shape, data:
        case Maybe(), _:
            return None if data is None else read(shape.inner, data, place, faults)
        case LengthText(), str():
            return length(data, place, faults)
        case PitchText(), str():
            return pitch(data, place, faults)
        case Choice(), str():
            return choice(shape, data, place, faults)
        case (Text(), str()) | (YesNo(), bool()):
            return data
        case Whole(), int() if not isinstance(data, bool):
            return data
        case Several(), list():
            return _several(shape, data, place, faults)
        case Row(), list():
            return _row(shape, data, place, faults)
        case Record(), dict():
            return _record(shape, data, place, faults)
    words = {"found": found(data), "wanted": wanted(shape), "example": example(shape)}
    faults.add(fault(place, Why.WRONG_TYPE, **words))
    return None


def _several(shape: Several, items: list[Plain], place: str, faults: Faults) -> object:
    return tuple(
        read(shape.item, item, item_place(place, index), faults) for index, item in enumerate(items)
    )


def _row(shape: Row, items: list[Plain], place: str, faults: Faults) -> object:
    if len(items) != len(shape.fields):
        counts = {"found": len(items), "wanted": len(shape.fields)}
        faults.add(fault(place, Why.WRONG_COUNT, example=example(shape), **counts))
        return None
    before = faults.told
    values = {
        field.name: read(field.shape, item, item_place(place, index), faults)
        for index, (field, item) in enumerate(zip(shape.fields, items, strict=True))
    }
    return None if faults.told > before else _made(shape.kind, values, place, faults)


def _record(shape: Record, data: dict[str, Plain], place: str, faults: Faults) -> object:
    before = faults.told
    _check_keys(shape, data, place, faults)
    values = {
        field.name: read(field.shape, data[field.name], key_place(place, field.name), faults)
        for field in shape.fields
        if field.name in data
    }
    return None if faults.told > before else _made(shape.kind, values, place, faults)


def _made(
    kind: type[msgspec.Struct], values: dict[str, object], place: str, faults: Faults
) -> object:
    """The struct of these values, which some structs refuse with a sentence of their own."""
    try:
        return kind(**values)
    except ValueError as error:
        faults.add(stated_fault(place, str(error)))
        return None


def _check_keys(shape: Record, data: dict[str, Plain], place: str, faults: Faults) -> None:
    """Add the keys that are unknown, and those that are missing and not merely mistyped."""
    known = [field.name for field in shape.fields]
    meant = [_unknown_key(key, known, data, place, faults) for key in data if key not in known]
    for field in shape.fields:
        if field.needed and field.name not in data and field.name not in meant:
            words = {"key": field.name, "example": field_example(field)}
            faults.add(fault(key_place(place, field.name), Why.MISSING_KEY, **words))


def _unknown_key(
    key: str, known: list[str], data: dict[str, Plain], place: str, faults: Faults
) -> str | None:
    """Add the fault of an unknown key; the nearest known one that is not there yet, if any."""
    free = [name for name in known if name not in data]
    near = next(iter(difflib.get_close_matches(key[:SHOWN], free, n=1)), None)
    if near is None:
        words = {"known": ", ".join(known)}
        faults.add(fault(key_place(place, key), Why.UNKNOWN_KEY, **words))
    else:
        faults.add(fault(key_place(place, key), Why.MISTYPED_KEY, near=near))
    return near
