"""Keys: the lasting name of everything derived, made from its cause and never from its position.

A key is a path: wall letter, cause (layout, an added stud, an opening), role, place.
"""

from core.model import Side

SOLE = "sole"
DOUBLE = "double"
RAFTERS = "rafters"
OVER = "over"


def sole(letter: str) -> str:
    """The key of a wall's sole plate.

    >>> sole("B")
    'B/sole'
    """
    return f"{letter}/{SOLE}"


def sole_piece(letter: str, number: int) -> str:
    """The key of a piece of sole plate between doorways, counted from the left."""
    return f"{letter}/{SOLE}/{number}"


def top(letter: str, segment: int, layer: int) -> str:
    """The key of a top plate: its segment counted from the left, its layer from the roof down."""
    return f"{letter}/top/{segment + 1}/{layer + 1}"


def past(plate: str, purlin: str) -> str:
    """The key of the piece of a top plate beyond a purlin.

    >>> past("B/top/1/1", "purlin-1")
    'B/top/1/1/past/purlin-1'
    """
    return f"{plate}/past/{purlin}"


def over(stud: str, purlin: str) -> str:
    """The key of the piece of a stud over a purlin that stops it.

    >>> over("B/layout/3", "purlin-1")
    'B/layout/3/over/purlin-1'
    """
    return f"{stud}/{OVER}/{purlin}"


def stud_of(key: str) -> str:
    """The key of the stud that a piece over a purlin belongs to; any other key itself.

    >>> stud_of("B/layout/3/over/purlin-1"), stud_of("B/layout/3")
    ('B/layout/3', 'B/layout/3')
    """
    return key.partition(f"/{OVER}/")[0]


def is_over(key: str) -> bool:
    """Whether a key is that of a piece over a purlin."""
    return f"/{OVER}/" in key


def rafters(letter: str) -> str:
    """The key of the rafters that a wall stands on."""
    return f"{letter}/{RAFTERS}"


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

    >>> layer("B/top/1/2/layout/9"), layer("B/top/1/2/past/purlin-1")
    ('B/top/1/2', 'B/top/1/2')
    """
    return "/".join(plate.split("/")[:4])


def is_uppermost(plate: str) -> bool:
    """Whether a top plate, or a piece of one, is of the layer that is nailed to the roof.

    >>> is_uppermost("B/top/2/1/layout/9"), is_uppermost("B/top/1/2")
    (True, False)
    """
    return layer(plate).endswith("/1")


def stretch(plate: str) -> str:
    """What those pieces of a layer have in common that butt, with no purlin between them.

    >>> stretch("B/top/1/2/layout/9"), stretch("B/top/1/2/past/purlin-1/layout/9")
    ('B/top/1/2', 'B/top/1/2/past/purlin-1')
    """
    parts = plate.split("/")
    return "/".join(parts[: 6 if parts[4:5] == ["past"] else 4])


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


def double(stud: str) -> str:
    """The key of the second stud beside the one with the key `stud`.

    >>> double("B/layout/3")
    'B/layout/3/double'
    """
    return f"{stud}/{DOUBLE}"


def is_double(key: str) -> bool:
    """Whether a key is that of a second stud."""
    return key.endswith(f"/{DOUBLE}")


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


def on_header(key: str) -> bool:
    """Whether a key is that of a cripple on a header, whatever its opening is called.

    >>> on_header("B/door-1/above/4"), on_header("B/above/below/4")
    (True, False)
    """
    return key.split("/")[2:3] == ["above"]


def is_under(key: str, sill: str) -> bool:
    """Whether a key is that of a cripple under a sill.

    >>> is_under("B/w/below/4", "B/w/sill/1"), is_under("B/w/above/4", "B/w/sill/1")
    (True, False)
    """
    return key.split("/")[:3] == [*sill.split("/")[:2], "below"]


def block(letter: str, row: str, bay: str) -> str:
    """The key of a block: the row it belongs to, and the upright to the left of its bay.

    >>> block("B", "row-1", "layout/3")
    'B/blocking/row-1/layout/3'
    """
    return f"{letter}/blocking/{row}/{bay}"


def backing(letter: str, fixture_id: str, bay: str) -> str:
    """The key of a fixture's backing in the bay to the right of an upright."""
    return f"{letter}/{fixture_id}/{bay}"


def meeting(letter: str, other: str, side: Side, part: str) -> str:
    """The key of what a wall gets where the `side` end of another wall meets it."""
    return f"{letter}/meets/{other}/{side.value}/{part}"


def between_rafters(letter: str, segment: int, number: int) -> str:
    """The key of a block between rafters over a top plate, counted from the left."""
    return f"{letter}/rafters/{segment + 1}/{number + 1}"


def rafter_over(letter: str, number: int) -> str:
    """The key of a rafter where a wall's top plate crosses it, counted along the room.

    >>> rafter_over("B", 3)
    'B/rafters/over/3'
    """
    return f"{letter}/{RAFTERS}/over/{number}"


def is_rafter_over(key: str) -> bool:
    """Whether a key is that of a rafter over a top plate."""
    return key.split("/")[1:3] == [RAFTERS, "over"]


def box(letter: str, box_id: str) -> str:
    """The key of a box."""
    return f"{letter}/{box_id}"


def spoken(part_id: str) -> str:
    """The id of an opening, box or stud as it is said and written on a drawing.

    >>> spoken("access-door-1")
    'access door 1'
    """
    return part_id.replace("-", " ")
