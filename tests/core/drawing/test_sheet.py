"""The sheets: what has to hold of every page, for the demos and for walls of 3 to 60 ft."""

from functools import cache
from importlib.resources import files
from itertools import pairwise

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import resources
from core.drawing import Pen, Stroke
from core.drawing.page import Page
from core.drawing.paper import Paper, scales
from core.drawing.sheet import MARGIN, sheets
from core.job import Results, work_out
from core.lengths import System, Tape
from core.model import EndLean, Habits, LineEdge, Project, Room, Side, SiteRecord, Wall
from core.storage import read_document
from pages import (
    beyond,
    labels_on,
    mark_figures,
    marks_of,
    overlaps,
    pages_of,
    rafter_marks_of,
    texts_on,
    wording_for,
)
from strategies import projects
from walls import UK, US, Shop, at_degrees, in_12


@cache
def demo(name: str) -> Results:
    document = read_document((files(resources) / "demos" / f"{name}.eave").read_bytes(), name)
    return work_out(document.project, document.site)


def job(room: Room, *walls: Wall, line_edge: LineEdge = LineEdge.NEAR) -> Results:
    """A job of walls in one room, lettered A, B and so on."""
    system = System.METRIC if room.width.unit.metric else System.INCH
    lettered = tuple(
        msgspec.structs.replace(wall, letter=letter)
        for letter, wall in zip("ABCDEFGH", walls, strict=False)
    )
    habits = Habits(Tape.usual(system), line_edge)
    return work_out(Project("a job", system, room, lettered, habits), SiteRecord())


def drawn(results: Results, paper: Paper) -> tuple[Page, ...]:
    return sheets(results, wording_for(results), paper, "2025-03-14")


def assert_sound(results: Results, paper: Paper) -> tuple[Page, ...]:
    """What has to hold of all pages of a job; the pages."""
    pages = drawn(results, paper)
    for page in pages:
        assert sorted((page.width, page.height), reverse=True) == list(paper.size)
        assert beyond(page, MARGIN) == []
        assert overlaps(page) == []
    standard = {scale.ratio for scale in scales(results.project.system)}
    framed = [wall for wall in results.walls if wall.frame is not None]
    for wall in framed:
        own = pages_of(pages, wall)
        assert own[0].placed[0].scale in standard
        assert labels_on(own) >= set(wall.label_of.values())
        rest = mark_figures(own[0])
        assert marks_of(wall) <= rest
        assert rest - marks_of(wall) <= rafter_marks_of(wall)
    assert len({wall.wall.letter for wall in framed}) == len({page.title for page in pages})
    return pages


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("name", ["sail-loft", "kite-loft"])
def test_the_demos(name: str, paper: Paper) -> None:
    """A wall's list or its plate's detail may go on a page behind, and on small paper some do."""
    pages = assert_sound(demo(name), paper)
    assert 0 <= len(pages) - len(demo(name).walls) <= 2


def inches(shop: Shop, feet: float) -> float:
    """A number of feet in the shop's unit: whole inches, or whole millimetres."""
    return feet * 12 if shop is US else round(feet * 304.8)


def knee_wall(shop: Shop, feet: float) -> Results:
    """A knee wall of 5 ft under 9 in 12, or 38 degrees, with a low door where there is room."""
    run, foot = inches(shop, feet), inches(shop, 1)
    pitch = in_12(9) if shop is US else at_degrees(38)
    room = shop.room(24 * foot, (foot * 3, pitch), (foot * 3, pitch), length=61 * foot)
    doors = (shop.opening("access-door-1", run / 2, 2 * foot, 3 * foot),) if feet >= 8 else ()
    ends = ((3 * foot, 0), (3 * foot, run))
    return job(room, shop.wall(*ends, openings=doors, plate=(shop.stud[0], 1.6 * shop.stud[1])))


def gable_wall(shop: Shop, feet: float) -> Results:
    """A wall across the whole room, under two slopes and a flat ceiling, with door and window."""
    run, foot = inches(shop, feet), inches(shop, 1)
    pitch = in_12(9) if shop is US else at_degrees(38)
    room = shop.room(run, (foot * 3, pitch), (foot * 3, pitch), flat=8 * foot, length=20 * foot)
    door = shop.opening("door-1", run / 2 - 4 * foot, 3 * foot, 6.5 * foot)
    window = shop.opening("window-1", run / 2 + 2 * foot, 2 * foot, 6 * foot, sill=3 * foot)
    openings = (door, window) if feet >= 24 else ()
    wall = shop.wall((0, foot), (run, foot), openings=openings, plates=2, start=Side.RIGHT)
    return job(room, wall, line_edge=LineEdge.UPHILL)


@pytest.mark.parametrize("build", [knee_wall, gable_wall])
@pytest.mark.parametrize(
    ("shop", "feet"),
    [
        *((US, feet) for feet in (3, 4, 6, 8, 12, 16, 24, 31.5, 40, 50, 60)),
        *((UK, feet) for feet in (3, 7, 16, 33, 60)),
    ],
    ids=lambda value: value.unit.value if isinstance(value, Shop) else f"{value:g}ft",
)
def test_walls_of_any_length(build: object, shop: Shop, feet: float) -> None:
    assert callable(build)
    results = build(shop, feet)
    for paper in Paper:
        assert_sound(results, paper)


@pytest.mark.parametrize(
    ("paper", "ratio", "behind"), [(Paper.TABLOID, 64, False), (Paper.A4, 128, True)]
)
def test_a_high_gable_without_a_ceiling(paper: Paper, ratio: int, behind: bool) -> None:
    """60 ft across under 12 in 12, so 33 ft high in the middle. On small paper even 1/8 in. to the
    foot is too large: it stands at a reduced scale, and its list on pages behind."""
    room = US.room(720, (36, in_12(12)), (36, in_12(12)))
    pages = assert_sound(job(room, US.wall((0, 100), (720, 100))), paper)
    assert pages[0].placed[0].scale == 1 / ratio
    assert (len(pages) > 1) == behind


@settings(max_examples=12)
@given(projects(most_walls=1), st.sampled_from(Paper))
def test_walls_as_people_have_them(project: Project, paper: Paper) -> None:
    assert_sound(work_out(project, SiteRecord()), paper)


def test_the_same_results_give_the_same_pages() -> None:
    again = work_out(demo("sail-loft").project, SiteRecord())
    assert drawn(again, Paper.A4) == drawn(demo("sail-loft"), Paper.A4)


def test_a_wall_outside_the_roof_has_no_page() -> None:
    room = US.room(288, (33, in_12(9)), (33, in_12(9)))
    inside = US.wall((0, 100), (288, 100))
    point = US.wall((20, 100), (20, 100))
    pages = drawn(job(room, inside, point), Paper.LETTER)
    assert [page.title for page in pages] == ["A partition"]


def test_a_job_without_walls_has_no_pages() -> None:
    assert drawn(job(US.room(288, (33, in_12(9)))), Paper.LETTER) == ()


def said(page: Page) -> str:
    return " | ".join(text.text for text, _ in texts_on(page))


def test_pages_are_numbered_through() -> None:
    """A wall of 60 ft under 12 in 12 takes several; the next wall goes on counting."""
    room = US.room(720, (36, in_12(12)), (36, in_12(12)))
    pages = drawn(job(room, US.wall((0, 100), (720, 100)), US.wall((0, 200), (96, 200))), Paper.A4)
    for number, page in enumerate(pages, start=1):
        assert f"Sheet {number} of {len(pages)}" in said(page)
    assert pages[-1].title == "B partition"


def test_a_list_behind_is_whole_and_in_order() -> None:
    """Its labels run on from page to page; only the last one may be short."""
    room = US.room(720, (36, in_12(12)), (36, in_12(12)))
    results = job(room, US.wall((0, 100), (720, 100)))
    pages = drawn(results, Paper.LETTER)
    behind = [labels_on([page]) for page in pages[1:]]
    assert set().union(*behind) >= set(results.walls[0].label_of.values())
    lengths = [len([s for p in page.placed for s in p.drawing]) for page in pages[1:]]
    assert all(a >= b for a, b in pairwise(lengths))


def test_the_paper_lies_as_shows_the_wall_larger() -> None:
    """A wall 8 ft long and twice as high stands on upright paper, a long low one on lying paper."""
    room = US.room(288, (200, in_12(9)), flat=200)
    high = drawn(job(room, US.wall((0, 100), (96, 100))), Paper.LETTER)[0]
    low = drawn(
        job(US.room(288, (60, in_12(9)), flat=60), US.wall((0, 9), (280, 9))), Paper.LETTER
    )[0]
    assert (high.width, high.height) == Paper.LETTER.size[::-1]
    assert (low.width, low.height) == Paper.LETTER.size


def test_the_list_on_the_same_page_comes_before_a_larger_scale() -> None:
    """A gable of 34 ft under 12 in 12: upright, Letter takes it at 3/16 in. to the foot, but then
    its 31 rows have no room; lying, elevation and list go on one page at 1/8 in."""
    room = US.room(408, (33, in_12(12)), (33, in_12(12)))
    (page,) = drawn(job(room, US.wall((0, 100), (408, 100))), Paper.LETTER)
    assert (page.width, page.height) == Paper.LETTER.size
    assert page.placed[0].scale == 1 / 96


def test_a_list_gives_way_to_an_elevation_that_is_hard_to_read() -> None:
    """The gable of the sail loft, measured, has a row for nearly every stud: with them on the page
    it would stand at 1/8 in. to the foot, where alone it stands at 3/8 in."""
    pages = drawn(demo("sail-loft"), Paper.LETTER)
    first, behind = (page for page in pages if page.title.startswith("D "))
    assert first.placed[0].scale == 1 / 32
    assert len(first.placed) == 2
    assert behind.placed[0].scale == 1.0


def test_many_labels_of_one_row_stay_on_the_page() -> None:
    """A window of 20 ft on 12 in. centres: cripples over and under it are numbered in turns."""
    room = US.room(288, (100, in_12(9)), flat=100, length=400)
    window = US.opening("window-1", 40, 240, 80, sill=36)
    wall = US.wall((60, 0), (60, 330), openings=(window,), spacing=12)
    for paper in Paper:
        assert_sound(job(room, wall), paper)


def test_a_wall_with_many_cautions_still_has_its_sheet() -> None:
    room = US.room(288, (100, in_12(9)), flat=100)
    boxes = tuple(US.box(f"box-{n}", "A/none", Side.LEFT, 12) for n in range(60))
    pages = assert_sound(job(room, US.wall((60, 0), (60, 120), boxes=boxes)), Paper.LETTER)
    assert "Cannot be built: In wall A, box 0 has no stud" in said(pages[0])


def test_the_scale_is_said_as_it_is_drawn() -> None:
    for page in drawn(demo("sail-loft"), Paper.LETTER):
        said_there = [s for s in scales(System.INCH) if s.text in said(page).split(" | ")]
        assert len(said_there) == 1
        assert page.placed[0].scale in (said_there[0].ratio, 1.0)


def test_the_list_stands_clear_of_the_elevation() -> None:
    """No line of the elevation runs into the table or the strip."""
    pages = drawn(demo("sail-loft"), Paper.LETTER)
    both = [page for page in pages if page.placed[0].scale != 1.0 and len(page.placed) > 2]
    assert len(both) >= 4
    for page in both:
        elevation, *others = page.placed
        # The detail of a plate is at a scale of its own.
        lists = [p for p in others[:-1] if p.scale == 1]
        tables = [s.points for p in lists for s in p.drawing if isinstance(s, Stroke)]
        top = max(y for points in tables for _, y in points)
        left = min(x for points in tables for x, _ in points)
        points = [
            elevation.on_paper(point)
            for stroke in elevation.drawing
            if isinstance(stroke, Stroke) and stroke.pen is not Pen.NOTE
            for point in stroke.points
        ]
        under = all(y > top for _, y in points)
        beside = all(x < left for x, _ in points)
        assert under or beside


@pytest.mark.parametrize("letter", ["C", "D", "E"])
def test_how_pieces_are_set_is_told_whatever_else_finds_no_room(letter: str) -> None:
    # Plumb, the partition of the demo stands so large on a letter sheet that nothing is told of
    # its lifting; what its end stud stands against has to be told all the same.
    project = demo("sail-loft").project
    wall = msgspec.structs.replace(project.wall(letter), right_lean=EndLean(US.length(1.5)))
    pages = drawn(work_out(project.with_wall(wall), SiteRecord()), Paper.LETTER)
    (page, *_) = (page for page in pages if page.title.startswith(f"{letter} "))
    said = " ".join(text.text for text, _ in texts_on(page))
    assert "At the right end, what the wall stands against leans out" in said
