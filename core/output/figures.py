"""Every computed figure of a job as plain data and as JSON text: exact, units named."""

import math
from typing import Any, Literal

import msgspec

from core.checks import Caution
from core.framing import (
    BareMark,
    Facet,
    Mark,
    Meeting,
    Member,
    Notch,
    PlacedBox,
    PlacedOpening,
    PlateSection,
    Rip,
    Setting,
    Tried,
    bare_marks,
    keys,
    rip_setting,
    saw_setting,
)
from core.job import Results, WallResult
from core.model import USUAL_SAW, Leaf, Opening, Saw, Wall, WallFace
from core.output.figures_form import (
    BareMarkFigures,
    BoxFigures,
    CautionFigures,
    CrossingFigures,
    EdgeFigures,
    Figures,
    LeafFigures,
    MarkFigures,
    MeasuredStudFigures,
    MeetingFigures,
    Nothing,
    OpeningFigures,
    PlateSectionFigures,
    ReadingFigures,
    WallFigures,
)
from core.output.figures_member_form import (
    FacetFigures,
    MemberFigures,
    NotchFigures,
    RipFigures,
    SawFigures,
)
from core.output.figures_plan import plan_figures
from core.output.figures_site import raising_figures, turn_figures
from core.roof import Reading, Survey, floor_line
from core.wording import Wording

XY = tuple[float, float]


def write_figures(results: Results, wording: Wording) -> str:
    """The figures as JSON text, indented by two spaces, with a line break at its end."""
    encoded = msgspec.json.encode(figures_of(results, wording))
    return msgspec.json.format(encoded, indent=2).decode() + "\n"


def figures(results: Results, wording: Wording) -> dict[str, Any]:
    """The figures as plain data: lengths in mm, angles in degrees, as `Figures` describes them.

    Cautions are in the words of `wording`; nothing else depends on it.

    Raises:
        ValueError: when a figure is not finite.
    """
    # Through JSON, since the direct way to plain data keeps tuples, which JSON does not have.
    encoded = msgspec.json.encode(figures_of(results, wording))
    return msgspec.json.decode(encoded, type=dict[str, Any])


def figures_of(results: Results, wording: Wording) -> Figures:
    """The figures as values, mm and degrees."""
    return Figures(
        format="eavewright-figures/1",
        length_unit="mm",
        angle_unit="degree",
        walls=tuple(_wall(result, results, wording) for result in results.walls),
        plan=plan_figures(results.project.room),
        stock=Nothing(),
        sheets=Nothing(),
        bays=(),
        order=(),
        raising_order=turn_figures(results),
        cautions=_cautions(results.all_cautions, wording),
    )


def _wall(result: WallResult, results: Results, wording: Wording) -> WallFigures:
    wall, line, frame = result.wall, result.inputs.near, result.frame
    labels, saw = result.label_of, result.inputs.habits.saw or USUAL_SAW
    return WallFigures(
        name=wall.name,
        letter=wall.letter,
        length=_exact(wall.run),
        roof_line=_points(line.points() if line else ()),
        floor_line=_points(floor_line(wall).points() if wall.run else ()),
        measured=_measured(result.survey),
        measured_studs=tuple(_tried(tried) for tried in frame.measured) if frame else (),
        members=tuple(_member(m, labels[m.key], saw) for m in frame.members) if frame else (),
        plate_sections=tuple(_section(s) for s in frame.sections) if frame else (),
        marks=tuple(_mark(mark) for mark in result.marks),
        bare_marks=tuple(map(_bare, bare_marks(wall, frame))) if frame else (),
        openings=_openings(wall, frame.openings if frame else ()),
        boxes=tuple(_box(placed) for placed in result.boxes),
        meetings=tuple(_meeting(met) for met in result.inputs.around.meetings),
        rafters=_crossings(result),
        rafter_marks=tuple(_mark(mark) for mark in result.over_marks),
        pieces=(),
        cautions=_cautions(result.cautions, wording),
        raising=raising_figures(results, wall.letter, wording),
    )


def _measured(survey: Survey | None) -> tuple[ReadingFigures, ...]:
    if survey is None:
        return ()
    return (
        *(_reading("roof", reading) for reading in survey.roof),
        *(_reading("floor", reading) for reading in survey.floor),
    )


def _reading(line: Literal["roof", "floor"], reading: Reading) -> ReadingFigures:
    return ReadingFigures(
        line=line,
        at=_exact(reading.at),
        stated=_exact(reading.stated),
        measured=_exact(reading.measured),
        expected=None if reading.expected is None else _exact(reading.expected),
    )


def _tried(tried: Tried) -> MeasuredStudFigures:
    return MeasuredStudFigures(
        key=tried.key,
        worked=_exact(tried.worked),
        length=_exact(tried.length),
        corrected=tried.corrected,
    )


def _member(member: Member, label: str, saw: Saw) -> MemberFigures:
    near_left, near_right, far_left, far_right = (_exact(edge) for edge in member.edges)
    return MemberFigures(
        key=member.key,
        label=label,
        role=member.role,
        section=(_exact(member.thickness), _exact(member.width)),
        count=member.count,
        spacer=_exact(member.spacer),
        left=_exact(member.left),
        bottom=_exact(member.bottom),
        edges=(near_left, near_right, far_left, far_right),
        long_point=_exact(member.long_point),
        short_point=_exact(member.short_point),
        overall=_exact(member.overall),
        top_cut=tuple(_facet(facet, saw) for facet in member.last_cut),
        bottom_cut=tuple(_facet(facet, saw) for facet in member.first_cut),
        near=_points(member.near),
        far=_points(member.far),
        rip=_rip(member.rip, saw),
        notches=tuple(map(_notch, member.notches)),
        stops=member.stops,
        lean=_exact(math.degrees(member.lean)),
    )


def _notch(notch: Notch) -> NotchFigures:
    return NotchFigures(
        purlin=notch.purlin,
        side=notch.side,
        depth=_exact(notch.depth),
        bottom=_exact(notch.bottom),
        top=None if notch.top is None else _exact(notch.top),
    )


def _rip(rip: Rip | None, saw: Saw) -> RipFigures | None:
    if rip is None:
        return None
    return RipFigures(
        width=_exact(rip.width),
        bevel=_exact(math.degrees(rip.bevel)),
        saw=_setting(rip_setting(rip, saw)),
    )


def _section(section: PlateSection) -> PlateSectionFigures:
    near, far = (
        EdgeFigures(_exact(e.underside), _exact(e.top)) for e in (section.near, section.far)
    )
    return PlateSectionFigures(
        left=_exact(section.left),
        right=_exact(section.right),
        lie=section.lie,
        tilt=_exact(math.degrees(section.tilt)),
        near_edge=near,
        far_edge=far,
        need=_exact(section.need),
        have=_exact(section.have),
    )


def _facet(facet: Facet, saw: Saw) -> FacetFigures:
    return FacetFigures(
        bevel=_exact(math.degrees(facet.bevel)),
        mitre=_exact(math.degrees(facet.mitre)),
        face_up=facet.face_up,
        saw=_setting(saw_setting(facet, saw)),
    )


def _setting(setting: Setting) -> SawFigures:
    return SawFigures(
        way=setting.way,
        bevel=_exact(math.degrees(setting.bevel)),
        mitre=_exact(math.degrees(setting.mitre)),
    )


def _mark(mark: Mark) -> MarkFigures:
    return MarkFigures(
        member=mark.member,
        plate=mark.plate,
        letter=mark.letter,
        edge=mark.edge,
        origin=mark.origin,
        x_side=mark.x_side,
        along_sole=_exact(mark.along_sole),
        along_top=None if mark.along_top is None else _exact(mark.along_top),
        begins=_exact(mark.begins),
        x=_exact(mark.x),
    )


def _bare(bare: BareMark) -> BareMarkFigures:
    return BareMarkFigures(
        key=bare.key,
        place=bare.place,
        left=_exact(bare.left),
        why=bare.why,
        by=bare.by,
        off=_exact(bare.off),
    )


def _openings(wall: Wall, placed: tuple[PlacedOpening, ...]) -> tuple[OpeningFigures, ...]:
    """The openings in their stated order; without a frame none of them fits anywhere."""
    found = {p.opening.id: p for p in placed}
    return tuple(_opening(wall, o, found.get(o.id)) for o in wall.openings)


def _opening(wall: Wall, opening: Opening, placed: PlacedOpening | None) -> OpeningFigures:
    ranges = placed.fit.ranges if placed else ()
    heads = placed.heads if placed else (opening.head.mm, opening.head.mm)
    return OpeningFigures(
        key=keys.opening(wall.letter, opening.id),
        id=opening.id,
        kind=opening.kind,
        left=_exact(opening.left.mm),
        width=_exact(opening.width.mm),
        head=_exact(opening.head.mm),
        heads=(_exact(heads[0]), _exact(heads[1])),
        rake=_exact(math.degrees(math.atan(placed.rake))) if placed else 0.0,
        sill=_exact(opening.sill.mm),
        leaf=_leaf(opening.leaf) if opening.leaf is not None else None,
        hinges=opening.hung.hinges if opening.hung is not None else None,
        swing=opening.hung.swing if opening.hung is not None else None,
        fits=placed is not None and placed.fit.fits,
        ranges=tuple((_exact(low), _exact(high)) for low, high in ranges),
    )


def _leaf(leaf: Leaf) -> LeafFigures:
    return LeafFigures(
        width=_exact(leaf.width.mm),
        height=_exact(leaf.height.mm),
        wider=_exact(leaf.wider.mm),
        higher=_exact(leaf.higher.mm),
    )


def _box(placed: PlacedBox) -> BoxFigures:
    box = placed.box
    return BoxFigures(
        key=placed.key,
        id=box.id,
        stud=placed.stud,
        side=box.side,
        face=box.face or WallFace.A,
        left=_exact(placed.left),
        bottom=_exact(placed.bottom),
        width=_exact(box.width.mm),
        tall=_exact(box.tall.mm),
        height=_exact(box.height.mm),
        to=box.to,
    )


def _meeting(met: Meeting) -> MeetingFigures:
    left, right = _exact(met.left), _exact(met.right)
    return MeetingFigures(wall=met.other, end=met.end, face=met.face, left=left, right=right)


def _crossings(result: WallResult) -> tuple[CrossingFigures, ...]:
    """The rafters over the plate; without a frame there is no plate."""
    crossings = result.frame.nailed.over_plate.crossings if result.frame else ()
    return tuple(
        CrossingFigures(rafter=c.number, left=_exact(c.left), right=_exact(c.right))
        for c in crossings
    )


def _cautions(cautions: tuple[Caution, ...], wording: Wording) -> tuple[CautionFigures, ...]:
    return tuple(CautionFigures(c.severity, c.key, wording.say(c.message)) for c in cautions)


def _points(points: tuple[XY, ...]) -> tuple[XY, ...]:
    return tuple((_exact(x), _exact(y)) for x, y in points)


def _exact(value: float) -> float:
    """The number itself; minus zero becomes plain zero, and what is no number is refused."""
    if not math.isfinite(value):
        raise ValueError(f"a figure must be a finite number, not {value}")
    return value + 0.0
