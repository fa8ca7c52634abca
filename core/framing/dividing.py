"""Plates divided: the pieces in the frame, and the piece that a mark is on."""

from collections.abc import Mapping, Sequence

import msgspec

from core.framing.bending import underside
from core.framing.frame import Frame
from core.framing.layout import CLEAR
from core.framing.marks import Mark
from core.framing.member import Member
from core.model import Side

Pieces = Mapping[str, Sequence[Member]]
"""The pieces of every divided plate from left to right, by the key of the whole."""


def divided(frame: Frame, pieces: Pieces) -> Frame:
    """The frame with the pieces of its divided plates in the place of these."""
    members = (part for m in frame.members for part in pieces.get(m.key, (m,)))
    return msgspec.structs.replace(frame, members=tuple(members))


def piece_of(mark: Mark, parts: Sequence[Member]) -> Member:
    """The piece of a plate that a mark is on, the left one at a joint.

    Where a stud stands in a purlin there is no plate: its mark stays with the piece that the tape
    hooks on.
    """
    for part in parts:
        under = underside(part)
        if under[0][0] - CLEAR <= mark.x <= under[-1][0] + CLEAR:
            return part
    return parts[0] if mark.origin is Side.LEFT else parts[-1]
