"""What a wall weighs, by the species of its timber."""

import msgspec

from core.framing import Frame, Member
from core.model import Species

_KG_M3 = 16.018463
"""One pound a cubic foot in kg/m³."""

USUAL = 35.0
"""The density that trade tables of sawn lumber go by, lb/ft³ (wikiengineer.com, Sawn Lumber
Dimensions): 1.28 lb a foot of 2x4, 2.00 of 2x6."""

_LB_FT3 = {
    # As tabulated by Oregon State University after the Wood Handbook: air dry, and green.
    Species.DOUGLAS_FIR: 34.0,
    Species.DOUGLAS_FIR_GREEN: 43.0,
    Species.WESTERN_LARCH: 36.0,
    Species.WESTERN_LARCH_GREEN: 50.0,
    Species.ENGELMANN_SPRUCE: 27.0,
    Species.ENGELMANN_SPRUCE_GREEN: 36.0,
    # From memory, specific gravity 0.42 and its formula: 62.4 * 0.42 / (1 + 0.009 * 0.42 * 19)
    # * 1.19 at 19 percent moisture.
    Species.SPRUCE_PINE_FIR: 29.1,
}


class Weights(msgspec.Struct, frozen=True):
    """The weight of a wall, and of its heaviest piece with that piece's key; kg."""

    wall: float
    heaviest: float
    key: str


def density(species: Species | None) -> float:
    """The density of a species, kg/m³; that of trade tables where none is stated."""
    return _KG_M3 * (USUAL if species is None else _LB_FT3[species])


def weight(member: Member, kg_m3: float) -> float:
    """What a member weighs with all its plies, kg: section times its mean length."""
    mean = sum(member.edges) / len(member.edges)
    return member.thickness * member.width * mean * member.count * kg_m3 / 1e9


def weights(frame: Frame, species: Species | None) -> Weights:
    """What the wall and its heaviest piece weigh; the plies of a header are pieces of their own."""
    each = density(species)
    total = sum(weight(member, each) for member in frame.members)
    heaviest = max(frame.members, key=lambda m: weight(m, each) / m.count)
    return Weights(total, weight(heaviest, each) / heaviest.count, heaviest.key)
