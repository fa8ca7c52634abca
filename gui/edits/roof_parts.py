"""Adding, setting and taking away the parts of a roof: what stands in one of the room's lists.

A list is named by its path from the room: ("dormers",), or ("left", "breaks").
"""

from typing import Any

import msgspec

from core.model import Project
from gui.edits.room import set_room
from gui.edits.usual_roof import Part, part

Path = tuple[str, ...]


def parts(project: Project, where: Path) -> tuple[Part, ...]:
    """What stands in a list; nothing where the slope that has it is not there."""
    found: Any = project.room
    for name in where:
        found = getattr(found, name, None)
    return found or ()


def add_part(project: Project, where: Path) -> Project:
    """The room with one more part in a list, of usual size; it is the last one."""
    return _with(project, where, (*parts(project, where), part(project, where)))


def set_part(project: Project, where: Path, index: int, path: Path, value: Any) -> Project:
    """The room with one value of a part changed; `path` leads to it from the part."""
    items = list(parts(project, where))
    items[index] = _replaced(items[index], path, value)
    return _with(project, where, tuple(items))


def remove_part(project: Project, where: Path, index: int) -> Project:
    """The room without one part of a list; no wall passes a purlin that is gone."""
    items = parts(project, where)
    if where == ("purlins",):
        project = _not_passed(project, items[index])
    return _with(project, where, (*items[:index], *items[index + 1 :]))


def _not_passed(project: Project, gone: Part) -> Project:
    """The project in which no wall tells how it passes this purlin."""
    walls = (
        msgspec.structs.replace(
            wall, passes=tuple(p for p in wall.passes if p.purlin != getattr(gone, "id", None))
        )
        for wall in project.walls
    )
    return msgspec.structs.replace(project, walls=tuple(walls))


def _with(project: Project, where: Path, items: tuple[Part, ...]) -> Project:
    first, *rest = where
    if not rest:
        return set_room(project, **{first: items})
    inner = _replaced(getattr(project.room, first), tuple(rest), items)
    return set_room(project, **{first: inner})


def _replaced(struct: Any, path: Path, value: Any) -> Any:
    first, *rest = path
    if rest:
        value = _replaced(getattr(struct, first), tuple(rest), value)
    return msgspec.structs.replace(struct, **{first: value})
