"""The figures as plain data: what they hold, against literal cases and against their schema."""

import json
import math
from collections.abc import Iterator
from importlib.resources import files
from typing import Any

import msgspec
import pytest
from jsonschema import Draft202012Validator

import jobs
import resources
from core.job import Results
from core.output.figures import figures, write_figures
from core.output.figures_schema import FILE

NAMES = ["inch", "metric"]


def figures_of(name: str) -> dict[str, Any]:
    return figures(*jobs.job(name))


def wall(name: str, letter: str) -> dict[str, Any]:
    (found,) = (w for w in figures_of(name)["walls"] if w["letter"] == letter)
    assert isinstance(found, dict)
    return found


def part(things: list[dict[str, Any]], key: str, name: str = "key") -> dict[str, Any]:
    (found,) = (thing for thing in things if thing[name] == key)
    return found


@pytest.mark.parametrize("name", NAMES)
def test_they_keep_to_the_packaged_schema(name: str) -> None:
    schema = json.loads(files(resources).joinpath("schemas", FILE).read_text("utf-8"))
    faults = list(
        Draft202012Validator(schema).iter_errors(json.loads(write_figures(*jobs.job(name))))
    )
    assert faults == []


@pytest.mark.parametrize("name", NAMES)
def test_the_text_says_the_same_as_the_data(name: str) -> None:
    """To the last bit, and indented by two spaces."""
    text = write_figures(*jobs.job(name))
    assert json.loads(text) == figures_of(name)
    assert text.startswith('{\n  "format": "eavewright-figures/1",\n  "length_unit": "mm",\n')
    assert text.endswith("}\n")


def test_every_promised_key_is_there() -> None:
    found = figures_of("inch")
    assert list(found) == [
        "format",
        "length_unit",
        "angle_unit",
        "walls",
        "plan",
        "stock",
        "sheets",
        "bays",
        "order",
        "raising_order",
        "cautions",
    ]
    assert (found["format"], found["length_unit"], found["angle_unit"]) == (
        "eavewright-figures/1",
        "mm",
        "degree",
    )
    assert (found["stock"], found["sheets"], found["bays"], found["order"]) == ({}, {}, [], [])


def inches(*values: float) -> Any:
    """What a list of so many inches is in mm."""
    return pytest.approx([value * 25.4 for value in values])


def numbers(data: Any) -> Iterator[float]:
    if isinstance(data, dict):
        for value in data.values():
            yield from numbers(value)
    elif isinstance(data, list):
        for value in data:
            yield from numbers(value)
    elif isinstance(data, float):
        yield data


@pytest.mark.parametrize("name", NAMES)
def test_every_number_is_finite_and_zero_has_no_sign(name: str) -> None:
    found = list(numbers(figures_of(name)))
    assert len(found) > 1000
    assert [x for x in found if not math.isfinite(x) or (x == 0 and math.copysign(1, x) < 0)] == []


def with_first_mark_at(x: float) -> Results:
    """The inch job with the first mark of its first wall moved."""
    results = jobs.job("inch").results
    first, *others = results.walls
    marks = (msgspec.structs.replace(first.marks[0], x=x), *first.marks[1:])
    walls = (msgspec.structs.replace(first, marks=marks), *others)
    return msgspec.structs.replace(results, walls=walls)


def test_minus_zero_becomes_zero() -> None:
    found = figures(with_first_mark_at(-0.0), jobs.job("inch").wording)
    assert math.copysign(1, found["walls"][0]["marks"][0]["x"]) == 1


@pytest.mark.parametrize("x", [math.nan, math.inf])
def test_what_is_no_number_is_refused(x: float) -> None:
    """It would be null in JSON."""
    with pytest.raises(ValueError, match="must be a finite number"):
        figures(with_first_mark_at(x), jobs.job("inch").wording)


def test_a_stud_of_the_rake_partition() -> None:
    """The second stud of A: left edge 16 - 3/4 = 15 1/4 in., right edge 16 3/4 in.

    Overhead 30 + 36 * 0.75 = 57 in. at x = 0; a 1 1/2 in. plate is 1.5 * 1.25 = 1.875 in. plumb.
    Lengths from the sole plate: 57 + 15.25 * 0.75 - 3.375 = 65.0625 and 66.1875 in.
    """
    stud = part(wall("inch", "A")["members"], "A/layout/1")
    assert [stud[k] for k in ("label", "role", "count")] == ["A2", "stud", 1]
    assert stud["section"] == inches(1.5, 3.5)
    assert stud["edges"] == inches(65.0625, 66.1875, 65.0625, 66.1875)
    assert [stud[k] for k in ("left", "bottom")] == inches(15.25, 1.5)
    lengths = [stud[k] for k in ("long_point", "short_point", "overall")]
    assert lengths == inches(66.1875, 65.0625, 66.1875)
    # 9 in 12 is atan(0.75) = 36.8699 degrees, rising to the right: the long point's face up.
    (facet,) = stud["top_cut"]
    bevel = pytest.approx(36.86989765)
    saw = {"way": "flat", "bevel": bevel, "mitre": 0.0}
    assert facet == {"bevel": bevel, "mitre": 0.0, "face_up": "right", "saw": saw}
    square = {"bevel": 0.0, "mitre": 0.0}
    assert stud["bottom_cut"] == [{**square, "face_up": "any", "saw": {"way": "flat", **square}}]


def test_a_stud_of_the_knee_wall_is_mitred_and_its_far_edge_is_longer_or_shorter() -> None:
    """Wall B runs along the ridge, seen from the room, so the roof falls away from face A: the
    far edges are 3.5 * 0.75 = 2.625 in. shorter than the near ones."""
    stud = part(wall("inch", "B")["members"], "B/layout/1")
    (facet,) = stud["top_cut"]
    assert abs(facet["mitre"]) == pytest.approx(36.86989765)
    assert facet["bevel"] == pytest.approx(0.0, abs=1e-12)
    near_left, near_right, far_left, far_right = stud["edges"]
    assert near_left == pytest.approx(near_right)
    assert far_left == pytest.approx(far_right)
    assert far_left - near_left == pytest.approx(2.625 * 25.4 * math.copysign(1, facet["mitre"]))
    tops = [max(y for _, y in stud[face]) for face in ("near", "far")]
    assert tops[1] - tops[0] == pytest.approx(far_left - near_left)


def test_the_right_end_of_a_plate_is_its_top_cut() -> None:
    """The rising plate of A is cut plumb at its left end, 36.87 degrees from square; at its right
    end it meets the level one, each cut at half of that: 18.43 degrees."""
    plate = part(wall("inch", "A")["members"], "A/top/1/1")
    assert abs(plate["bottom_cut"][0]["bevel"]) == pytest.approx(36.86989765)
    assert abs(plate["top_cut"][0]["bevel"]) == pytest.approx(36.86989765 / 2)


def test_the_roof_line() -> None:
    """A starts 36 in. in under 57 in.; 90 in. are reached 33 / 0.75 = 44 in. on, and mirrored."""
    corners = [(0, 57), (44, 90), (148, 90), (192, 57)]
    assert wall("inch", "A")["roof_line"] == [inches(x, y) for x, y in corners]
    assert [wall("inch", "A")["length"]] == inches(192)


def test_marks_of_a_stud_on_both_plates() -> None:
    """A's third stud, left edge 31 1/4 in., hooked at the left: 31.25 * 1.25 up the slope."""
    marks = [m for m in wall("inch", "A")["marks"] if m["member"] == "A/layout/2"]
    on_sole, on_top = (part(marks, plate, "plate") for plate in ("A/sole", "A/top/1/1"))
    for mark in (on_sole, on_top):
        assert [mark[k] for k in ("letter", "edge", "from", "x_side")] == [
            "X",
            "left",
            "left",
            "right",
        ]
        assert [mark["x"], mark["along_sole"]] == inches(31.25, 31.25)
    assert on_sole["along_top"] is None
    assert [on_top["along_top"]] == inches(39.0625)


def test_an_opening_and_a_box() -> None:
    (door,) = wall("inch", "A")["openings"]
    assert (door["key"], door["id"], door["kind"], door["fits"]) == (
        "A/door-1",
        "door-1",
        "door",
        True,
    )
    sizes = [door[k] for k in ("left", "width", "head", "sill")]
    assert sizes == inches(84, 34, 80, 0)
    assert (door["heads"], door["rake"]) == (inches(80, 80), 0.0)
    assert all(low <= high for low, high in door["ranges"])
    assert any(low <= door["left"] <= high for low, high in door["ranges"])
    # Right of the third layout stud: 48 + 3/4 in.; 12 in. to the middle of a box 4 in. tall.
    (box,) = wall("inch", "A")["boxes"]
    assert [box[k] for k in ("key", "id", "stud", "side", "to")] == [
        "A/box-1",
        "box-1",
        "A/layout/3",
        "right",
        "centre",
    ]
    sizes = [box[k] for k in ("left", "bottom", "width", "tall", "height")]
    assert sizes == inches(48.75, 10, 2, 4, 12)


def test_a_wall_with_no_frame_still_appears() -> None:
    found = wall("inch", "D")
    assert (found["name"], found["length"], found["roof_line"]) == ("not yet placed", 0.0, [])
    assert (found["members"], found["marks"], found["boxes"]) == ([], [], [])
    (door,) = found["openings"]
    assert (door["key"], door["fits"], door["ranges"]) == ("D/door-1", False, [])
    assert [c["severity"] for c in found["cautions"]] == ["unbuildable"]


def test_cautions_stand_with_their_wall_and_all_together() -> None:
    """Every wall's in the order of the walls, then the ones that always stand."""
    found = figures_of("inch")
    of_walls = [c for w in found["walls"] for c in w["cautions"]]
    # The door is too near the eave; a 2x4 is too narrow for studs mitred by the slope across.
    own = [(c["severity"], c["key"]) for c in wall("inch", "C")["cautions"]]
    assert own == [("unbuildable", "C/door-2"), ("warning", "C")]
    assert found["cautions"][: len(of_walls)] == of_walls
    standing = found["cautions"][len(of_walls) :]
    assert {c["severity"] for c in standing} == {"standing"}
    assert "C, door 2" in wall("inch", "C")["cautions"][0]["text"]


@pytest.mark.parametrize("name", NAMES)
def test_keys_and_labels_name_one_thing_each(name: str) -> None:
    for found in figures_of(name)["walls"]:
        for what in ("key", "label"):
            names = [m[what] for m in found["members"]]
            assert len(set(names)) == len(names)
            assert all(n.startswith(found["letter"]) for n in names)


def test_numbers_are_not_rounded_to_the_tape() -> None:
    """38 degrees over 381 mm: no whole millimetre, and no tenth of one either."""
    stud = part(wall("metric", "A")["members"], "A/layout/1")
    rise = 419 * math.tan(math.radians(38))
    overhead = 700 + 900 * math.tan(math.radians(38)) + rise
    expected = overhead - 38 / math.cos(math.radians(38)) - 38
    assert stud["long_point"] == pytest.approx(expected, abs=1e-9)
    assert stud["long_point"] != round(stud["long_point"], 1)
