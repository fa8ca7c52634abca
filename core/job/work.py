"""The one pipeline: a project and a site record in, results out."""

from core.checks import Caution, Severity, standing_cautions, wall_cautions
from core.framing import frame_wall, labels, marks, place_boxes
from core.job.results import Results, WallInputs, WallResult
from core.model import PlateRules, Project, SiteRecord, Wall
from core.roof import Roof, RoofLine, roof_line, roof_of
from core.wording import message

_INTO = 0.01
"""A step from a face into the timber, mm."""


class Memo:
    """Results of walls by their inputs, owned by the caller; it keeps those of the last job.

    A wall is worked out again only when its inputs changed, and a result taken from the memo
    equals a fresh one, because it depends on its inputs alone.
    """

    def __init__(self) -> None:
        """An empty memo."""
        self._kept: dict[WallInputs, WallResult] = {}

    def wall(self, inputs: WallInputs) -> WallResult:
        """The result for these inputs, worked out if it is not at hand."""
        return self._kept.get(inputs) or wall_result(inputs)

    def keep(self, results: tuple[WallResult, ...]) -> None:
        """Keep these results and forget all others."""
        self._kept = {result.inputs: result for result in results}


def work_out(project: Project, site: SiteRecord, memo: Memo | None = None) -> Results:
    """All results of a project; with a memo only the walls whose inputs changed are worked out."""
    memo = memo or Memo()
    roof = roof_of(project.room)
    walls = tuple(memo.wall(inputs_of(project, site, roof, wall)) for wall in project.walls)
    memo.keep(walls)
    return Results(project, walls, standing_cautions())


def inputs_of(project: Project, site: SiteRecord, roof: Roof, wall: Wall) -> WallInputs:
    """Gather everything the wall may read."""
    printed = tuple((p.key, p.label) for p in site.printed if p.key.startswith(f"{wall.letter}/"))
    return WallInputs(
        wall, _line(roof, wall, 0.0), _line(roof, wall, wall.stud.width.mm), project.habits, printed
    )


def wall_result(inputs: WallInputs) -> WallResult:
    """What follows from one wall's inputs."""
    wall = inputs.wall
    if inputs.near is None or inputs.far is None:
        caution = Caution(
            Severity.UNBUILDABLE, wall.letter, message("wall.no-roof", letter=wall.letter)
        )
        return WallResult(inputs, None, (), (), (), (caution,))
    frame = frame_wall(wall, inputs.near, inputs.far, inputs.habits.plates or PlateRules())
    boxes = place_boxes(wall, frame)
    named = labels(wall.letter, frame.members, dict(inputs.printed))
    return WallResult(
        inputs,
        frame,
        marks(wall, frame, inputs.habits.line_edge, inputs.habits.letters),
        boxes,
        tuple(named.items()),
        wall_cautions(wall, inputs.near, inputs.far, frame, boxes, inputs.habits),
    )


def _line(roof: Roof, wall: Wall, away: float) -> RoofLine | None:
    """The roof line on the plane `away` mm behind face A, or None where there is none."""
    (u0, v0), (u1, v1) = wall.chalk
    if wall.run < wall.stud.thickness.mm:
        return None
    aside = (-(v1 - v0) / wall.run * away, (u1 - u0) / wall.run * away)
    start, end = (u0 + aside[0], v0 + aside[1]), (u1 + aside[0], v1 + aside[1])
    # Where a face runs exactly under a ridge, what counts is the plane over the timber.
    toward = _INTO if away == 0.0 else -_INTO
    try:
        return roof_line(roof, start, end, toward)
    except ValueError:
        return None
