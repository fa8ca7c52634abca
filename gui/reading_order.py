"""The order in which Tab goes through a window: as it is read, whatever was made first."""

from collections.abc import Iterable, Iterator

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QScrollArea, QSplitter, QStackedWidget, QWidget


def reading_order(whole: QWidget) -> list[QWidget]:
    """All that can have the keys in what is shown, row by row, each row from left to right.

    What lies over a drawing, as its handles do, keeps the order in which the drawing made it.
    """
    own = [whole] if whole.focusPolicy() & Qt.FocusPolicy.TabFocus else []
    return [*own, *_inside(whole)]


def next_in_order(whole: QWidget, here: QWidget | None, *, forward: bool) -> QWidget | None:
    """What comes after, or before, what has the keys; from the last one to the first again."""
    order = reading_order(whole)
    if not order:
        return None
    if here not in order:
        return order[0 if forward else -1]
    return order[(order.index(here) + (1 if forward else -1)) % len(order)]


def first_of_next(
    parts: Iterable[QWidget], here: QWidget | None, *, forward: bool
) -> QWidget | None:
    """What the keys go to first in the next, or last, part of the window that can have them."""
    able = [part for part in parts if part.isVisible() and reading_order(part)]
    if not able:
        return None
    now = [at for at, part in enumerate(able) if here is not None and part.isAncestorOf(here)]
    at = now[0] + (1 if forward else -1) if now else 0
    return reading_order(able[at % len(able)])[0]


def give_keys(widget: QWidget, *, forward: bool) -> None:
    """Gives the keys to it as Tab does, and scrolls it into sight."""
    reason = Qt.FocusReason.TabFocusReason if forward else Qt.FocusReason.BacktabFocusReason
    widget.setFocus(reason)
    around = widget.parentWidget()
    while around is not None:
        if isinstance(around, QScrollArea):
            around.ensureWidgetVisible(widget)
        around = around.parentWidget()


def _inside(widget: QWidget) -> Iterator[QWidget]:
    for part in _parts(widget):
        if part.focusPolicy() & Qt.FocusPolicy.TabFocus and part.isEnabled():
            yield part
        yield from _inside(part)


def _parts(widget: QWidget) -> list[QWidget]:
    kind = Qt.FindChildOption.FindDirectChildrenOnly
    shown = [w for w in widget.findChildren(QWidget, options=kind) if _is_seen(w)]
    laid_out = widget.layout() is not None or isinstance(widget, QSplitter | QStackedWidget)
    return _by_rows(shown) if laid_out else shown


def _is_seen(widget: QWidget) -> bool:
    return widget.isVisible() and not widget.isWindow()


def _by_rows(widgets: list[QWidget]) -> list[QWidget]:
    """Row by row: in a row stands what has its middle beside the highest of it."""
    left = sorted(widgets, key=lambda w: (w.y(), w.x()))
    found: list[QWidget] = []
    while left:
        first = left[0].geometry()
        row = [w for w in left if first.top() <= _middle(w).y() <= first.bottom()]
        row = row or left[:1]
        found += sorted(row, key=lambda w: w.x())
        left = [w for w in left if w not in row]
    return found


def _middle(widget: QWidget) -> QPoint:
    return widget.geometry().center()
