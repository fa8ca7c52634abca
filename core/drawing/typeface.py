"""How wide and high text is in the packaged font, read from its files.

The files hold no kerning and no features, so the sum of the advance widths is what the screen and
the printed sheet show. A text has one size, the em, in whatever unit the answer is wanted in.
"""

import io
from collections.abc import Callable
from functools import cache
from importlib.resources import files
from importlib.resources.abc import Traversable

import msgspec

import resources

FAMILY = "Eavewright Sheet"
"""The family's name as the files state it."""

NARROW_FAMILY = "Eavewright Sheet Narrow"
"""The name of the narrow cut, for dense tables."""


def font_file(bold: bool = False, *, narrow: bool = False) -> Traversable:
    """The packaged TrueType file of one face."""
    family = NARROW_FAMILY if narrow else FAMILY
    style = "Bold" if bold else "Regular"
    return files(resources) / "fonts" / f"{family.replace(' ', '')}-{style}.ttf"


def text_width(text: str, size: float, bold: bool = False, *, narrow: bool = False) -> float:
    """The width of one line of text, in the unit of `size` (mm, points, pixels).

    A character that the font lacks, a line break among them, counts as the box drawn in its place.
    An empty text is 0.0 wide.

    >>> text_width("57", 10.0)
    11.56
    """
    face = _face(bold, narrow)
    return sum(map(face.advance, text)) * size / face.units_per_em


def cap_height(size: float) -> float:
    """The height of a flat capital over the baseline, in the unit of `size`."""
    face = _face(False, False)
    return face.cap_height * size / face.units_per_em


def ascent(size: float) -> float:
    """How far a line reaches over its baseline, accents included, in the unit of `size`."""
    face = _face(False, False)
    return face.ascent * size / face.units_per_em


def descent(size: float) -> float:
    """How far a line reaches below its baseline, positive, in the unit of `size`."""
    face = _face(False, False)
    return face.descent * size / face.units_per_em


class _Face(msgspec.Struct, frozen=True):
    """The metrics of one face in font units; `advance` takes one character."""

    advance: Callable[[str], int]
    units_per_em: int
    cap_height: int
    ascent: int
    descent: int


class _Advances(dict[str, int]):
    """Advance widths by character; a missing one has the width of .notdef."""

    def __init__(self, known: dict[str, int], notdef: int) -> None:
        super().__init__(known)
        self._notdef = notdef

    def __missing__(self, character: str) -> int:
        return self._notdef


@cache
def _face(bold: bool, narrow: bool) -> _Face:
    """The metrics of one packaged face: constants of its file, so they are read once."""
    from fontTools.ttLib import TTFont

    data = io.BytesIO(font_file(bold, narrow=narrow).read_bytes())
    with TTFont(data, lazy=True) as font:
        widths = font["hmtx"].metrics
        known = {chr(code): widths[glyph][0] for code, glyph in font.getBestCmap().items()}
        return _Face(
            advance=_Advances(known, widths[".notdef"][0]).__getitem__,
            units_per_em=font["head"].unitsPerEm,
            cap_height=font["OS/2"].sCapHeight,
            ascent=font["hhea"].ascent,
            descent=-font["hhea"].descent,
        )
