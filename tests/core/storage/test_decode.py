"""Bytes to plain data: what is refused before anybody asks what it means."""

from __future__ import annotations

import pytest

from core.storage import StorageError, limits
from core.storage.decode import Keyed, check_plain, decode
from core.storage.faults import Faults
from core.storage.plain import Plain


@pytest.mark.parametrize(
    ("data", "value"),
    [
        (b"{}", {}),
        (b' \n[1, "a", true, null] ', [1, "a", True, None]),
        (b'\xef\xbb\xbf{"a": 1}', {"a": 1}),
        ('"½ — łódź"'.encode(), "½ — łódź"),
        (rb'"\ud83d\ude00"', "😀"),
        (b"[[[]]]", [[[]]]),
        # Brackets in a text do not nest, escaped quotes do not end it.
        (b'"' + b"[" * 40 + b'\\"' + b"{" * 40 + b'"', "[" * 40 + '"' + "{" * 40),
        (b"123456789012345", 123456789012345),
        (b"1234567890123456", 1234567890123456.0),
        (b"[" * 32 + b"]" * 32, eval("[" * 32 + "]" * 32)),
    ],
)
def test_plain_data_of_bytes(data: bytes, value: Plain) -> None:
    assert decode(data, "a.eave") == value


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (b"", "a.eave: the file is empty; open an earlier copy"),
        (b" \n\t\r\n", "a.eave: the file is empty"),
        (b"\xef\xbb\xbf", "a.eave: the file is empty"),
        (b"{\xff}", "a.eave, byte 2: the text is not UTF-8 here; save it as UTF-8"),
        ("{}".encode("utf-16"), "a.eave, byte 1: the text is not UTF-8 here"),
        (b"[1,\n 2,,]", "a.eave, line 2, column 4: the JSON is broken here (expecting value)"),
        (b'{"a" 1}', "a.eave, line 1, column 6: the JSON is broken here (expecting ':' delimiter)"),
        (b"{'a': 1}", "a.eave, line 1, column 2: the JSON is broken here"),
        (b"[1", "a.eave, line 1, column 3: the JSON is broken here"),
        (b"[1] 2", "a.eave, line 1, column 5: the JSON is broken here (extra data)"),
        (b'"a\nb"', "a.eave, line 1, column 3: the JSON is broken here"),
        (b'"abc', "a.eave, line 1, column 1: the JSON is broken here"),
        (b"01", "a.eave, line 1, column 2: the JSON is broken here"),
        (b"PK\x03\x04", "a.eave, line 1, column 1: the JSON is broken here"),
        (b"[" * 33, "a.eave, line 1, column 33: lists and objects stand more than 32 deep"),
        (b'{"a":\n' * 33, "a.eave, line 33, column 1: lists and objects stand more than 32 deep"),
        (b"[" * 1_000_000, "a.eave, line 1, column 33: lists and objects"),
    ],
)
def test_refusal_names_the_place(data: bytes, sentence: str) -> None:
    with pytest.raises(StorageError) as refused:
        decode(data, "a.eave")
    assert str(refused.value).startswith(sentence)


def test_file_may_be_as_large_as_the_limit_and_no_larger() -> None:
    text = b'"' + b"x" * (limits.FILE_BYTES - 2) + b'"'
    assert len(str(decode(text, "a.eave"))) == limits.FILE_BYTES - 2
    with pytest.raises(StorageError, match="larger than 8 MiB") as refused:
        decode(text + b" ", "a.eave")
    assert refused.value.faults[0].place == ""


@pytest.mark.parametrize("unit", ['\\"', "\\", '"', "[]", '"[', "\\\\"])
def test_texts_that_never_end_are_refused_as_well(unit: str) -> None:
    with pytest.raises(StorageError):
        decode(f'"{unit * 200_000}'.encode(), "a.eave")


def faults_of(data: Plain) -> list[tuple[str, str]]:
    faults = Faults(limits.FAULTS)
    check_plain(data, "", faults)
    return [(fault.place, fault.reason) for fault in faults.found]


@pytest.mark.parametrize(
    ("data", "places"),
    [
        (b'{"a": 1, "b": [2, {}]}', []),
        (b'{"a": 1, "a": 2}', ["a"]),
        (b'{"a": {"b": 1, "c": 2, "b": 3, "b": 4, "c": 5}}', ["a.b", "a.c"]),
        (b'[{}, {"a": [], "a": []}]', ["[1].a"]),
        (b'{"a": NaN, "b": [Infinity, -Infinity, 0.5]}', ["a", "b[0]", "b[1]"]),
        (b"[1e999, -1e999]", ["[0]", "[1]"]),
        (b"9" * 5000, [""]),
        (rb'{"a": "\ud800", "b": "\udc00\ud800"}', ["a", "b"]),
        (b'{"a": "' + b"x" * 10_000 + b'"}', []),
        (b'{"a": "' + b"x" * 10_001 + b'"}', ["a"]),
        (b'{"a": [' + b"1," * 9_999 + b"1]}", []),
        (b'{"a": [' + b"1," * 10_000 + b"1]}", ["a"]),
        (b"{" + b",".join(b'"k%d":1' % n for n in range(10_001)) + b"}", [""]),
    ],
)
def test_what_no_project_may_hold(data: bytes, places: list[str]) -> None:
    assert [place for place, _ in faults_of(decode(data, "a.eave"))] == places


@pytest.mark.parametrize(
    ("data", "reason"),
    [
        ([float("nan")], "“NaN” is not a number"),
        ([float("-inf")], "“-Infinity” is not a number"),
        (["x" * 10_001], "a text of 10001 characters is longer than the 10000 that may be here"),
        (["\ud800"], "the text has half a character in it"),
    ],
)
def test_reason_is_in_plain_words(data: Plain, reason: str) -> None:
    assert faults_of(data) == [("[0]", reason)]


def test_repeated_keys_are_noted_and_the_last_one_holds() -> None:
    data = decode(b'{"a": 1, "b": 2, "a": 3}', "a.eave")
    assert isinstance(data, Keyed)
    assert data == {"a": 3, "b": 2}
    assert data.repeated == ("a",)
