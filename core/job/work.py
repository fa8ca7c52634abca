"""The one pipeline: a project and a site record in, results out."""

import msgspec

from core.checks import (
    Caution,
    Severity,
    clear_cautions,
    floor_cautions,
    measured_cautions,
    nailed_cautions,
    purlin_cautions,
    rafter_cautions,
    standing_cautions,
    wall_cautions,
    zone_cautions,
)
from core.framing import (
    Footprint,
    Mark,
    Passed,
    Surroundings,
    frame_on_rafters,
    frame_wall,
    in_pieces,
    keys,
    labels,
    marks,
    meetings,
    over_marks,
    pass_purlins,
    place_boxes,
    rafter_marks,
    rafter_places,
    standing_in,
)
from core.job.change import since_cut
from core.job.made import changes_of
from core.job.overhead import Overhead, overhead
from core.job.results import Results, WallInputs, WallResult
from core.kept import Kept
from core.model import (
    PassesPurlin,
    PlateRules,
    Point,
    Project,
    Room,
    SiteRecord,
    StandsOn,
    Timber,
    Wall,
)
from core.roof import (
    Roof,
    RoofLine,
    corrected,
    differences,
    measured_beneath,
    roof_heights,
    roof_of,
    survey,
)
from core.wording import message

Ground = tuple[Point, Point, Timber, StandsOn | None, tuple[PassesPurlin, ...], bool]
"""Where a wall stands: its ends, its studs' timber, what it stands on; how it passes purlins.

At last whether its roof was measured.
"""


class Memo:
    """Results of walls by their inputs, owned by the caller; it keeps those of the last job.

    A wall is worked out again only when its inputs changed, and a result taken from the memo
    equals a fresh one, because it depends on its inputs alone.
    """

    def __init__(self) -> None:
        """An empty memo."""
        self._kept: dict[WallInputs, WallResult] = {}
        self._pieces = Kept()
        self._over: dict[tuple[Room, Ground], Overhead] = {}

    def wall(self, inputs: WallInputs) -> WallResult:
        """The result for these inputs, worked out if it is not at hand."""
        return self._kept.get(inputs) or wall_result(inputs, self._pieces)

    def overhead(self, room: Room, roof: Roof, wall: Wall) -> Overhead:
        """What the roof is to a wall, which no stud, opening or box in it changes."""
        ground = _ground(wall)
        found = self._over.get((room, ground))
        if found is None:
            found = self._over[room, ground] = overhead(room, roof, wall)
        return found

    def keep(self, room: Room, results: tuple[WallResult, ...]) -> None:
        """Keep these results and forget all others; of pieces, what a few jobs asked for."""
        self._pieces.next_round()
        self._kept = {result.inputs: result for result in results}
        keys = [(room, _ground(result.wall)) for result in results]
        self._over = {key: self._over[key] for key in keys if key in self._over}


def work_out(project: Project, site: SiteRecord, memo: Memo | None = None) -> Results:
    """All results of a project; with a memo only the walls whose inputs changed are worked out."""
    memo = memo or Memo()
    roof = roof_of(project.room)
    overs = [memo.overhead(project.room, roof, wall) for wall in project.walls]
    plan = standing_in(project)
    pairs = zip(project.walls, overs, strict=True)
    walls = tuple(memo.wall(inputs_of(project, site, over, plan, wall)) for wall, over in pairs)
    memo.keep(project.room, walls)
    return Results(project, walls, standing_cautions(project.room))


def inputs_of(
    project: Project, site: SiteRecord, over: Overhead, plan: tuple[Footprint, ...], wall: Wall
) -> WallInputs:
    """Gather everything the wall may read; `plan` is where all walls stand."""
    printed = tuple((p.key, p.label) for p in site.printed if p.key.startswith(f"{wall.letter}/"))
    near, far = over.near, over.far
    if near is not None and far is not None:
        points = roof_heights(wall)
        if over.bare is not None and points:
            near, far = measured_beneath(over.bare, over.over, points)
        else:
            found = differences(near, points)
            near, far = corrected(near, found), corrected(far, found)
    return WallInputs(
        wall,
        near,
        far,
        project.habits,
        printed,
        over.near,
        Surroundings(meetings(wall, plan), rafter_places(project.room), over.crossings),
        over.foot,
        over.inside,
        project.room.kept_clear,
        tuple(d.piece for d in site.cut if d.piece.key.startswith(f"{wall.letter}/")),
        project.room.stair_openings,
        project.room.existing_walls,
    )


def wall_result(inputs: WallInputs, kept: Kept | None = None) -> WallResult:
    """What follows from one wall's inputs; `kept` are pieces of it that were made before."""
    result = _built(inputs, kept)
    changes = changes_of(inputs.cut, result) if inputs.cut else ()
    if not changes:
        return result
    told = tuple(Caution(Severity.WARNING, c.key, since_cut(c)) for c in changes)
    cautions = _grave_first((*result.cautions, *told))
    return msgspec.structs.replace(result, cautions=cautions, changes=changes)


def _built(inputs: WallInputs, kept: Kept | None) -> WallResult:
    """The wall as it is to be built, whatever of it is cut already."""
    wall = inputs.wall
    if inputs.near is None or inputs.far is None:
        caution = Caution(
            Severity.UNBUILDABLE, wall.letter, message("wall.no-roof", letter=wall.letter)
        )
        return WallResult(inputs, None, (), (), (), (caution,))
    passed, over = _framed(inputs, (inputs.near, inputs.far), kept)
    frame = passed.frame
    measured = survey(wall, inputs.stated) if inputs.stated else None
    boxes = place_boxes(wall, frame)
    named = labels(wall.letter, frame.members, dict(inputs.printed))
    cautions = (
        *wall_cautions(wall, inputs.near, inputs.far, frame, boxes, inputs.habits),
        *rafter_cautions(wall),
        *purlin_cautions(wall, passed, inputs.inside),
        *clear_cautions(wall, inputs.near, frame, inputs.kept_clear),
        *floor_cautions(wall, inputs.stair_openings, inputs.existing_walls),
        *measured_cautions(wall, frame, measured),
        *nailed_cautions(wall, frame, inputs.around),
        *zone_cautions(wall, frame, boxes, named),
    )
    named_keys = tuple(named.items())
    return WallResult(
        inputs,
        frame,
        passed.marks,
        boxes,
        named_keys,
        _grave_first(cautions),
        measured,
        passed.clashes,
        over_marks=over,
    )


def _grave_first(cautions: tuple[Caution, ...]) -> tuple[Caution, ...]:
    return tuple(sorted(cautions, key=lambda c: list(Severity).index(c.severity)))


def _framed(
    inputs: WallInputs, roof: tuple[RoofLine, RoofLine], kept: Kept | None
) -> tuple[Passed, tuple[Mark, ...]]:
    """The wall's frame and marks, its plates cut at purlins and then in pieces of their stock.

    Then the marks where its plates cross rafters.
    """
    wall, habits = inputs.wall, inputs.habits
    rules = habits.plates or PlateRules()
    below: tuple[Mark, ...] = ()
    if inputs.foot is None:
        frame = frame_wall(wall, *roof, inputs.around, rules, kept)
    else:
        frame = frame_on_rafters(wall, roof, inputs.foot, inputs.around, rules, kept)
        below = rafter_marks(wall, frame, inputs.foot[0], habits.line_edge, habits.letters)
    made = marks(wall, frame, habits.line_edge, habits.letters)
    over = over_marks(wall, frame, habits.letters)
    passed = pass_purlins(wall, frame, (*below, *made, *over), inputs.crossings)
    frame, made = in_pieces(passed.frame, passed.marks, rules)
    of_members = tuple(m for m in made if not keys.is_rafter_over(m.member))
    passed = msgspec.structs.replace(passed, frame=frame, marks=of_members)
    return passed, tuple(m for m in made if keys.is_rafter_over(m.member))


def _ground(wall: Wall) -> Ground:
    """All of a wall that matters to what is overhead."""
    place = wall.left_end, wall.right_end, wall.stud, wall.stands_on
    return (*place, wall.passes, bool(wall.roof_points))
