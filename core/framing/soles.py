"""The sole plate: whole from end to end, or in pieces between the doorways."""

from itertools import pairwise

from core.framing import keys
from core.framing.ground import sole_stretch
from core.framing.member import Member
from core.model import Wall

Span = tuple[float, float]
"""The left and the right edge of a doorway, mm."""


def sole_plates(wall: Wall, doorways: tuple[Span, ...]) -> tuple[Member, ...]:
    """The sole plate as it is cut, from left to right.

    As a rule it runs through and is cut out of the doorways once the wall stands; by the wall's
    rule it is cut before, and its pieces lie between the doorways.
    """
    if not (wall.goes_by.cut_sole_first and doorways):
        return (sole_stretch(wall, keys.sole(wall.letter), 0.0, wall.run),)
    places = [0.0, *(x for doorway in sorted(doorways) for x in doorway), wall.run]
    pieces = list(pairwise(places))[::2]
    return tuple(
        sole_stretch(wall, keys.sole_piece(wall.letter, number), left, right)
        for number, (left, right) in enumerate(pieces, start=1)
    )
