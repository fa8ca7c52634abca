"""The sheets: one page a wall, its elevation true to a standard scale, its list of members."""

from collections.abc import Callable, Iterator
from functools import cache
from itertools import product

import msgspec

from core.drawing.arranging import Arrangement, arrangements
from core.drawing.detailing import with_detail
from core.drawing.elements import XY, Drawing
from core.drawing.elevation import elevation
from core.drawing.extent import extent
from core.drawing.page import Page, Placed
from core.drawing.paper import Paper, Scale, scales
from core.drawing.placing import Rect, bounds
from core.drawing.plate_detail import plate_detail, steepest
from core.drawing.site_notes import framing_notes, site_notes
from core.drawing.table import Row, rows
from core.drawing.title import SheetFacts, title_block
from core.drawing.view import View
from core.drawing.writing import broken, column_widths, table
from core.job import Results, WallResult, raising_order
from core.model import Project
from core.wording import Wording

MARGIN = 8.0
"""Around what is printed, mm."""

DETAIL = 1 / 6
"""The scale of a detail; its figures govern."""

GAP = 4.0
"""Between elevation, columns of the list, and title strip, mm."""

READABLE = 1 / 75
"""At smaller scales labels find little room between studs 16 in. or 400 mm apart."""

FAR_LARGER = 1.9
"""How much larger an elevation alone is drawn, before its list goes on a page behind for that."""


class _Sheet(msgspec.Struct, frozen=True):
    """What the pages of one wall share."""

    result: WallResult
    wording: Wording
    size: XY
    project: Project
    rows: tuple[Row, ...]
    widths: tuple[float, ...]
    detail: Drawing = ()
    site: tuple[str, ...] = ()

    @property
    def title(self) -> str:
        """The title of its pages."""
        return f"{self.result.wall.letter} {self.result.wall.name}"

    def detail_box(self) -> Rect | None:
        """The rectangle around the detail, model mm; None for a wall without one."""
        return extent(self.detail, DETAIL) if self.detail else None

    def area(self) -> Rect:
        """What the title strip leaves of the page."""
        width, height = self.size
        facts = SheetFacts(self.project, "", 1, 1)
        strip = title_block(self.result, self.wording, width, MARGIN, facts, "", self.site).height
        return (MARGIN, MARGIN + strip + GAP, width - MARGIN, height - MARGIN)


class _Unnumbered(msgspec.Struct, frozen=True):
    """A page before it is known how many there are."""

    sheet: _Sheet
    placed: tuple[Placed, ...]
    scale: Scale

    def page(self, facts: SheetFacts) -> Page:
        """The page with its title strip."""
        sheet = self.sheet
        width, height = sheet.size
        scale = self.scale.text
        strip = title_block(sheet.result, sheet.wording, width, MARGIN, facts, scale, sheet.site)
        return Page(sheet.title, width, height, (*self.placed, _on_paper(strip.drawing)))


def sheets(results: Results, wording: Wording, paper: Paper, date: str = "") -> tuple[Page, ...]:
    """One page for each wall that has a frame; a list too long for it goes on pages behind.

    `date` is printed as given.
    """
    walls = [w for w in results.walls if w.frame is not None]
    project, turns = results.project, raising_order(results)
    notes = [site_notes(results, wall.wall.letter, wording, turns) for wall in walls]
    found = [
        page
        for wall, said in zip(walls, notes, strict=True)
        for page in _wall_pages(wall, wording, paper, project, said)
    ]
    return tuple(
        page.page(SheetFacts(project, date, number, len(found)))
        for number, page in enumerate(found, start=1)
    )


def _wall_pages(
    result: WallResult,
    wording: Wording,
    paper: Paper,
    project: Project,
    site: tuple[str, ...],
) -> Iterator[_Unnumbered]:
    """The pages of a wall; the paper lies the way that shows the wall larger.

    A list too wide for upright paper keeps it lying. The notes of how the wall goes up are left out
    where the elevation, the list or the detail would have to give way to them; those of how pieces
    are cut and set are not.
    """
    members = result.frame.members if result.frame else ()
    found = broken(rows(members, result.label_of, wording))
    widths = column_widths(found, wording)
    kept, detail = framing_notes(result, wording), _detail(result, wording)
    ways = [
        _Sheet(result, wording, size, project, found, widths, detail, kept)
        for size in (paper.size, paper.size[::-1])
        if size == paper.size or sum(widths) <= size[0] - 2 * MARGIN
    ]
    at_scale = cache(lambda scale: elevation(result, View(scale.ratio, scale.size), wording))
    without = _larger(ways, at_scale)
    noted = _larger([msgspec.structs.replace(s, site=site) for s in ways], at_scale)
    sheet, (placed, scale, arrangement) = max(noted, without, key=_shown)
    at = _detail_at(sheet, arrangement.detail)
    yield _Unnumbered(sheet, (placed, *_lists(sheet, arrangement), *at), scale)
    rest = found if not arrangement.columns else ()
    while rest:
        behind, rest = _full_page(sheet, rest, sheet.area())
        yield _Unnumbered(sheet, behind, scale)
    if sheet.detail and arrangement.detail is None:
        left, *_, top = sheet.area()
        yield _Unnumbered(sheet, _detail_at(sheet, (left, top - _detail_size(sheet)[1])), scale)


def _detail(result: WallResult, wording: Wording) -> Drawing:
    """How the top plates lie, where there is anything to tell; else nothing."""
    section = steepest(result.frame)
    return () if section is None else plate_detail(section, View(DETAIL), wording)


def _detail_size(sheet: _Sheet) -> XY:
    """The width and the height of the detail, mm on paper."""
    box = sheet.detail_box() or (0.0, 0.0, 0.0, 0.0)
    return (box[2] - box[0]) * DETAIL, (box[3] - box[1]) * DETAIL


def _detail_at(sheet: _Sheet, corner: XY | None) -> tuple[Placed, ...]:
    """The detail with its lower left corner at a place of the page; nothing for no place."""
    box = sheet.detail_box()
    if box is None or corner is None:
        return ()
    origin = (corner[0] - DETAIL * box[0], corner[1] - DETAIL * box[1])
    return (Placed(sheet.detail, DETAIL, origin),)


_Drawn = tuple[Placed, Scale, Arrangement]


def _larger(ways: list[_Sheet], at_scale: Callable[[Scale], Drawing]) -> tuple[_Sheet, _Drawn]:
    """The way the paper lies that shows the wall larger, and what is drawn on it."""
    drawn = [(sheet, _drawn(sheet, sheet.area(), at_scale)) for sheet in ways]
    return max(drawn, key=_shown)


def _shown(drawn: tuple[_Sheet, _Drawn]) -> tuple[bool, float, bool]:
    """How good a way to draw it is: readable beside its list, how large, with a detail."""
    _, (_, scale, arrangement) = drawn
    together = bool(arrangement.columns)
    readable = together and scale.ratio >= READABLE - 1e-9
    weight = FAR_LARGER if together else 1.0
    return readable, scale.ratio * weight, arrangement.detail is not None


def _drawn(sheet: _Sheet, area: Rect, at_scale: Callable[[Scale], Drawing]) -> _Drawn:
    """The elevation at the largest standard scale that leaves room for the list on the page.

    Where none does, or where that is hard to read and alone it can be drawn far larger, it stands
    alone at the largest that fits, a reduced one at need.
    """
    every = scales(sheet.project.system)
    usual = tuple(scale for scale in every if not scale.reduced)
    together = arrangements(sheet.rows, sum(sheet.widths), area, GAP)
    if sheet.detail:
        detailed = with_detail(sheet.rows, sum(sheet.widths), area, GAP, _detail_size(sheet))
        together = (*detailed, *together)
    alone = (Arrangement(area, ()),)
    found = [
        drawn
        for tried, ways in ((usual, together), (every, alone))
        if (drawn := _largest(sheet, tried, ways, at_scale)) is not None
    ]
    if found:
        return max(found, key=lambda drawn: _shown((sheet, drawn)))
    drawing = at_scale(every[-1])
    return (
        _place(drawing, extent(drawing, every[-1].ratio), every[-1], alone[0]),
        every[-1],
        alone[0],
    )


def _largest(
    sheet: _Sheet,
    tried: tuple[Scale, ...],
    ways: tuple[Arrangement, ...],
    at_scale: Callable[[Scale], Drawing],
) -> _Drawn | None:
    """The elevation at the first of these scales that it fits at in one of these ways."""
    for scale, arrangement in product(tried, ways):
        if _fits(_timber(sheet.result), scale.ratio, arrangement.space):
            drawing = at_scale(scale)
            box = extent(drawing, scale.ratio)
            if _fits(box, scale.ratio, arrangement.space):
                return _place(drawing, box, scale, arrangement), scale, arrangement
    return None


def _timber(result: WallResult) -> Rect:
    """The rectangle around the wall itself: where that does not fit, nothing need be drawn."""
    line = result.inputs.near
    return bounds((*(line.points() if line else ()), (0.0, 0.0), (result.wall.run, 0.0)))


def _fits(box: Rect, ratio: float, space: Rect) -> bool:
    wide, high = (box[2] - box[0]) * ratio, (box[3] - box[1]) * ratio
    return wide <= space[2] - space[0] and high <= space[3] - space[1]


def _place(drawing: Drawing, box: Rect, scale: Scale, arrangement: Arrangement) -> Placed:
    """Centre a drawing in its space."""
    space = arrangement.space
    origin = (
        (space[0] + space[2]) / 2 - scale.ratio * (box[0] + box[2]) / 2,
        (space[1] + space[3]) / 2 - scale.ratio * (box[1] + box[3]) / 2,
    )
    return Placed(drawing, scale.ratio, origin)


def _lists(sheet: _Sheet, arrangement: Arrangement) -> tuple[Placed, ...]:
    return tuple(
        _on_paper(table(column.rows, sheet.widths, column.corner, sheet.wording))
        for column in arrangement.columns
    )


def _full_page(
    sheet: _Sheet, rest: tuple[Row, ...], area: Rect
) -> tuple[tuple[Placed, ...], tuple[Row, ...]]:
    """Columns of the list over a whole page, and the rows that are left for the next."""
    full = arrangements(rest, sum(sheet.widths), area, GAP, whole=True)[0]
    shown = sum(len(column.rows) for column in full.columns)
    return _lists(sheet, full), rest[shown:]


def _on_paper(drawing: Drawing, origin: XY = (0.0, 0.0)) -> Placed:
    return Placed(drawing, 1.0, origin)
