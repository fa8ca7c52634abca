"""The list of members: which pieces share a row, in what order, and what the rows say."""

import math

import msgspec
import pytest

from core.drawing.table import HEADS, Row, cuts_text, rows, stock_name, usual_stock
from core.framing import Facet, Member, Role
from core.framing.member import SQUARE
from core.lengths import System, Tape
from core.wording import Wording
from walls import US, at_degrees, in_12, result

INCH = 25.4
US_WORDS = Wording("us", Tape.usual(System.INCH))
METRIC = Wording("metric", Tape.usual(System.METRIC))
NOWHERE = ((0.0, 0.0), (0.0, 0.0), (0.0, 0.0), (0.0, 0.0))


def facet(bevel: float = 0.0, mitre: float = 0.0) -> Facet:
    """A facet by its angles in degrees."""
    return Facet(math.radians(bevel), math.radians(mitre), "any")


def piece(
    key: str,
    role: Role = Role.STUD,
    long: float = 80.0,
    short: float | None = None,
    size: tuple[float, float] = (1.5, 3.5),
    *,
    first: tuple[Facet, ...] = SQUARE,
    last: tuple[Facet, ...] = SQUARE,
    count: int = 1,
) -> Member:
    """A member by what the list says of it; lengths and section in inches."""
    thickness, width, long = size[0] * INCH, size[1] * INCH, long * INCH
    short = long if short is None else short * INCH
    edges = (long, short, long, short)
    place = (key, role, thickness, width, NOWHERE, NOWHERE, edges)
    return Member(*place, long, short, long, first, last, count)


def listed(*members: Member, words: Wording = US_WORDS) -> list[tuple[str, ...]]:
    """The cells of the list; a member's label is its key."""
    return [row.cells for row in rows(members, {m.key: m.key for m in members}, words)]


def test_a_row() -> None:
    """Piece, what, long, short, cut, and a blank to be written in."""
    stud = piece("A2", long=63.1875, short=62.0625, last=(facet(bevel=36.87),))
    (row,) = rows((stud,), {"A2": "A2"}, US_WORDS)
    cells = ("A2", "stud", '63 3/16"', '62 1/16"', "bevel 36.9°", "")
    assert row == Row(("A2",), cells)
    assert len(HEADS) == len(cells)


def test_a_square_piece_has_one_length() -> None:
    assert listed(piece("A2")) == [("A2", "stud", '80"', "", "square", "")]


def test_in_metric_words() -> None:
    stud = piece("A2", Role.KING, 2324 / INCH, 2290.4 / INCH, (38 / INCH, 89 / INCH))
    assert listed(stud, words=METRIC) == [
        ("A2", "full-height door stud", "2324", "2290", "square", "")
    ]


@pytest.mark.parametrize(
    ("names", "expected"),
    [
        (["A1"], "A1"),
        (["A1", "A2"], "A1, A2"),
        (["A4", "A2", "A3"], "3 × A2–A4"),
        (["A1", "A20", "A3"], "3 × A1, A3, A20"),
        (["A9", "A10", "A11"], "3 × A9–A11"),
        # Two that follow each other are no run.
        (["A1", "A2", "A5", "A7", "A8", "A9"], "6 × A1, A2, A5, A7–A9"),
        (["AB1", "AB2", "AB3"], "3 × AB1–AB3"),
    ],
)
def test_labels_that_share_a_row(names: list[str], expected: str) -> None:
    (cells,) = listed(*(piece(name) for name in names))
    assert cells[0] == expected


def test_plies_are_counted() -> None:
    header = piece("A7", Role.HEADER, 51, count=2)
    assert listed(header)[0][:2] == ("2 × A7", "header")
    assert listed(header, msgspec.structs.replace(header, key="A9"))[0][0] == "4 × A7, A9"


def test_the_order_is_that_of_cutting() -> None:
    """Plates, then what frames openings, then common studs, each from short to long."""
    roles = (Role.STUD, Role.CRIPPLE, Role.SILL, Role.HEADER, Role.TRIMMER, Role.KING)
    members = [piece(f"A{n}", role, 10 + n) for n, role in enumerate(roles)]
    plates = [piece("A8", Role.TOP_PLATE, 200), piece("A9", Role.SOLE_PLATE, 210)]
    shorter, longer = piece("A20", Role.STUD, 9), piece("A21", Role.STUD, 90)
    found = [cells[0] for cells in listed(longer, *members, shorter, *plates)]
    assert found == ["A9", "A8", "A5", "A4", "A3", "A2", "A1", "A20", "A0", "A21"]


BEVEL = (facet(bevel=36.87),)


@pytest.mark.parametrize(
    "other",
    [
        piece("A2", Role.KING, 80, 79, last=BEVEL),
        piece("A2", Role.STUD, 81, 79, last=BEVEL),
        piece("A2", Role.STUD, 80, 78, last=BEVEL),
        piece("A2", Role.STUD, 80, 79, (1.5, 5.5), last=BEVEL),
        piece("A2", Role.STUD, 80, 79, last=(facet(bevel=30),)),
        piece("A2", Role.STUD, 80, 79, last=(facet(mitre=36.87),)),
        piece("A2", Role.STUD, 80, 79, first=BEVEL, last=BEVEL),
    ],
    ids=["role", "long", "short", "section", "bevel", "mitre", "foot"],
)
def test_unlike_pieces_have_rows_of_their_own(other: Member) -> None:
    assert len(listed(piece("A1", Role.STUD, 80, 79, last=BEVEL), other)) == 2


def test_mirror_images_share_a_row() -> None:
    """A stud cut the other way is the same stud turned round."""
    right = piece("A1", last=(facet(bevel=36.87),))
    left = piece("A2", last=(facet(bevel=-36.87),))
    assert [cells[0] for cells in listed(right, left)] == ["A1, A2"]


def test_what_reads_alike_on_the_tape_shares_a_row() -> None:
    """A thirty-second is not on a tape of sixteenths; a sixteenth is."""
    assert len(listed(piece("A1", long=80), piece("A2", long=80 + 1 / 33))) == 1
    assert len(listed(piece("A1", long=80), piece("A2", long=80 + 1 / 16))) == 2


@pytest.mark.parametrize(
    ("first", "last", "expected"),
    [
        (SQUARE, SQUARE, "square"),
        (SQUARE, (facet(bevel=36.87),), "bevel 36.9°"),
        (SQUARE, (facet(bevel=-36.87),), "bevel 36.9°"),
        (SQUARE, (facet(mitre=38.0),), "miter 38.0°"),
        (SQUARE, (facet(27.94, 25.06),), "miter 25.1°, then bevel 27.9°"),
        # Astride a break: two flats, from left to right; one of them may be square.
        (SQUARE, (facet(bevel=36.87), facet()), "bevel 36.9° / square"),
        (SQUARE, (facet(bevel=36.87), facet(bevel=-36.87)), "bevel 36.9° / bevel 36.9°"),
        # Plates are cut at both ends.
        ((facet(bevel=36.87),), (facet(bevel=18.43),), "bevel 36.9° · bevel 18.4°"),
        ((facet(bevel=18.43),), (facet(bevel=-18.43),), "both bevel 18.4°"),
        ((facet(bevel=18.43),), SQUARE, "bevel 18.4° · square"),
        ((facet(18.43, 45.0),), (facet(18.43, 45.0),), "both miter 45.0°, then bevel 18.4°"),
    ],
)
def test_cuts(first: tuple[Facet, ...], last: tuple[Facet, ...], expected: str) -> None:
    assert cuts_text(piece("A1", first=first, last=last), US_WORDS) == expected


@pytest.mark.parametrize(
    ("size", "expected"),
    [
        # PS 20-20, table 3: dressed dry sizes of nominal 2, 4, 6, 8, 10 and 12; from memory.
        ((1.5, 3.5), "2x4"),
        ((1.5, 5.5), "2x6"),
        ((1.5, 7.25), "2x8"),
        ((1.5, 9.25), "2x10"),
        ((1.5, 11.25), "2x12"),
        ((3.5, 3.5), "4x4"),
        ((0.75, 3.5), "1x4"),
        ((1.5, 3.25), '1 1/2" × 3 1/4"'),
    ],
)
def test_stock_names(size: tuple[float, float], expected: str) -> None:
    assert stock_name(piece("A1", size=size), US_WORDS) == expected


def test_stock_of_metric_section() -> None:
    assert stock_name(piece("A1", size=(38 / INCH, 89 / INCH)), METRIC) == "38 × 89"


def test_the_usual_stock_goes_without_saying() -> None:
    members = (piece("A1"), piece("A2"), piece("A3", Role.TOP_PLATE, 90, size=(1.5, 5.5)))
    assert usual_stock(members, US_WORDS) == "2x4"
    assert [cells[1] for cells in listed(*members)] == ["top plate 2x6", "stud"]
    assert usual_stock((), US_WORDS) == ""


def test_the_list_of_a_rake_wall() -> None:
    """A wall of 48 in. up a roof of 9 in 12 from 60 in., studs 2x4 at 16 in., one top plate.

    The plate is 1 1/2 * 1.25 = 1 7/8 in. thick plumb, the sole plate 1 1/2: an edge at x is
    60 - 1 7/8 - 1 1/2 + 3/4 x = 56 5/8 + 3/4 x long. Right edges stand at 1 1/2, 16 3/4, 32 3/4
    and 48: 57 3/4, 69 3/16, 81 3/16 and 92 5/8 long; the left edges are 1 1/8 less. Along the
    slope the plate is 48 * 1.25 = 60 in. on both faces, cut plumb at both ends.
    """
    room = US.room(288, (60, in_12(9)))
    wall = result(room, US.wall((0, 100), (48, 100)))
    assert wall.frame is not None
    named = [row.cells[:5] for row in rows(wall.frame.members, wall.label_of, US_WORDS)]
    assert named == [
        ("B6", "sole plate", '48"', "", "square"),
        ("B5", "top plate", '60"', "", "both bevel 36.9°"),
        ("B1", "stud", '57 3/4"', '56 5/8"', "bevel 36.9°"),
        ("B2", "stud", '69 3/16"', '68 1/16"', "bevel 36.9°"),
        ("B3", "stud", '81 3/16"', '80 1/16"', "bevel 36.9°"),
        ("B4", "stud", '92 5/8"', '91 1/2"', "bevel 36.9°"),
    ]


def test_every_member_stands_in_one_row() -> None:
    room = US.room(288, (33, in_12(9)), (33, at_degrees(30)), flat=94)
    window = US.opening("window-1", 100, 48, 80, sill=36)
    wall = result(room, US.wall((0, 100), (288, 100), openings=(window,), plates=2))
    assert wall.frame is not None
    found = rows(wall.frame.members, wall.label_of, US_WORDS)
    assert sorted(key for row in found for key in row.keys) == sorted(wall.label_of)
