"""The one pipeline: a project and a site record in, results out."""

from core.checks import (
    Caution,
    Severity,
    clear_cautions,
    purlin_cautions,
    rafter_cautions,
    standing_cautions,
    wall_cautions,
)
from core.framing import (
    Mark,
    Passed,
    frame_on_rafters,
    frame_wall,
    labels,
    marks,
    pass_purlins,
    place_boxes,
    rafter_marks,
)
from core.job.results import Results, WallInputs, WallResult
from core.model import Project, Room, SiteRecord, StandsOn, Wall
from core.roof import (
    Roof,
    RoofLine,
    crossings,
    inside_purlin,
    rafters_of,
    roof_line,
    roof_of,
    underside,
)
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
    near, far = (_line(roof, wall, away) for away in (0.0, wall.stud.width.mm))
    through = crossings(project.room, wall) if near else ()
    inside = inside_purlin(project.room, wall) if near else None
    foot, kept = _foot(project.room, wall), project.room.kept_clear
    return WallInputs(wall, near, far, project.habits, printed, foot, through, inside, kept)


def wall_result(inputs: WallInputs) -> WallResult:
    """What follows from one wall's inputs."""
    wall = inputs.wall
    if inputs.near is None or inputs.far is None:
        caution = Caution(
            Severity.UNBUILDABLE, wall.letter, message("wall.no-roof", letter=wall.letter)
        )
        return WallResult(inputs, None, (), (), (), (caution,))
    passed = _framed(inputs, (inputs.near, inputs.far))
    frame = passed.frame
    boxes = place_boxes(wall, frame)
    named = labels(wall.letter, frame.members, dict(inputs.printed))
    cautions = (
        *wall_cautions(wall, inputs.near, inputs.far, frame, boxes),
        *rafter_cautions(wall),
        *purlin_cautions(wall, passed, inputs.inside),
        *clear_cautions(wall, inputs.kept_clear),
    )
    grave_first = tuple(sorted(cautions, key=lambda c: list(Severity).index(c.severity)))
    named_keys = tuple(named.items())
    return WallResult(inputs, frame, passed.marks, boxes, named_keys, grave_first, passed.clashes)


def _framed(inputs: WallInputs, roof: tuple[RoofLine, RoofLine]) -> Passed:
    """The wall's frame and marks, its plates cut at the purlins that pass through it."""
    wall, habits = inputs.wall, inputs.habits
    below: tuple[Mark, ...] = ()
    if inputs.foot is None:
        frame = frame_wall(wall, *roof)
    else:
        frame = frame_on_rafters(wall, roof, inputs.foot)
        below = rafter_marks(wall, frame, inputs.foot[0], habits.line_edge, habits.letters)
    made = marks(wall, frame, habits.line_edge, habits.letters)
    return pass_purlins(wall, frame, (*below, *made), inputs.crossings)


def _foot(room: Room, wall: Wall) -> tuple[RoofLine, RoofLine] | None:
    """The lines on both faces that a wall on the rafters stands on; None on the floor."""
    if wall.stands_on is None:
        return None
    rafters = rafters_of(room)
    depth = room.rafter.timber.width.mm if wall.stands_on is StandsOn.RAFTERS else 0.0
    near, far = (_line(rafters, wall, away) for away in (0.0, wall.stud.width.mm))
    # A plate of less than no thickness goes up instead of down, square to the slope.
    return (underside(near, -depth), underside(far, -depth)) if near and far else None


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
