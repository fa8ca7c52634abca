"""All that lies over the drawing on a sheet, in its order: chalk, figures, parts, notes."""

from dataclasses import dataclass

from PySide6.QtGui import QPainter

from core.job import WallResult
from gui.desk import Desk
from gui.sketcher.layers import Scene
from gui.sketcher.measuring import Measuring
from gui.sketcher.overlay import Chalk, paint_band, paint_held, paint_hover
from gui.sketcher.placing import Placing
from gui.sketcher.pointer import Pointer
from gui.sketcher.pointing import Rest, paint_told, told
from gui.sketcher.pulls import take
from gui.sketcher.staying import paint_staying, staying


@dataclass(frozen=True)
class Over:
    """What a sheet has over its drawing: what is held, pulled, measured, carried and told of."""

    desk: Desk
    pointer: Pointer
    measuring: Measuring
    placing: Placing
    rest: Rest

    def paint(self, painter: QPainter, scene: Scene, result: WallResult) -> None:
        """Paint it over a scene of a wall that could be framed."""
        window = float(scene.size.width()), float(scene.size.height())
        self._held(painter, scene, result)
        labels = staying(
            result,
            scene.drawing,
            scene.camera,
            window,
            scene.ink.density,
            self.desk.wording,
        )
        paint_staying(painter, labels, scene.ink)
        self.measuring.look(scene.camera, window)
        self.measuring.paint(painter, scene.ink)
        self.placing.paint(painter, scene.camera, scene.ink)
        if self.pointer.band is not None:
            paint_band(painter, self.pointer.band, scene.ink)
        if self.pointer.note is not None:
            why, pos = self.pointer.note
            paint_told(painter, (why,), pos, window, scene.ink)
        if self.rest.on is not None:
            key, pos = self.rest.on
            paint_told(painter, told(result, key, self.desk.wording), pos, window, scene.ink)

    def _held(self, painter: QPainter, scene: Scene, result: WallResult) -> None:
        """The things held, and the one under the pointer."""
        held, hover = self.desk.held, self.pointer.hover
        chalk = Chalk(result, scene.drawing, scene.camera, scene.ink)
        if held is not None:
            movable = take(self.desk.project, result, held) is not None
            paint_held(painter, chalk, held, movable=movable)
            for key in self.desk.also:
                paint_held(painter, chalk, key, movable=False)
        if hover is not None and hover != held:
            paint_hover(painter, chalk, hover)
