"""The packaged font in Qt: loaded once, then picked by size and face."""

from functools import cache

from PySide6.QtGui import QFont, QFontDatabase

from core.drawing.typeface import FAMILY, NARROW_FAMILY, font_file


@cache
def load() -> None:
    """Make the four packaged faces known to Qt; an application has to exist. Once is enough."""
    for narrow in (False, True):
        for bold in (False, True):
            data = font_file(bold, narrow=narrow).read_bytes()
            if QFontDatabase.addApplicationFontFromData(data) < 0:
                raise RuntimeError(f"the font {font_file(bold, narrow=narrow)} cannot be read")


@cache
def font(pixels: int, *, bold: bool = False, narrow: bool = False) -> QFont:
    """The font `pixels` px high (the em), unhinted so that widths are those of the font's file.

    Qt draws this font at whole px only; a drawing for the screen is laid out at such a size.
    """
    load()
    made = QFont(NARROW_FAMILY if narrow else FAMILY)
    made.setPixelSize(max(pixels, 1))
    made.setBold(bold)
    made.setKerning(False)
    made.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return made
