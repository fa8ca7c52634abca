"""Keys: the lasting name of everything derived, made from its cause and never from its position.

A key is a path: wall letter, cause (layout, an added stud, an opening), role, place.
"""

from core.model import Side

SOLE = "sole"


def sole(letter: str) -> str:
    """The key of a wall's sole plate.

    >>> sole("B")
    'B/sole'
    """
    return f"{letter}/{SOLE}"


def top(letter: str, segment: int, layer: int) -> str:
    """The key of a top plate: its segment counted from the left, its layer from the roof down."""
    return f"{letter}/top/{segment + 1}/{layer + 1}"


def piece(plate: str, stud: str) -> str:
    """The key of a piece of a plate that begins over a stud.

    >>> piece("B/top/1/2", "B/layout/9")
    'B/top/1/2/layout/9'
    """
    return f"{plate}/{stud.partition('/')[2]}"


def plate_run(plate: str) -> str:
    """What all layers and pieces of the plates along one slope have in common.

    >>> plate_run("B/top/1/2/layout/9"), plate_run("B/sole/layout/9")
    ('B/top/1', 'B/sole')
    """
    letter, cause, *rest = plate.split("/")
    return "/".join((letter, cause, *rest[: 1 if cause == "top" else 0]))


def layer(plate: str) -> str:
    """What all pieces of one layer of top plate have in common.

    >>> layer("B/top/1/2/layout/9")
    'B/top/1/2'
    """
    return "/".join(plate.split("/")[:4])


def end(letter: str, side: Side) -> str:
    """The key of an end stud."""
    return f"{letter}/end/{side.value}"


def layout(letter: str, place: int) -> str:
    """The key of the stud at a place of the layout.

    >>> layout("B", 3)
    'B/layout/3'
    """
    return f"{letter}/layout/{place}"


def added(letter: str, stud_id: str) -> str:
    """The key of a stud that stands beside the layout."""
    return f"{letter}/{stud_id}"


def opening(letter: str, opening_id: str) -> str:
    """The key of an opening."""
    return f"{letter}/{opening_id}"


def beside(letter: str, opening_id: str, role: str, side: Side) -> str:
    """The key of a king stud or trimmer."""
    return f"{letter}/{opening_id}/{role}/{side.value}"


def across(letter: str, opening_id: str, role: str, layer: int) -> str:
    """The key of a header or sill; the layer counts from below."""
    return f"{letter}/{opening_id}/{role}/{layer + 1}"


def cripple(letter: str, opening_id: str, where: str, cause: str) -> str:
    """The key of a cripple `where` = above or below an opening; `cause` is its layout place."""
    return f"{letter}/{opening_id}/{where}/{cause}"


def box(letter: str, box_id: str) -> str:
    """The key of a box."""
    return f"{letter}/{box_id}"


def spoken(part_id: str) -> str:
    """The id of an opening, box or stud as it is said and written on a drawing.

    >>> spoken("access-door-1")
    'access door 1'
    """
    return part_id.replace("-", " ")
