"""Writing an angle for screen and sheets."""

import math


def write_degrees(radians: float, decimals: int = 1) -> str:
    """The angle in degrees with its sign, ``36.9°``; halves go away from zero.

    A value within a thousand-millionth of the last decimal counts as the half.

    Raises:
        ValueError: when ``radians`` is not finite.

    >>> write_degrees(math.atan2(9, 12))
    '36.9°'
    """
    if not math.isfinite(radians):
        raise ValueError(f"only a finite angle can be written, not {radians}")
    scale = 10**decimals
    count = math.floor(abs(math.degrees(radians)) * scale + (0.5 + 1e-9))
    sign = "-" if radians < 0 and count else ""
    return f"{sign}{count / scale:.{decimals}f}°"
