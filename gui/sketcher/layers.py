"""The still picture of a drawing, and painting over it only what has changed since.

While a thing is dragged most of the drawing stands still. The picture of it as it was when the
drag began is kept; on each frame only the places of elements that are gone or new are wiped and
painted again, in the drawing's own order, so that the outcome equals a fresh picture.
"""

import math
from dataclasses import dataclass

from PySide6.QtCore import QPoint, QRect, QSize
from PySide6.QtGui import QPainter, QPixmap, QRegion

from core.drawing import Drawing, Element
from gui.sketcher.camera import Camera
from gui.sketcher.extent import extent
from gui.sketcher.paint import Ink, paint


@dataclass(frozen=True)
class Scene:
    """What is to be seen: a drawing through a camera in a window `size` px, `ratio` dots a px."""

    drawing: Drawing
    camera: Camera
    ink: Ink
    size: QSize
    ratio: float = 1.0


def paint_scene(painter: QPainter, scene: Scene) -> None:
    """Paint the whole of a scene afresh, paper and all."""
    painter.fillRect(QRect(QPoint(0, 0), scene.size), scene.ink.theme.paper)
    paint(painter, scene.drawing, scene.camera, scene.ink)


class Layers:
    """The still picture, kept from one frame to the next."""

    def __init__(self) -> None:
        self._still: _Still | None = None

    def paint(self, painter: QPainter, scene: Scene, *, live: bool) -> None:
        """Paint a scene; while `live` only what changed since the still picture is new."""
        still = self._still
        if still is None or not still.serves(scene, live):
            still = self._still = _Still(scene)
        painter.drawPixmap(0, 0, still.picture)
        if scene.drawing is not still.scene.drawing:
            _patch(painter, scene, still)


class _Still:
    """A scene, the picture of it, and where each of its elements lies."""

    def __init__(self, scene: Scene) -> None:
        self.scene = scene
        self.picture = QPixmap(_dots(scene))
        self.picture.setDevicePixelRatio(scene.ratio)
        painter = QPainter(self.picture)
        paint_scene(painter, scene)
        painter.end()
        self._places: dict[Element, QRect] = {}

    def serves(self, scene: Scene, live: bool) -> bool:
        """Whether the picture can stand under this scene."""
        own = self.scene
        same = (own.camera, own.ink, own.size, own.ratio) == (
            scene.camera,
            scene.ink,
            scene.size,
            scene.ratio,
        )
        return same and (live or own.drawing is scene.drawing)

    def places(self) -> dict[Element, QRect]:
        """Where each element lies, worked out when it is first asked for."""
        if not self._places:
            self._places = {e: _place(e, self.scene) for e in self.scene.drawing}
        return self._places


def _patch(painter: QPainter, scene: Scene, still: _Still) -> None:
    """Wipe what is gone or new since the still picture, and paint what belongs there."""
    known = still.places()
    placed = [(e, known.get(e)) for e in scene.drawing]
    stands = {e for e, place in placed if place is not None}
    new = {e: _place(e, scene) for e, place in placed if place is None}
    region = QRegion()
    for place in (*new.values(), *(p for e, p in known.items() if e not in stands)):
        region += place
    region &= QRect(QPoint(0, 0), _dots(scene))
    if region.isEmpty():
        return
    painter.save()
    _clip(painter, region, scene.ratio)
    painter.fillRect(QRect(QPoint(0, 0), scene.size), scene.ink.theme.paper)
    touched = [e for e, place in placed if region.intersects(place or new[e])]
    paint(painter, touched, scene.camera, scene.ink)
    painter.restore()


def _clip(painter: QPainter, region: QRegion, ratio: float) -> None:
    """Keep painting within a region of whole dots: half a dot would leave a seam."""
    painter.scale(1 / ratio, 1 / ratio)
    painter.setClipRegion(region)
    painter.scale(ratio, ratio)


def _place(element: Element, scene: Scene) -> QRect:
    """The whole dots that an element's ink lies in."""
    px = extent(element, scene.camera, scene.ink.density)
    left, top, right, bottom = (side * scene.ratio for side in px)
    x, y = math.floor(left), math.floor(top)
    return QRect(x, y, math.floor(right) + 1 - x, math.floor(bottom) + 1 - y)


def _dots(scene: Scene) -> QSize:
    """The size of the picture in dots, no less than the window needs."""
    wide, high = scene.size.width() * scene.ratio, scene.size.height() * scene.ratio
    return QSize(max(1, math.ceil(wide)), max(1, math.ceil(high)))
