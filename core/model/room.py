"""The room as a person speaks of it: a rectangle in plan and one section across it.

In plan `u` runs across the room from the left eave wall, `v` along the ridge; `z` is up from the
subfloor. Width and eave heights are measured between and at the framing faces of the eave walls,
heights to the underside of the rafters.
"""

import msgspec

from core.lengths import Length
from core.model.answers import FloorSeen, RoofBuilt
from core.model.floor import ExistingWall, StairOpening
from core.model.roof_parts import Dormer, KeptClear, Purlin, Slope, Wing
from core.model.timber import Timber


class RidgeBeam(msgspec.Struct, frozen=True):
    """A beam under the ridge whose `underside` lies below the line of the rafters."""

    width: Length
    underside: Length


class Rafter(msgspec.Struct, frozen=True):
    """The rafters: their cross-section and their spacing on centre.

    `places` are their middles along the room as measured; without them the first and the last
    stand flush with the room's ends and the rest at whole multiples of the spacing.
    """

    timber: Timber
    spacing: Length
    places: tuple[Length, ...] = ()


class Room(msgspec.Struct, frozen=True):
    """A rectangular room under a roof of one slope (a shed) or two.

    `left` rises to the right from the left eave wall, `right` to the left from the right one; a
    shed roof has only one of them. `flat_ceiling` is the underside of the ceiling ties. A hip end
    rises from the gable wall at the start or the end of the room. Ids of dormers, wings, purlins,
    what is kept clear, stair openings and existing walls differ from one another. `roof_built` and
    `floor_seen` are what the person has answered; None where nothing was.
    """

    width: Length
    length: Length
    rafter: Rafter
    left: Slope | None = None
    right: Slope | None = None
    ridge_beam: RidgeBeam | None = None
    flat_ceiling: Length | None = None
    start_hip: Slope | None = None
    end_hip: Slope | None = None
    dormers: tuple[Dormer, ...] = ()
    wings: tuple[Wing, ...] = ()
    purlins: tuple[Purlin, ...] = ()
    kept_clear: tuple[KeptClear, ...] = ()
    roof_built: RoofBuilt | None = None
    floor_seen: FloorSeen | None = None
    stair_openings: tuple[StairOpening, ...] = ()
    existing_walls: tuple[ExistingWall, ...] = ()
