"""Papers, and the standard scales that drawings are made at."""

import enum

import msgspec

from core.lengths import System


class Paper(enum.Enum):
    """Paper sizes by name; sheets lie landscape."""

    LETTER = "letter"
    TABLOID = "tabloid"
    A4 = "a4"
    A3 = "a3"

    @property
    def size(self) -> tuple[float, float]:
        """Width and height lying landscape, mm (ANSI A and B, ISO A4 and A3)."""
        sizes = {
            Paper.LETTER: (279.4, 215.9),
            Paper.TABLOID: (431.8, 279.4),
            Paper.A4: (297.0, 210.0),
            Paper.A3: (420.0, 297.0),
        }
        return sizes[self]

    @classmethod
    def usual(cls, system: System) -> "Paper":
        """Letter in the inch system, A4 in the metric one."""
        return cls.LETTER if system is System.INCH else cls.A4


class Scale(msgspec.Struct, frozen=True):
    """A standard scale: paper over model, how it is written, and the size of its texts, mm.

    The reduced scales are for walls that fit on the page at no other; their texts are smaller.
    """

    ratio: float
    text: str
    size: float = 3.5

    @property
    def reduced(self) -> bool:
        """Whether this scale is for want of a larger one."""
        return self.size < 3.5


_INCH_SCALES = (
    (8, "1 1/2"),
    (12, "1"),
    (16, "3/4"),
    (24, "1/2"),
    (32, "3/8"),
    (48, "1/4"),
    (64, "3/16"),
    (96, "1/8"),
    (128, "3/32"),
    (192, "1/16"),
)
_METRIC_SCALES = (10, 20, 25, 50, 75, 100, 125, 200)
_REDUCED_SIZE = 2.5


def scales(system: System) -> tuple[Scale, ...]:
    r"""The standard scales, the largest first: inches to the foot, or one to so many.

    A foot is twelve inches, so one to n is 12 / n inches to the foot: 1:24 is half an inch.
    Which of them are usual is common practice, no source.

    >>> scales(System.INCH)[3].text
    '1/2" = 1\'-0"'
    """
    if system is System.INCH:
        return tuple(_scale(n, f'{inches}" = 1\'-0"') for n, inches in _INCH_SCALES)
    return tuple(_scale(n, f"1:{n}") for n in _METRIC_SCALES)


def _scale(n: int, text: str) -> Scale:
    return Scale(1 / n, text, _REDUCED_SIZE) if n > 100 else Scale(1 / n, text)
