"""The numbers of what is held, in words and figures; no Qt."""

import math

import msgspec

from core.checks import cut_message, range_message, rip_message, setting_message
from core.drawing.table import cuts_text, stock_name
from core.framing import Mark, Member, PlacedBox, PlacedOpening, Role, past_stops, spoken
from core.job import WallResult
from core.model import USUAL_SAW, Fixture, Leaf, Opening
from core.wording import Mm, Rad, Wording, message
from gui.things import Kind, thing_of


class Figure(msgspec.Struct, frozen=True):
    """A number or a few words under a caption; the heroes among them are `large`."""

    caption: str
    text: str
    large: bool = False


class Numbers(msgspec.Struct, frozen=True):
    """The name of a thing, what it is, and its figures."""

    name: str
    what: str
    figures: tuple[Figure, ...]


def numbers_of(result: WallResult, key: str | None, wording: Wording) -> Numbers:
    """The numbers of the thing with this key; those of the wall if nothing is held."""
    if key is None:
        return _wall(result, wording)
    member = result.frame.member(key) if result.frame else None
    if member is not None:
        return _member(result, member, wording)
    for placed in result.frame.openings if result.frame else ():
        if placed.key == key:
            return _opening(placed, wording)
    for box in result.boxes:
        if box.key == key:
            return _box(result, box, wording)
    for fixture in result.wall.fixtures:
        if key == f"{result.wall.letter}/{fixture.id}":
            return _fixture(result, fixture, wording)
    return _unframed(result, key, wording)


def role_word(role: Role, wording: Wording) -> str:
    """The trade's word for a role."""
    return wording.word(f"role.{role.value.replace(' ', '-')}")


def _member(result: WallResult, member: Member, wording: Wording) -> Numbers:
    figures = [
        *_lengths(member, wording),
        Figure(wording.word("held.cuts"), cuts_text(member, wording), large=True),
        *_face_up(member, wording),
        *_past_stops(result, member, wording),
        Figure(wording.word("held.stock"), _stock(member, wording)),
        *(_mark(result, mark, wording) for mark in result.marks if mark.member == member.key),
        *_rafters(result, member, wording),
    ]
    what = role_word(member.role, wording)
    return Numbers(result.label_of[member.key], what, tuple(figures))


def _lengths(member: Member, wording: Wording) -> list[Figure]:
    long, short = wording.length(member.long_point), wording.length(member.short_point)
    if long == short:
        return [Figure(wording.word("held.length"), long, large=True)]
    figures = [
        Figure(wording.word("held.long-point"), long, large=True),
        Figure(wording.word("held.short-point"), short, large=True),
    ]
    overall = wording.length(member.overall)
    if overall != long:
        figures.append(Figure(wording.word("held.overall"), overall))
    return figures


def _face_up(member: Member, wording: Wording) -> list[Figure]:
    """Which face lies up on the saw, where it makes a difference."""
    faces = [f.face_up for f in (*member.first_cut, *member.last_cut) if f.face_up != "any"]
    texts = [wording.word(f"face.{face}") for face in dict.fromkeys(faces)]
    return [Figure(wording.word("held.face-up"), " · ".join(texts))] if texts else []


def _rafters(result: WallResult, member: Member, wording: Wording) -> list[Figure]:
    """The middles of the rafters that a top plate crosses, along it from its left end."""
    crossings = result.frame.nailed.over_plate.crossings if result.frame else ()
    if member.role is not Role.TOP_PLATE:
        return []
    (left, low), (right, high), *_ = member.near
    run = math.hypot(1.0, (high - low) / (right - left))
    middles = ((c.left + c.right) / 2 for c in crossings)
    along = [wording.length((x - left) * run) for x in middles if left <= x <= right]
    return [Figure(wording.word("held.rafters-over"), ", ".join(along))] if along else []


def _past_stops(result: WallResult, member: Member, wording: Wording) -> list[Figure]:
    """How the cuts are made that the saw does not reach as it stands."""
    saw = result.inputs.habits.saw or USUAL_SAW
    hows = [(cut_message(f), setting_message(s)) for f, s in past_stops(member, saw)]
    if member.rip is not None and (how := rip_message(member.rip, saw)) is not None:
        hows.append((message("saw.rip-cut", bevel=Rad(abs(member.rip.bevel))), how))
    return [
        Figure(wording.say(message("held.past-stops", cut=cut)), wording.say(how))
        for cut, how in hows
    ]


def _stock(member: Member, wording: Wording) -> str:
    name = stock_name(member, wording)
    if member.spacer > 0:
        count = member.count - 1
        said = message("table.spacers", count=count, thick=Mm(member.spacer))
        thick = member.count * member.thickness + count * member.spacer
        built = message("held.built-up", thick=Mm(thick))
        return f"{member.count} × {name}, {wording.say(said)}: {wording.say(built)}"
    return name if member.count == 1 else f"{member.count} × {name}"


def _mark(result: WallResult, mark: Mark, wording: Wording) -> Figure:
    plate = result.frame.member(mark.plate) if result.frame else None
    caption = role_word(plate.role, wording) if plate else wording.word("held.rafter")
    label = result.label_of.get(mark.plate, "")
    text = wording.say(
        message(
            "held.mark",
            along=Mm(mark.along),
            end=wording.word(f"end.{mark.origin.value}"),
            letter=mark.letter,
            side=wording.word(f"side.{mark.x_side.value}"),
        )
    )
    return Figure(wording.say(message("held.mark-on", plate=caption, label=label)), text)


def _opening(placed: PlacedOpening, wording: Wording) -> Numbers:
    opening = placed.opening
    height = opening.head.mm - opening.sill.mm
    size = message("opening.size", width=Mm(opening.width.mm), height=Mm(height))
    figures = [
        Figure(wording.word("held.rough-opening"), wording.say(size), large=True),
        Figure(wording.word("held.left-edge"), wording.length(opening.left.mm), large=True),
        *_hung(opening, wording),
        Figure(wording.word("held.fits"), _ranges(placed, wording)),
    ]
    kind = wording.word(f"kind.{opening.kind.value.replace(' ', '-')}")
    return Numbers(spoken(opening.id), kind, tuple(figures))


def _hung(opening: Opening, wording: Wording) -> list[Figure]:
    """The sums of leaf and allowances, and how it opens."""
    figures = []
    if opening.leaf is not None:
        figures.append(Figure(wording.word("held.leaf"), sums_text(opening.leaf, wording)))
    if opening.hung is not None:
        hung = opening.hung
        way = message(
            "held.hangs",
            hinges=wording.word(f"hinges.{hung.hinges.value}"),
            swing=wording.word(f"swing.{hung.swing.name.lower()}"),
        )
        figures.append(Figure(wording.word("held.opens"), wording.say(way)))
    return figures


def sums_text(leaf: Leaf | None, wording: Wording) -> str:
    """Both sums in full, width then height; nothing where no leaf is stated."""
    if leaf is None:
        return ""
    sums = (
        ("leaf.width-sum", leaf.width.mm, leaf.wider.mm, leaf.rough_width),
        ("leaf.height-sum", leaf.height.mm, leaf.higher.mm, leaf.rough_height),
    )
    said = (
        message(message_id, leaf=Mm(one), more=Mm(more), sum=Mm(both))
        for message_id, one, more, both in sums
    )
    return "\n".join(wording.say(text) for text in said)


def _ranges(placed: PlacedOpening, wording: Wording) -> str:
    texts = [wording.say(range_message(low, high)) for low, high in placed.fit.ranges]
    return "\n".join(texts) or wording.word("held.fits-nowhere")


def _box(result: WallResult, placed: PlacedBox, wording: Wording) -> Numbers:
    box = placed.box
    stud = result.label_of.get(box.stud, wording.word("held.no-stud"))
    where = message("held.box-on", stud=stud, side=wording.word(f"side.{box.side.value}"))
    figures = [
        Figure(wording.word(f"held.height-{box.to.value}"), wording.length(box.height.mm), True),
        Figure(wording.word("held.box-stud"), wording.say(where), large=True),
        Figure(wording.word("held.box-edges"), _span(placed.left, placed.right, wording)),
        Figure(wording.word("held.box-heights"), _span(placed.bottom, placed.top, wording)),
    ]
    return Numbers(spoken(box.id), wording.word("kind.box"), tuple(figures))


def _fixture(result: WallResult, fixture: Fixture, wording: Wording) -> Numbers:
    """What hangs there, how high, and the pieces that back it."""
    key = f"{result.wall.letter}/{fixture.id}/"
    pieces = [m for m in result.frame.members if m.key.startswith(key)] if result.frame else []
    lengths = ", ".join(wording.length(m.long_point) for m in pieces)
    figures = [
        Figure(wording.word("held.height-centre"), wording.length(fixture.height.mm), large=True),
        Figure(wording.word("held.backed-by"), lengths or wording.word("held.nothing"), large=True),
    ]
    if pieces:
        face = wording.word(f"wall-face.{fixture.face.value.lower()}")
        stock = stock_name(pieces[0], wording)
        text = message("held.backed-text", count=len(pieces), stock=stock, face=face)
        figures.append(Figure(wording.word("held.stock"), wording.say(text)))
    kind = wording.word(f"fixture.{fixture.kind.value.replace(' ', '-')}")
    return Numbers(spoken(fixture.id), kind, tuple(figures))


def _span(low: float, high: float, wording: Wording) -> str:
    return wording.say(message("opening.range", low=Mm(low), high=Mm(high)))


def _unframed(result: WallResult, key: str, wording: Wording) -> Numbers:
    """A stated thing that could not be framed: only what it is."""
    thing = thing_of(result.wall, key)
    word = "kind.box" if thing and thing.kind is Kind.BOX else "role.stud"
    named = spoken(key.partition("/")[2])
    if thing and thing.kind is Kind.OPENING:
        kind = result.wall.opening(thing.id).kind.value.replace(" ", "-")
        word, named = f"kind.{kind}", spoken(thing.id)
    return Numbers(named, wording.word(word), ())


def _wall(result: WallResult, wording: Wording) -> Numbers:
    wall = result.wall
    figures = [Figure(wording.word("held.length"), wording.length(wall.run), large=True)]
    studs = [m for m in result.frame.members if m.role is Role.STUD] if result.frame else []
    if studs:
        longest = max(studs, key=lambda m: m.long_point)
        shortest = min(studs, key=lambda m: m.long_point)
        figures += [
            Figure(wording.word("held.studs"), str(len(studs)), large=True),
            Figure(wording.word("held.longest"), _labelled(result, longest, wording)),
            Figure(wording.word("held.shortest"), _labelled(result, shortest, wording)),
        ]
    return Numbers(wall.letter, wall.name, tuple(figures))


def _labelled(result: WallResult, member: Member, wording: Wording) -> str:
    return f"{result.label_of[member.key]}  {wording.length(member.long_point)}"
