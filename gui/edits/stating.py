"""Turning what a person types or drags into stated lengths, and naming new things."""

from fractions import Fraction
from functools import lru_cache
from itertools import count

from core.framing import standing_in
from core.job import WallInputs, WallResult
from core.job.overhead import overhead
from core.job.work import inputs_of, wall_result
from core.lengths import Length, System, Unit
from core.model import AddedStud, Box, ClearZone, Fixture, Opening, Project, SiteRecord, Wall
from core.roof import roof_of

_NEAR = 1e-6
"""A dragged place this near (mm) to a number that can be written shortly is that number."""


def stated(project: Project, length: Length | float) -> Length:
    """A typed length as it is; a dragged one (mm) in the project's unit."""
    if isinstance(length, Length):
        return length
    return _inches(length) if project.system is System.INCH else _millimetres(length)


def _inches(mm: float) -> Length:
    for parts in (64, 10_000):
        length = Length.of_inches(Fraction(round(mm / 25.4 * parts), parts))
        if abs(length.mm - mm) <= _NEAR:
            return length
    return Length(mm, Unit.INCH)


def _millimetres(mm: float) -> Length:
    short = round(mm, 4)
    return Length(short if abs(short - mm) <= _NEAR else mm, Unit.MM)


def next_id(wall: Wall, stem: str) -> str:
    """The first of stem-1, stem-2, ... that nothing in the wall is called."""
    stated_things: tuple[Opening | Box | AddedStud | Fixture | ClearZone, ...] = (
        *wall.openings,
        *wall.boxes,
        *wall.added,
        *wall.fixtures,
        *wall.kept_clear,
    )
    taken = {thing.id for thing in stated_things}
    return next(name for n in count(1) if (name := f"{stem}-{n}") not in taken)


def worked(project: Project, letter: str) -> WallResult:
    """The result of one wall of the project, nothing yet printed."""
    wall = project.wall(letter)
    over = overhead(project.room, roof_of(project.room), wall)
    return _result(inputs_of(project, SiteRecord(), over, standing_in(project), wall))


@lru_cache(maxsize=8)
def _result(inputs: WallInputs) -> WallResult:
    """Kept for a while: a drag asks about the wall it began with on every frame."""
    return wall_result(inputs)
