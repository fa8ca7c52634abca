"""The few figures of a TrueType font that texts are measured by, read from its bytes.

Tables and their fields as the OpenType specification lays them out (chapters head, hhea, hmtx,
cmap, OS/2); all numbers are big-endian.
"""

import struct
from itertools import zip_longest

import msgspec

_WINDOWS, _UNICODE_BMP, _SEGMENTS = 3, 1, 4
"""The platform, encoding and format of the one kind of character map that is read."""


class Measures(msgspec.Struct, frozen=True):
    """The measures of a face in font units; `advances` by character, `missing` for all others."""

    advances: dict[str, int]
    missing: int
    units_per_em: int
    cap_height: int
    ascent: int
    descent: int


def measures(font: bytes) -> Measures:
    """What the file of a TrueType font says of its sizes; ValueError if it lacks a table or a map.

    The descent is positive. Glyphs past the last width of their own have that last width.
    """
    tables = _tables(font)
    widths = _widths(font, tables)
    known = {chr(code): widths[glyph] for code, glyph in _glyphs(font, tables["cmap"]).items()}
    ascent, descent = struct.unpack_from(">hh", font, tables["hhea"] + 4)
    (units,) = struct.unpack_from(">H", font, tables["head"] + 18)
    (cap_height,) = struct.unpack_from(">h", font, tables["OS/2"] + 88)
    return Measures(known, widths[0], units, cap_height, ascent, -descent)


def _tables(font: bytes) -> dict[str, int]:
    """Where each table begins, by its tag."""
    (count,) = struct.unpack_from(">H", font, 4)
    rows = (struct.unpack_from(">4sIII", font, 12 + 16 * n) for n in range(count))
    found = {tag.decode("ascii"): offset for tag, _, offset, _ in rows}
    lacking = {"cmap", "head", "hhea", "hmtx", "maxp", "OS/2"} - found.keys()
    if lacking:
        raise ValueError(f"the font has no table {min(lacking)}")
    return found


def _widths(font: bytes, tables: dict[str, int]) -> list[int]:
    """The advance width of every glyph by its number."""
    (own,) = struct.unpack_from(">H", font, tables["hhea"] + 34)
    (count,) = struct.unpack_from(">H", font, tables["maxp"] + 4)
    pairs = struct.unpack_from(f">{2 * own}h", font, tables["hmtx"])
    widths = [width & 0xFFFF for width in pairs[::2]]
    return [width for width, _ in zip_longest(widths, range(count), fillvalue=widths[-1])]


def _glyphs(font: bytes, cmap: int) -> dict[int, int]:
    """The number of the glyph for each character's code."""
    (count,) = struct.unpack_from(">H", font, cmap + 2)
    rows = (struct.unpack_from(">HHI", font, cmap + 4 + 8 * n) for n in range(count))
    for platform, encoding, offset in rows:
        (shape,) = struct.unpack_from(">H", font, cmap + offset)
        if (platform, encoding, shape) == (_WINDOWS, _UNICODE_BMP, _SEGMENTS):
            return _segments(font, cmap + offset)
    raise ValueError("the font has no map from Unicode's characters to glyphs")


def _segments(font: bytes, start: int) -> dict[int, int]:
    """The map that lies at `start`: segments of codes, each moved by a delta or by a list."""
    (double,) = struct.unpack_from(">H", font, start + 6)
    count = double // 2
    row = f">{count}H"
    ends = struct.unpack_from(row, font, start + 14)
    starts, deltas, ranges = (
        struct.unpack_from(row, font, start + 16 + n * double) for n in (1, 2, 3)
    )
    found: dict[int, int] = {}
    for n, (first, last) in enumerate(zip(starts, ends, strict=True)):
        for code in range(first, min(last, 0xFFFE) + 1):
            glyph = code
            if ranges[n]:
                place = start + 16 + 3 * double + 2 * n + ranges[n] + 2 * (code - first)
                (glyph,) = struct.unpack_from(">H", font, place)
            if glyph or not ranges[n]:
                glyph = (glyph + deltas[n]) & 0xFFFF
            if glyph:
                found[code] = glyph
    return found
