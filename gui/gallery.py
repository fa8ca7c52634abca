"""Pictures of the window in several states, made with no screen: python -m gui.gallery FOLDER.

With QT_SCALE_FACTOR=2 in the environment every dot is two by two, as on a fine screen.
"""

import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

import msgspec

from core.lengths import Length
from core.model import Project
from core.storage import Document, read_document
from gui.outputs import demo_bytes

if TYPE_CHECKING:
    from gui.desk import Desk


class State(NamedTuple):
    """What the window shows in a picture: demo, wall, what is held, theme, and its size.

    Without a wall it shows the room; `asks` shows the page of a new room over it. `walks` shows
    the wall as it is walked, with a few pieces cut, `doubts` the doubt that a change of a cut piece
    raises, `greets` the card of the first start.
    """

    name: str
    metric: bool
    wall: str | None
    held: str | None = None
    night: bool = False
    size: tuple[int, int] = (1400, 860)
    asks: bool = False
    walks: bool = False
    doubts: bool = False
    greets: bool = False


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
    State("walk", metric=False, wall="C", held="C/layout/2", walks=True),
    State("walk-small-night", metric=True, wall="C", night=True, size=(1024, 680), walks=True),
    State("doubt", metric=False, wall="C", doubts=True),
    State("first-start", metric=False, wall="C", greets=True),
)


_CUT, _NAILED = 6, 2
"""So many pieces are cut where some are, and so many of them nailed."""

_TURNS = 4


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
    from gui.keeping import Fleeting, Kept
    from gui.sketcher.fonts import load as load_fonts
    from gui.theme import Theme
    from gui.window import Window, application

    app = application(["eavewright"])
    load_fonts()
    name = "kite-loft" if state.metric else "sail-loft"
    document: Document = read_document(demo_bytes(metric=state.metric), f"{name}.eave")
    theme = Theme.night() if state.night else Theme.day()
    kept = Kept(Fleeting()) if state.greets else None
    window = Window(Desk(document), theme, Path(f"{name}.eave"), kept=kept)
    window.resize(*state.size)
    if state.wall is None:
        window.desk.show_room()
    else:
        window.desk.show_wall(state.wall)
    window.show()
    app.processEvents()
    if state.walks or state.doubts:
        _cut_some(window.desk)
    window.desk.hold(state.held)
    if state.asks:
        window.new_room(document.project.system)
    if state.walks:
        window.menus.actions["action.walk"].trigger()
    if state.doubts:
        window.desk.commit("", _lower(window.desk.project))
    # What wraps its words is laid out over several turns.
    for _ in range(_TURNS):
        app.processEvents()
    window.grab().save(str(path))
    window.deleteLater()
    app.processEvents()


def _cut_some(desk: "Desk") -> None:
    """Ticks off the first pieces of the wall shown."""
    from gui.site.ticks import tick_cut, tick_nailed

    frame = desk.result.frame if desk.result else None
    for number, member in enumerate(frame.members[:_CUT] if frame else ()):
        tick = tick_nailed if number < _NAILED else tick_cut
        if desk.result is not None:
            desk.record(tick(desk.site, desk.result, member.key))


def _lower(project: Project) -> Project:
    """The project with its left eave 2 in. lower, so that every stud below it is too long."""
    slope = project.room.left
    assert slope is not None
    eave = Length(slope.eave_height.mm - 2 * 25.4, slope.eave_height.unit)
    room = msgspec.structs.replace(
        project.room, left=msgspec.structs.replace(slope, eave_height=eave)
    )
    return msgspec.structs.replace(project, room=room)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
