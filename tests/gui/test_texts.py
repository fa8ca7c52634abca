"""Every message id in the window's code stands in the catalogue, with the values it is given."""

from __future__ import annotations

import ast
import string
from collections.abc import Iterator
from pathlib import Path

import pytest

import gui
from core.framing import Role, Way, Why
from core.framing.moving import Snap
from core.lengths import System
from core.model import (
    BoxHeight,
    EndStud,
    HeaderKind,
    LineEdge,
    Near,
    OpeningKind,
    Passing,
    PlateJoint,
    PlateLie,
    Side,
    Swing,
)
from core.wording import CATALOGUES, texts
from gui.panels.habits import _STEPS, _SYSTEMS, _WORDS

SOURCES = sorted(Path(str(gui.__file__)).parent.rglob("*.py"))


def _dashed(values: object) -> list[str]:
    return [str(member.value).replace(" ", "-") for member in values]  # type: ignore[attr-defined]


MADE = {
    *(f"role.{role}" for role in _dashed(Role)),
    *(f"kind.{kind}" for kind in _dashed(OpeningKind)),
    *(f"undo.add-{kind}" for kind in _dashed(OpeningKind)),
    *(f"action.add-{kind}" for kind in _dashed(OpeningKind)),
    *(f"header.{kind}" for kind in _dashed(HeaderKind)),
    *(f"height.{to}" for to in _dashed(BoxHeight)),
    *(f"held.height-{to}" for to in _dashed(BoxHeight)),
    *(f"edge.{edge}" for edge in _dashed(LineEdge)),
    *(f"end-stud.{stud}" for stud in _dashed(EndStud)),
    *(f"field.{name}-{side}" for name in ("lean", "end-stud") for side in _dashed(Side)),
    *(f"passing.{passing}" for passing in _dashed(Passing)),
    *(f"lie.{lie}" for lie in _dashed(PlateLie)),
    *(f"saw.{way}" for way in _dashed(Way) if way != "flat"),
    *(f"joint.{joint}" for joint in _dashed(PlateJoint)),
    *(f"{part}.{name}" for part in ("heading", "field") for name in ("longest", "lap")),
    *(f"side.{side}" for side in _dashed(Side)),
    *(f"end.{side}" for side in _dashed(Side)),
    *(f"heading.{side}-slope" for side in _dashed(Side)),
    *(f"drag.box-{side}" for side in _dashed(Side)),
    *(f"hinges.{side}" for side in _dashed(Side)),
    *(f"swing.{swing.name.lower()}" for swing in Swing),
    *(f"near.{near}" for near in _dashed(Near)),
    *(f"layout.{why}" for why in _dashed(Why)),
    *(f"drag.{snap}" for snap in _dashed(Snap)),
    *(f"face.{face}" for face in ("left", "right", "top", "underside")),
    *(f"command.{name}" for name in ("demo", "sheets", "drawing", "figures", "check")),
    *(f"paper.{name}" for name in ("letter", "tabloid", "a4", "a3")),
    *(word for system in System for _, word in _STEPS[system]),
    *(word for _, word in (*_SYSTEMS, *_WORDS)),
    *(f"count.{count}" for count in (1, 2, 3, 4)),
    *(f"field.letter-{name}" for name in ("stud", "king", "trimmer", "cripple")),
    *(f"field.{end}-end-{axis}" for end in ("left", "right") for axis in ("across", "along")),
    *("action.undo-named", "action.redo-named"),
}
"""The ids that the code puts together."""


def literals(path: Path) -> Iterator[str]:
    """The texts in a file that have the form of a message id."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    joined = (node for node in ast.walk(tree) if isinstance(node, ast.JoinedStr))
    parts = {id(part) for node in joined for part in node.values}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in parts:
            room, dot, name = node.value.partition(".")
            plain = name.replace("-", "").replace(".", "").isalnum() and room.isalpha()
            if dot and plain and room.islower() and room in _ROOMS:
                yield node.value


_ROOMS = {message_id.partition(".")[0] for message_id in texts("us")}


@pytest.mark.parametrize("path", SOURCES, ids=lambda p: p.name)
def test_every_id_has_a_text(path: Path) -> None:
    assert [found for found in literals(path) if found not in texts("us")] == []


def test_every_id_that_is_put_together_has_a_text() -> None:
    assert sorted(MADE - set(texts("us"))) == []


def _values(text: str) -> set[str]:
    return {name for _, name, _, _ in string.Formatter().parse(text) if name}


@pytest.mark.parametrize("path", SOURCES, ids=lambda p: p.name)
def test_every_message_gets_the_values_that_its_text_asks_for(path: Path) -> None:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if not isinstance(node, ast.Call) or getattr(node.func, "id", "") != "message":
            continue
        first = node.args[0]
        if isinstance(first, ast.Constant):
            given = {keyword.arg for keyword in node.keywords}
            for catalogue in CATALOGUES:
                text = texts(catalogue).get(str(first.value))
                assert text is None or _values(text) <= given, first.value


@pytest.mark.parametrize("message_id", sorted(texts("metric").keys() & texts("us").keys()))
def test_metric_wording_asks_for_no_other_values(message_id: str) -> None:
    assert _values(texts("metric")[message_id]) <= _values(texts("us")[message_id])
