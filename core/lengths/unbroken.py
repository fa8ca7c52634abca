"""A text in which no line may end within a length, so that 3 7/8" is never read as 3."""

import re

HARD = "\u00a0"
"""A blank at which no line ends."""

_WITHIN = re.compile(
    r"(?<=[\d'′]) (?=\d+/\d)"  # 3 7/8
    r"|(?<=['′]) (?=\d)"  # 7' 10"
    r"|(?<=\d) (?=(?:in|ft|mm|cm|m|lb|kg)\b)"  # 23 lb
)


def unbroken(text: str) -> str:
    r"""The text with a hard blank wherever a blank stands within a length or a weight.

    >>> unbroken("cut 3 7/8 in off").split(" ")
    ['cut', '3\xa07/8\xa0in', 'off']
    """
    return _WITHIN.sub(HARD, text)
