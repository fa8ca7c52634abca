"""The shape of the pointer: what can be done with what lies under it."""

from PySide6.QtCore import Qt

from core.job import WallResult
from core.model import Project
from gui.sketcher.pulls import take
from gui.things import Kind

Shape = Qt.CursorShape


def over(project: Project, result: WallResult | None, key: str | None) -> Shape:
    """The pointer's shape over the thing with this key: what can be moved, and which way."""
    if result is None or key is None:
        return Shape.ArrowCursor
    hold = take(project, result, key)
    if hold is None:
        return Shape.PointingHandCursor
    return Shape.SizeAllCursor if hold.thing.kind is Kind.BOX else Shape.SizeHorCursor
