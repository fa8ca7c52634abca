"""What is done at one go to the wall at hand: copied, mirrored, turned, its face A changed."""

import math
from collections.abc import Callable

from core.chalk import clearances
from core.drawing.plan_roof import outline
from core.framing import Footprint, standing_in
from core.model import Project
from core.wording import message
from gui.desk import Desk
from gui.doing import Doing
from gui.edits import Refusal, copy_wall, delete_wall, mirror_wall, turn_face, turn_wall
from gui.plan.grip import larger_step
from gui.plan.told import thing_named

_APART = 2
"""How many of the larger steps a copy stands from its wall, where there is room."""


class Acts:
    """Edits of the wall shown, or of the one held in the room."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    @property
    def letter(self) -> str | None:
        """The letter of the wall at hand; None where there is none."""
        return Doing(self._desk).wall_letter

    def copy(self) -> None:
        """A copy beside it, on the side where there is more room, and it is held."""
        letter = self.letter
        if letter is not None:
            by = self._beside(letter)
            self._add("undo.copy-wall", lambda p: copy_wall(p, letter, by, self._spent))

    def mirror(self) -> None:
        """A copy mirrored about the ridge or the room's middle, and it is held."""
        letter = self.letter
        if letter is not None:
            self._add("undo.mirror-wall", lambda p: mirror_wall(p, letter, self._spent))

    def turn_face(self) -> None:
        """Its face A on the other side; its timber stays where it is."""
        letter = self.letter
        if letter is not None:
            self._do("undo.turn-face", letter, lambda p: turn_face(p, letter))

    def turn(self) -> None:
        """A quarter turn against the clock about its middle."""
        letter = self.letter
        if letter is not None:
            (u0, v0), (u1, v1) = self._desk.project.wall(letter).chalk
            about = ((u0 + u1) / 2, (v0 + v1) / 2)
            self._do("undo.turn-wall", letter, lambda p: turn_wall(p, letter, about, math.pi / 2))

    @property
    def _spent(self) -> frozenset[str]:
        return frozenset(p.key.partition("/")[0] for p in self._desk.site.printed)

    def _beside(self, letter: str) -> tuple[float, float]:
        """Where a copy goes: to the side with more room, no farther than it reaches."""
        project = self._desk.project
        ground = Footprint.of(project.wall(letter))
        if ground is None:
            return (0.0, 0.0)
        others = standing_in(delete_wall(project, letter))
        before, behind, _, _ = clearances(ground, outline(project.room), others)
        room = (before.run if before else 0.0, behind.run if behind else 0.0)
        wanted = _APART * larger_step(project.habits.tape)
        far = min(max(room), wanted + ground.width)
        way = -far if room[0] >= room[1] else far
        return ground.away[0] * way, ground.away[1] * way

    def _add(self, text: str, edit: Callable[[Project], Project]) -> None:
        desk = self._desk
        project = self._made(edit)
        if project is not None:
            new = project.walls[-1].letter
            desk.commit(desk.wording.say(message(text, what=thing_named(new))), project)
            if desk.letter is None:
                desk.hold(new)
            else:
                desk.show_wall(new)

    def _do(self, text: str, letter: str, edit: Callable[[Project], Project]) -> None:
        project = self._made(edit)
        if project is not None:
            said = self._desk.wording.say(message(text, what=thing_named(letter)))
            self._desk.commit(said, project)

    def _made(self, edit: Callable[[Project], Project]) -> Project | None:
        """The project that an edit makes; a refusal is said, and None."""
        desk = self._desk
        try:
            project = edit(desk.project)
        except Refusal as refusal:
            desk.said.emit(desk.wording.say(refusal.message))
            return None
        desk.said.emit("")
        return project
