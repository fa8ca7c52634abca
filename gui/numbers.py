"""The numbers of what is held, in words and figures, and their workings; no Qt."""

from core.framing import Member, Printed, Role, printed, spoken
from core.job import Number, Results, WallResult, workings
from core.model import Species
from core.site import weights
from core.wording import Wording
from gui.figure import Figure, Numbers
from gui.numbers_of_member import member_numbers
from gui.numbers_of_stated import box_numbers, fixture_numbers, opening_numbers, zone_numbers
from gui.things import Kind, thing_of


def numbers_of(
    result: WallResult, key: str | None, wording: Wording, species: Species | None = None
) -> Numbers:
    """The numbers of the thing with this key; those of the wall if nothing is held."""
    if key is None:
        return _wall(result, wording, species)
    member = result.frame.member(key) if result.frame else None
    if member is not None:
        return member_numbers(result, member, wording)
    for placed in result.frame.openings if result.frame else ():
        if placed.key == key:
            return opening_numbers(placed, wording)
    for box in result.boxes:
        if box.key == key:
            return box_numbers(result, box, wording)
    return _area(result, key, wording) or _unframed(result, key, wording)


def _area(result: WallResult, key: str, wording: Wording) -> Numbers | None:
    """The numbers of a fixture or a kept-clear zone; None if the key is of neither."""
    for fixture in result.wall.fixtures:
        if key == f"{result.wall.letter}/{fixture.id}":
            return fixture_numbers(result, fixture, wording)
    for zone in result.wall.kept_clear:
        if key == f"{result.wall.letter}/{zone.id}":
            return zone_numbers(zone, wording)
    return None


def workings_of(
    results: Results, letter: str, key: str | None, figure: Figure, wording: Wording
) -> tuple[Printed, ...]:
    """The working of a figure in words and numbers; nothing for one that has none."""
    if figure.number is None:
        return ()
    found = workings(results, letter, key, figure.number, figure.plate)
    return tuple(printed(working, wording) for working in found)


def _unframed(result: WallResult, key: str, wording: Wording) -> Numbers:
    """A stated thing that could not be framed: only what it is."""
    thing = thing_of(result.wall, key)
    word = "kind.box" if thing and thing.kind is Kind.BOX else "role.stud"
    named = spoken(key.partition("/")[2])
    if thing and thing.kind is Kind.OPENING:
        kind = result.wall.opening(thing.id).kind.value.replace(" ", "-")
        word, named = f"kind.{kind}", spoken(thing.id)
    return Numbers(named, wording.word(word), ())


def _wall(result: WallResult, wording: Wording, species: Species | None) -> Numbers:
    wall = result.wall
    length = wording.length(wall.run)
    figures = [Figure(wording.word("held.length"), length, large=True, number=Number.WALL_LENGTH)]
    studs = [m for m in result.frame.members if m.role is Role.STUD] if result.frame else []
    if studs:
        longest = max(studs, key=lambda m: m.long_point)
        shortest = min(studs, key=lambda m: m.long_point)
        figures += [
            Figure(wording.word("held.studs"), str(len(studs)), large=True, number=Number.STUDS),
            Figure(
                wording.word("held.longest"),
                _labelled(result, longest, wording),
                number=Number.LONGEST,
            ),
            Figure(
                wording.word("held.shortest"),
                _labelled(result, shortest, wording),
                number=Number.SHORTEST,
            ),
            *_weight(result, species, wording),
        ]
    return Numbers(wall.letter, wall.name, tuple(figures))


def _weight(result: WallResult, species: Species | None, wording: Wording) -> list[Figure]:
    """What all its timber weighs."""
    if result.frame is None or not result.frame.members:
        return []
    text = wording.weight(weights(result.frame, species).wall)
    return [Figure(wording.word("held.weight"), text, number=Number.WEIGHT)]


def _labelled(result: WallResult, member: Member, wording: Wording) -> str:
    return f"{result.label_of[member.key]}  {wording.length(member.long_point)}"
