"""Catalogues read as they stand."""

import importlib.resources

import polib
import pytest

import resources
from core.wording import CATALOGUES
from core.wording.catalogue import read_catalogue


@pytest.mark.parametrize("name", CATALOGUES)
def test_the_packaged_catalogues_are_read_as_a_library_reads_them(name: str) -> None:
    text = (importlib.resources.files(resources) / "texts" / f"{name}.po").read_text("utf-8")
    assert read_catalogue(text) == {entry.msgid: entry.msgstr for entry in polib.pofile(text)}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("", {}),
        ('msgid ""\nmsgstr ""\n"Language: en_US\\n"\n', {}),
        ('msgid "a"\nmsgstr "one"\n\nmsgid "b"\nmsgstr "two"\n', {"a": "one", "b": "two"}),
        ('# said at the saw\nmsgid "a"\nmsgstr ""\n"one, "\n"two"\n', {"a": "one, two"}),
        ('msgid "a"\nmsgstr "16\\" o.c.\\nor less"\n', {"a": '16" o.c.\nor less'}),
        ('#~ msgid "old"\n#~ msgstr "gone"\n', {}),
    ],
)
def test_ids_and_texts(text: str, expected: dict[str, str]) -> None:
    assert read_catalogue(text) == expected


@pytest.mark.parametrize("line", ['msgctxt "saw"', "msgstr one", 'msgid_plural "studs"'])
def test_what_we_do_not_use_is_refused(line: str) -> None:
    with pytest.raises(ValueError, match="msgid and msgstr"):
        read_catalogue(f'msgid "a"\n{line}\n')
