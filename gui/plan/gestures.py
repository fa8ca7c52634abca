"""What is done to things of the plan: each is one thing with one way out. No Qt but the desk's.

While it lasts `project` is what the plan shows; the desk hears of it now and then, so that the
list of walls follows, and the framing is worked out for good when it ends.
"""

import math
from abc import ABC, abstractmethod
from collections.abc import Callable

from core.chalk import Grip, Guide, Line, catch_along, guides, moved
from core.drawing.plan_ground import at
from core.framing import footprints
from core.model import Project, Side
from core.wording import Mm, message
from gui.desk import Desk
from gui.edits import Refusal, copy_wall
from gui.edits.floor import ground_of, lengthen, place, plan_keys, turn, without
from gui.plan.told import line_told, on_told, thing_named
from gui.sketcher.camera import XY

TURNS = math.radians(15)
"""A wall that is turned stops at whole multiples of this from the room's directions."""


class Gesture(ABC):
    """What all have in common: the project as it was, the one shown, and one end."""

    undo = "undo.move-wall"

    def __init__(self, desk: Desk, letter: str) -> None:
        self.desk = desk
        self.before = self.project = desk.project
        self.letter = letter

    @property
    def key(self) -> str | None:
        """The letter of the wall that is shown as held; None while there is none."""
        return self.letter if self.letter in plan_keys(self.project) else None

    @abstractmethod
    def pull(self, point: XY, grip: Grip) -> None:
        """Show it with the pointer at a plan point, mm."""

    def release(self) -> None:
        """Let go: one edit, if anything has changed, and the wall is held."""
        what = thing_named(self.letter)
        text = self.desk.wording.say(message(self.undo, what=what))
        self.desk.commit(text, self.project)
        self.desk.hold(self.key)

    def drop(self) -> None:
        """Take it all back: nothing has happened."""
        self.project = self.before
        self.desk.drop_preview()
        self.desk.said.emit("")

    def lines(self) -> tuple[Guide, ...]:
        """What it can be drawn to: all but the wall itself."""
        others = without(self.before, self.letter)
        return guides(others.room, footprints(others.walls))

    def try_to(self, make: Callable[[], Project], said: str) -> None:
        """Show what is made; a place that is refused is said and not shown."""
        try:
            self.project = make()
        except Refusal as refusal:
            said = self.desk.wording.say(refusal.message)
        self.desk.said.emit(said)


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
        ground = ground_of(self.before, self._from)
        if ground is None:
            return
        ends = at(ground, 0.0, 0.0), at(ground, ground.run, 0.0)
        line, far = moved(*ends, by, ground.width, self.lines(), grip)
        words = self.desk.wording
        said = words.say(message("chalk.moved", what=thing_named(self._from), by=Mm(far)))
        on = on_told(line.on, words)
        self.try_to(lambda: self._put(line), f"{said}, {on}" if on else said)

    def _put(self, line: Line) -> Project:
        if not self._copy:
            return place(self.before, self._from, line.left, line.right)
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
        ground = ground_of(self.before, self.letter)
        if ground is None:
            return
        left, right = at(ground, 0.0, 0.0), at(ground, ground.run, 0.0)
        fixed, end = (left, right) if self._end is Side.RIGHT else (right, left)
        straight = catch_along(fixed, Line(fixed, end).along, point, self.lines(), grip)
        words = self.desk.wording
        self.try_to(
            lambda: lengthen(self.before, self.letter, self._end, straight.right),
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
        ground = ground_of(self.before, self.letter)
        if ground is None:
            return
        left, right = at(ground, 0.0, 0.0), at(ground, ground.run, 0.0)
        now = math.atan2(right[1] - left[1], right[0] - left[0])
        if not grip.free:
            by = round((now + by) / TURNS) * TURNS - now
        self.turn(by)

    def turn(self, by: float) -> None:
        """Show it turned by an angle, radians against the clock."""
        what, degrees = thing_named(self.letter), f"{math.degrees(by):.1f}"
        said = self.desk.wording.say(message("chalk.turned", what=what, degrees=degrees))
        self.try_to(lambda: turn(self.before, self.letter, self._about, by), said)
