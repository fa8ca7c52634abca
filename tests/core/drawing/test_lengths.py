"""Labels and lengths written up each standing member."""

import math

import pytest

from core.drawing import Pen, Show, Stroke, Text, View
from core.drawing.elements import Element
from core.drawing.leaders import GAP
from core.drawing.lengths import upright_texts
from core.drawing.placing import Ground, Rect, bounds
from core.drawing.typeface import text_width
from core.framing import Frame, Role
from core.model import Wall
from walls import UK, at_degrees, frame_of

FLAT = UK.room(9000, (2600, at_degrees(45)), flat=2600)
PLAIN = UK.wall((0, 3000), (2000, 3000))
UP = math.pi / 2
VIEW = View(1 / 25)


def drawn(wall: Wall = PLAIN, view: View = VIEW, *taken: Rect) -> tuple[Frame, tuple[Element, ...]]:
    """A wall under a level ceiling with the texts in it; labels B1, B2 ..., every length "2524"."""
    frame = frame_of(FLAT, wall)
    ground = Ground(400.0)
    for member in frame.members:
        if member.role is not Role.TOP_PLATE:
            ground.add_timber(bounds(member.near))
    for rect in taken:
        ground.add_writing(rect)
    labels = {m.key: f"B{n}" for n, m in enumerate(frame.members, start=1)}
    return frame, upright_texts(frame, labels, dict.fromkeys(labels, "2524"), view, ground)


def texts(elements: tuple[Element, ...], key: str) -> list[Text]:
    return [e for e in elements if isinstance(e, Text) and e.key == f"B/{key}"]


def test_label_and_length_stand_left_of_their_stud_from_its_foot_up() -> None:
    """The stud of place 2 stands from 781 to 819. Its texts stand 0.7 mm (17.5) left of it, 1.4 mm
    (35) over its foot at 38; two blanks part the label from the length."""
    _, elements = drawn()
    label, length = texts(elements, "layout/2")
    assert [(t.text, t.pen, t.bold, t.angle) for t in (label, length)] == [
        ("B3", Pen.LABEL, False, UP),
        ("2524", Pen.LENGTH, True, UP),
    ]
    assert label.at == pytest.approx((781 - 17.5, 38 + 35))
    assert length.at[1] - label.at[1] == pytest.approx(25 * text_width("B3  ", 3.5))


def test_every_stud_has_both_where_there_is_room() -> None:
    frame, elements = drawn()
    studs = [m.key for m in frame.members if m.role is Role.STUD]
    assert sorted(studs * 2) == sorted(e.key for e in elements if isinstance(e, Text))
    assert not any(isinstance(e, Stroke) for e in elements)


@pytest.mark.parametrize(
    ("shows", "expected"),
    [
        ({Show.LABELS, Show.LENGTHS}, ["B3", "2524"]),
        ({Show.LABELS}, ["B3"]),
        ({Show.LENGTHS}, ["2524"]),
        ({Show.TAPES}, []),
    ],
)
def test_what_the_view_shows(shows: set[Show], expected: list[str]) -> None:
    _, elements = drawn(PLAIN, View(1 / 25, shows=frozenset(shows)))
    assert [t.text for t in texts(elements, "layout/2")] == expected


def test_the_right_side_where_the_left_is_taken() -> None:
    """Capitals are 2.45 mm (61.25) high; upward their feet are to the right."""
    _, elements = drawn(PLAIN, VIEW, (419, 0, 781, 2600))
    assert texts(elements, "layout/2")[0].at[0] == pytest.approx(819 + 17.5 + 61.25)


def test_over_what_stands_at_the_foot() -> None:
    """A box 300 high on both sides: the texts begin over it."""
    _, elements = drawn(PLAIN, VIEW, (419, 38, 781, 338), (819, 38, 1181, 338))
    assert 338 <= texts(elements, "layout/2")[0].at[1] < 338 + 25 * 12


def test_a_label_alone_where_both_have_no_room() -> None:
    """Only 10 mm (250) are left open at the foot: "B3" with its blanks is 5.8 mm, both 15."""
    _, elements = drawn(PLAIN, VIEW, (419, 338, 781, 2600), (819, 338, 1181, 2600))
    assert [t.text for t in texts(elements, "layout/2")] == ["B3"]


HEMMED = ((745, 38, 781, 2600), (819, 38, 855, 1240), (819, 1360, 855, 2600))
"""Texts on both sides of the stud of place 2, but for 120 mm half up its right one: 4.8 mm."""


def test_a_label_with_a_leader_where_even_that_has_none() -> None:
    """The label up the stud asks for 5.1 mm; across, it is 2.45 and 0.7 over and under it."""
    _, elements = drawn(PLAIN, VIEW, *HEMMED)
    (label,) = texts(elements, "layout/2")
    assert (label.angle, label.narrow, label.middle) == (0.0, True, True)
    assert label.at[1] == pytest.approx(1300)
    assert sum(isinstance(e, Stroke) and e.key == "B/layout/2" for e in elements) == 3


def test_without_labels_nothing_is_led() -> None:
    _, elements = drawn(PLAIN, View(1 / 25, shows=frozenset({Show.LENGTHS})), *HEMMED)
    assert [e for e in elements if e.key == "B/layout/2"] == []


def test_the_trimmer_on_the_left_is_written_on_in_the_doorway() -> None:
    """Beside its king there is no room; beside the right one the left side is the doorway."""
    door = UK.opening("door-1", 700, 800, 2000)
    frame, elements = drawn(UK.wall((0, 3000), (2000, 3000), openings=(door,)))
    left, right = (texts(elements, f"door-1/trimmer/{side}")[0] for side in ("left", "right"))
    assert 700 < left.at[0] < 1100 < right.at[0] < 1500
    assert frame.openings[0].fit.fits


@pytest.mark.parametrize("scale", [1 / 25, 1 / 100])
def test_nothing_stands_between_a_text_and_its_member(scale: float) -> None:
    """Studs a finger apart, nearer to each other than a text is to its own: it does not stand on
    the far side of its neighbour."""
    added = (("extra-1", 727.0), ("extra-2", 1235.0))
    frame, elements = drawn(UK.wall((0, 3000), (2000, 3000), added=added), View(scale))
    high = 2.45 / scale
    for member in (m for m in frame.members if not m.lies):
        for text in texts(elements, member.key.removeprefix("B/")):
            if text.angle == UP:
                feet, heads = text.at[0], text.at[0] - high
                on_left = feet < member.left
                low, top = (feet, member.left) if on_left else (member.right, heads)
                assert top - low == pytest.approx(GAP / scale)
                others = (m for m in frame.members if not m.lies and m is not member)
                assert all(m.right <= low or m.left >= top for m in others)


@pytest.mark.parametrize("eave", range(200, 800, 30))
def test_texts_stay_under_a_slope(eave: float) -> None:
    """Under 60 degrees a stud of 38 is 66 longer on one side; capitals are 61 high."""
    room = UK.room(9000, (eave, at_degrees(60)))
    frame = frame_of(room, UK.wall((0, 3000), (1000, 3000), spacing=200))
    labels = {m.key: "B1" for m in frame.members}
    ground = Ground(400.0)
    elements = upright_texts(frame, labels, dict.fromkeys(labels, "524"), VIEW, ground)
    for text in elements:
        if isinstance(text, Text) and text.angle == UP:
            end = text.at[1] + 25 * text_width(text.text, 3.5, text.bold, narrow=text.narrow)
            left, right = text.at[0] - 61.25, text.at[0]
            assert end <= frame.near.lowest(left, right)
