"""A wall's elevation: everything that stands in it, its numbers and its two tapes."""

from core.drawing import lengths, lying, measured, overhead, rough, strings, tapes, timber, zones
from core.drawing.elements import Drawing, Element
from core.drawing.placing import Ground
from core.drawing.surfaces import over_surfaces, surface_rects, surfaces
from core.drawing.swing import swing
from core.drawing.view import Show, View
from core.framing import Frame, Mark, Member, Role, keys
from core.job import WallResult
from core.kept import Kept
from core.roof import Segment, below
from core.wording import Wording


def elevation(
    result: WallResult, view: View, wording: Wording, kept: Kept | None = None
) -> Drawing:
    """The drawing of a wall seen from face A, in model mm; empty if the wall has no frame.

    What is `kept` from earlier drawings of its owner is drawn from; the outcome is the same.
    """
    line, frame = result.inputs.near, result.frame
    if line is None or frame is None:
        return ()
    kept = kept or Kept()
    kept.next_round()
    drawing: list[Element] = [
        *measured.floor(result.wall, view),
        *measured.stated_roof(result),
        *kept.of(timber.roof, over_surfaces(line, frame), view),
        *timber.members(_back_to_front(frame.members), kept),
    ]
    drawing += overhead.rafters(line, frame, result.wall.run)
    drawing += timber.purlins(result.inputs.crossings)
    drawing += surfaces(frame, line, view)
    drawing += timber.rafters(_rafters(result))
    for placed in frame.openings:
        drawing += timber.opening(placed, line)
    for box in result.boxes:
        drawing += timber.box(box)
    drawing += zones.zone_outlines(result.wall)
    texts = _texts(result, frame, view, wording, kept)
    for placed in frame.openings:
        drawing += swing(placed, view, tuple(texts))
    drawing += texts
    if Show.TAPES in view.shows:
        drawing += _under_tapes(result, view, wording, kept)
        drawing += tapes.top_tapes(
            frame, line, result.marks, view, wording, kept, result.over_marks
        )
    if Show.DIMENSIONS in view.shows:
        below = marks_reach(result, view, wording, kept)
        drawing += strings.strings(result.wall.run, line, frame, below, view, wording)
    return tuple(drawing)


def _under_tapes(result: WallResult, view: View, wording: Wording, kept: Kept) -> Drawing:
    """The tape under the sole plate, or under the rafters that the wall stands on."""
    if result.inputs.foot is None:
        low = measured.lowest(result.wall)
        return tapes.sole_tape(result.wall.run, sole_marks(result), view, wording, low, kept)
    on_rafters = tuple(m for m in result.marks if m.plate == keys.rafters(result.wall.letter))
    return tapes.rafter_tapes(_rafters(result), on_rafters, view, wording, kept)


def _rafters(result: WallResult) -> tuple[Segment, ...]:
    """The rafters that the wall stands on, as far as they lie under its roof; none on the floor."""
    near, foot = result.inputs.near, result.inputs.foot
    return () if near is None or foot is None else below(foot[0], near)


def marks_reach(
    result: WallResult, view: View, wording: Wording, kept: Kept | None = None
) -> float:
    """How far the sole plate's tape and figures reach below the floor, mm on paper.

    In a steady view room is kept for the longest figure that the wall could have, so that the
    strings below stay where they are when a mark moves from a whole inch to a sixteenth.
    """
    if Show.TAPES not in view.shows:
        return 0.0
    kept = kept or Kept()
    figures = [(m.along, m.letter) for m in sole_marks(result)]
    if view.steady:
        longest = tapes.longest_within(result.wall.run, wording.tape)
        figures += [(longest, letter) for letter in {letter for _, letter in figures}]
    widths = [kept.of(tapes.figure_width, *figure, view.size, wording) for figure in figures]
    return strings.figures_reach(widths) - measured.lowest(result.wall) * view.scale


def sole_marks(result: WallResult) -> list[Mark]:
    """The marks on the sole plate."""
    return [m for m in result.marks if m.along_top is None]


def _texts(
    result: WallResult, frame: Frame, view: View, wording: Wording, kept: Kept
) -> list[Element]:
    """All that is written in the wall; what has the fewest places to stand finds its room first."""
    ground = _ground(result, frame, view, kept)
    labels = result.label_of
    written = {m.key: kept.of(wording.length, m.long_point) for m in frame.members if not m.lies}
    drawing: list[Element] = []
    for placed in frame.openings:
        drawing += rough.opening_texts(placed, frame, view, wording, ground)
    drawing += zones.zone_texts(result.wall, view, wording, ground)
    if Show.LABELS in view.shows:
        drawing += lying.beam_texts(frame, labels, view, ground)
    drawing += lengths.upright_texts(frame, labels, written, view, ground)
    if Show.LABELS in view.shows:
        drawing += lying.plate_texts(frame, labels, view, ground)
    return drawing


def _ground(result: WallResult, frame: Frame, view: View, kept: Kept) -> Ground:
    """What stands in the way of texts: all timber but plates, rafters, boxes, heavy outlines."""
    ground = Ground(400.0, kept)
    upright = [m for m in frame.members if m.near and m.role is not Role.TOP_PLATE]
    for rect in (rect for m in upright for rect in timber.covered(m)):
        ground.add_timber(rect)
    for purlin in result.inputs.crossings:
        ground.add_timber((purlin.near[0], purlin.bottom, purlin.near[1], purlin.top))
    if result.inputs.near is not None:
        rects = overhead.rafter_rects(result.inputs.near, frame, result.wall.run)
        for rect in (*rects, *surface_rects(frame, result.inputs.near, view)):
            ground.add_writing(rect)
    for box in result.boxes:
        ground.add_writing((box.left, box.bottom, box.right, box.top))
    half = view.model(0.5)
    for placed in frame.openings:
        if not placed.fit.fits and result.inputs.near is not None:
            for left, bottom, right, top in timber.edges(placed, result.inputs.near):
                ground.add_timber((left - half, bottom - half, right + half, top + half))
    return ground


def _back_to_front(members: tuple[Member, ...]) -> tuple[Member, ...]:
    """Plates first, so that what stands between them is drawn over their edges."""
    plates = (Role.SOLE_PLATE, Role.TOP_PLATE)
    return tuple(sorted((m for m in members if m.near), key=lambda m: m.role not in plates))
