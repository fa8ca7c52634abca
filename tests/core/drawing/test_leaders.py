"""Labels away from a crowded member, and their leaders."""

from copy import deepcopy

import pytest

from core.drawing import Pen, Stroke, Text, View
from core.drawing.elements import Element
from core.drawing.leaders import GAP, PAST_END, Uprights, led_text
from core.drawing.placing import Ground, Rect, bounds
from core.drawing.typeface import text_width
from core.roof import RoofLine, Segment
from walls import UK, at_degrees, frame_of

VIEW = View(1 / 50)
FRAME = frame_of(UK.room(9000, (2600, at_degrees(45)), flat=2600), UK.wall((0, 3000), (4000, 3000)))
LINE = RoofLine((Segment(0.0, 4000.0, 2600.0, 0.0, 0.0),))
STUD = next(m for m in FRAME.members if m.key == "B/layout/4")  # 1581 to 1619, 38 to 2562
WIDE = 50 * (text_width("B5", 3.5, narrow=True) + 2 * GAP)
HIGH = 50 * (2.45 + 2 * GAP)
ALONE = Uprights([])


def led(*taken: Rect, member: str = "B/layout/4") -> tuple[Element, ...]:
    """The label of a stud where writing stands on these rectangles."""
    ground = Ground(400.0)
    for rect in taken:
        ground.add_writing(rect)
    found = next(m for m in FRAME.members if m.key == member)
    return led_text(found, "B5", LINE, VIEW, ground, ALONE)


def place(elements: tuple[Element, ...]) -> tuple[float, float]:
    text = elements[0]
    assert isinstance(text, Text)
    return text.at


def test_a_label_close_by() -> None:
    """At its right hand, half up the stud: its middle is (1619 + half its width, 1300)."""
    text, leader, diamond, through = led()
    assert isinstance(text, Text)
    assert (text.text, text.pen, text.key) == ("B5", Pen.LABEL, "B/layout/4")
    half_up = 38 + 0.5 * (2524 - HIGH) + HIGH / 2
    assert text.at == pytest.approx((1619 + WIDE / 2, half_up))
    assert isinstance(leader, Stroke)
    assert leader.points == ((1619, half_up), (1600, half_up))
    # The dot stands on the middle of the stud, as dark as its leader: strokes, no fill.
    for stroke in (diamond, through):
        assert isinstance(stroke, Stroke)
        assert stroke.pen is Pen.LABEL
        assert {abs(x - 1600) <= 20 and abs(y - half_up) <= 20 for x, y in stroke.points} == {True}


@pytest.mark.parametrize(
    ("taken", "right", "up"),
    [
        # The right side is taken: on the left, its right edge at the stud.
        ([(1619, 0, 3000, 2562)], False, 0.5),
        # Both sides are at half the height: lower, at the right again.
        ([(1200, 1200, 2000, 1400)], True, 0.35),
        ([(1200, 800, 2000, 1400)], True, 0.65),
    ],
)
def test_the_next_place_is_taken(taken: list[Rect], right: bool, up: float) -> None:
    x, y = place(led(*taken))
    assert (x > 1600) == right
    assert y == pytest.approx(38 + up * (2524 - HIGH) + HIGH / 2)


def test_no_leader_crosses_writing() -> None:
    """A text 100 wide stands at either side over the stud's whole height: nowhere to go."""
    walls = [(1640.0, 0.0, 1740.0, 2600.0), (1460.0, 0.0, 1560.0, 2600.0)]
    assert led(*walls) == ()


def test_no_label_stands_over_the_heights_at_the_ends() -> None:
    """Past the right end there are 5 mm (250) for it, past the left one as many."""
    free = led((0, 0, 3962, 2600), member="B/end/right")
    x, _ = place(free)
    assert x + WIDE / 2 <= 4000 + 50 * PAST_END
    right = next(m for m in FRAME.members if m.key == "B/end/right")
    wide = led_text(right, "B1000", LINE, VIEW, _full(3962), ALONE)
    assert wide == ()


def _full(right: float) -> Ground:
    ground = Ground(400.0)
    ground.add_writing((0.0, 0.0, right, 2600.0))
    return ground


def test_a_label_stays_under_the_roof() -> None:
    low = RoofLine((Segment(0.0, 4000.0, 1250.0, 0.0, 0.0),))
    elements = led_text(STUD, "B5", low, VIEW, Ground(400.0), ALONE)
    assert place(elements)[1] + HIGH / 2 < 1250


def test_a_label_and_its_leader_are_taken_from_then_on() -> None:
    ground = Ground(400.0)
    text, *_ = led_text(STUD, "B5", LINE, VIEW, ground, ALONE)
    assert isinstance(text, Text)
    x, y = text.at
    assert not ground.free((x - 1, y - 1, x + 1, y + 1))
    assert not ground.passable((1605, y - 1, 1615, y + 1))
    assert ground.passable((1605, y + 60, 1615, y + 70))


@pytest.mark.parametrize("scale", [1 / 30, 1 / 50, 1 / 80])
@pytest.mark.parametrize("spacing", [120.0, 300.0, 400.0])
def test_a_glance_at_the_neighbours_finds_what_the_search_does(
    scale: float, spacing: float
) -> None:
    """Between studs nearer to each other than a label is wide there is none, with or without."""
    door = UK.opening("door-1", 1500, 700, 2000)
    wall = UK.wall((0, 3000), (4000, 3000), spacing=spacing, openings=(door,))
    frame = frame_of(UK.room(9000, (2200, at_degrees(30)), flat=3000), wall)
    standing = [m for m in frame.members if not m.lies]
    ground, found = Ground(400.0), []
    for member in standing:
        ground.add_timber(bounds(member.near))
    for member in standing:
        each = [
            led_text(member, "B12", frame.near, View(scale), deepcopy(ground), uprights)
            for uprights in (Uprights(standing), ALONE)
        ]
        assert each[0] == each[1]
        found.append(bool(each[0]))
    assert any(found)
