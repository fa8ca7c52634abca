"""What the pointer does on the sheet: look, take hold, pull, let go, shove the paper."""

import math
from typing import Protocol

from gui.desk import Desk
from gui.sketcher.camera import XY, Camera
from gui.sketcher.gestures import Drag
from gui.sketcher.hit import hit
from gui.sketcher.pulls import grip_of

START_PX = 4.0
"""A press becomes a pull only when the pointer has gone this far, so that a click moves nothing."""

BACK_PX = 1.0
"""A pull that comes back this near to its start is no pull."""

PICK_PX = 5.0
"""How near to a thing the pointer has to be."""


class Stage(Protocol):
    """What the pointer works on."""

    desk: Desk

    @property
    def camera(self) -> Camera:
        """How the wall is looked at."""

    def look(self, camera: Camera) -> None:
        """Look at the wall another way."""


class Pointer:
    """The pointer's state, between a press and its release above all; places are px."""

    def __init__(self, stage: Stage) -> None:
        self._stage = stage
        self._down: XY | None = None
        self._down_model: XY = (0.0, 0.0)
        self._key: str | None = None
        self._started = False
        self._last: XY | None = None
        self.drag: Drag | None = None
        self.hover: str | None = None

    @property
    def panning(self) -> bool:
        """Whether the paper is being shoved."""
        return self._last is not None

    @property
    def pressed(self) -> bool:
        """Whether a press has not yet come to its end."""
        return self.panning or self._down is not None

    def under(self, pos: XY) -> str | None:
        """The key of what lies under the pointer."""
        result, camera = self._stage.desk.result, self._stage.camera
        return hit(result, camera.to_model(pos), PICK_PX / camera.scale) if result else None

    def press(self, pos: XY) -> None:
        """Take hold of what lies here; bare paper is shoved."""
        key = self.under(pos)
        self._stage.desk.hold(key)
        self.hover = None
        if key is None:
            self.press_paper(pos)
            return
        self._down, self._key, self._started = pos, key, False
        self._down_model = self._stage.camera.to_model(pos)

    def press_paper(self, pos: XY) -> None:
        """Take hold of the paper itself."""
        self._last = pos

    def move(self, pos: XY, *, free: bool) -> None:
        """The pointer has come here; `free` pulls without snapping."""
        if self._last is not None:
            right, down = pos[0] - self._last[0], pos[1] - self._last[1]
            self._last = pos
            self._stage.look(self._stage.camera.panned(right, down))
        elif self._down is not None:
            self._pull(pos, self._down, free=free)
        else:
            self.hover = self.under(pos)

    def release(self) -> None:
        """The button is up again."""
        drag, self.drag = self.drag, None
        self._down = self._last = None
        if drag is not None:
            drag.release()

    def escape(self) -> bool:
        """Take back what the pointer is doing; False if it is doing nothing."""
        drag, self.drag = self.drag, None
        was = self.pressed
        self._down = self._last = None
        if drag is not None:
            drag.drop()
        return was

    def leave(self) -> None:
        """The pointer has left the sheet."""
        self.hover = None

    def _pull(self, pos: XY, down: XY, *, free: bool) -> None:
        away = math.dist(pos, down)
        if not self._started and away < START_PX:
            return
        if not self._started:
            self._started = True
            self.drag = Drag.of(self._stage.desk, self._key) if self._key else None
        if self.drag is None:
            return
        camera, desk = self._stage.camera, self._stage.desk
        x, y = camera.to_model(pos)
        by = (x - self._down_model[0], y - self._down_model[1])
        if away <= BACK_PX:
            by = (0.0, 0.0)
        self.drag.pull(by, grip_of(desk.project.habits.tape, camera.scale, free=free))
