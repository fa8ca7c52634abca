"""Stated rules of framing: what the layout does near kings and ends, and how openings share."""

import enum

import msgspec

from core.lengths import Length, Unit
from core.model.side import Side


class Near(enum.Enum):
    """What becomes of a layout stud that would overlap a king or an end stud.

    DROP: it is left out. MERGE: it is left out as well where less than the stated room would be
    left beside the king or end stud, which then does both jobs. KEEP: it is kept, and stands tight
    against that stud.
    """

    DROP = "drop"
    MERGE = "merge"
    KEEP = "keep"


class WallRules(msgspec.Struct, frozen=True):
    """The rules of framing of one wall; a wall that states none goes by these defaults.

    `closer_than` is the room that MERGE asks for. Boards are `board` long, or the usual 48 in. or
    1200 mm: so far apart their edges land on the layout. With `share_kings` two openings may stand
    on either side of one king, with `end_as_king` an end stud may be a king. `cut_sole_first`
    lists the pieces of sole plate between doorways instead of one plate to be cut out later. A stud
    notched round a purlin is to keep `least_left` percent of its thickness or more.
    """

    near_kings: Near = Near.DROP
    near_ends: Near = Near.DROP
    closer_than: Length | None = None
    board: Length | None = None
    share_kings: bool = False
    end_as_king: bool = False
    cut_sole_first: bool = False
    least_left: int | None = None


class DoubledStud(msgspec.Struct, frozen=True):
    """A second stud nailed to the `side` of the stud with key `stud`."""

    stud: str
    side: Side


def usual_board(spacing: Length) -> Length:
    """How far board edges are apart on a layout: 48 in., in a metric one 1200 mm.

    Sheets are 4 ft or 1200 mm wide and whole multiples of that long. Common practice, no source.
    """
    return Length(1200.0) if spacing.unit.metric else Length(48 * 25.4, Unit.INCH)
