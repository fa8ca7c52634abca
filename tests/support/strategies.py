"""Generated rooms, walls and projects as people have them in their eaves, in both systems.

A wall stands inside its room and is at least 600 mm long; openings stand side by side with studs'
room between them. Everything makes sense to `core.storage`; what is drawn need not be buildable.
"""

from __future__ import annotations

import msgspec
from hypothesis import strategies as st

from core.lengths import Length, Pitch, System, Tape, Unit, parse_pitch
from core.model import (
    AddedStud,
    Blocking,
    Box,
    BoxHeight,
    BoxMade,
    ClearZone,
    CutPiece,
    DoubledStud,
    EndLean,
    EndStud,
    Fixture,
    FixtureKind,
    FloorSeen,
    Habits,
    Hanging,
    Header,
    HeaderKind,
    HeadLie,
    Joint,
    Layout,
    Leaf,
    Letters,
    LineEdge,
    MarkMade,
    MeasuredStud,
    MeetingKind,
    MovedStud,
    Nailing,
    Near,
    Opening,
    OpeningKind,
    PassesPurlin,
    Passing,
    PieceMade,
    PlateJoint,
    PlateLie,
    PlateRules,
    Point,
    PrintedLabel,
    PrintedWall,
    Project,
    Rafter,
    RafterBacking,
    RidgeBeam,
    RoofBuilt,
    Room,
    Saw,
    Side,
    SiteRecord,
    Slope,
    Species,
    StandsOn,
    Station,
    Swing,
    Timber,
    TopPlate,
    TradeWords,
    Wall,
    WallFace,
    WallRules,
    next_letter,
)

SYSTEMS = st.sampled_from(System)
NAMES = st.text(st.sampled_from("abcdefgh ÄéŁ12'\"-½/\\"), max_size=20)
_FINE = {System.INCH: 25.4 / 16, System.METRIC: 1.0}
_UNITS = {
    System.INCH: st.sampled_from([Unit.INCH, Unit.INCH, Unit.FEET]),
    System.METRIC: st.sampled_from([Unit.MM, Unit.MM, Unit.CM, Unit.M]),
}
_TIMBERS = {
    System.INCH: ((1.5, 2.5), (1.5, 3.5), (1.5, 5.5)),
    System.METRIC: ((38, 63), (38, 89), (45, 95)),
}
_SPACINGS = {System.INCH: (12, 16, 19.2, 24), System.METRIC: (300, 400, 600)}
_LEAF = 900
"""The widest opening, mm."""


@st.composite
def lengths(draw: st.DrawFn, least: float, most: float, system: System) -> Length:
    """A length from `least` to `most` mm that a tape of the system shows, in any of its units."""
    step = _FINE[system]
    count = draw(st.integers(-int(-least // step), int(most // step)))
    if system is System.INCH:
        return Length.of_inches(count / 16, draw(_UNITS[system]))
    return Length(float(count), draw(_UNITS[system]))


@st.composite
def pitches(draw: st.DrawFn) -> Pitch:
    """A pitch of 10 to 55 degrees, as a rise in 12 or an angle or two heights."""
    texts = st.one_of(
        st.integers(5, 34).map(lambda halves: f"{halves / 2:g} in 12"),
        st.integers(20, 110).map(lambda halves: f"{halves / 2:g}°"),
        st.integers(10, 60).map(lambda rise: f"33 in at 0 in, {33 + rise} in at 48 in"),
    )
    return parse_pitch(draw(texts), Unit.INCH)


@st.composite
def rooms(draw: st.DrawFn, system: System = System.INCH) -> Room:
    """A room 3 to 12 m wide under one or two slopes, perhaps with a ceiling or a ridge beam."""
    sides = draw(st.sampled_from(["left", "right", "both", "both"]))
    eave = draw(lengths(0, 2000, system))
    # Eaves that differ by little keep the ridge inside the room, however flat the roof is.
    other = draw(lengths(max(0.0, eave.mm - 400), min(2000.0, eave.mm + 400), system))
    return Room(
        width=draw(lengths(3000, 12_000, system)),
        length=draw(lengths(3000, 15_000, system)),
        rafter=draw(_rafters(system)),
        left=Slope(eave, draw(pitches())) if sides != "right" else None,
        right=Slope(other, draw(pitches())) if sides != "left" else None,
        ridge_beam=draw(st.none() | _beams(system)) if sides == "both" else None,
        flat_ceiling=draw(st.none() | lengths(2000, 2800, system)),
        roof_built=draw(st.none() | st.sampled_from(RoofBuilt)),
        floor_seen=draw(st.none() | st.sampled_from(FloorSeen)),
    )


def timbers(system: System) -> st.SearchStrategy[Timber]:
    """A dressed cross-section that is common in the system."""
    unit = system.bare_unit
    each = float(unit.mm_each)
    return st.sampled_from(_TIMBERS[system]).map(
        lambda sides: Timber(*(Length(side * each, unit) for side in sides))
    )


@st.composite
def walls(draw: st.DrawFn, room: Room, system: System = System.INCH, letter: str = "A") -> Wall:
    """A wall inside the room: up the slope, along the ridge, or astride, drawn from either end."""
    left, right = draw(_ends(room, system))
    bare = Wall(
        letter=letter,
        name=draw(NAMES),
        left_end=left,
        right_end=right,
        stud=draw(timbers(system)),
        sole_plate=draw(timbers(system)),
        top_plate=draw(_top_plates(system)),
        layout=draw(_layouts(system)),
        stands_on=draw(st.sampled_from([None, None, None, *StandsOn])),
    )
    opened = msgspec.structs.replace(bare, openings=draw(_openings(bare.run, system)))
    changed = msgspec.structs.replace(
        draw(_with_nailed(draw(_with_changes(opened, system)), system)),
        boxes=draw(_boxes(opened, system)),
        **draw(_measured(opened, system)),
    )
    return draw(ruled(changed, system))


@st.composite
def ruled(draw: st.DrawFn, wall: Wall, system: System) -> Wall:
    """The wall with rules of framing, a layout through a stated point, or a doubled stud."""
    some = lengths(0, 200, system)
    rules = st.builds(
        WallRules,
        st.sampled_from(Near),
        st.sampled_from(Near),
        st.none() | some,
        st.none() | lengths(300, 3000, system),
        *(st.booleans() for _ in range(3)),
        st.none() | st.integers(1, 100),
    )
    studs = st.sampled_from(["end/left", "layout/1", "layout/3", "extra-0"])
    doubled = DoubledStud(f"{wall.letter}/{draw(studs)}", draw(st.sampled_from(Side)))
    origin = draw(st.none() | lengths(-500, 2000, system))
    return msgspec.structs.replace(
        wall,
        layout=msgspec.structs.replace(wall.layout, origin=origin),
        rules=draw(st.none() | rules),
        doubled=(doubled,) if draw(st.booleans()) else (),
    )


def _top_plates(system: System) -> st.SearchStrategy[TopPlate]:
    lies = st.none() | st.sampled_from(PlateLie)
    return st.builds(TopPlate, timbers(system), st.integers(0, 2), lies)


@st.composite
def projects(draw: st.DrawFn, system: System | None = None, most_walls: int = 3) -> Project:
    """A room and its walls, lettered in their order, with somebody's habits."""
    from roof_strategies import with_roof_parts  # which builds on this module

    used = draw(SYSTEMS) if system is None else system
    room = draw(rooms(used).flatmap(lambda plain: with_roof_parts(plain, used)))
    project = Project(
        draw(NAMES),
        used,
        room,
        habits=draw(_habits()),
        species=draw(st.none() | st.sampled_from(Species)),
        nailing=draw(_nailing(used)),
    )
    for _ in range(draw(st.integers(0, most_walls))):
        wall = draw(walls(project.room, used, next_letter(project)))
        wall = draw(_passing(wall, project.room))
        project = msgspec.structs.replace(project, walls=(*project.walls, wall))
    return project


_OFFSETS = st.integers(-60, 60).map(lambda mm: Length(float(mm)))
"""How far surfaces at the ends of a wall are out of plumb."""


@st.composite
def _passing(draw: st.DrawFn, wall: Wall, room: Room) -> Wall:
    """The wall passing some of the room's purlins in its own way, its ends perhaps out of plumb."""
    chosen = [p.id for p in room.purlins if draw(st.booleans())]
    passes = tuple(PassesPurlin(name, draw(st.sampled_from(Passing))) for name in chosen)
    lean = st.none() | st.none() | st.builds(EndLean, _OFFSETS, st.sampled_from(EndStud))
    return msgspec.structs.replace(wall, passes=passes, left_lean=draw(lean), right_lean=draw(lean))


@st.composite
def site_records(draw: st.DrawFn, project: Project) -> SiteRecord:
    """The record of a site where some studs of the project's walls were printed, and some cut."""
    labels = tuple(
        PrintedLabel(f"{wall.letter}/layout/{place}", f"{wall.letter}{place}")
        for wall in project.walls
        for place in range(1, 1 + draw(st.integers(0, 3)))
    )
    made = tuple(draw(_pieces_made(label)) for label in labels)
    cut = tuple(CutPiece(piece, draw(st.booleans())) for piece in made)
    boxes = (BoxMade("box-1", Length(100.0), Length(300.5)),)
    sheets = (PrintedWall(w.letter, "2026-03-01", made, boxes) for w in project.walls[:1])
    return SiteRecord(labels, cut, tuple(sheets))


@st.composite
def _pieces_made(draw: st.DrawFn, printed: PrintedLabel) -> PieceMade:
    long, short, along = (Length(draw(st.integers(0, 4_000_000)) / 1000) for _ in range(3))
    marks = (MarkMade(f"{printed.key}/on", along),)
    return PieceMade(printed.key, printed.label, long, short, marks)


def _spacings(system: System) -> st.SearchStrategy[Length]:
    unit = system.bare_unit
    each = float(unit.mm_each)
    return st.sampled_from(_SPACINGS[system]).map(lambda spacing: Length(spacing * each, unit))


def _beams(system: System) -> st.SearchStrategy[RidgeBeam]:
    return st.builds(RidgeBeam, lengths(40, 200, system), lengths(2000, 3000, system))


@st.composite
def _ends(draw: st.DrawFn, room: Room, system: System) -> tuple[Point, Point]:
    """Two points inside the room; along at least one of its sides they are far apart."""
    way = draw(st.sampled_from(["across", "along", "astride"]))
    near = Point(*(draw(lengths(0, 0.4 * side, system)) for side in _sides(room)))
    far = Point(*(draw(lengths(0.6 * side, side, system)) for side in _sides(room)))
    if way == "across":
        far = Point(far.across, near.along)
    if way == "along":
        far = Point(near.across, far.along)
    return draw(st.sampled_from([(near, far), (far, near)]))


def _sides(room: Room) -> tuple[float, float]:
    return room.width.mm, room.length.mm


def _layouts(system: System) -> st.SearchStrategy[Layout]:
    return st.builds(Layout, _spacings(system), st.sampled_from(Side), lengths(0, 16, system))


@st.composite
def _openings(draw: st.DrawFn, run: float, system: System) -> tuple[Opening, ...]:
    """Up to three openings, each in a part of the wall of its own."""
    parts = min(3, int(run // (_LEAF + 300)))
    openings = []
    for index in range(draw(st.integers(0, parts))):
        start = index * run / parts + 150
        width = draw(lengths(300, _LEAF, system))
        sill, head = draw(_heights(system))
        openings.append(
            Opening(
                id=f"opening-{index + 1}",
                kind=draw(st.sampled_from(OpeningKind)),
                left=draw(lengths(start, start + run / parts - 250 - width.mm, system)),
                width=width,
                head=head,
                header=draw(_headers(system)),
                sill=sill,
                leaf=draw(st.none() | _leaves(width, head.mm - sill.mm, system)),
                hung=draw(st.none() | _HANGINGS),
                head_lie=draw(st.none() | st.just(HeadLie.RAKED)),
            )
        )
    return tuple(openings)


_HANGINGS = st.builds(Hanging, st.sampled_from(Side), st.sampled_from(Swing))


def _leaves(width: Length, height: float, system: System) -> st.SearchStrategy[Leaf]:
    """A leaf whose sums with what is added are a rough opening."""

    def leaf(wider: Length, higher: Length) -> Leaf:
        wide = Length(width.mm - wider.mm, width.unit)
        return Leaf(wide, Length(height - higher.mm, width.unit), wider, higher)

    some = lengths(0, 60, system)
    return st.builds(leaf, some, some)


@st.composite
def _heights(draw: st.DrawFn, system: System) -> tuple[Length, Length]:
    """The sill and the head of a door or a window."""
    sill = draw(st.just(Length(0.0)) | lengths(300, 900, system))
    return sill, draw(lengths(sill.mm + 300, sill.mm + 1200, system))


def _headers(system: System) -> st.SearchStrategy[Header]:
    kinds = st.sampled_from(HeaderKind)
    spacers = st.none() | lengths(0, 20, system)
    return st.builds(Header, kinds, timbers(system), st.integers(1, 3), spacers)


@st.composite
def _boxes(draw: st.DrawFn, wall: Wall, system: System) -> tuple[Box, ...]:
    """Up to two boxes on studs that a wall is likely to have."""
    kings = [f"{opening.id}/king/left" for opening in wall.openings]
    studs = st.sampled_from(["end/left", "end/right", "layout/1", "layout/2", *kings])
    return tuple(
        Box(
            id=f"box-{number}",
            stud=f"{wall.letter}/{draw(studs)}",
            side=draw(st.sampled_from(Side)),
            height=draw(lengths(250, 1300, system)),
            to=draw(st.sampled_from(BoxHeight)),
            width=draw(lengths(50, 110, system)),
            depth=draw(lengths(40, 80, system)),
            tall=draw(lengths(70, 110, system)),
            face=draw(st.none() | st.sampled_from(WallFace)),
        )
        for number in range(1, 1 + draw(st.integers(0, 2)))
    )


@st.composite
def _with_changes(draw: st.DrawFn, wall: Wall, system: System) -> Wall:
    """The wall with studs of the layout moved or left out, and others added."""
    last = max(1, int(wall.run // wall.layout.spacing.mm))
    places = draw(st.lists(st.integers(1, last), unique=True, max_size=3))
    cut = draw(st.integers(0, len(places)))
    along = lengths(50, wall.run - 100, system)
    return msgspec.structs.replace(
        wall,
        moved=tuple(MovedStud(place, draw(along)) for place in places[:cut]),
        left_out=tuple(places[cut:]),
        added=tuple(AddedStud(f"extra-{n}", draw(along)) for n in range(draw(st.integers(0, 2)))),
    )


@st.composite
def _measured(draw: st.DrawFn, wall: Wall, system: System) -> dict[str, object]:
    """Mostly nothing; else a floor out of level, a fit, and a measured stud or two."""
    if draw(st.sampled_from([True, True, False])):
        return {}
    places = st.lists(st.integers(0, int(wall.run // 100)), unique=True, max_size=4)
    unit, step = (system.bare_unit, _FINE[system])

    def line(low: float, high: float) -> tuple[Station, ...]:
        return tuple(
            Station(Length(place * 64 * step, unit), draw(lengths(low, high, system)))
            for place in draw(places)
        )

    studs = draw(st.lists(st.sampled_from(["end/left", "layout/1"]), unique=True, max_size=2))
    return {
        "roof_points": line(900, 2400),
        "floor_points": line(-20, 20),
        "level_line": draw(st.none() | st.just(Length(0.0, unit))),
        "measured_studs": tuple(
            MeasuredStud(
                f"{wall.letter}/{s}", draw(lengths(300, 2000, system)), draw(st.booleans())
            )
            for s in studs
        ),
        "fit": draw(st.none() | lengths(-3, 6, system)),
    }


@st.composite
def _with_nailed(draw: st.DrawFn, wall: Wall, system: System) -> Wall:
    """The wall with blocking, a fixture, backing between rafters or a slip gap, or none of them."""
    limit = st.none() | lengths(300, 3000, system)
    rows = st.lists(lengths(100, 2500, system), max_size=2).map(tuple)
    fixture = st.builds(
        Fixture,
        st.just("fixture-1"),
        st.sampled_from(FixtureKind),
        lengths(0, wall.run, system),
        lengths(100, 1500, system),
        lengths(200, 2000, system),
        timbers(system),
        st.sampled_from(WallFace),
    )
    zone = st.builds(
        ClearZone,
        st.just("kept-clear-1"),
        lengths(0, wall.run, system),
        lengths(0, 1500, system),
        lengths(100, 1500, system),
        lengths(100, 2000, system),
    )
    return msgspec.structs.replace(
        wall,
        blocking=draw(st.none() | st.builds(Blocking, rows, limit, limit, st.booleans())),
        fixtures=tuple(draw(st.lists(fixture, max_size=1))),
        kept_clear=tuple(draw(st.lists(zone, max_size=1))),
        meeting=draw(st.none() | st.sampled_from(MeetingKind)),
        rafter_backing=draw(
            st.none() | st.builds(RafterBacking, timbers(system), lengths(200, 900, system))
        ),
        slip_gap=draw(st.none() | lengths(3, 30, system)),
    )


@st.composite
def _rafters(draw: st.DrawFn, system: System) -> Rafter:
    """Rafters on centre, or at some measured places."""
    places = draw(st.lists(lengths(0, 3000, system), max_size=3))
    return Rafter(draw(timbers(system)), draw(_spacings(system)), tuple(places))


@st.composite
def _nailing(draw: st.DrawFn, system: System) -> tuple[Nailing, ...]:
    """Up to two joints that are nailed otherwise than usual."""
    joints = draw(st.lists(st.sampled_from(Joint), unique=True, max_size=2))
    return tuple(
        Nailing(
            joint,
            draw(st.none() | st.sampled_from(["10d box", "6 × 100 screw"])),
            draw(st.none() | st.integers(1, 8)),
            draw(st.none() | _spacings(system)),
        )
        for joint in joints
    )


def _habits() -> st.SearchStrategy[Habits]:
    sixteenths = Tape(System.INCH, Length.of_inches(1 / 16), feet=True)
    eighths = Tape(System.INCH, Length.of_inches(1 / 8))
    halves = Tape(System.METRIC, Length(0.5))
    tapes = st.sampled_from([*map(Tape.usual, System), sixteenths, eighths, halves])
    letters = st.sampled_from([Letters(), Letters(stud="S", trimmer="J")])
    saws = st.none() | st.builds(Saw, pitches(), pitches())
    rules = st.none() | _plate_rules()
    words = st.none() | st.sampled_from(TradeWords)
    return st.builds(Habits, tapes, st.sampled_from(LineEdge), letters, saws, rules, words)


@st.composite
def _plate_rules(draw: st.DrawFn) -> PlateRules:
    system = draw(SYSTEMS)
    return PlateRules(
        draw(st.none() | lengths(1200, 6000, system)),
        draw(st.none() | lengths(0, 1200, system)),
        draw(st.none() | st.sampled_from(PlateJoint)),
    )
