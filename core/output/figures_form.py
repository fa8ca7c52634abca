"""The form of the figures: every value that leaves the program, with what it means and its unit.

The JSON Schema in resources/schemas is made from these values, so the two cannot drift apart.
"""

from typing import Annotated, Literal

import msgspec
from msgspec import Meta

from core.checks import Severity
from core.framing import Why
from core.model import BoxHeight, OpeningKind, PlateLie, Side, Swing, WallFace
from core.output.figures_member_form import Key, MemberFigures, Mm, Spot
from core.output.figures_plan_form import PlanFigures
from core.output.figures_site_form import RaisingFigures, TurnFigures


class _Part(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A part of the figures; it has no keys but those described."""


class EdgeFigures(_Part, frozen=True):
    """How far an edge of a plate stands proud of the studs' face, mm; less than 0 is short."""

    underside: Mm
    top: Mm


class PlateSectionFigures(_Part, frozen=True):
    """How the top plates lie under a plane that slopes through the wall."""

    left: Annotated[float, Meta(description="x where the plane begins over face A, mm.")]
    right: Annotated[float, Meta(description="x where it ends, mm.")]
    lie: Annotated[
        PlateLie | None,
        Meta(description="How the plates lie; null for tilted with square edges."),
    ]
    tilt: Annotated[
        float,
        Meta(
            description="Degrees that the roof slopes square to the plates' run; positive where it"
            " rises away from face A."
        ),
    ]
    near_edge: Annotated[EdgeFigures, Meta(description="The edge at face A, lowest plate.")]
    far_edge: Annotated[EdgeFigures, Meta(description="The edge at the far face, lowest plate.")]
    need: Annotated[float, Meta(description="The least width of stock for these plates, mm.")]
    have: Annotated[float, Meta(description="The width of the stock stated, mm.")]


class MarkFigures(_Part, frozen=True, rename={"origin": "from"}):
    """A line across a plate that says where a member stands."""

    member: Annotated[str, Meta(description="The key of the member that the line is for.")]
    plate: Annotated[str, Meta(description="The key of the plate or header that is marked.")]
    letter: Annotated[str, Meta(description="The letter written beside the line.")]
    edge: Annotated[Side, Meta(description="The member's edge that the line stands for.")]
    origin: Annotated[Side, Meta(description="The plate's end that the tape hooks on.")]
    x_side: Annotated[
        Side, Meta(description="The side of the line on which the member and its letter lie.")
    ]
    along_sole: Annotated[
        float, Meta(description="The line's distance along the floor from that end, mm.")
    ]
    along_top: Annotated[
        float | None,
        Meta(
            description="Its distance along the underside of the top plate, or along the header,"
            " mm; null on the sole plate."
        ),
    ]
    begins: Annotated[
        float,
        Meta(
            description="How far along the whole plate the marked piece begins, mm: the tape hooked"
            " on the piece itself reads so much less. Zero unless a purlin cuts the plate."
        ),
    ]
    x: Annotated[float, Meta(description="Its place from the wall's left end, mm.")]


class BareMarkFigures(_Part, frozen=True):
    """A mark of the layout that no member stands at, and what keeps it bare."""

    key: Annotated[str, Meta(description="The key that its stud would have.")]
    place: Annotated[int, Meta(description="Its place in the layout, from 1.")]
    left: Annotated[float, Meta(description="The left edge that its stud would have, mm.")]
    why: Annotated[Why, Meta(description="What keeps a stud from it.")]
    by: Annotated[
        str | None, Meta(description="The key of what stands there instead; null if nothing.")
    ]
    off: Annotated[
        float, Meta(description="How far a board edge on the mark lies beside that, mm.")
    ]


class LeafFigures(_Part, frozen=True):
    """A leaf or unit and its allowances, whose sums are a rough opening."""

    width: Mm
    height: Mm
    wider: Annotated[float, Meta(description="What is added to its width, mm.")]
    higher: Annotated[float, Meta(description="What is added to its height, mm.")]


class OpeningFigures(_Part, frozen=True):
    """A rough opening, and where it fits."""

    key: Key
    id: Annotated[str, Meta(description="The name of the opening in its wall.")]
    kind: Annotated[OpeningKind, Meta(description="What is put into it.")]
    left: Annotated[float, Meta(description="x of its left edge, mm.")]
    width: Mm
    head: Annotated[
        float,
        Meta(description="Height of its head above the subfloor, mm; of a raked one at its lower."),
    ]
    heads: Annotated[
        tuple[float, float], Meta(description="Its head's heights at the left and right edge, mm.")
    ]
    rake: Annotated[
        float, Meta(description="Degrees its head rises from level; positive to the right.")
    ]
    sill: Annotated[float, Meta(description="Height of its sill above the subfloor, mm.")]
    leaf: Annotated[
        LeafFigures | None, Meta(description="The leaf that its size is a sum of; null if none.")
    ]
    hinges: Annotated[Side | None, Meta(description="The side of the hinges; null if none.")]
    swing: Annotated[Swing | None, Meta(description="To which side it opens; null if it does not.")]
    fits: Annotated[
        bool, Meta(description="Whether it can be framed where it is; if not, it is not framed.")
    ]
    ranges: Annotated[
        tuple[tuple[float, float], ...],
        Meta(description="Ranges [low, high] of the left edge in which it fits, mm."),
    ]


class BoxFigures(_Part, frozen=True):
    """An electrical box in its place."""

    key: Key
    id: Annotated[str, Meta(description="The name of the box in its wall.")]
    stud: Annotated[
        str | None,
        Meta(description="The key of the member it is fixed to; null where none stands there."),
    ]
    side: Annotated[Side, Meta(description="The side of that member.")]
    face: Annotated[WallFace, Meta(description="The face of the wall that it opens on.")]
    left: Annotated[float, Meta(description="x of its left edge, mm.")]
    bottom: Annotated[float, Meta(description="y of its lower edge, mm.")]
    width: Mm
    tall: Annotated[float, Meta(description="How tall it is, mm.")]
    height: Annotated[float, Meta(description="The height stated for it, mm.")]
    to: Annotated[BoxHeight, Meta(description="Which part of the box that height is taken to.")]


class MeetingFigures(_Part, frozen=True):
    """The end of another wall that stands against this one, found from the plan."""

    wall: Annotated[str, Meta(description="The letter of the other wall.")]
    end: Annotated[Side, Meta(description="Which of its ends stands here.")]
    face: Annotated[WallFace, Meta(description="The face of this wall that it stands against.")]
    left: Annotated[float, Meta(description="x where its timber begins, mm.")]
    right: Annotated[float, Meta(description="x where its timber ends, mm.")]


class CrossingFigures(_Part, frozen=True):
    """A rafter over the top plate where the plate crosses it."""

    rafter: Annotated[
        int,
        Meta(description="Its number, counted along the room from the near end.", ge=1),
    ]
    left: Annotated[float, Meta(description="x of its left edge over face A, mm.")]
    right: Annotated[float, Meta(description="x of its right edge over face A, mm.")]


class CautionFigures(_Part, frozen=True):
    """Something that cannot be built as stated, or is to be minded."""

    severity: Annotated[Severity, Meta(description="How grave it is.")]
    key: Annotated[str, Meta(description="The key of what it is about; empty for the job.")]
    text: Annotated[str, Meta(description="The caution in words.")]


class ReadingFigures(_Part, frozen=True):
    """A height measured on site."""

    line: Annotated[Literal["roof", "floor"], Meta(description="The line that was measured.")]
    at: Annotated[float, Meta(description="x of the point, mm.")]
    stated: Annotated[float, Meta(description="The stated height above the datum there, mm.")]
    measured: Annotated[float, Meta(description="The measured height above the datum, mm.")]
    expected: Annotated[
        float | None,
        Meta(
            description="The height that the points beside it lead to expect, mm, where it looks"
            " mistyped; else null."
        ),
    ]


class MeasuredStudFigures(_Part, frozen=True):
    """A stud cut to a measured length."""

    key: Key
    worked: Annotated[float, Meta(description="The long point worked out for it, mm.")]
    length: Annotated[float, Meta(description="The long point it is cut to, mm.")]
    corrected: Annotated[
        tuple[str, ...], Meta(description="The keys of the studs that it corrects as a test stud.")
    ]


class WallFigures(_Part, frozen=True):
    """A wall with everything in it."""

    name: Annotated[str, Meta(description="The wall's name.")]
    letter: Annotated[str, Meta(description="The letter that its labels and keys begin with.")]
    length: Annotated[float, Meta(description="The length of its chalk line, mm.")]
    roof_line: Annotated[
        tuple[Spot, ...],
        Meta(
            description="The corners of the line overhead on face A from left to right, the"
            " underside of what the plate is nailed to; two at a step; none where no roof is"
            " overhead."
        ),
    ]
    floor_line: Annotated[
        tuple[Spot, ...],
        Meta(description="The corners of the floor under the wall from left to right."),
    ]
    measured: Annotated[
        tuple[ReadingFigures, ...],
        Meta(description="What was measured: the roof from left to right, then the floor."),
    ]
    measured_studs: tuple[MeasuredStudFigures, ...]
    members: tuple[MemberFigures, ...]
    plate_sections: Annotated[
        tuple[PlateSectionFigures, ...],
        Meta(description="How the top plates lie; none where the roof is level through the wall."),
    ]
    marks: tuple[MarkFigures, ...]
    bare_marks: Annotated[
        tuple[BareMarkFigures, ...],
        Meta(description="The marks of the layout without a member, each with its reason."),
    ]
    openings: tuple[OpeningFigures, ...]
    boxes: Annotated[
        tuple[BoxFigures, ...],
        Meta(description="The boxes; none in a wall that has no frame to fix them to."),
    ]
    meetings: Annotated[
        tuple[MeetingFigures, ...], Meta(description="The walls that end against this one.")
    ]
    rafters: Annotated[
        tuple[CrossingFigures, ...],
        Meta(description="The rafters that its top plate crosses, from left to right."),
    ]
    rafter_marks: Annotated[
        tuple[MarkFigures, ...],
        Meta(description="The marks of these rafters; `member` tells the rafter by its number."),
    ]
    pieces: Annotated[tuple[()], Meta(description="Pieces of board; none are worked out yet.")]
    cautions: Annotated[
        tuple[CautionFigures, ...], Meta(description="The cautions of this wall alone.")
    ]
    raising: Annotated[
        RaisingFigures | None,
        Meta(description="How it goes up, its weight and nails; null without a frame."),
    ]


class Nothing(_Part, frozen=True):
    """Figures that are promised and not worked out yet."""


class Figures(_Part, frozen=True):
    """Every computed figure of a job: exact, not rounded to the tape."""

    format: Literal["eavewright-figures/1"]
    length_unit: Annotated[Literal["mm"], Meta(description="The unit of every length.")]
    angle_unit: Annotated[Literal["degree"], Meta(description="The unit of every angle.")]
    walls: Annotated[
        tuple[WallFigures, ...], Meta(description="The walls in the order of the project.")
    ]
    plan: Annotated[PlanFigures, Meta(description="The room from above.")]
    stock: Annotated[Nothing, Meta(description="The cut plan; not worked out yet.")]
    sheets: Annotated[Nothing, Meta(description="The sheet plan; not worked out yet.")]
    bays: Annotated[tuple[()], Meta(description="Bays; none are worked out yet.")]
    order: Annotated[tuple[()], Meta(description="The order list; not worked out yet.")]
    raising_order: Annotated[
        tuple[TurnFigures, ...], Meta(description="The walls in the order they are put up in.")
    ]
    cautions: Annotated[
        tuple[CautionFigures, ...],
        Meta(description="All cautions: those of every wall, then those of the job."),
    ]
