"""The numbers of what is held, in inches, with the working beside them."""

from __future__ import annotations

import msgspec

from core.job import Number, work_out
from core.lengths import Length, System, Tape
from core.model import AddedStud, Habits, Project, SiteRecord
from gui.edits import set_opening
from gui.figure import Figure, Numbers
from gui.numbers import numbers_of
from gui.wordings import wording_of
from loft import BOX, DOOR, INCH, STUD, loft


def numbers(key: str | None, project: Project | None = None) -> Numbers:
    project = project or loft()
    result = work_out(project, SiteRecord()).wall("B")
    return numbers_of(result, key, wording_of(project))


def figures(key: str | None, project: Project | None = None) -> dict[str, str]:
    return {figure.caption: figure.text for figure in numbers(key, project).figures}


def test_a_stud_under_the_slope() -> None:
    # The plate's underside is at 60 + x - 1 1/2 * sqrt 2 = x + 57.879; the stud stands on 1 1/2.
    # Long point at its right edge, 32 3/4: 89.129; short point 1 1/2 less. Along the slope the
    # left edge, 31 1/4, is at 31.25 * sqrt 2 = 44.19.
    found = numbers(STUD)
    assert (found.name, found.what) == ("B3", "stud")
    assert figures(STUD) == {
        "Long point": '89 1/8"',
        "Short point": '87 5/8"',
        "Cut, set from square": "bevel 45.0°",
        "On the saw": "right face up",
        "Stock": "2x4",
        "Mark on sole plate B17": '31 1/4" from the left end, X to the right',
        "Mark on top plate B15": '44 3/16" from the left end, X to the right',
    }
    assert [figure.caption for figure in found.figures if figure.large] == [
        "Long point",
        "Short point",
        "Cut, set from square",
    ]


def test_a_square_stick_has_one_length() -> None:
    # A trimmer under a head at 80: 80 - 1 1/2.
    assert figures("B/door-1/trimmer/left") == {
        "Length": '78 1/2"',
        "Cut, set from square": "square",
        "Stock": "2x4",
        "Mark on sole plate B17": '58 1/2" from the left end, T to the right',
    }


def test_an_opening() -> None:
    found = numbers(DOOR)
    assert (found.name, found.what) == ("door 1", "door")
    assert figures(DOOR) == {
        "Rough opening": '30" × 80"',
        "Left edge": '60"',
        "Fits with its left edge": 'from 25 1/8" to 85 1/2"',
    }


def test_the_figures_of_an_opening_that_fits_nowhere() -> None:
    wall = loft().wall("B")
    high = msgspec.structs.replace(wall.openings[0], head=Length.of_inches(130))
    project = loft().with_wall(msgspec.structs.replace(wall, openings=(high,)))
    fits = figures(DOOR, project)["Fits with its left edge"]
    assert fits == "nowhere: make it lower or narrower"


def test_a_box_and_the_stud_it_hangs_on() -> None:
    box = loft().wall("B").box("box-1")
    left = 32.75
    found = figures(BOX)
    tape = wording_of(loft()).length
    assert found["On the stud"] == "right of B3"
    assert found["Left and right edge"] == (f'from 32 3/4" to {tape(left * INCH + box.width.mm)}')


def test_a_box_whose_stud_is_gone_says_so() -> None:
    wall = msgspec.structs.replace(loft().wall("B"), left_out=(2,))
    assert figures(BOX, loft().with_wall(wall))["On the stud"] == "right of a stud that is gone"


def test_the_wall_itself() -> None:
    found = numbers(None)
    assert (found.name, found.what) == ("B", "partition")
    # End studs, and places 1, 2, 3, 6 and 7; 4 and 5 are cripples. The undersides meet where
    # x + 57.879 = 106 1/2, at 48.62, under which place 3 stands: the first of the longest, at
    # 106 1/2 - 1 1/2. The shortest is the left end stud: 1 1/2 + 57.879 - 1 1/2.
    assert found.figures == (
        Figure("Length", '120"', large=True, number=Number.WALL_LENGTH),
        Figure("Studs", "7", large=True, number=Number.STUDS),
        Figure("Longest stud", 'B4  105"', number=Number.LONGEST),
        Figure("Shortest stud", 'B1  57 7/8"', number=Number.SHORTEST),
        # 112 1/4 ft of 2x4 at 5 1/4 / 144 x 35 = 1.276 lb.
        Figure("Weight of its timber", "143 lb", number=Number.WEIGHT),
    )


def test_a_stud_with_no_room_has_a_name_and_no_figures() -> None:
    wall = msgspec.structs.replace(
        loft().wall("B"), added=(AddedStud("stud-1", Length.of_inches(31)),)
    )
    found = numbers("B/stud-1", loft().with_wall(wall))
    assert (found.name, found.what, found.figures) == ("stud 1", "stud", ())


def test_metric_words_and_numbers() -> None:
    metric = msgspec.structs.replace(
        loft(), system=System.METRIC, habits=Habits(Tape.usual(System.METRIC))
    )
    # 78 1/2 in. are 1993.9 mm.
    assert figures("B/door-1/trimmer/left", metric)["Length"] == "1994"
    assert numbers("B/door-1/header/1", metric).what == "lintel"


def test_plies_on_edge_are_counted() -> None:
    header = msgspec.structs.replace(loft().wall("B").openings[0].header, plies=2)
    flat = set_opening(loft(), "B", "door-1", header=header)
    assert figures("B/door-1/header/2", flat)["Stock"] == "2x4"
    edge = msgspec.structs.replace(header, kind=type(header.kind)("on edge"))
    on_edge = set_opening(loft(), "B", "door-1", header=edge)
    assert figures("B/door-1/header/1", on_edge)["Stock"] == "2 × 2x4"
