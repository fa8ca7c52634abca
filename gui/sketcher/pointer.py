"""What the pointer does on the sheet: look, take hold, pull, let go, shove the paper."""

import math
from typing import Protocol

from gui.desk import Desk
from gui.sketcher.camera import XY, Camera
from gui.sketcher.choosing import once, same_held, within, without
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
        self._at: XY = (0.0, 0.0)
        self._more = self._was = False
        self._kept: tuple[str, ...] = ()
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

    @property
    def pulling(self) -> bool:
        """Whether the pointer has gone far enough since the press to pull."""
        return self._down is not None and self._started

    @property
    def band(self) -> tuple[XY, XY] | None:
        """Two corners of the rectangle that is pulled over bare paper, px."""
        banding = self._started and self._key is None and self._down is not None
        return (self._down, self._at) if banding and self._down else None

    @property
    def note(self) -> tuple[str, XY] | None:
        """What the thing that is pulled has come to rest at, and where the pointer is, px."""
        return (self.drag.why, self._at) if self.drag is not None and self.drag.why else None

    def under(self, pos: XY) -> str | None:
        """The key of what lies under the pointer."""
        result, camera = self._stage.desk.result, self._stage.camera
        return hit(result, camera.to_model(pos), PICK_PX / camera.scale) if result else None

    def press(self, pos: XY, *, more: bool = False) -> None:
        """Take hold of what lies here, `more` besides what is held; bare paper begins a rectangle.

        Pressing one of several that are held keeps them all, so that they can be pulled; let go
        without a pull, it alone is held, or with `more` all but it.
        """
        desk, key = self._stage.desk, self.under(pos)
        self.hover = None
        self._down, self._at, self._key, self._started = pos, pos, key, False
        self._down_model = self._stage.camera.to_model(pos)
        self._more, self._kept = more, desk.holding if more else ()
        self._was = key is not None and same_held(desk, key)
        if key is None:
            desk.hold(*_split(self._kept))
        elif more and not self._was:
            desk.hold(*_split((*desk.holding, key)))
        elif not (self._was and (more or desk.also)):
            desk.hold(key)

    def press_figure(self, pos: XY) -> None:
        """Press a figure of what is held: pulled, it pulls the thing that it belongs to."""
        self.hover = None
        self._down, self._at, self._key, self._started = pos, pos, self._stage.desk.held, False
        self._down_model = self._stage.camera.to_model(pos)
        self._more = self._was = False

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
        clicked = self._down is not None and not self._started
        key, self._down, self._last = self._key, None, None
        if drag is not None:
            drag.release()
        elif clicked and key is not None and self._was:
            self._click_held(key)

    def escape(self) -> bool:
        """Take back what the pointer is doing; False if it is doing nothing."""
        drag, self.drag = self.drag, None
        was, banding = self.pressed, self.band is not None
        self._down = self._last = None
        if drag is not None:
            drag.drop()
        elif banding:
            self._stage.desk.hold(*_split(self._kept))
        return was

    def leave(self) -> None:
        """The pointer has left the sheet."""
        self.hover = None

    def _pull(self, pos: XY, down: XY, *, free: bool) -> None:
        away = math.dist(pos, down)
        self._at = pos
        if not self._started and away < START_PX:
            return
        if not self._started:
            self._started = True
            self.drag = Drag.of(self._stage.desk, self._key) if self._key else None
        if self._key is None:
            self._take_in_band(pos, down)
        if self.drag is None:
            return
        camera, desk = self._stage.camera, self._stage.desk
        x, y = camera.to_model(pos)
        by = (x - self._down_model[0], y - self._down_model[1])
        if away <= BACK_PX:
            by = (0.0, 0.0)
        self.drag.pull(by, grip_of(desk.project.habits.tape, camera.scale, free=free))

    def _take_in_band(self, pos: XY, down: XY) -> None:
        """Hold what lies in the rectangle so far, besides what was kept."""
        desk, camera = self._stage.desk, self._stage.camera
        if desk.result is not None:
            found = within(desk.result, camera.to_model(down), camera.to_model(pos))
            desk.hold(*_split(once(desk.result, (*self._kept, *found))))

    def _click_held(self, key: str) -> None:
        """A click on what was held already: it alone is held, or with `more` it is let go."""
        desk = self._stage.desk
        if not self._more:
            desk.hold(key)
        elif desk.result is not None:
            desk.hold(*_split(without(desk.result, desk.holding, key)))


def _split(keys: tuple[str, ...]) -> tuple[str | None, tuple[str, ...]]:
    """The chief thing of all that is to be held, and the others."""
    return (keys[0], keys[1:]) if keys else (None, ())
