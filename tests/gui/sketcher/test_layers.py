"""What is painted over the still picture equals a fresh picture, dot for dot."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QSize
from PySide6.QtGui import QPainter

from core.drawing import Drawing
from core.drawing.elevation import elevation
from core.framing.moving import Grip
from core.job import WallResult
from gui.desk import Desk
from gui.sketcher import layers as layers_module
from gui.sketcher.camera import Camera
from gui.sketcher.fitting import fitted
from gui.sketcher.gestures import Drag
from gui.sketcher.layers import Layers, Scene
from gui.sketcher.paint import Ink
from gui.theme import Theme
from loft import BOX, CRIPPLE, DOOR, INCH, STUD, desk_of
from painted import picture, unlike

SIZE = QSize(700, 520)
DENSITY = 96 / 25.4
FREE = Grip(1.0, 0.0, free=True)

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def ink(qapp: object) -> Ink:
    assert qapp is not None
    return Ink(Theme.day(), DENSITY)


def camera_of(desk: Desk) -> Camera:
    return fitted(shown(desk), desk.wording, (SIZE.width(), SIZE.height()), DENSITY)


def shown(desk: Desk) -> WallResult:
    assert desk.result is not None
    return desk.result


def scene_of(desk: Desk, camera: Camera, ink: Ink, ratio: float = 1.0) -> Scene:
    drawing = elevation(shown(desk), camera.view(DENSITY), desk.wording)
    return Scene(drawing, camera, ink, SIZE, ratio)


def live(layers: Layers, scene: Scene) -> int:
    """In how many dots the live picture of a scene differs from a fresh one."""

    def painted(painter: QPainter, scene: Scene) -> None:
        layers.paint(painter, scene, live=True)

    return unlike(picture(scene, painted), picture(scene))


@pytest.mark.parametrize("ratio", [1.0, 1.25, 1.5, 2.0])
@pytest.mark.parametrize("key", [STUD, DOOR, CRIPPLE, BOX, "B/layout/7"])
def test_every_frame_of_a_drag_is_as_painted_afresh(key: str, ratio: float, ink: Ink) -> None:
    desk, layers = desk_of(), Layers()
    camera = camera_of(desk)
    assert live(layers, scene_of(desk, camera, ink, ratio)) == 0
    drag = Drag.of(desk, key)
    assert drag is not None
    for inches in (0.1, 1.0, 5.3, -4.0, 0.0):
        drag.pull((inches * INCH, inches * INCH), FREE)
        assert live(layers, scene_of(desk, camera, ink, ratio)) == 0


@pytest.mark.parametrize("zoom", [0.3, 4.0])
def test_so_it_is_zoomed_in_and_out(zoom: float, ink: Ink) -> None:
    desk, layers = desk_of(), Layers()
    camera = camera_of(desk).zoomed(zoom, (300.0, 300.0))
    assert live(layers, scene_of(desk, camera, ink)) == 0
    drag = Drag.of(desk, DOOR)
    assert drag is not None
    drag.pull((7.0 * INCH, 0.0), FREE)
    assert live(layers, scene_of(desk, camera, ink)) == 0


@settings(max_examples=25)
@given(st.data())
def test_whatever_goes_and_comes(data: st.DataObject) -> None:
    ink, desk, layers = Ink(Theme.night(), DENSITY), desk_of(), Layers()
    camera = camera_of(desk)
    before = scene_of(desk, camera, ink)
    chosen = st.sets(st.integers(0, len(before.drawing) - 1), max_size=40)
    kept, gone = data.draw(chosen), data.draw(chosen)
    start = without(before.drawing, kept)
    end = without(before.drawing, gone)
    assert live(layers, Scene(start, camera, ink, SIZE)) == 0
    assert live(layers, Scene(end, camera, ink, SIZE)) == 0


def without(drawing: Drawing, places: set[int]) -> Drawing:
    return tuple(e for n, e in enumerate(drawing) if n not in places)


def test_the_still_picture_is_made_once_for_a_drag(
    ink: Ink, monkeypatch: pytest.MonkeyPatch
) -> None:
    made = []
    whole = layers_module.paint_scene

    def counted(painter: QPainter, scene: Scene) -> None:
        made.append(scene)
        whole(painter, scene)

    monkeypatch.setattr(layers_module, "paint_scene", counted)
    desk, layers = desk_of(), Layers()
    camera = camera_of(desk)
    drag = Drag.of(desk, DOOR)
    assert drag is not None
    for inches in range(12):
        drag.pull((inches * INCH, 0.0), FREE)
        picture(scene_of(desk, camera, ink), lambda p, s: layers.paint(p, s, live=True))
    assert len(made) == 1
    picture(scene_of(desk, camera, ink), lambda p, s: layers.paint(p, s, live=False))
    assert len(made) == 2


@pytest.mark.parametrize("changed", ["camera", "ink", "size", "ratio"])
def test_another_look_makes_another_still_picture(ink: Ink, changed: str) -> None:
    desk, layers = desk_of(), Layers()
    scene = scene_of(desk, camera_of(desk), ink)
    other = {
        "camera": scene.camera.panned(30.0, 5.0),
        "ink": Ink(Theme.night(), DENSITY),
        "size": QSize(500, 500),
        "ratio": 2.0,
    }
    assert live(layers, scene) == 0
    parts = {name: getattr(scene, name) for name in ("drawing", "camera", "ink", "size", "ratio")}
    assert live(layers, Scene(**{**parts, changed: other[changed]})) == 0


def test_an_empty_drawing_is_bare_paper(ink: Ink) -> None:
    layers = Layers()
    desk = desk_of()
    camera = camera_of(desk)
    assert live(layers, scene_of(desk, camera, ink)) == 0
    assert live(layers, Scene((), camera, ink, SIZE)) == 0
