"""The sense of layout origins, rules of framing and doubled studs."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.lengths import Length
from core.model import DoubledStud, EndLean, Layout, Point, Side, Wall, WallRules
from core.storage import Document
from core.storage.sense_rules import (
    doubled_studs,
    end_leans,
    layout_origin,
    rule_faults,
    rule_lengths,
)

replace = msgspec.structs.replace


def places(faults: Any) -> list[str]:
    return [fault.place for fault in faults]


@pytest.fixture
def wall(loft: Document) -> Wall:
    return loft.project.walls[0]


@pytest.mark.parametrize(
    ("origin", "expected"),
    [(None, []), (-60_000, []), (60_000, []), (60_001, ["l.origin"]), (-60_001, ["l.origin"])],
)
def test_origin(origin: float | None, expected: list[str]) -> None:
    at = None if origin is None else Length(float(origin))
    assert places(layout_origin(Layout(Length(400.0), origin=at), "l")) == expected


@pytest.mark.parametrize(
    ("rules", "expected"),
    [
        (WallRules(), []),
        (WallRules(closer_than=Length(0.0), board=Length(1200.0)), []),
        (WallRules(closer_than=Length(-1.0)), ["r.closer_than"]),
        (WallRules(closer_than=Length(1001.0)), ["r.closer_than"]),
        (WallRules(board=Length(49.0)), ["r.board"]),
        (WallRules(least_left=1), []),
        (WallRules(least_left=0), ["r.least_left"]),
        (WallRules(least_left=101), ["r.least_left"]),
    ],
)
def test_rules(rules: WallRules, expected: list[str]) -> None:
    assert places(rule_lengths(rules, "r")) == expected


@pytest.mark.parametrize(
    ("offset", "run", "good"),
    [(0, 3000, True), (-200, 3000, True), (201, 3000, False), (-100, 400, True), (101, 400, False)],
)
def test_ends_out_of_plumb(wall: Wall, offset: float, run: float, good: bool) -> None:
    ends = Point(Length(0.0), Length(0.0)), Point(Length(run), Length(0.0))
    leaning = msgspec.structs.replace(
        wall, left_end=ends[0], right_end=ends[1], right_lean=EndLean(Length(float(offset)))
    )
    assert places(end_leans(leaning, "w")) == ([] if good else ["w.right_lean.offset"])


@pytest.mark.parametrize(
    ("studs", "faulty"),
    [
        (["A/layout/3", "A/end/left", "A/stud-1"], []),
        (["B/layout/3"], [0]),
        (["A/layout/0"], [0]),
        (["A/layout/x", "A/end/middle", "A"], [0, 1, 2]),
        (["A/layout/3", "A/layout/3"], [1]),
    ],
)
def test_doubled(wall: Wall, studs: list[str], faulty: list[int]) -> None:
    stated = replace(wall, letter="A", doubled=tuple(DoubledStud(s, Side.LEFT) for s in studs))
    assert places(doubled_studs(stated, "d")) == [f"d[{n}].stud" for n in faulty]


def test_all_of_a_wall(wall: Wall) -> None:
    assert list(rule_faults(wall, "w")) == []
    bad = replace(
        wall,
        layout=replace(wall.layout, origin=Length(1e6)),
        rules=WallRules(board=Length(0.0)),
        doubled=(DoubledStud("x", Side.LEFT),),
    )
    assert places(rule_faults(bad, "w")) == [
        "w.layout.origin",
        "w.rules.board",
        "w.doubled[0].stud",
    ]
