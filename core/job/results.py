"""The results: everything that follows from a project, as frozen values."""

import msgspec

from core.checks import Caution, Severity
from core.framing import Clash, Frame, Mark, PlacedBox, Surroundings
from core.job.change import Change
from core.model import ExistingWall, Habits, KeptClear, PieceMade, Project, StairOpening, Wall
from core.roof import PurlinThrough, RoofLine, Survey


class WallInputs(msgspec.Struct, frozen=True):
    """Everything that a wall's results may depend on, and nothing else.

    `near` and `far` are the roof lines over face A and the far face; None where the wall reaches
    out from under the roof or has no length. `stated` is the roof line over face A as it was before
    it was moved through measured points. `printed` are labels already on paper, (key, label).
    `around` is what stands about the wall: walls that end against it, rafters over it, purlins
    through it. `foot` are the lines on both faces that it stands on, None for the floor; `inside`
    is the id of a purlin that it runs along within. `cut` are those of the wall's pieces that are
    cut already.
    """

    wall: Wall
    near: RoofLine | None
    far: RoofLine | None
    habits: Habits
    printed: tuple[tuple[str, str], ...]
    stated: RoofLine | None = None
    around: Surroundings = Surroundings()
    foot: tuple[RoofLine, RoofLine] | None = None
    inside: str | None = None
    kept_clear: tuple[KeptClear, ...] = ()
    cut: tuple[PieceMade, ...] = ()
    stair_openings: tuple[StairOpening, ...] = ()
    existing_walls: tuple[ExistingWall, ...] = ()

    @property
    def crossings(self) -> tuple[PurlinThrough, ...]:
        """The purlins that pass through the wall, from left to right."""
        return self.around.purlins


class WallResult(msgspec.Struct, frozen=True):
    """What follows from a wall's inputs; `labels` gives (key, label) of every member.

    `changes` are those of pieces that are no longer needed as they were cut. `over_marks` are those
    on the top plates where they cross rafters.
    """

    inputs: WallInputs
    frame: Frame | None
    marks: tuple[Mark, ...]
    boxes: tuple[PlacedBox, ...]
    labels: tuple[tuple[str, str], ...]
    cautions: tuple[Caution, ...]
    survey: Survey | None = None
    clashes: tuple[Clash, ...] = ()
    changes: tuple[Change, ...] = ()
    over_marks: tuple[Mark, ...] = ()

    @property
    def wall(self) -> Wall:
        """The wall as stated."""
        return self.inputs.wall

    @property
    def label_of(self) -> dict[str, str]:
        """Labels by key."""
        return dict(self.labels)


class Results(msgspec.Struct, frozen=True):
    """The results of all walls, in the project's order, and the cautions of the job."""

    project: Project
    walls: tuple[WallResult, ...]
    cautions: tuple[Caution, ...]

    def wall(self, letter: str) -> WallResult:
        """The result of the wall with this letter; KeyError if there is none."""
        for result in self.walls:
            if result.wall.letter == letter:
                return result
        raise KeyError(letter)

    @property
    def all_cautions(self) -> tuple[Caution, ...]:
        """The cautions of every wall, then those of the job."""
        return (*(c for wall in self.walls for c in wall.cautions), *self.cautions)

    @property
    def buildable(self) -> bool:
        """Whether everything can be built as stated."""
        return all(c.severity is not Severity.UNBUILDABLE for c in self.all_cautions)
