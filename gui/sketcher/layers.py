"""The picture of a drawing, in which only what has changed is painted anew.

While a thing is dragged most of the drawing stands still. On each frame the places of elements that
are gone or new since the last one are wiped in its picture and painted again, in the drawing's own
order, so that the outcome equals a fresh picture.
"""

import math
from dataclasses import dataclass
from functools import cached_property

from PySide6.QtCore import QPoint, QRect, QSize
from PySide6.QtGui import QPainter, QPixmap

from core.drawing import Drawing, Element
from gui.sketcher.camera import Camera
from gui.sketcher.extent import extent
from gui.sketcher.paint import Ink, Ready, paint, paint_ready, ready
from gui.sketcher.patches import Dots, around, meet, patches


@dataclass(frozen=True)
class Scene:
    """What is to be seen: a drawing through a camera in a window `size` px, `ratio` dots a px.

    What lies `under` it stands still while things are dragged.
    """

    drawing: Drawing
    camera: Camera
    ink: Ink
    size: QSize
    ratio: float = 1.0
    under: Drawing = ()


def paint_scene(painter: QPainter, scene: Scene) -> None:
    """Paint the whole of a scene afresh, paper and all."""
    painter.fillRect(QRect(QPoint(0, 0), scene.size), scene.ink.theme.paper)
    paint(painter, scene.under, scene.camera, scene.ink)
    paint(painter, scene.drawing, scene.camera, scene.ink)


class Layers:
    """The picture, kept from one frame to the next."""

    def __init__(self) -> None:
        self._picture: _Picture | None = None

    def paint(self, painter: QPainter, scene: Scene, *, live: bool) -> None:
        """Paint a scene; while `live` only what changed since the last frame is painted anew."""
        picture = self._picture
        if picture is None or not picture.serves(scene, live):
            picture = self._picture = _Picture(scene)
        elif scene.drawing is not picture.scene.drawing:
            picture.follow(scene)
        painter.drawPixmap(0, 0, picture.pixmap)


class _Picture:
    """A scene, the picture of it, and how and where each of its elements is painted."""

    def __init__(self, scene: Scene) -> None:
        self.scene = scene
        self.pixmap = QPixmap(_dots(scene))
        self.pixmap.setDevicePixelRatio(scene.ratio)
        painter = QPainter(self.pixmap)
        paint_scene(painter, scene)
        painter.end()
        self._laid: dict[Element, _Laid] = {}

    def serves(self, scene: Scene, live: bool) -> bool:
        """Whether the picture can stand for this scene, or be made to."""
        own = self.scene
        same = (own.camera, own.ink, own.size, own.ratio, own.under) == (
            scene.camera,
            scene.ink,
            scene.size,
            scene.ratio,
            scene.under,
        )
        return same and (live or own.drawing is scene.drawing)

    def follow(self, scene: Scene) -> None:
        """Make it the picture of another drawing of the same look."""
        before = self._laid or {e: _Laid(e, self.scene) for e in self.scene.drawing}
        after = {e: before.get(e) or _Laid(e, scene) for e in scene.drawing}
        self.scene, self._laid = scene, after
        changed = [laid.place for e, laid in after.items() if e not in before]
        changed += [laid.place for e, laid in before.items() if e not in after]
        wiped = patches(changed, self.pixmap.width(), self.pixmap.height())
        if wiped:
            painter = QPainter(self.pixmap)
            _patch(painter, scene, [after[e] for e in scene.drawing], wiped)
            painter.end()


class _Laid:
    """An element with the whole dots that its ink lies in, made ready when it is first painted."""

    def __init__(self, element: Element, scene: Scene) -> None:
        self.place = _place(element, scene)
        self._element, self._camera, self._ink = element, scene.camera, scene.ink

    @cached_property
    def ready(self) -> Ready:
        """The element as it is to be painted."""
        return ready(self._element, self._camera, self._ink)


def _patch(painter: QPainter, scene: Scene, elements: list[_Laid], wiped: list[Dots]) -> None:
    """Wipe rectangles of the picture one by one, and paint what belongs there.

    Qt clips to a rectangle in no time; a long line clipped to several at once takes it a ms.
    """
    left, top, right, bottom = around(wiped)
    under = [(element, _place(element, scene)) for element in scene.under]
    near = [
        (laid, place)
        for laid in elements
        for place in [laid.place]
        if place[0] < right and place[2] > left and place[1] < bottom and place[3] > top
    ]
    for patch in wiped:
        _clip(painter, patch, scene.ratio)
        painter.fillRect(QRect(QPoint(0, 0), scene.size), scene.ink.theme.paper)
        paint(painter, (e for e, place in under if meet(place, patch)), scene.camera, scene.ink)
        paint_ready(painter, (laid.ready for laid, place in near if meet(place, patch)))


def _clip(painter: QPainter, patch: Dots, ratio: float) -> None:
    """Keep painting within a rectangle of whole dots: half a dot would leave a seam."""
    left, top, right, bottom = patch
    painter.scale(1 / ratio, 1 / ratio)
    painter.setClipRect(QRect(left, top, right - left, bottom - top))
    painter.scale(ratio, ratio)


def _place(element: Element, scene: Scene) -> Dots:
    """The whole dots that an element's ink lies in."""
    px = extent(element, scene.camera, scene.ink.density)
    left, top, right, bottom = (side * scene.ratio for side in px)
    return math.floor(left), math.floor(top), math.floor(right) + 1, math.floor(bottom) + 1


def _dots(scene: Scene) -> QSize:
    """The size of the picture in dots, no less than the window needs."""
    wide, high = scene.size.width() * scene.ratio, scene.size.height() * scene.ratio
    return QSize(max(1, math.ceil(wide)), max(1, math.ceil(high)))
