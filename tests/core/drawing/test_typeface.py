"""The packaged font: what it holds, and how wide and high its text is."""

import io
import struct
from importlib.resources import files

import pytest
from hypothesis import given
from hypothesis import strategies as st

import resources
from core.drawing.typeface import (
    FAMILY,
    NARROW_FAMILY,
    ascent,
    cap_height,
    descent,
    font_file,
    text_width,
)

FACES = [(False, False), (True, False), (False, True), (True, True)]  # bold, narrow
SIGNS = "′″°×−½¼¾⅛⅜⅝⅞⁄–—·•→←↑↓△▲▽▼✓⌀≤≥≈±⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉„“”‚‘’…€"
SPACES = "\u0020\u00a0\u2007\u2009\u202f"
LATIN = "".join(map(chr, [*range(0x21, 0x7F), *range(0xA1, 0x180)]))


class Sfnt:
    """The tables of a TrueType file, read from its bytes alone (OpenType 1.9, Microsoft 2021)."""

    def __init__(self, data: bytes) -> None:
        self.tables = {}
        for entry in range(struct.unpack_from(">H", data, 4)[0]):
            tag, _, start, size = struct.unpack_from(">4sLLL", data, 12 + 16 * entry)
            self.tables[tag.decode()] = data[start : start + size]

    def glyph(self, character: str) -> int:
        """The glyph number of a character by the Windows Unicode map (format 4), 0 if none."""
        cmap, code = self.tables["cmap"], ord(character)
        records = [
            struct.unpack_from(">HHL", cmap, 4 + 8 * i)
            for i in range(struct.unpack_from(">H", cmap, 2)[0])
        ]
        (at,) = {start for platform, encoding, start in records if (platform, encoding) == (3, 1)}
        form, _, _, twice = struct.unpack_from(">HHHH", cmap, at)
        assert form == 4
        for i in range(0, twice, 2):
            (last,) = struct.unpack_from(">H", cmap, at + 14 + i)
            first_at = at + 16 + twice + i
            (first,) = struct.unpack_from(">H", cmap, first_at)
            if first <= code <= last:
                (delta,) = struct.unpack_from(">h", cmap, first_at + twice)
                (offset,) = struct.unpack_from(">H", cmap, first_at + 2 * twice)
                place = first_at + 2 * twice + offset + 2 * (code - first)
                found = code if not offset else struct.unpack_from(">H", cmap, place)[0]
                return (found + delta) & 0xFFFF if found else 0
        return 0

    def advance(self, character: str) -> int:
        """The advance width of a character, font units."""
        (long_metrics,) = struct.unpack_from(">H", self.tables["hhea"], 34)
        row = min(self.glyph(character), long_metrics - 1)
        return int(struct.unpack_from(">H", self.tables["hmtx"], 4 * row)[0])


def sfnt(bold: bool, narrow: bool) -> Sfnt:
    return Sfnt(font_file(bold, narrow=narrow).read_bytes())


@pytest.mark.parametrize(("bold", "narrow"), FACES)
def test_a_file_can_be_embedded_in_a_pdf(bold: bool, narrow: bool) -> None:
    """Outlines in glyf (CFF cannot be embedded), and nothing that moves letters after measuring."""
    tables = sfnt(bold, narrow).tables
    assert {"glyf", "loca", "hmtx", "cmap"} <= set(tables)
    assert not {"CFF ", "GPOS", "GSUB", "kern"} & set(tables)
    assert struct.unpack_from(">H", tables["OS/2"], 8) == (0,)  # fsType: may be embedded


@pytest.mark.parametrize(("bold", "narrow"), FACES)
def test_the_file_states_its_face(bold: bool, narrow: bool) -> None:
    """The family by name; OS/2 weight and width class: 400 or 700, 5 (normal) or 3 (condensed)."""
    tables = sfnt(bold, narrow).tables
    assert (NARROW_FAMILY if narrow else FAMILY).encode("utf-16-be") in tables["name"]
    assert struct.unpack_from(">HH", tables["OS/2"], 4) == (
        700 if bold else 400,
        3 if narrow else 5,
    )


def test_the_licence_lies_beside_the_font() -> None:
    text = files(resources).joinpath("fonts", "OFL.txt").read_text("utf-8")
    assert "SIL OPEN FONT LICENSE Version 1.1" in text


def test_all_faces_together_stay_small() -> None:
    assert sum(len(font_file(b, narrow=n).read_bytes()) for b, n in FACES) <= 600_000


@pytest.mark.parametrize(("bold", "narrow"), FACES)
@pytest.mark.parametrize("characters", [SIGNS, SPACES, LATIN])
def test_every_character_of_the_program_is_in_the_font(
    bold: bool, narrow: bool, characters: str
) -> None:
    face = sfnt(bold, narrow)
    assert [c for c in characters if face.glyph(c) == 0] == []


@pytest.mark.parametrize(
    "figures",
    ["0123456789\u2007", "⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", "½¼¾⅛⅜⅝⅞", "←→", "↑↓", "△▲▽▼"],
)
@pytest.mark.parametrize(("bold", "narrow"), FACES)
def test_figures_stand_in_columns(bold: bool, narrow: bool, figures: str) -> None:
    assert len({text_width(f, 1.0, bold, narrow=narrow) for f in figures}) == 1


@pytest.mark.parametrize("narrow", [False, True])
def test_bold_takes_the_same_room(narrow: bool) -> None:
    text = SIGNS + 'B7  57 3/16"  4\'-9 1/2"  36.9° Höhe Año'
    assert text_width(text, 3.5, True, narrow=narrow) == text_width(text, 3.5, narrow=narrow)


@pytest.mark.parametrize(
    ("text", "units", "narrow_units"),
    [
        ("", 0, 0),
        ("7", 578, 488),
        # B 636 + 7 578; narrow 507 + 488
        ("B7", 1214, 995),
        # 5 578 + 7 578 + space 270 + 3 578 + / 456 + 1 578 + 6 578 + " 394
        # narrow: 5 * 488 + 230 + 362 + 338
        ('57 3/16"', 4010, 3370),
        # 5 578 + 7 578 + space 270 + ³ 334 + ⁄ 191 + ₁ 334 + ₆ 334 + ″ 376
        # narrow: 2 * 488 + 230 + 3 * 288 + 126 + 324
        ("57 ³⁄₁₆″", 2995, 2520),
        # 3 578 + 6 578 + . 214 + 9 578 + ° 373; narrow: 3 * 488 + 184 + 295
        ("36.9°", 2321, 1943),
        # not in the font: .notdef 545 each
        ("永\n", 1090, 1090),
    ],
)
def test_the_width_is_the_sum_of_the_advances(text: str, units: int, narrow_units: int) -> None:
    """An em has 1000 units, so at 10 mm a hundred units are one millimetre."""
    assert sum(map(sfnt(False, False).advance, text)) == units
    assert sum(map(sfnt(False, True).advance, text)) == narrow_units
    assert text_width(text, 10.0) == pytest.approx(units / 100)
    assert text_width(text, 10.0, narrow=True) == pytest.approx(narrow_units / 100)


@given(st.text(max_size=30), st.text(max_size=30), st.floats(0.1, 100.0))
def test_widths_add_and_scale(left: str, right: str, size: float) -> None:
    """Without kerning the width of two texts set on is the sum of theirs."""
    whole = text_width(left + right, size)
    assert whole == pytest.approx(text_width(left, size) + text_width(right, size))
    assert text_width(left, 2.0 * size) == pytest.approx(2.0 * text_width(left, size))


@pytest.mark.parametrize(("bold", "narrow"), FACES)
def test_the_pdf_library_measures_alike(bold: bool, narrow: bool) -> None:
    from reportlab.pdfbase.ttfonts import TTFont

    font = TTFont("sheet", io.BytesIO(font_file(bold, narrow=narrow).read_bytes()))
    for text in ('B7  57 3/16"  4\'-9 1/2"', "57 ³⁄₁₆″ ✓ △ ⌀8 → A", "Türöffnung, señal, AVATo"):
        assert font.stringWidth(text, 9.0) == pytest.approx(
            text_width(text, 9.0, bold, narrow=narrow)
        )


def test_heights() -> None:
    """OS/2 sCapHeight at byte 88, hhea ascender and descender at bytes 4 and 6."""
    tables = sfnt(False, False).tables
    assert struct.unpack_from(">h", tables["OS/2"], 88) == (700,)
    assert struct.unpack_from(">hh", tables["hhea"], 4) == (934, -212)
    assert cap_height(10.0) == pytest.approx(7.0)
    assert ascent(10.0) == pytest.approx(9.34)
    assert descent(10.0) == pytest.approx(2.12)


@pytest.mark.parametrize(("bold", "narrow"), FACES)
def test_the_heights_hold_for_every_face(bold: bool, narrow: bool) -> None:
    tables = sfnt(bold, narrow).tables
    assert tables["hhea"][4:8] == sfnt(False, False).tables["hhea"][4:8]
    assert tables["OS/2"][88:90] == sfnt(False, False).tables["OS/2"][88:90]
