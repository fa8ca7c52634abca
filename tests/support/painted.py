"""Pictures of scenes as arrays of colours, for tests of what is painted."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QColor, QImage, QPainter

from gui.sketcher.layers import Scene, paint_scene


def picture(scene: Scene, painted: Callable[[QPainter, Scene], None] = paint_scene) -> QImage:
    """What a scene looks like when it is painted, afresh unless another way is given."""
    wide, high = scene.size.width(), scene.size.height()
    dots = (round(wide * scene.ratio), round(high * scene.ratio))
    image = QImage(*dots, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(scene.ratio)
    image.fill(QColor("magenta"))
    painter = QPainter(image)
    painted(painter, scene)
    painter.end()
    return image


SLACK = 6
"""Softened edges may differ by so little of 255 when Qt cuts a long line at a clip's edge."""


def unlike(a: QImage, b: QImage) -> int:
    """How many dots differ, by more than can be seen, between two pictures of one size."""
    assert a.size() == b.size()
    return sum(
        any(abs(x - y) > SLACK for x, y in zip(mine[n : n + 4], other[n : n + 4], strict=True))
        for mine, other in zip(_rows(a), _rows(b), strict=True)
        if mine != other
        for n in range(0, len(mine), 4)
        if mine[n : n + 4] != other[n : n + 4]
    )


def _rows(image: QImage) -> list[bytes]:
    dots, each = bytes(image.constBits()), image.bytesPerLine()
    return [dots[n : n + each] for n in range(0, len(dots), each)]


def inked(image: QImage, paper: QColor) -> tuple[int, int, int, int]:
    """left, top, right, bottom of all dots that are not paper; ValueError if all are."""
    blank = bytes((paper.blue(), paper.green(), paper.red(), 255))
    wide, rows = image.width(), _rows(image)
    bare = blank * wide
    ys = [y for y, row in enumerate(rows) if row != bare]
    xs = [x for y in ys for x in range(wide) if rows[y][4 * x : 4 * x + 4] != blank]
    return min(xs), min(ys), max(xs) + 1, max(ys) + 1


def colours(image: QImage) -> set[str]:
    """The names of all colours in a picture."""
    dots = bytes(image.constBits())
    return {f"#{dots[n + 2]:02x}{dots[n + 1]:02x}{dots[n]:02x}" for n in range(0, len(dots), 4)}
