"""What is read from a font's file, beside what a library of fonts reads from it."""

import io
import struct

import pytest
from fontTools.fontBuilder import FontBuilder
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

from core.drawing.truetype import measures
from core.drawing.typeface import font_file

FACES = [(False, False), (True, False), (False, True), (True, True)]  # bold, narrow


@pytest.mark.parametrize(("bold", "narrow"), FACES)
def test_the_packaged_faces_are_read_as_a_library_reads_them(bold: bool, narrow: bool) -> None:
    data = font_file(bold, narrow=narrow).read_bytes()
    found = measures(data)
    with TTFont(io.BytesIO(data)) as font:
        widths = font["hmtx"].metrics
        known = {chr(code): widths[glyph][0] for code, glyph in font.getBestCmap().items()}
        assert found.advances == known
        assert found.missing == widths[".notdef"][0]
        assert found.units_per_em == font["head"].unitsPerEm
        assert found.cap_height == font["OS/2"].sCapHeight
        assert (found.ascent, found.descent) == (font["hhea"].ascent, -font["hhea"].descent)


def built(widths: list[int]) -> bytes:
    """A font with glyphs a, b, c ... of these widths and a .notdef 77 wide."""
    names = [chr(ord("a") + n) for n in range(len(widths))]
    builder = FontBuilder(1000, isTTF=True)
    builder.setupGlyphOrder([".notdef", *names])
    builder.setupCharacterMap({ord(name): name for name in names})
    pen = TTGlyphPen(None)
    builder.setupGlyf(dict.fromkeys([".notdef", *names], pen.glyph()))
    builder.setupHorizontalMetrics(
        {".notdef": (77, 0), **{n: (w, 0) for n, w in zip(names, widths, strict=True)}}
    )
    builder.setupHorizontalHeader(ascent=800, descent=-210)
    builder.setupOS2(sCapHeight=701)
    builder.setupPost()
    made = io.BytesIO()
    builder.save(made)
    return made.getvalue()


@pytest.mark.parametrize(
    "widths", [[500], [500, 600, 700], [500, 600, 600, 600], [600, 600, 600]], ids=str
)
def test_glyphs_that_share_the_last_width(widths: list[int]) -> None:
    """Equal widths at the end are stored once in the table."""
    found = measures(built(widths))
    assert list(found.advances.values()) == widths
    assert (found.missing, found.units_per_em, found.cap_height) == (77, 1000, 701)
    assert (found.ascent, found.descent) == (800, 210)


@pytest.mark.parametrize("tag", [b"cmap", b"hmtx", b"OS/2"])
def test_a_font_without_a_table_is_refused_by_its_name(tag: bytes) -> None:
    with pytest.raises(ValueError, match=tag.decode()):
        measures(built([500]).replace(tag, b"none", 1))


def test_a_font_without_a_map_of_unicode_is_refused() -> None:
    data = bytearray(built([500]))
    for n in range(struct.unpack_from(">H", data, 4)[0]):
        tag, _, start, _ = struct.unpack_from(">4sIII", data, 12 + 16 * n)
        if tag == b"cmap":
            struct.pack_into(">H", data, start + 2, 0)
    with pytest.raises(ValueError, match="no map"):
        measures(bytes(data))
