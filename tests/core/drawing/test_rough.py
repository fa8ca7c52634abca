"""The figures in a rough opening."""

import math

import msgspec
import pytest

from core.drawing import Pen, Text, View
from core.drawing.extent import text_corners
from core.drawing.placing import Ground, bounds
from core.drawing.rough import BOTH, LABEL, LINE, opening_texts
from core.drawing.typeface import text_width
from core.framing import Frame
from core.lengths import System, Tape
from core.model import HeadLie, Opening
from core.wording import Wording
from walls import UK, US, at_degrees, frame_of, in_12

METRIC = Wording("metric", Tape.usual(System.METRIC))
FLAT = UK.room(9000, (2600, at_degrees(45)), flat=2600)


def framed(*openings: Opening) -> Frame:
    """A wall 5 m long and 2.6 m high with openings."""
    return frame_of(FLAT, UK.wall((1000, 3000), (6000, 3000), openings=openings))


def written(frame: Frame, scale: float = 1 / 25, number: int = 0) -> list[Text]:
    drawn = opening_texts(frame.openings[number], frame, View(scale), METRIC, Ground(400.0))
    return [element for element in drawn if isinstance(element, Text)]


def lines(frame: Frame, scale: float = 1 / 25, number: int = 0) -> list[str]:
    return [text.text for text in written(frame, scale, number)]


def door(width: float, head: float = 2000, name: str = "door-1", left: float = 1000) -> Opening:
    return UK.opening(name, left, width, head)


WINDOW = UK.opening("window-1", 1000, 1200, 2100, sill=900)


def test_a_doorway_has_its_name_and_its_size() -> None:
    """Its head is as high as it is, and so is not said again."""
    name, size = written(framed(door(838)))
    assert [(t.text, t.bold, t.pen, t.key) for t in (name, size)] == [
        ("door 1", True, Pen.OPENING, "B/door-1"),
        ("838 × 2000", False, Pen.OPENING, "B/door-1"),
    ]
    assert (name.at[0], size.at[0]) == (1419, 1419)
    assert name.at[1] - size.at[1] == pytest.approx(25 * LINE)


def test_a_window_has_the_height_of_its_head_as_well() -> None:
    assert lines(framed(WINDOW)) == ["window 1", "1200 × 1200", "head at 2100"]


def test_the_figures_stand_in_the_middle_of_a_window() -> None:
    """Three lines: two steps of 4.5 mm and a capital of 2.45 mm make 11.45 mm on paper, 286.25."""
    feet = [text.at[1] for text in written(framed(WINDOW))]
    assert feet[-1] == pytest.approx(1500 - 286.25 / 2)


def test_the_figures_stand_low_in_a_doorway() -> None:
    """14 mm (350) over the sole plate of 38 mm and 0.7 mm (17.5): label and length of its
    trimmers have room under them."""
    assert written(framed(door(838)))[-1].at[1] == pytest.approx(38 + 17.5 + 25 * BOTH)


def test_in_a_low_doorway_half_of_what_is_left_stays_under_them() -> None:
    """600 - 38 - 2 * 17.5 less 4.5 + 2.45 mm (173.75) leave 353.25: half is 176.6, less than the
    225 that a trimmer's label takes up, which is what stays free."""
    texts = written(framed(door(838, 600)))
    assert texts[-1].at[1] == pytest.approx(38 + 17.5 + 25 * LABEL)


@pytest.mark.parametrize(
    ("width", "expected"),
    [
        # With half a mm on either side, at 1:25, "access door 1" asks for 486, "access" for 245,
        # "door 1" for 246, "500 × 2000" for 411, "500 ×" for 220 and "2000" for 196.
        (490, ["access door 1", "490 × 2000"]),
        (480, ["access", "door 1", "480 × 2000"]),
        (400, ["access", "door 1", "400 ×", "2000"]),
        (250, ["access", "door 1", "250 ×", "2000"]),
        # Without room for the name the size stands alone, and at last up the doorway.
        (240, ["240 ×", "2000"]),
        (200, ["200", "×", "2000"]),
        (190, ["190 × 2000"]),
    ],
)
def test_narrow_doorways(width: float, expected: list[str]) -> None:
    frame = framed(door(width, name="access-door-1"))
    assert lines(frame) == expected
    upward = {text.angle for text in written(frame)} == {math.pi / 2}
    assert upward == (width == 190)


@pytest.mark.parametrize(
    ("head", "expected"),
    [
        # At 1:50 a doorway of 900 is 18 mm high: 0.76 of sole plate, twice 0.7, 9 for the
        # trimmers' labels leave 6.8, which is one line (2.45) but not two (6.95).
        (900, ["838 × 900"]),
        (920, ["door 1", "838 × 920"]),
        # Where nothing is left for labels, the figures take what there is: two lines need 9.1.
        (500, ["door 1", "838 × 500"]),
        (400, ["838 × 400"]),
        # Not even one line, 2.45 mm between 0.76 + 0.7 and 0.7 from the head.
        (200, []),
    ],
)
def test_low_doorways(head: float, expected: list[str]) -> None:
    assert lines(framed(door(838, head)), 1 / 50) == expected


def test_where_no_label_fits_under_them_the_figures_stand_as_high_as_they_can() -> None:
    """0.7 mm (35 at 1:50) and a capital of 2.45 (122.5) under the head of 500."""
    name, _ = written(framed(door(838, 500)), 1 / 50)
    assert name.at[1] == pytest.approx(500 - 35 - 122.5)


def test_lengths_are_not_broken_at_their_blanks() -> None:
    """26 by 82 1/2 in. at 1/4 in. to the foot: 13.8 mm, and the figure is 16.4 mm wide."""
    room = US.room(288, (96, in_12(9)), flat=96)
    opening = US.opening("door-1", 60, 26, 82.5)
    frame = frame_of(room, US.wall((20, 100), (200, 100), openings=(opening,)))
    us = Wording("us", Tape.usual(System.INCH))
    drawn = opening_texts(frame.openings[0], frame, View(1 / 48), us, Ground(400.0))
    assert [t.text for t in drawn if isinstance(t, Text)] == ["door 1", '26" ×', '82 1/2"']


def test_figures_stay_in_their_opening() -> None:
    for width in range(150, 1200, 50):
        frame = framed(door(width, 1500))
        for text in written(frame, 1 / 40):
            if text.angle == 0:
                half = text_width(text.text, text.size, text.bold, narrow=True) * 40 / 2
                assert half <= width / 2


def test_an_opening_that_cannot_be_built_has_its_figures_between_the_plates() -> None:
    """A door of 2500 under a ceiling of 2600 leaves no room for a header; 2600 - 38 is the plate's
    underside, and a door under the slope at the eave is cut off by the roof."""
    room = UK.room(9000, (600, at_degrees(45)))
    wall = UK.wall((0, 3000), (5000, 3000), openings=(UK.opening("door-1", 200, 838, 2000),))
    frame = frame_of(room, wall)
    texts = written(frame)
    assert {text.pen for text in texts} == {Pen.UNBUILDABLE}
    roof = frame.near.lowest(200, 1038)
    assert all(38 < text.at[1] < text.at[1] + 2.45 * 25 < roof for text in texts)


def test_figures_of_openings_over_each_other_do_not_touch() -> None:
    """Two doors at one place: the second's have to go where the first has left room."""
    frame = framed(door(838), door(838, name="door-2", left=1010))
    view, ground = View(1 / 25), Ground(400.0)
    first, second = (opening_texts(p, frame, view, METRIC, ground) for p in frame.openings)
    assert [t.text for t in first if isinstance(t, Text)] == ["door 1", "838 × 2000"]
    assert second
    for one in first:
        for other in second:
            assert isinstance(one, Text)
            assert isinstance(other, Text)
            a, b = (bounds(text_corners(text, 1 / 25)) for text in (one, other))
            assert a[3] <= b[1] or b[3] <= a[1] or a[2] + 50 <= b[0] or b[2] + 50 <= a[0]


def test_other_texts_keep_off_the_figures() -> None:
    """2 mm (50) to either side and 0.7 mm (17.5) over and under them."""
    frame = framed(door(838))
    ground = Ground(400.0)
    (_, size) = opening_texts(frame.openings[0], frame, View(1 / 25), METRIC, ground)
    assert isinstance(size, Text)
    half = text_width(size.text, 3.5, narrow=True) * 25 / 2
    beside = (1419 + half, size.at[1], 1419 + half + 49, size.at[1] + 10)
    assert not ground.free(beside)
    assert ground.free((1419 + half + 51, size.at[1], 1419 + half + 60, size.at[1] + 10))
    assert not ground.free((1419 - 100, size.at[1] - 60, 1419 + 100, size.at[1] - 17))
    assert ground.free((1419 - 100, size.at[1] - 60, 1419 + 100, size.at[1] - 18))


def test_a_raked_head_has_two_heights() -> None:
    """Under 45 degrees, 800 along are 800 up. A window tells both heights over the floor too."""
    room = UK.room(6000, (1500, at_degrees(45)))

    def raked(*openings: Opening) -> Frame:
        lie = [msgspec.structs.replace(o, head_lie=HeadLie.RAKED) for o in openings]
        return frame_of(room, UK.wall((1000, 3000), (5000, 3000), openings=tuple(lie)))

    assert lines(raked(door(800))) == ["door 1", "800 × 2000 to 2800"]
    window = UK.opening("window-1", 1000, 800, 2000, sill=900)
    assert lines(raked(window)) == [
        "window 1",
        "800 × 1100 to 1900",
        "head at 2000 to 2800",
    ]
