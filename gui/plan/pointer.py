"""What the pointer does on the plan: look, take hold, draw, move, lengthen, turn, let go."""

import math
from typing import Protocol

from gui.desk import Desk
from gui.edits.floor import ground_of
from gui.plan.drawing import Tool, begun, inside
from gui.plan.gestures import Gesture, Lengthen, Move, Turn
from gui.plan.grip import grip_of
from gui.plan.handles import Grasp, Handle, handle_at, handles
from gui.plan.hit import thing_under
from gui.sketcher.camera import XY, Camera
from gui.sketcher.pointer import BACK_PX, START_PX

PICK_PX = 5.0
"""How near to a wall the pointer has to be."""

FLOOR_PX = 14.0
"""How far outside the room a wall can still be begun at its edge."""


class Stage(Protocol):
    """What the pointer works on."""

    desk: Desk
    armed: Tool | None
    gesture: Gesture | None

    @property
    def camera(self) -> Camera:
        """How the room is looked at."""

    def look(self, camera: Camera) -> None:
        """Look at the room another way."""


class PlanPointer:
    """The pointer's state, between a press and its release above all; places are px."""

    def __init__(self, stage: Stage) -> None:
        self._stage = stage
        self._down: XY | None = None
        self._last: XY | None = None
        self._taken: Handle | str | None = None
        self._copy = False
        self.hover: str | None = None

    @property
    def panning(self) -> bool:
        """Whether the paper is being shoved."""
        return self._last is not None

    @property
    def pressed(self) -> bool:
        """Whether a press has not yet come to its end."""
        return self.panning or self._down is not None

    def thing_at(self, pos: XY) -> str | None:
        """The key of what lies under the pointer."""
        camera, project = self._stage.camera, self._stage.desk.project
        return thing_under(project, camera.to_model(pos), PICK_PX / camera.scale)

    def handles(self) -> tuple[Handle, ...]:
        """The handles of what is held; none while something is under way."""
        desk = self._stage.desk
        if desk.held is None or self._stage.gesture is not None or self._stage.armed:
            return ()
        ground = ground_of(desk.project, desk.held)
        turns = all(stair.id != desk.held for stair in desk.project.room.stair_openings)
        return handles(ground, self._stage.camera, turns=turns) if ground else ()

    def on_handle(self, pos: XY) -> bool:
        """Whether a handle of the wall held is under the pointer."""
        return handle_at(self.handles(), pos) is not None

    def press(self, pos: XY, *, copy: bool = False) -> None:
        """Take hold of what lies here, or begin a wall; outside the room the paper is shoved."""
        stage, self._copy, self.hover = self._stage, copy, None
        handle = handle_at(self.handles(), pos)
        if handle is not None:
            self._down, self._taken = pos, handle
            return
        key = None if stage.armed else self.thing_at(pos)
        if key is None and not self._on_floor(pos):
            stage.desk.hold(None)
            self.press_paper(pos)
            return
        if not stage.armed:
            stage.desk.hold(key)
        self._down, self._taken = pos, key

    def press_paper(self, pos: XY) -> None:
        """Take hold of the paper itself."""
        self._last = pos

    def move(self, pos: XY, *, free: bool) -> None:
        """The pointer has come here; `free` snaps to nothing."""
        if self._last is not None:
            right, down = pos[0] - self._last[0], pos[1] - self._last[1]
            self._last = pos
            self._stage.look(self._stage.camera.panned(right, down))
        elif self._down is not None:
            self._pull(pos, self._down, free=free)
        else:
            self.hover = self.thing_at(pos)

    def release(self) -> None:
        """The button is up again."""
        self._down = self._last = None

    def leave(self) -> None:
        """The pointer has left the plan."""
        self.hover = None

    def _pull(self, pos: XY, down: XY, *, free: bool) -> None:
        stage = self._stage
        away = math.dist(pos, down)
        if stage.gesture is None and away < START_PX:
            return
        grip = grip_of(stage.desk.project.habits.tape, stage.camera.scale, free=free)
        if stage.gesture is None:
            stage.gesture = self._begun(down)
        at = down if away <= BACK_PX else pos
        stage.gesture.pull(stage.camera.to_model(at), grip)

    def _begun(self, down: XY) -> Gesture:
        """The gesture that a pull begins."""
        stage, desk = self._stage, self._stage.desk
        point, taken = stage.camera.to_model(down), self._taken
        if isinstance(taken, Handle) and desk.held is not None:
            if taken.grasp is Grasp.LENGTHEN:
                return Lengthen(desk, desk.held, taken.end)
            return Turn(desk, desk.held, taken.about, point)
        if isinstance(taken, str):
            return Move(desk, taken, point, copy=self._copy and taken[:1].isupper())
        grip = grip_of(desk.project.habits.tape, stage.camera.scale, free=False)
        return begun(stage.armed or Tool.WALL, desk, point, grip, None)

    def _on_floor(self, pos: XY) -> bool:
        """Whether a px lies in the room or just beside it."""
        camera = self._stage.camera
        point = camera.to_model(pos)
        near = inside(self._stage.desk.project, point)
        return math.dist(near, point) * camera.scale <= FLOOR_PX
