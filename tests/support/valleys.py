"""A gable room with a gable dormer and a wing, for walls under valleys; inches.

The room is 240 wide and 360 long, 12 in 12 from eaves 30 high: R = 30 + u to the ridge at u = 120,
150 high, and 270 - u beyond.
"""

from __future__ import annotations

from core.model import Dormer, DormerKind, Side, Wing
from walls import US, in_12

GABLE = US.room(240, (30, in_12(12)), (30, in_12(12)), length=360)

# On the right, from 120 along for 120; its front's inner face at u = 216, where the main roof is at
# 54; over its cheeks 90 high, 6 in 12 to a ridge at v = 180, 90 + 60 / 2 = 120 high.
DORMER = Dormer(
    "dormer-1",
    DormerKind.GABLE,
    Side.RIGHT,
    start=US.length(120),
    width=US.length(120),
    face=US.length(24),
    front=US.length(3.5),
    height=US.length(90),
    pitch=in_12(6),
)

# On the left, from 100 along for 160, out by 90; 12 in 12 from 30 to a ridge at v = 180, 110 high.
WING = Wing(
    "wing-1",
    Side.LEFT,
    start=US.length(100),
    width=US.length(160),
    reach=US.length(90),
    first=US.slope(30, in_12(12)),
    last=US.slope(30, in_12(12)),
)
