"""Formats of files: older ones brought up to date, others refused in plain words."""

from __future__ import annotations

from collections.abc import Mapping

import pytest

from core.storage import StorageError, read_document
from core.storage.migrate import MIGRATIONS, Migration, migrate
from core.storage.plain import Plain

# Three invented versions: `naam` became `name` in version 2, and `site` was added in version 3.


def to_2(data: dict[str, Plain]) -> dict[str, Plain]:
    return {"name": data["naam"]}


def to_3(data: dict[str, Plain]) -> dict[str, Plain]:
    return {**data, "site": {}}


INVENTED: Mapping[int, Migration] = {1: to_2, 2: to_3}


@pytest.mark.parametrize(
    ("data", "body"),
    [
        ({"format": "eavewright/1", "naam": "loft"}, {"name": "loft", "site": {}}),
        ({"format": "eavewright/2", "name": "loft"}, {"name": "loft", "site": {}}),
        ({"format": "eavewright/3", "name": "loft", "site": {}}, {"name": "loft", "site": {}}),
        ({"format": "eavewright/3"}, {}),
    ],
)
def test_older_versions_are_brought_up_step_by_step(
    data: dict[str, Plain], body: dict[str, Plain]
) -> None:
    before = dict(data)
    assert migrate(data, "a.eave", INVENTED, current=3) == body
    assert data == before


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        ({}, "a.eave, format: the file does not state its format; check that it is a project"),
        ({"format": 1}, "a.eave, format: the file does not state its format"),
        ({"format": None}, "a.eave, format: the file does not state its format"),
        ([], "a.eave, format: the file does not state its format"),
        ("eavewright/3", "a.eave, format: the file does not state its format"),
        (None, "a.eave, format: the file does not state its format"),
        ({"format": "loft/1"}, "a.eave, format: “loft/1” is no format known here; check that"),
        ({"format": "eavewright/0"}, "a.eave, format: “eavewright/0” is no format known here"),
        (
            {"format": "eavewright/4"},
            "a.eave, format: “eavewright/4” is newer than “eavewright/3”, the newest known here, so"
            " the file was left as it is; open it with a newer version of the program.",
        ),
        ({"format": "eavewright/999999"}, "a.eave, format: “eavewright/999999” is newer than"),
        (
            {"format": "eavewright/1", "name": "loft"},
            "a.eave, format: what follows “eavewright/1” does not fit that format",
        ),
    ],
)
def test_refusal_in_plain_words(data: Plain, sentence: str) -> None:
    with pytest.raises(StorageError) as refused:
        migrate(data, "a.eave", INVENTED, current=3)
    assert str(refused.value).startswith(sentence)
    assert len(refused.value.faults) == 1


@pytest.mark.parametrize("error", [KeyError, IndexError, TypeError, ValueError, AttributeError])
def test_migration_that_stumbles_over_odd_data_is_told(error: type[Exception]) -> None:
    def stumble(data: dict[str, Plain]) -> dict[str, Plain]:
        raise error(str(data))

    with pytest.raises(StorageError, match="does not fit that format"):
        migrate({"format": "eavewright/1"}, "a.eave", {1: stumble}, current=2)


def test_version_too_old_to_be_brought_up() -> None:
    with pytest.raises(StorageError, match="“eavewright/1” is older than any format known here"):
        migrate({"format": "eavewright/1"}, "a.eave", {2: to_3}, current=3)


def test_there_is_a_migration_from_every_version_before_this_one() -> None:
    assert migrate({"format": "eavewright/1", "a": 1}, "a.eave") == {"a": 1}
    assert not MIGRATIONS


def test_a_whole_older_file_opens(loft_text: str) -> None:
    """An invented version 1 called the eave `wall plate`; version 2 reads as this one does."""

    def renamed(data: dict[str, Plain]) -> dict[str, Plain]:
        project = data["project"]
        assert isinstance(project, dict)
        room = project.pop("upstairs")
        return {**data, "project": {**project, "room": room}}

    older = loft_text.replace('"room"', '"upstairs"')
    current = loft_text.replace("eavewright/1", "eavewright/2")
    document = read_document(older.encode(), "a.eave", {1: renamed}, current=2)
    assert document == read_document(current.encode(), "a.eave", {}, current=2)
    with pytest.raises(StorageError, match="upstairs: this key is not known here"):
        read_document(older.encode(), "a.eave")
