"""The sense of a wall: one table for each rule."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.lengths import Length
from core.model import (
    AddedStud,
    Box,
    Header,
    HeaderKind,
    Layout,
    MovedStud,
    Opening,
    Point,
    Timber,
    TopPlate,
    Wall,
)
from core.storage import Document
from core.storage.sense_wall import (
    box_size,
    head_above_sill,
    header_size,
    ids,
    layout_places,
    layout_spacing,
    lists_short,
    opening_size,
    stud_lefts,
    timber_thickness,
    top_plate_count,
    wall_faults,
    wall_run,
    well_formed_id,
    within_reach,
)

replace = msgspec.structs.replace
STUD = Timber(Length(38.0), Length(89.0))


def mm(value: float) -> Length:
    return Length(float(value))


def places(faults: Any) -> list[str]:
    return [fault.place for fault in faults]


@pytest.fixture
def wall(loft: Document) -> Wall:
    return loft.project.walls[0]


@pytest.fixture
def opening(wall: Wall) -> Opening:
    return wall.openings[0]


@pytest.fixture
def box(wall: Wall) -> Box:
    return wall.boxes[0]


def test_every_rule_is_asked_with_its_place(wall: Wall, opening: Opening, box: Box) -> None:
    """One thing spoilt for each rule, told in their order."""
    spoilt = replace(
        wall,
        right_end=wall.left_end,
        stud=Timber(mm(9), mm(89)),
        sole_plate=Timber(mm(38), mm(0)),
        top_plate=TopPlate(Timber(mm(151), mm(89)), 3),
        layout=Layout(mm(40)),
        openings=(
            replace(
                opening, width=mm(0), head=mm(-1), header=Header(HeaderKind.FLAT, STUD, plies=5)
            ),
        ),
        boxes=(replace(box, depth=mm(0)),),
        moved=(MovedStud(0, mm(100)), MovedStud(1, mm(60_001))),
        added=(AddedStud("top", mm(100)),) * 201,
        left_out=(2, 2),
    )
    told = places(wall_faults(spoilt, "w"))
    assert [place for place in told if not place.startswith("w.added[")] == [
        "w.right_end",
        "w.stud.thickness",
        "w.sole_plate.width",
        "w.top_plate.count",
        "w.top_plate.timber.thickness",
        "w.layout.spacing",
        "w.added",
        "w.openings[0].width",
        "w.openings[0].head",
        "w.openings[0].header.plies",
        "w.boxes[0].depth",
        "w.moved[0].place",
        "w.left_out[1]",
        "w.moved[1].left",
    ]
    assert "w.added[0].id" in told


@pytest.mark.parametrize(
    ("across", "along", "told"),
    [
        (300, 0, []),
        # A right triangle of 180 and 240 has 300 as its long side.
        (180, 240, []),
        (60_000, 0, []),
        (299, 0, ["the wall's ends are 299 mm apart, less than 300 mm; move them apart."]),
        (0, 0, ["the wall's ends are 0 apart, less than 300 mm; move them apart."]),
        (
            0,
            60_001,
            ["the wall is 60001 mm long, more than 60000 mm; bring its ends nearer."],
        ),
    ],
)
def test_wall_run(wall: Wall, across: float, along: float, told: list[str]) -> None:
    moved = replace(wall, left_end=Point(mm(0), mm(0)), right_end=Point(mm(across), mm(along)))
    assert [str(fault) for fault in wall_run(moved, "w")] == told


@pytest.mark.parametrize(
    ("thickness", "width", "bad"),
    [
        (10, 1, []),
        (150, 1000, []),
        (9.9, 89, ["t.thickness"]),
        (150.1, 89, ["t.thickness"]),
        (38, 0, ["t.width"]),
        (38, 1001, ["t.width"]),
    ],
)
def test_timber_thickness(thickness: float, width: float, bad: list[str]) -> None:
    assert places(timber_thickness(Timber(mm(thickness), mm(width)), "t")) == bad


@pytest.mark.parametrize(
    ("count", "good"), [(-1, False), (0, True), (1, True), (2, True), (3, False)]
)
def test_top_plate_count(count: int, good: bool) -> None:
    assert places(top_plate_count(TopPlate(STUD, count), "p")) == ([] if good else ["p.count"])


@pytest.mark.parametrize(
    ("spacing", "hung", "bad"),
    [
        (50, 0, []),
        (406.4, 12.7, []),
        (49, 0, ["l.spacing"]),
        (60_001, 0, ["l.spacing"]),
        (400, -1, ["l.hung_board"]),
        (400, 1001, ["l.hung_board"]),
    ],
)
def test_layout_spacing(spacing: float, hung: float, bad: list[str]) -> None:
    layout = Layout(mm(spacing), hung_board=mm(hung))
    assert places(layout_spacing(layout, "l")) == bad


@pytest.mark.parametrize("name", ["openings", "boxes", "moved", "added"])
def test_lists_of_a_wall_end_at_200(wall: Wall, name: str) -> None:
    item = getattr(wall, name)[0]
    assert places(lists_short(replace(wall, **{name: (item,) * 200}), "w")) == []
    assert places(lists_short(replace(wall, **{name: (item,) * 201}), "w")) == [f"w.{name}"]


@pytest.mark.parametrize(
    ("openings", "boxes", "added", "bad"),
    [
        ("a", "b", "c", []),
        ("a a", "", "", ["w.openings[1].id"]),
        ("", "a b a", "", ["w.boxes[2].id"]),
        ("", "", "a a a", ["w.added[1].id", "w.added[2].id"]),
        # An id is part of a key, and the key does not say whether it is a box or an opening.
        ("a", "a", "a", ["w.boxes[0].id", "w.added[0].id"]),
        ("a", "b", "top", ["w.added[0].id"]),
    ],
)
def test_ids_differ(
    wall: Wall, opening: Opening, box: Box, openings: str, boxes: str, added: str, bad: list[str]
) -> None:
    named = replace(
        wall,
        openings=tuple(replace(opening, id=text) for text in openings.split()),
        boxes=tuple(replace(box, id=text) for text in boxes.split()),
        added=tuple(AddedStud(text, mm(500)) for text in added.split()),
    )
    assert places(ids(named, "w")) == bad


@pytest.mark.parametrize("text", ["a", "door-1", "d", "end-1", "tops", "a--", "layout1"])
def test_well_formed_ids(text: str) -> None:
    assert places(well_formed_id(text, "i")) == []


@pytest.mark.parametrize(
    "text",
    ["", "Door", "1st", "-a", "a b", "a_b", "a/b", "ä", "a\n", "end", "layout", "top", "past"],
)
def test_no_ids(text: str) -> None:
    assert places(well_formed_id(text, "i")) == ["i"]


@pytest.mark.parametrize(
    ("left", "width", "head", "sill", "bad"),
    [
        (2540, 863, 2096, 0, []),
        (-60_000, 60_000, 100_000, 99_999, []),
        (60_001, 863, 2096, 0, ["o.left"]),
        (-60_001, 863, 2096, 0, ["o.left"]),
        (0, 0, 2096, 0, ["o.width"]),
        (0, 60_001, 2096, 0, ["o.width"]),
        (0, 863, 100_001, 0, ["o.head"]),
        (0, 863, 2096, -1, ["o.sill"]),
    ],
)
def test_opening_size(
    opening: Opening, left: float, width: float, head: float, sill: float, bad: list[str]
) -> None:
    sized = replace(opening, left=mm(left), width=mm(width), head=mm(head), sill=mm(sill))
    assert places(opening_size(sized, "o")) == bad


@pytest.mark.parametrize(
    ("sill", "head", "good"),
    [(0, 2096, True), (900, 901, True), (900, 900, False), (900, 800, False), (0, 0, False)],
)
def test_head_above_sill(opening: Opening, sill: float, head: float, good: bool) -> None:
    sized = replace(opening, sill=mm(sill), head=mm(head))
    assert places(head_above_sill(sized, "o")) == ([] if good else ["o.head"])


@pytest.mark.parametrize(
    ("kind", "thickness", "width", "plies", "bad"),
    [
        (HeaderKind.FLAT, 38, 89, 1, []),
        (HeaderKind.ON_EDGE, 38, 286, 4, []),
        (HeaderKind.FLAT, 0, 89, 1, ["h.timber.thickness"]),
        (HeaderKind.ON_EDGE, 38, 1001, 1, ["h.timber.width"]),
        # Where there is no header, its size does not matter.
        (HeaderKind.NONE, 0, 0, 1, []),
        (HeaderKind.FLAT, 38, 89, 0, ["h.plies"]),
        (HeaderKind.NONE, 38, 89, 5, ["h.plies"]),
    ],
)
def test_header_size(
    kind: HeaderKind, thickness: float, width: float, plies: int, bad: list[str]
) -> None:
    header = Header(kind, Timber(mm(thickness), mm(width)), plies)
    assert places(header_size(header, "h")) == bad


@pytest.mark.parametrize(
    ("name", "good", "bad"),
    [
        ("height", 0, -1),
        ("height", 100_000, 100_001),
        ("width", 1, 0),
        ("depth", 1, 0),
        ("tall", 1000, 1001),
    ],
)
def test_box_size(box: Box, name: str, good: float, bad: float) -> None:
    assert places(box_size(replace(box, **{name: mm(good)}), "b")) == []
    assert places(box_size(replace(box, **{name: mm(bad)}), "b")) == [f"b.{name}"]


@pytest.mark.parametrize(
    ("moved", "left_out", "bad"),
    [
        ((), (), []),
        ((1, 2), (3, 4), []),
        # A stud that is moved and left out is left out; that is for the framing to settle.
        ((1,), (1,), []),
        ((10_000,), (10_001,), ["w.left_out[0]"]),
        ((0,), (-1,), ["w.moved[0].place", "w.left_out[0]"]),
        ((2, 1, 2), (), ["w.moved[2].place"]),
        ((), (5, 5, 5), ["w.left_out[1]", "w.left_out[2]"]),
    ],
)
def test_layout_places(
    wall: Wall, moved: tuple[int, ...], left_out: tuple[int, ...], bad: list[str]
) -> None:
    studs = tuple(MovedStud(place, mm(100)) for place in moved)
    assert places(layout_places(replace(wall, moved=studs, left_out=left_out), "w")) == bad


def test_studs_stand_within_reach(wall: Wall) -> None:
    far = replace(wall, moved=(MovedStud(1, mm(60_001)),), added=(AddedStud("a", mm(-60_001)),))
    assert places(stud_lefts(wall, "w")) == []
    assert places(stud_lefts(far, "w")) == ["w.moved[0].left", "w.added[0].left"]


@pytest.mark.parametrize(
    ("left", "good"), [(60_000, True), (-60_000, True), (60_001, False), (-60_001, False)]
)
def test_within_reach(left: float, good: bool) -> None:
    assert places(within_reach(mm(left), "x")) == ([] if good else ["x"])
