"""The cautions that purlins give rise to in a wall: clashes, plates they cut, notched studs."""

from collections.abc import Iterator

from core.checks.caution import Caution, Severity
from core.framing import Clash, Frame, Member, Notch, Passed, PlacedOpening, spoken
from core.model import Wall
from core.wording import Message, Mm, message

BEARING = 0.25
"""The most of a stud that a notch may take in a bearing or an exterior wall: R602.6 of the 2018 IRC
(p. 203). It speaks of the stud's width; a notch in its thickness is held to the same share."""

NONBEARING = 0.40
"""The same in a wall that carries no load."""


def purlin_cautions(wall: Wall, passed: Passed, inside: str | None) -> Iterator[Caution]:
    """What purlins run into, with the nearest places that are clear, and the plates they cut."""
    if inside is not None:
        text = message("purlin.inside", letter=wall.letter, purlin=spoken(inside))
        yield Caution(Severity.UNBUILDABLE, wall.letter, text)
    openings: set[tuple[str, str]] = set()
    for clash in passed.clashes:
        placed = _opening_of(clash, passed)
        member = passed.frame.member(clash.key)
        if member is not None and member.lies and placed is None:
            yield Caution(Severity.UNBUILDABLE, clash.key, _lying(wall, member, clash))
        elif placed is None:
            yield Caution(Severity.UNBUILDABLE, clash.key, _stud(wall, clash))
        elif (placed.key, clash.purlin) not in openings:
            openings.add((placed.key, clash.purlin))
            text = _opening(wall, placed, clash)
            yield Caution(Severity.UNBUILDABLE, placed.key, text)
    for purlin, left_out in passed.cut:
        text = message(
            "purlin.cuts-plate", letter=wall.letter, purlin=spoken(purlin), gap=Mm(left_out)
        )
        yield Caution(Severity.WARNING, wall.letter, text)
    yield from stopped_cautions(wall, passed.frame)
    yield from notch_cautions(wall, passed.frame)


def stopped_cautions(wall: Wall, frame: Frame) -> Iterator[Caution]:
    """Studs that a purlin stops, whose heads nothing holds, and those left out under it."""
    for member in (m for m in frame.members if m.stops):
        text = message("purlin.stops", letter=wall.letter, at=Mm(member.left))
        yield Caution(Severity.WARNING, member.key, text)
    for key, purlin in frame.no_room_under:
        text = message("purlin.no-room-under", letter=wall.letter, purlin=spoken(purlin))
        yield Caution(Severity.WARNING, key, text)


def notch_cautions(wall: Wall, frame: Frame) -> Iterator[Caution]:
    """Notches past the published limits, and studs left with less than the wall's rule asks."""
    least = wall.goes_by.least_left
    for member in frame.members:
        for notch in member.notches:
            taken = percent_taken(member, notch)
            found: dict[str, str | int | Mm] = {
                "letter": wall.letter,
                "purlin": spoken(notch.purlin),
                "at": Mm(member.left),
                "taken": taken,
                "left": 100 - taken,
            }
            share = notch.depth / member.thickness
            if least is not None and 100 * (1.0 - share) < least - 1e-6:
                text = message("notch.little-left", least=least, **found)
                yield Caution(Severity.WARNING, member.key, text)
            if share > BEARING + 1e-9:
                name = "notch.past-limit" if share > NONBEARING + 1e-9 else "notch.not-bearing"
                yield Caution(Severity.WARNING, member.key, message(name, **found))


def percent_taken(member: Member, notch: Notch) -> int:
    """How much of a member's section a notch takes, in whole percent."""
    return round(100 * notch.depth / member.thickness)


def _lying(wall: Wall, member: Member, clash: Clash) -> Message:
    """A block or backing that a purlin runs into."""
    return message(
        "purlin.clash-lying",
        letter=wall.letter,
        purlin=spoken(clash.purlin),
        left=Mm(member.left),
        low=Mm(member.bottom),
        high=Mm(member.top),
    )


def _stud(wall: Wall, clash: Clash) -> Message:
    values: dict[str, str | Mm] = {
        "letter": wall.letter,
        "purlin": spoken(clash.purlin),
        "at": Mm(clash.left),
    }
    if clash.key.split("/")[1] == "end":
        return message("purlin.clash-end", **values)
    return _with_places(("purlin.clash", "purlin.clash-nowhere"), clash.places, values)


def _opening(wall: Wall, placed: PlacedOpening, clash: Clash) -> Message:
    """The nearest left edges on either side at which all the opening's framing is clear."""
    beside, width = 2 * wall.stud.thickness.mm, placed.opening.width.mm
    wanted = (clash.edges[0] - beside - width, clash.edges[1] + beside)
    ranges = placed.fit.ranges
    places = tuple(w for w in wanted if any(a - 1e-6 <= w <= b + 1e-6 for a, b in ranges))
    values: dict[str, str | Mm] = {
        "letter": wall.letter,
        "purlin": spoken(clash.purlin),
        "opening": spoken(placed.opening.id),
    }
    ids = ("purlin.clash-opening", "purlin.clash-opening-nowhere")
    return _with_places(ids, places, values)


def _with_places(
    ids: tuple[str, str], places: tuple[float, ...], values: dict[str, str | Mm]
) -> Message:
    """The message with the first id and the places, or where there are none with the second."""
    if not places:
        return message(ids[1], **values)
    texts = tuple(message("purlin.place", at=Mm(place)) for place in places)
    return message(ids[0], places=texts, **values)


def _opening_of(clash: Clash, passed: Passed) -> PlacedOpening | None:
    """The opening whose framing a member belongs to; None for a stud of the layout."""
    return next((p for p in passed.frame.openings if clash.key.startswith(f"{p.key}/")), None)
