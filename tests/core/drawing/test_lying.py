"""Labels of headers, sills and plates."""

import math

import pytest

from core.drawing import Align, Drawing, Pen, Text, View
from core.drawing.elements import Element
from core.drawing.extent import text_corners
from core.drawing.lying import beam_texts, plate_texts
from core.drawing.placing import Ground, bounds
from core.framing import Frame, Role
from walls import UK, US, at_degrees, frame_of, in_12

FLAT = UK.room(9000, (2600, at_degrees(45)), flat=2600)
WINDOW = UK.opening("window-1", 1400, 1200, 2100, sill=900)
FRAME = frame_of(FLAT, UK.wall((0, 3000), (4000, 3000), openings=(WINDOW,)))


def ground_of(frame: Frame) -> Ground:
    """The ground of a frame's timber but for its top plates, as an elevation lays it."""
    ground = Ground(400.0)
    for member in frame.members:
        if member.role is not Role.TOP_PLATE:
            ground.add_timber(bounds(member.near))
    return ground


def labelled(elements: Drawing) -> dict[str, Text]:
    """Texts by what they say."""
    return {e.text: e for e in elements if isinstance(e, Text)}


def named(frame: Frame) -> dict[str, str]:
    """Labels that are the roles and their numbers."""
    return {m.key: f"{m.role.name[0]}{n}" for n, m in enumerate(frame.members)}


def keys(elements: tuple[Element, ...]) -> list[str]:
    return [element.key for element in elements]


def test_header_and_sill_have_their_labels_under_them() -> None:
    """At 1:25 the header of 38 mm is 1.5 mm high and its label 2.45: half of that and 0.7 mm,
    48.1 of the model, under its foot."""
    header, sill = beam_texts(FRAME, named(FRAME), View(1 / 25), ground_of(FRAME))
    assert isinstance(header, Text)
    assert isinstance(sill, Text)
    assert (header.key, sill.key) == ("B/window-1/header/1", "B/window-1/sill/1")
    assert header.at == pytest.approx((2000, 2100 - 48.125))
    assert (header.align, header.middle, header.angle) == (Align.MIDDLE, True, 0.0)
    # Under the sill a cripple stands at 1981 to 2019, so its label stands beside that.
    left, _, right, _ = bounds(text_corners(sill, 1 / 25))
    assert right < 1981 or left > 2019
    assert sill.at[1] == pytest.approx(862 - 48.125)


def test_a_label_stands_in_timber_that_is_thick_enough_on_paper() -> None:
    """At 1:10 the 38 mm are 3.8 mm on paper: 2.45 and 0.6 go in."""
    header, _ = beam_texts(FRAME, named(FRAME), View(1 / 10), ground_of(FRAME))
    assert isinstance(header, Text)
    assert header.at == pytest.approx((2000, 2119))


def test_the_sole_plate_is_named_at_its_tape() -> None:
    """1.5 mm left of it, at the middle of its band: 1.9 + 1.5 mm under the floor."""
    texts = labelled(plate_texts(FRAME, named(FRAME), View(1 / 25), ground_of(FRAME)))
    (sole,) = (t for t in texts.values() if t.key == "B/sole")
    assert (sole.at, sole.align, sole.pen) == ((-37.5, -85), Align.END, Pen.LABEL)


RAKE = US.room(288, (60, in_12(9)), (60, in_12(9)), flat=94)


def test_a_sloping_plate_has_its_label_along_it() -> None:
    frame = frame_of(RAKE, US.wall((0, 100), (288, 100), plate=(1.5, 3.5)))
    texts = plate_texts(frame, named(frame), View(1 / 48), ground_of(frame))
    angles = {t.key: t.angle for t in texts if isinstance(t, Text)}
    assert angles["B/top/1/1"] == pytest.approx(math.atan(0.75))
    assert angles["B/top/2/1"] == pytest.approx(0.0)
    assert angles["B/top/3/1"] == pytest.approx(-math.atan(0.75))


def test_plates_over_each_other_are_named_at_the_lowest() -> None:
    """From the roof down."""
    frame = frame_of(FLAT, UK.wall((0, 3000), (4000, 3000), plates=2))
    names = named(frame) | {"B/top/1/1": "B8", "B/top/1/2": "B9"}
    texts = labelled(plate_texts(frame, names, View(1 / 25), ground_of(frame)))
    assert texts["B8 B9"].key == "B/top/1/2"


def test_an_upper_plate_has_no_label_under_it() -> None:
    """Where both names have no room together, the lower plate's stands under it; the upper one's
    would stand in the lower plate, so it is left to the list, unless it goes in itself."""
    frame = frame_of(FLAT, UK.wall((0, 3000), (4000, 3000), plates=2, spacing=300))
    names = named(frame) | {"B/top/1/1": "B88", "B/top/1/2": "B99"}
    small = labelled(plate_texts(frame, names, View(1 / 30), ground_of(frame)))
    assert {"B99"} == small.keys() & {"B88", "B99", "B88 B99"}
    large = labelled(plate_texts(frame, names, View(1 / 10), ground_of(frame)))
    assert any("B88" in said for said in large)


def test_a_label_keeps_off_timber_and_writing() -> None:
    """Under the middle of a level plate a stud stands, and a text beside it."""
    ground = ground_of(FRAME)
    ground.add_writing((2019.0, 2400.0, 2362.0, 2600.0))
    texts = plate_texts(FRAME, named(FRAME), View(1 / 25), ground)
    plate = next(t for t in texts if t.key == "B/top/1/1")
    assert isinstance(plate, Text)
    rect = bounds(text_corners(plate, 1 / 25))
    assert all(rect[2] <= m.left or rect[0] >= m.right for m in FRAME.members if not m.lies)
    assert rect[2] <= 2019 or rect[0] >= 2362
    # It is on the ground itself from then on.
    assert not ground.free(rect)


def test_in_a_narrow_space_the_label_is_narrow() -> None:
    """Studs at 150 on centre leave 112, 4.5 mm at 1:25. "B9" is 4.25 mm wide, and 3.5 narrow;
    with 0.7 mm on either side only that goes in."""
    frame = frame_of(FLAT, UK.wall((0, 3000), (4000, 3000), spacing=150))
    names = named(frame) | {"B/top/1/1": "B9"}
    wide = plate_texts(frame, names, View(1 / 25), ground_of(frame))
    assert keys(wide) == ["B/sole"]
    texts = labelled(plate_texts(frame, names, View(1 / 20), ground_of(frame)))
    assert texts["B9"].narrow


def test_a_plate_shorter_than_its_label_has_none() -> None:
    """Under a ridge beam 40 mm wide: 4 mm at 1:10, where the plate is thick enough to write in."""
    room = UK.room(
        6000, (1500, at_degrees(30)), (1500, at_degrees(30)), beam=(40, 3100), length=9000
    )
    frame = frame_of(room, UK.wall((2000, 3000), (4000, 3000)))
    plates = [m.key for m in frame.members if m.role is Role.TOP_PLATE]
    assert "B/top/2/1" in plates
    names = named(frame) | {"B/top/2/1": "B99"}
    assert "B/top/2/1" not in keys(plate_texts(frame, names, View(1 / 10), ground_of(frame)))
