"""The catalogues against each other and against every message id in the program."""

import ast
import importlib.resources
import re
import string
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import polib
import pytest

import core
import gui
import resources
from core.checks import Severity
from core.framing import Role
from core.model import HeaderKind, LineEdge, OpeningKind, Side
from core.wording import CATALOGUES, texts

SOURCES = sorted(
    path for package in (core, gui) for path in Path(str(package.__file__)).parent.rglob("*.py")
)
IDS = {message_id for message_id in texts("us") if message_id}
ROOMS = {message_id.partition(".")[0] for message_id in IDS}
"""What stands before the first dot of an id."""

ID = re.compile(r"[a-z-]+(\.[a-z0-9-]+)+")
OTHER_TRADE = re.compile(r"\b(miter|mitered|headers?|sills?|top plates?|cripples?)\b", re.I)


def catalogue(name: str) -> str:
    return (importlib.resources.files(resources) / "texts" / f"{name}.po").read_text("utf-8")


def places(text: str) -> set[str]:
    """The names of the values that a text asks for."""
    return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}


@pytest.mark.parametrize("name", CATALOGUES)
def test_no_id_stands_twice(name: str) -> None:
    entries = polib.pofile(catalogue(name), check_for_duplicates=True)
    assert len(entries) == catalogue(name).count("\nmsgid ") - 1  # without the head's empty one


@pytest.mark.parametrize("name", CATALOGUES)
def test_every_text_says_something(name: str) -> None:
    for message_id, text in texts(name).items():
        if message_id:
            assert ID.fullmatch(message_id)
            assert text.strip()
            assert all(re.fullmatch("[a-z_]+", place) for place in places(text))


def test_metric_wording_has_no_ids_of_its_own() -> None:
    assert set(texts("metric")) - set(texts("us")) == set()


@pytest.mark.parametrize("message_id", sorted(set(texts("metric")) - {""}))
def test_metric_wording_asks_for_the_same_values(message_id: str) -> None:
    # Metric wording may leave one out, as the rise in 12 beside an angle.
    assert places(texts("metric")[message_id]) <= places(texts("us")[message_id])


@pytest.mark.parametrize("message_id", sorted(set(texts("metric")) - {""}))
def test_metric_wording_holds_only_what_differs(message_id: str) -> None:
    assert texts("metric")[message_id] != texts("us")[message_id]


def test_no_word_of_the_other_trade_is_left_in_metric_wording() -> None:
    left = {
        message_id: text
        for message_id, text in {**texts("us"), **texts("metric")}.items()
        if OTHER_TRADE.search(re.sub(r"\{[^}]*\}", "", text))
    }
    assert left == {}


@cache
def _tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def _literals(tree: ast.AST) -> set[str]:
    """Texts that have the form of a message id, those within an f-string left out."""
    joined = [node for node in ast.walk(tree) if isinstance(node, ast.JoinedStr)]
    inside = {id(part) for node in joined for part in node.values}
    plain = [n for n in ast.walk(tree) if isinstance(n, ast.Constant) and id(n) not in inside]
    return {n.value for n in plain if isinstance(n.value, str) and ID.fullmatch(n.value)}


def _patterns(tree: ast.AST) -> set[str]:
    """F-strings that begin like a message id, as patterns: any word for each value."""
    made = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            parts = [re.escape(str(getattr(part, "value", ""))) for part in node.values]
            wild = [isinstance(part, ast.FormattedValue) for part in node.values]
            pattern = "".join("[a-z0-9-]+" if w else p for p, w in zip(parts, wild, strict=True))
            if pattern.partition(r"\.")[0].replace("\\-", "-") in ROOMS:
                made.add(pattern)
    return made


def _said(tree: ast.AST) -> Iterator[tuple[ast.Call, ast.expr]]:
    """Every call that makes a message or asks for a word, with its first argument."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and node.args:
            name = node.func.attr if isinstance(node.func, ast.Attribute) else ""
            name = node.func.id if isinstance(node.func, ast.Name) else name
            if name in ("message", "word"):
                yield node, node.args[0]


def _choices(argument: ast.expr) -> list[str]:
    """The literal ids that a first argument may be: itself, or either side of an if."""
    if isinstance(argument, ast.IfExp):
        return _choices(argument.body) + _choices(argument.orelse)
    literal = isinstance(argument, ast.Constant) and isinstance(argument.value, str)
    return [argument.value] if literal else []  # type: ignore[attr-defined]


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_every_id_in_the_program_has_a_text(path: Path) -> None:
    asked = {found for _, argument in _said(_tree(path)) for found in _choices(argument)}
    alike = {found for found in _literals(_tree(path)) if found.partition(".")[0] in ROOMS}
    assert sorted((asked | alike) - IDS) == []


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_every_message_brings_the_values_of_its_text_and_no_others(path: Path) -> None:
    for call, argument in _said(_tree(path)):
        given = {keyword.arg for keyword in call.keywords}
        for found in _choices(argument):
            assert None in given or given == places(texts("us")[found]), found


def test_every_id_that_is_put_together_has_a_text() -> None:
    """An f-string stands for at least one id; those made from a kind, for one of each kind."""
    for path in SOURCES:
        for pattern in _patterns(_tree(path)):
            assert any(re.fullmatch(pattern, known) for known in IDS), (path.name, pattern)


@pytest.mark.parametrize(
    ("room", "kinds"),
    [
        ("role", Role),
        ("severity", Severity),
        ("end", Side),
        ("side", Side),
        ("kind", OpeningKind),
        ("header", HeaderKind),
        ("edge", LineEdge),
    ],
)
def test_every_kind_has_its_word(room: str, kinds: type[Role]) -> None:
    assert [kind for kind in kinds if f"{room}.{kind.value.replace(' ', '-')}" not in IDS] == []


def test_every_text_is_used() -> None:
    literal = set().union(*(_literals(_tree(path)) for path in SOURCES))
    patterns = set().union(*(_patterns(_tree(path)) for path in SOURCES))
    made = {known for known in IDS for p in patterns if re.fullmatch(p, known)}
    assert sorted(IDS - literal - made) == []
