"""The one pipeline: a project and a site record in, results out."""

import msgspec

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
from core.job.overhead import Overhead, overhead
from core.job.results import Results, WallInputs, WallResult
from core.model import Project, Room, SiteRecord, Wall
from core.roof import Roof, RoofLine, roof_of
from core.wording import message


class Memo:
    """Results of walls by their inputs, owned by the caller; it keeps those of the last job.

    A wall is worked out again only when its inputs changed, and a result taken from the memo
    equals a fresh one, because it depends on its inputs alone.
    """

    def __init__(self) -> None:
        """An empty memo."""
        self._kept: dict[WallInputs, WallResult] = {}
        self._over: dict[tuple[Room, Wall], Overhead] = {}

    def wall(self, inputs: WallInputs) -> WallResult:
        """The result for these inputs, worked out if it is not at hand."""
        return self._kept.get(inputs) or wall_result(inputs)

    def overhead(self, room: Room, roof: Roof, wall: Wall) -> Overhead:
        """What the roof is to a wall, which no stud, opening or box in it changes."""
        bare = _bare(wall)
        found = self._over.get((room, bare))
        if found is None:
            found = self._over[room, bare] = overhead(room, roof, wall)
        return found

    def keep(self, room: Room, results: tuple[WallResult, ...]) -> None:
        """Keep these results and forget all others."""
        self._kept = {result.inputs: result for result in results}
        keys = [(room, _bare(result.wall)) for result in results]
        self._over = {key: self._over[key] for key in keys if key in self._over}


def work_out(project: Project, site: SiteRecord, memo: Memo | None = None) -> Results:
    """All results of a project; with a memo only the walls whose inputs changed are worked out."""
    memo = memo or Memo()
    roof = roof_of(project.room)
    overs = [memo.overhead(project.room, roof, wall) for wall in project.walls]
    pairs = zip(project.walls, overs, strict=True)
    walls = tuple(memo.wall(inputs_of(project, site, over, wall)) for wall, over in pairs)
    memo.keep(project.room, walls)
    return Results(project, walls, standing_cautions())


def inputs_of(project: Project, site: SiteRecord, over: Overhead, wall: Wall) -> WallInputs:
    """Gather everything the wall may read."""
    printed = tuple((p.key, p.label) for p in site.printed if p.key.startswith(f"{wall.letter}/"))
    kept = project.room.kept_clear
    return WallInputs(
        wall,
        over.near,
        over.far,
        project.habits,
        printed,
        over.foot,
        over.crossings,
        over.inside,
        kept,
    )


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


def _bare(wall: Wall) -> Wall:
    """The wall as far as it matters to what is overhead."""
    return msgspec.structs.replace(
        wall, name="", openings=(), boxes=(), moved=(), added=(), left_out=()
    )
