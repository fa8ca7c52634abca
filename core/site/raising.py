"""How a wall goes up: tilted as drawn, built a little short, in panels, or in place."""

import enum
import math

import msgspec

from core.framing import Frame, Member, Role
from core.site.floor import Floor, floor_for
from core.site.outline import top_places
from core.site.panels import Panel, cuts_of, panels
from core.site.plate_first import under_the_upper_plate
from core.site.surroundings import Surroundings
from core.site.swing import Laid, Swing
from core.site.tilt import Points, points_of, swing

MOST_SHORT = 12.7
"""A wall is built short and shimmed by a quarter to half an inch at most; beyond, it is built in
place or in panels. As seen in a builder's diary (forthhasts1972.blogspot.com, 2022/10)."""


class Way(enum.Enum):
    """How a wall is put up."""

    TILT = "tilt"
    SHORT = "short"
    PANELS = "panels"
    IN_PLACE = "in place"


class StepKind(enum.Enum):
    """A step in building a wall in place, in the order of the work."""

    SOLE = "sole"
    TOP = "top"
    ENDS = "ends"
    OPENINGS = "openings"
    STUDS = "studs"
    CRIPPLES = "cripples"
    REST = "rest"


class Step(msgspec.Struct, frozen=True):
    """A step of building in place, and the keys of the pieces it puts up."""

    kind: StepKind
    keys: tuple[str, ...]


class GoingUp(msgspec.Struct, frozen=True):
    """How a wall goes up; `swings` and `floors` are for laying it down on face A's side, then far.

    `laid` is the side to lay it on where it goes up whole, before the walls that would stand in its
    way, and `short` how much less high it is then built, mm on the tape. `panels` are those that go
    up one by one between walls that already stand, each `panel_short` mm less high; none where the
    wall goes up whole among them, or where no split would help. `steps` is the order of building
    it in place, which always works. `beneath` are the swings with the upper of two top plates
    nailed up first; None with a single one.
    """

    way: Way
    swings: tuple[Swing, Swing]
    floors: tuple[Floor, Floor]
    laid: Laid | None
    short: float
    panels: tuple[Panel, ...]
    panel_short: float
    steps: tuple[Step, ...]
    beneath: tuple[Swing, Swing] | None = None

    @property
    def best(self) -> Swing:
        """The swing on the side to lay it on, or that which lacks least."""
        return self.swings[self._best]

    @property
    def floor(self) -> Floor:
        """The floor on that side."""
        return self.floors[self._best]

    @property
    def _best(self) -> int:
        if self.laid is not None:
            return list(Laid).index(self.laid)
        return min((0, 1), key=lambda n: (self.swings[n].short, not self.floors[n].free))


def going_up(around: Surroundings, frame: Frame, step: float) -> GoingUp | None:
    """How this wall goes up; lengths to build short are rounded up to the tape's `step`, mm.

    None for a wall that has nothing to be tilted up.
    """
    corners = top_places(frame, around.depth, sampled=not around.convex)
    if not corners:
        return None
    points = points_of(around, corners)
    near, far = (swing(around, points, laid) for laid in Laid)
    floors = (floor_for(around, corners, Laid.FACE_A), floor_for(around, corners, Laid.FAR_FACE))
    swings, steps, most = (near, far), building_order(frame), rounded_up(MOST_SHORT, step)
    whole = _whole(swings, floors, step)
    split: tuple[Panel, ...] = ()
    panel_short = 0.0
    if whole is None or not floors[swings.index(whole)].free:
        split, panel_short = _split(around, frame, step, most)
    short = 0.0 if whole is None else rounded_up(whole.short, step)
    laid = None if whole is None else whole.laid
    beneath = under_the_upper_plate(around, frame)
    way = _way(whole, short, split)
    return GoingUp(way, swings, floors, laid, short, split, panel_short, steps, beneath)


def _whole(swings: tuple[Swing, Swing], floors: tuple[Floor, Floor], step: float) -> Swing | None:
    """The swing by which the wall goes up whole: as high as may be, then with the floor free."""
    may = [(short, len(floors[n].in_the_way), n) for short, n in ways_up(swings, floors, step)]
    return swings[min(may)[2]] if may else None


def ways_up(
    swings: tuple[Swing, Swing], floors: tuple[Floor, Floor], step: float
) -> tuple[tuple[float, int], ...]:
    """The sides by which a wall goes up whole, by number, each with how much short it is built, mm.

    The least short comes first; whether other walls stand on the floor there is not asked.
    """
    most = rounded_up(MOST_SHORT, step)
    shorts = [rounded_up(s.short, step) for s in swings]
    return tuple(sorted((s, n) for n, s in enumerate(shorts) if s <= most and floors[n].enough))


def _split(
    around: Surroundings, frame: Frame, step: float, most: float
) -> tuple[tuple[Panel, ...], float]:
    """The panels that would go up, and how much less high they are built, mm."""
    cuts = cuts_of(around, frame)
    points = points_of(around, top_places(frame, around.depth, sampled=True, also=cuts))
    for short in (0.0, most):
        split = panels(around, cuts, points, short)
        if split:
            least = max(_panel_short(around, points, panel) for panel in split)
            return split, rounded_up(least, step)
    return (), 0.0


def _panel_short(around: Surroundings, points: Points, panel: Panel) -> float:
    """How much less high a panel has to be built, mm."""
    inside = tuple(p for p in points if panel.left - 1e-6 <= p[0].x <= panel.right + 1e-6)
    return swing(around, inside, panel.laid).short


def _way(whole: Swing | None, short: float, split: tuple[Panel, ...]) -> Way:
    if whole is not None:
        return Way.SHORT if short else Way.TILT
    return Way.PANELS if split else Way.IN_PLACE


def building_order(frame: Frame) -> tuple[Step, ...]:
    """The order of building in place: plates first, then studs, what hangs on studs last."""
    by_kind: dict[StepKind, list[str]] = {kind: [] for kind in StepKind}
    for member in frame.members:
        by_kind[_kind(member)].append(member.key)
    return tuple(Step(kind, tuple(keys)) for kind, keys in by_kind.items() if keys)


def _kind(member: Member) -> StepKind:
    kinds = {
        Role.SOLE_PLATE: StepKind.SOLE,
        Role.TOP_PLATE: StepKind.TOP,
        Role.KING: StepKind.OPENINGS,
        Role.TRIMMER: StepKind.OPENINGS,
        Role.HEADER: StepKind.OPENINGS,
        Role.SILL: StepKind.OPENINGS,
        Role.CRIPPLE: StepKind.CRIPPLES,
        Role.STUD: StepKind.STUDS,
    }
    if member.role is Role.STUD and "/end/" in member.key:
        return StepKind.ENDS
    return kinds.get(member.role, StepKind.REST)


def rounded_up(mm: float, step: float) -> float:
    """A length rounded up to the tape, mm; what is next to nothing needs no step."""
    return mm if math.isinf(mm) else math.ceil(mm / step - 1e-6) * step
