"""Properties: what is written reads back the same; what is spoilt is refused in a sentence."""

from __future__ import annotations

import copy
import json
from typing import Any

import msgspec
from hypothesis import event, given
from hypothesis import strategies as st

from core.model import SiteRecord
from core.storage import Document, StorageError, read_document, text_of
from core.storage.plain import plain_document
from strategies import projects, site_records


@st.composite
def documents(draw: st.DrawFn) -> Document:
    """Any sensible document, with any texts where a text is free."""
    project = draw(projects())
    named = msgspec.structs.replace(project, name=draw(st.text(max_size=40)))
    return Document(named, draw(site_records(project)))


@given(documents())
def test_written_document_reads_back_the_same(document: Document) -> None:
    text = text_of(document)
    again = read_document(text.encode(), "a.eave")
    assert again == document
    assert text_of(again) == text
    assert hash(again) == hash(document)


def check_refused_or_sound(data: bytes) -> None:
    """Bytes are refused in one sentence with places, or state a document that can be saved."""
    outcome = read_or_refused(data)
    if isinstance(outcome, Document):
        event("sound")
        assert read_document(text_of(outcome).encode(), "a.eave") == outcome
        return
    event("refused")
    sentence = str(outcome)
    assert sentence.startswith("a.eave")
    assert sentence.endswith(".")
    assert "\n" not in sentence
    assert len(sentence) < 800
    assert len({fault.place for fault in outcome.faults}) == len(outcome.faults) > 0


def read_or_refused(data: bytes) -> Document | StorageError:
    try:
        return read_document(data, "a.eave")
    except StorageError as error:
        return error


JUNK = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(),
    st.sampled_from([10**30, -(10**400), 0.1, 1e308, float("nan"), float("inf")]),
    st.text(max_size=8),
    st.sampled_from(["16", "16 in", "-16 in", "1 mile", "9 in 12", "1e9 mm", "left", "end", "\0"]),
    st.sampled_from(["1609344 mm", "0 mm", "5280'", "79.9°", "1e-300 in", "x" * 20_000]),
    st.lists(st.sampled_from(["1 in", 1, None]), max_size=3),
    st.dictionaries(st.sampled_from(["left", "width", "x"]), st.integers(), max_size=2),
    st.integers(20, 40).map(lambda depth: json.loads("[" * depth + "]" * depth)),
    st.integers(9_999, 10_001).map(lambda count: [1] * count),
)


class Twice(str):
    """A key that is the same as another one in its object, and yet stands beside it."""

    __slots__ = ()

    def __eq__(self, other: object) -> bool:
        return self is other

    def __hash__(self) -> int:
        return id(self)


def containers(data: Any) -> list[Any]:
    """Every object and list in plain data that has something in it."""
    if not isinstance(data, dict | list) or not data:
        return []
    inner = data.values() if isinstance(data, dict) else data
    return [data, *(found for item in inner for found in containers(item))]


def swap_texts(draw: st.DrawFn, data: Any) -> None:
    """Swap two texts of plain data, in place: often two lengths, and often still a project."""
    holders = st.sampled_from(
        [
            (holder, at)
            for holder in containers(data)
            for at in (list(holder) if isinstance(holder, dict) else range(len(holder)))
            if isinstance(holder[at], str)
        ]
    )
    (one, here), (other, there) = draw(holders), draw(holders)
    one[here], other[there] = other[there], one[here]


def spoil(draw: st.DrawFn, data: Any) -> None:
    """Spoil one thing in plain data, in place."""
    holder = draw(st.sampled_from(containers(data)))
    at = draw(st.sampled_from([*holder] if isinstance(holder, dict) else range(len(holder))))
    way = draw(st.sampled_from(["drop", "junk", "junk", "double", "rename", "move"]))
    if way == "drop":
        del holder[at]
    elif way == "junk":
        holder[at] = draw(JUNK)
    elif way == "move":
        holder[at] = copy.deepcopy(draw(st.sampled_from(containers(data))))
    elif isinstance(holder, list):
        holder.append(holder[at])
    elif way == "double":
        holder[Twice(at)] = draw(JUNK)
    else:
        holder[draw(st.sampled_from([at[:-1], at.upper(), f"{at}s", "", "é", "a b\n"]))] = (
            holder.pop(at)
        )


@st.composite
def spoilt_documents(draw: st.DrawFn) -> bytes:
    """The text of a document whose structure was spoilt in up to three places."""
    data = json.loads(json.dumps(plain_document(draw(documents()))))
    for _ in range(draw(st.integers(1, 3))):
        if containers(data):
            spoil(draw, data)
    return json.dumps(data).encode()


@st.composite
def shuffled_documents(draw: st.DrawFn) -> bytes:
    """The text of a document with some of its texts in one another's places."""
    data = json.loads(json.dumps(plain_document(draw(documents()))))
    for _ in range(draw(st.integers(1, 2))):
        swap_texts(draw, data)
    return json.dumps(data).encode()


@given(shuffled_documents())
def test_shuffled_texts_are_refused_or_sound(data: bytes) -> None:
    check_refused_or_sound(data)


@given(spoilt_documents())
def test_spoilt_structure_is_refused_or_sound(data: bytes) -> None:
    check_refused_or_sound(data)


@given(st.data())
def test_spoilt_bytes_are_refused_or_sound(data: st.DataObject) -> None:
    text = bytearray(text_of(data.draw(documents())).encode())
    for _ in range(data.draw(st.integers(1, 4))):
        start = data.draw(st.integers(0, len(text)))
        count = data.draw(st.sampled_from([0, 1, 2, 30, len(text)]))
        text[start : start + count] = data.draw(
            st.binary(max_size=4) | st.sampled_from([b'"', b"{", b"[" * 40, b"}", b",", b"\\"])
        )
    check_refused_or_sound(bytes(text))


@given(st.binary(max_size=200))
def test_any_bytes_are_refused_or_sound(data: bytes) -> None:
    check_refused_or_sound(data)


@given(projects(), projects())
def test_different_documents_have_different_texts(one: Any, other: Any) -> None:
    site = SiteRecord()
    same = text_of(Document(one, site)) == text_of(Document(other, site))
    assert same == (one == other)
