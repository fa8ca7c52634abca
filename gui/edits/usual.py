"""What new things start out as; the person sets them from there. Common practice, no source."""

import msgspec

from core.lengths import Length, System, parse, parse_pitch
from core.model import (
    Box,
    BoxHeight,
    ClearZone,
    Fixture,
    FixtureKind,
    Header,
    HeaderKind,
    Leaf,
    Opening,
    OpeningKind,
    Rafter,
    RafterBacking,
    Room,
    Side,
    Slope,
    Timber,
    Wall,
)


class _Size(msgspec.Struct, frozen=True):
    """The rough size of an opening as a person would write it."""

    width: str
    head: str
    sill: str


_OPENINGS = {
    # A door 32 in. wide and 80 in. high with 2 in. and 2 1/2 in. for its frame.
    (System.INCH, OpeningKind.DOOR): _Size("34 in", "82 1/2 in", "0 in"),
    (System.INCH, OpeningKind.ACCESS_DOOR): _Size("24 in", "30 in", "0 in"),
    (System.INCH, OpeningKind.WINDOW): _Size("30 in", "72 in", "36 in"),
    (System.INCH, OpeningKind.PASS_THROUGH): _Size("36 in", "66 in", "42 in"),
    (System.INCH, OpeningKind.CASED): _Size("48 in", "82 1/2 in", "0 in"),
    (System.METRIC, OpeningKind.DOOR): _Size("900 mm", "2060 mm", "0 mm"),
    (System.METRIC, OpeningKind.ACCESS_DOOR): _Size("600 mm", "750 mm", "0 mm"),
    (System.METRIC, OpeningKind.WINDOW): _Size("800 mm", "1800 mm", "900 mm"),
    (System.METRIC, OpeningKind.PASS_THROUGH): _Size("900 mm", "1650 mm", "1050 mm"),
    (System.METRIC, OpeningKind.CASED): _Size("1200 mm", "2060 mm", "0 mm"),
}

_LEAVES = {(System.INCH, OpeningKind.DOOR): ("32 in", "80 in", "2 in", "2 1/2 in")}
"""Leaf width and height, and what its frame and shims add to either."""

_BOXES = {
    # Height to the centre, then width, depth and height of a box for one device.
    System.INCH: ("12 in", "2 in", "2 3/4 in", "3 in"),
    System.METRIC: ("450 mm", "75 mm", "47 mm", "75 mm"),
}


def length(system: System, text: str) -> Length:
    """The length that a text states in this system."""
    return parse(text, system.bare_unit)


def opening(system: System, kind: OpeningKind, name: str, wall: Wall) -> Opening:
    """An opening at the left end, with the header of the wall's last opening or a flat stud."""
    size = _OPENINGS[system, kind]
    header = Header(HeaderKind.FLAT, wall.stud)
    if wall.openings:
        header = wall.openings[-1].header
    width, head, sill = (length(system, text) for text in (size.width, size.head, size.sill))
    leaf = None
    if (system, kind) in _LEAVES:
        leaf = Leaf(*(length(system, text) for text in _LEAVES[system, kind]))
    return Opening(name, kind, length(system, "0"), width, head, header, sill, leaf)


def box(system: System, name: str, stud: str, side: Side) -> Box:
    """A box for one device on the side of a stud."""
    height, width, depth, tall = (length(system, text) for text in _BOXES[system])
    return Box(name, stud, side, height, BoxHeight.CENTRE, width, depth, tall)


def switch(system: System, name: str, stud: str, side: Side) -> Box:
    """A box for one switch, 48 in. or 1200 mm to its centre."""
    height = length(system, "48 in" if system is System.INCH else "1200 mm")
    return msgspec.structs.replace(box(system, name, stud, side), height=height)


def fixture(system: System, name: str, wall: Wall) -> Fixture:
    """A rail over the middle third of the wall, its backing a board wider than a stud."""
    inch = system is System.INCH
    height, thickness, width = (
        length(system, text)
        for text in (("36 in", "1 1/2 in", "5 1/2 in") if inch else ("900 mm", "38 mm", "140 mm"))
    )
    each = 25.4 if inch else 10.0
    left, wide = (
        length(system, f"{round(wall.run / 3 / each) * (1 if inch else 10)}") for _ in "lw"
    )
    return Fixture(name, FixtureKind.RAIL, left, wide, height, Timber(thickness, width))


def zone(system: System, name: str, wall: Wall) -> ClearZone:
    """A part of the wall 12 by 24 in. or 300 by 600 mm, in its middle, a foot up."""
    inch = system is System.INCH
    texts = ("12 in", "12 in", "24 in") if inch else ("300 mm", "300 mm", "600 mm")
    bottom, width, height = (length(system, text) for text in texts)
    each = 25.4 if inch else 10.0
    whole = round((wall.run - width.mm) / 2 / each) * (1 if inch else 10)
    return ClearZone(name, length(system, f"{max(whole, 0)}"), bottom, width, height)


def fire_limit(system: System) -> Length:
    """The height of a bay over which it gets a fire block: 10 ft, or 3 m."""
    return length(system, "10'" if system is System.INCH else "3 m")


def rafter_backing(system: System, wall: Wall) -> RafterBacking:
    """Blocks of stud timber 24 in. or 600 mm apart along the plate."""
    return RafterBacking(wall.stud, length(system, "24 in" if system is System.INCH else "600 mm"))


def slip_gap(system: System) -> Length:
    """Half an inch, or 12 mm."""
    return length(system, "1/2 in" if system is System.INCH else "12 mm")


def stud(system: System) -> Timber:
    """The stud that most partitions are made of: 2x4, or 38 mm by 89 mm."""
    sizes = ("1 1/2 in", "3 1/2 in") if system is System.INCH else ("38 mm", "89 mm")
    return Timber(*(length(system, text) for text in sizes))


def spacing(system: System) -> Length:
    """Studs on centre so that boards end on them: 16 in., or 400 mm."""
    return length(system, "16 in" if system is System.INCH else "400 mm")


def rafter(system: System) -> Rafter:
    """Rafters 2x10 at 24 in., or 47 mm by 220 mm at 600 mm."""
    inch = ("1 1/2 in", "9 1/4 in", "24 in")
    texts = inch if system is System.INCH else ("47 mm", "220 mm", "600 mm")
    thickness, width, apart = (length(system, text) for text in texts)
    return Rafter(Timber(thickness, width), apart)


def room(system: System) -> Room:
    """A room to begin with: 24 by 30 ft under 9 in 12, or 7 by 9 m under 40 degrees."""
    inch = ("24'", "30'", "30 in", "9 in 12")
    texts = inch if system is System.INCH else ("7 m", "9 m", "800 mm", "40°")
    width, along, eave = (length(system, text) for text in texts[:3])
    slope = Slope(eave, parse_pitch(texts[3], system.bare_unit))
    return Room(width, along, rafter(system), slope, slope)
