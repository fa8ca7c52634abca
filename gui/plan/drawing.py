"""Drawing in the plan: a wall, a wall that stands there already, a stair opening."""

import enum
import math

from core.chalk import Caught, Grip, Line, against, catch, catch_end, guides
from core.drawing.plan_roof import floors
from core.model import Project
from gui.desk import Desk
from gui.edits import draw_wall, usual
from gui.edits.floor import LEAST, draw_existing, draw_stair
from gui.plan.gestures import Gesture
from gui.plan.told import line_told, on_told
from gui.sketcher.camera import XY


class Tool(enum.Enum):
    """What a press on the floor begins; the value names its words in the catalogue."""

    WALL = "wall"
    STAIR = "stair"
    EXISTING = "existing"


class Draw(Gesture):
    """A new wall: where it begins, and where its other end is wanted."""

    undo = "undo.draw-wall"

    def __init__(self, desk: Desk, point: XY, grip: Grip, like: str | None) -> None:
        self._spent = frozenset(p.key.partition("/")[0] for p in desk.site.printed)
        letters = [wall.letter for wall in desk.project.walls]
        self._like = like if like in letters else (letters[-1] if letters else None)
        super().__init__(desk, "")
        self.start: Caught = catch(inside(desk.project, point), self.lines(), grip)
        self.line = Line(self.start.point, self.start.point)
        desk.said.emit(on_told(self.start.on, desk.wording))

    def pull(self, point: XY, grip: Grip) -> None:
        """Show the wall from where it begins to a plan point, mm."""
        wanted = inside(self.before, point)
        self.show(catch_end(self.start.point, wanted, self.lines(), grip))

    def set_length(self, run: float) -> None:
        """Show the wall in the direction it has, so long (mm); Refusal where it cannot be."""
        (u, v), (du, dv) = self.start.point, self.line.along
        line = Line(self.start.point, (u + du * run, v + dv * run), self.line.direction)
        self.project = self._with(self._laid(line))
        self.line = line

    def show(self, line: Line) -> None:
        """Show a wall on a line; none while the line is next to nothing."""
        self.line = line
        if line.run < 1.0:
            self.project = self.before
            return
        laid = self._laid(line)
        self.try_to(lambda: self._with(laid), line_told(laid, self.desk.wording))

    def drawn(self) -> bool:
        """Whether there is a wall to be seen yet."""
        return self.project is not self.before

    def _laid(self, line: Line) -> Line:
        """A line at the room's edge brought in by the wall's thickness."""
        return against(line, self._width(), guides(self.before.room, ()))

    def _with(self, line: Line) -> Project:
        name = self.desk.wording.word("new.wall")
        ends = line.left, line.right
        project = draw_wall(self.before, ends, name, self._like, self._spent)
        self.letter = project.walls[-1].letter
        return project

    def _width(self) -> float:
        if self._like is not None:
            return self.before.wall(self._like).stud.width.mm
        return usual.stud(self.before.system).width.mm


class DrawExisting(Draw):
    """A wall that stands there already, drawn as a new one is."""

    def _with(self, line: Line) -> Project:
        project = draw_existing(self.before, (line.left, line.right))
        self.letter = project.room.existing_walls[-1].id
        return project

    def _laid(self, line: Line) -> Line:
        """A wall that is there may well stand on the room's edge."""
        return line


class DrawStair(Draw):
    """A stair opening, from corner to corner."""

    def pull(self, point: XY, grip: Grip) -> None:
        """Show the opening between where it begins and a plan point, mm."""
        last = catch(inside(self.before, point), self.lines(), grip)
        self.line = Line(self.start.point, last.point)
        if min(abs(a - b) for a, b in zip(last.point, self.start.point, strict=True)) < LEAST:
            self.project = self.before
            return
        said = on_told(last.on, self.desk.wording)
        self.try_to(lambda: self._with(self.line), said)

    def set_length(self, run: float) -> None:
        """Show the opening so wide across the room, mm."""
        (u0, v0), (u1, v1) = self.line.left, self.line.right
        line = Line((u0, v0), (u0 + math.copysign(run, u1 - u0), v1))
        self.project = self._with(line)
        self.line = line

    def _with(self, line: Line) -> Project:
        project = draw_stair(self.before, line.left, line.right)
        self.letter = project.room.stair_openings[-1].id
        return project


def begun(tool: Tool, desk: Desk, point: XY, grip: Grip, like: str | None) -> Draw:
    """What a tool begins at a plan point, mm; a wall is like the wall `like`."""
    kinds = {Tool.WALL: Draw, Tool.STAIR: DrawStair, Tool.EXISTING: DrawExisting}
    return kinds[tool](desk, point, grip, like)


def inside(project: Project, point: XY) -> XY:
    """The point of the room nearest to a plan point, mm."""
    rects = [tuple(zip(*floor, strict=True)) for floor in floors(project.room)]
    held = [
        (min(max(point[0], min(us)), max(us)), min(max(point[1], min(vs)), max(vs)))
        for us, vs in rects
    ]
    return min(held, key=lambda p: math.dist(p, point))
