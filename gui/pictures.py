"""Pictures of the window in several states, made with no screen: python -m gui.pictures FOLDER."""

import os
import sys
from pathlib import Path
from typing import NamedTuple

from core.storage import Document, read_document
from gui.outputs import demo_bytes


class State(NamedTuple):
    """What the window shows in a picture: demo, wall, what is held, theme, and its size.

    Without a wall it shows the room; `asks` shows the page of a new room over it.
    """

    name: str
    metric: bool
    wall: str | None
    held: str | None = None
    night: bool = False
    size: tuple[int, int] = (1400, 860)
    asks: bool = False


STATES = (
    State("partition", metric=False, wall="C"),
    State("door-held", metric=False, wall="C", held="C/door-1"),
    State("stud-held", metric=False, wall="C", held="C/layout/2"),
    State("box-held-night", metric=False, wall="C", held="C/box-3", night=True),
    State("knee-wall", metric=False, wall="A"),
    State("gable-window", metric=False, wall="D", held="D/window-1"),
    State("diagonal-night", metric=False, wall="E", night=True),
    State("metric", metric=True, wall="C", held="C/layout/3"),
    State("metric-double-plate", metric=True, wall="D"),
    State("small-window", metric=False, wall="C", size=(1024, 680)),
    State("room", metric=False, wall=None),
    State("room-small-night", metric=True, wall=None, night=True, size=(1024, 680)),
    State("new-room", metric=False, wall=None, asks=True),
    State("new-room-small-night", metric=True, wall=None, night=True, size=(1024, 680), asks=True),
)


def main(arguments: list[str]) -> int:
    """Writes every picture into the folder named; returns 0."""
    folder = Path(arguments[0])
    folder.mkdir(parents=True, exist_ok=True)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    for state in STATES:
        path = folder / f"{state.name}.png"
        _take(state, path)
        print(path)
    return 0


def _take(state: State, path: Path) -> None:
    from gui.desk import Desk
    from gui.sketcher.fonts import load as load_fonts
    from gui.theme import Theme
    from gui.window import Window, application

    app = application(["eavewright"])
    load_fonts()
    name = "kite-loft" if state.metric else "sail-loft"
    document: Document = read_document(demo_bytes(metric=state.metric), f"{name}.eave")
    theme = Theme.night() if state.night else Theme.day()
    window = Window(Desk(document), theme, Path(f"{name}.eave"))
    window.resize(*state.size)
    if state.wall is None:
        window.desk.show_room()
    else:
        window.desk.show_wall(state.wall)
    window.show()
    app.processEvents()
    window.desk.hold(state.held)
    if state.asks:
        window.new_room(document.project.system)
    app.processEvents()
    window.grab().save(str(path))
    window.deleteLater()
    app.processEvents()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
