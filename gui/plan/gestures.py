"""What is done to a wall in the plan: each is one thing with one way out. No Qt but the desk's.

While it lasts `project` is what the plan shows; the desk hears of it now and then, so that the
list of walls follows, and the framing is worked out for good when it ends.
"""

import math
from collections.abc import Callable

from core.chalk import (
    Caught,
    Grip,
    Guide,
    Line,
    against,
    catch,
    catch_along,
    catch_end,
    guides,
    moved,
)
from core.drawing.plan_roof import floors
from core.framing import footprints
from core.model import Project, Side
from core.wording import Mm, message
from gui.desk import Desk
from gui.edits import (
    Refusal,
    copy_wall,
    draw_wall,
    lengthen_wall,
    place_wall,
    turn_wall,
    usual,
)
from gui.plan.told import line_told, on_told
from gui.sketcher.camera import XY

TURNS = math.radians(15)
"""A wall that is turned stops at whole multiples of this from the room's directions."""


class Gesture:
    """What all have in common: the project as it was, the one shown, and one end."""

    undo = "undo.move-wall"

    def __init__(self, desk: Desk, letter: str) -> None:
        self.desk = desk
        self.before = self.project = desk.project
        self.letter = letter

    @property
    def key(self) -> str | None:
        """The letter of the wall that is shown as held; None while there is none."""
        there = any(wall.letter == self.letter for wall in self.project.walls)
        return self.letter if there else None

    def pull(self, point: XY, grip: Grip) -> None:
        """Show it with the pointer at a plan point, mm."""
        raise NotImplementedError

    def release(self) -> None:
        """Let go: one edit, if anything has changed, and the wall is held."""
        text = self.desk.wording.say(message(self.undo, letter=self.letter))
        self.desk.commit(text, self.project)
        self.desk.hold(self.key)

    def drop(self) -> None:
        """Take it all back: nothing has happened."""
        self.project = self.before
        self.desk.drop_preview()
        self.desk.said.emit("")

    def lines(self) -> tuple[Guide, ...]:
        """What it can be drawn to: all but the wall itself."""
        others = tuple(w for w in self.before.walls if w.letter != self.letter)
        return guides(self.before.room, footprints(others))

    def try_to(self, make: Callable[[], Project], said: str) -> None:
        """Show what is made; a place that is refused is said and not shown."""
        try:
            self.project = make()
        except Refusal as refusal:
            said = self.desk.wording.say(refusal.message)
        self.desk.said.emit(said)


class Draw(Gesture):
    """A new wall: where it begins, and where its other end is wanted."""

    undo = "undo.draw-wall"

    def __init__(self, desk: Desk, point: XY, grip: Grip, like: str | None) -> None:
        self._spent = frozenset(p.key.partition("/")[0] for p in desk.site.printed)
        self._like = like or (desk.project.walls[-1].letter if desk.project.walls else None)
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


class Move(Gesture):
    """A wall moved as it is, or a copy of it."""

    def __init__(self, desk: Desk, letter: str, down: XY, *, copy: bool = False) -> None:
        super().__init__(desk, letter)
        self._down, self._copy, self._from = down, copy, letter
        self._spent = frozenset(p.key.partition("/")[0] for p in desk.site.printed)
        self.undo = "undo.copy-wall" if copy else "undo.move-wall"

    def pull(self, point: XY, grip: Grip) -> None:
        """Show it moved from where it was taken hold of to a plan point, mm."""
        self.shift((point[0] - self._down[0], point[1] - self._down[1]), grip)

    def shift(self, by: XY, grip: Grip) -> None:
        """Show it moved by (u, v) mm."""
        wall = self.before.wall(self._from)
        lines = self.lines()
        line, far = moved(*wall.chalk, by, wall.stud.width.mm, lines, grip)
        words = self.desk.wording
        said = words.say(message("chalk.moved", letter=self._from, by=Mm(far)))
        on = on_told(line.on, words)
        self.try_to(lambda: self._put(line), f"{said}, {on}" if on else said)

    def _put(self, line: Line) -> Project:
        if not self._copy:
            return place_wall(self.before, self._from, line.left, line.right)
        start = self.before.wall(self._from).chalk[0]
        by = (line.left[0] - start[0], line.left[1] - start[1])
        project = copy_wall(self.before, self._from, by, self._spent)
        self.letter = project.walls[-1].letter
        return project


class Lengthen(Gesture):
    """One end of a wall drawn along it."""

    undo = "undo.lengthen-wall"

    def __init__(self, desk: Desk, letter: str, end: Side) -> None:
        super().__init__(desk, letter)
        self._end = end

    def pull(self, point: XY, grip: Grip) -> None:
        """Show the end at the place along the wall that a plan point is beside."""
        left, right = self.before.wall(self.letter).chalk
        fixed, end = (left, right) if self._end is Side.RIGHT else (right, left)
        straight = catch_along(fixed, Line(fixed, end).along, point, self.lines(), grip)
        words = self.desk.wording
        self.try_to(
            lambda: lengthen_wall(self.before, self.letter, self._end, straight.right),
            line_told(straight, words),
        )


class Turn(Gesture):
    """A wall turned about a point of it: one of its ends, or its middle."""

    undo = "undo.turn-wall"

    def __init__(self, desk: Desk, letter: str, about: XY, down: XY) -> None:
        super().__init__(desk, letter)
        self._about, self._down = about, down

    def pull(self, point: XY, grip: Grip) -> None:
        """Show it turned as the pointer went around the point it turns about."""
        (u, v), (du, dv) = self._about, self._down
        by = math.atan2(point[1] - v, point[0] - u) - math.atan2(dv - v, du - u)
        left, right = self.before.wall(self.letter).chalk
        now = math.atan2(right[1] - left[1], right[0] - left[0])
        if not grip.free:
            by = round((now + by) / TURNS) * TURNS - now
        self.turn(by)

    def turn(self, by: float) -> None:
        """Show it turned by an angle, radians against the clock."""
        self.try_to(
            lambda: turn_wall(self.before, self.letter, self._about, by),
            self.desk.wording.say(
                message("chalk.turned", letter=self.letter, degrees=f"{math.degrees(by):.1f}")
            ),
        )


def inside(project: Project, point: XY) -> XY:
    """The point of the room nearest to a plan point, mm."""
    rects = [tuple(zip(*floor, strict=True)) for floor in floors(project.room)]
    held = [
        (min(max(point[0], min(us)), max(us)), min(max(point[1], min(vs)), max(vs)))
        for us, vs in rects
    ]
    return min(held, key=lambda p: math.dist(p, point))
