"""The sense of a project's values: one function for each rule, each giving its faults.

A rule takes what it judges and the place that this has in the file, so that a window can judge a
single value before it becomes part of the project. A thing that cannot be built, such as an opening
that reaches past its wall, makes sense here; it is for `core.checks` to say so.
"""

import re
from collections.abc import Iterator
from typing import Final

from core.model import Letters, Point, Project, Rafter, RidgeBeam, Room, Slope, Timber
from core.roof import stands_in_wing
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import above_zero, few_enough, within
from core.storage.sense_floor import floor_faults
from core.storage.sense_habits import plate_rules
from core.storage.sense_nailed import rafter_places
from core.storage.sense_nailing import nailing_faults
from core.storage.sense_purlins import purlins_passed
from core.storage.sense_roof import roof_parts_faults
from core.storage.sense_wall import wall_faults
from core.storage.sentences import Why, fault

WALL_LETTER: Final = rf"[A-Z]{{1,{limits.PENCIL_LETTERS}}}"
"""What the letter of a wall matches as a whole."""


def project_faults(project: Project) -> Iterator[Fault]:
    """Every fault in the sense of a project, in the order of the file."""
    yield from room_faults(project.room, "project.room")
    yield from few_enough(project.walls, limits.WALLS, "project.walls")
    yield from wall_letters_differ(project)
    for index, wall in enumerate(project.walls):
        place = f"project.walls[{index}]"
        yield from wall_letter(wall.letter, f"{place}.letter")
        yield from wall_faults(wall, place)
        yield from purlins_passed(wall, project.room, place)
        yield from end_in_room(wall.left_end, project.room, f"{place}.left_end")
        yield from end_in_room(wall.right_end, project.room, f"{place}.right_end")
    yield from pencil_letters(project.habits.letters, "project.habits.letters")
    yield from nailing_faults(project.nailing, "project.nailing")
    if project.habits.plates is not None:
        yield from plate_rules(project.habits.plates, "project.habits.plates")


def room_faults(room: Room, place: str) -> Iterator[Fault]:
    """Every fault in the sense of a room."""
    yield from room_size(room, place)
    yield from rafter_size(room.rafter, f"{place}.rafter")
    yield from has_slope(room, place)
    for side, slope in (("left", room.left), ("right", room.right)):
        if slope is not None:
            yield from eave_height(slope, f"{place}.{side}")
    if room.ridge_beam is not None:
        yield from ridge_beam_size(room.ridge_beam, f"{place}.ridge_beam")
    if room.flat_ceiling is not None:
        yield from above_zero(room.flat_ceiling, limits.ROOM_MM, f"{place}.flat_ceiling")
    yield from roof_parts_faults(room, place)
    yield from floor_faults(room, place)


def room_size(room: Room, place: str) -> Iterator[Fault]:
    """A room is wide and long, up to a limit."""
    yield from above_zero(room.width, limits.ROOM_MM, f"{place}.width")
    yield from above_zero(room.length, limits.ROOM_MM, f"{place}.length")


def rafter_size(rafter: Rafter, place: str) -> Iterator[Fault]:
    """Rafters have a cross-section, and room between them."""
    yield from timber_size(rafter.timber, f"{place}.timber")
    yield from within(rafter.spacing, limits.SPACING_MM, limits.ROOM_MM, f"{place}.spacing")
    yield from rafter_places(rafter, place)


def timber_size(timber: Timber, place: str) -> Iterator[Fault]:
    """A stick of timber is thick and wide, up to a limit."""
    yield from above_zero(timber.thickness, limits.PART_MM, f"{place}.thickness")
    yield from above_zero(timber.width, limits.PART_MM, f"{place}.width")


def has_slope(room: Room, place: str) -> Iterator[Fault]:
    """A roof has at least one slope."""
    if room.left is None and room.right is None:
        yield fault(place, Why.NO_SLOPE)


def eave_height(slope: Slope, place: str) -> Iterator[Fault]:
    """An eave wall stands on the floor or above it, up to a limit."""
    yield from within(slope.eave_height, 0.0, limits.ROOM_MM, f"{place}.eave_height")


def ridge_beam_size(beam: RidgeBeam, place: str) -> Iterator[Fault]:
    """A ridge beam is wide and lies above the floor, up to a limit."""
    yield from above_zero(beam.width, limits.PART_MM, f"{place}.width")
    yield from above_zero(beam.underside, limits.ROOM_MM, f"{place}.underside")


def wall_letter(letter: str, place: str) -> Iterator[Fault]:
    """The letter of a wall is capital; a long wall list needs two."""
    if not re.fullmatch(WALL_LETTER, letter):
        yield fault(place, Why.BAD_LETTER, text=letter, limit=limits.PENCIL_LETTERS)


def wall_letters_differ(project: Project) -> Iterator[Fault]:
    """No two walls have the same letter; the later one is at fault."""
    taken: set[str] = set()
    for index, wall in enumerate(project.walls):
        if wall.letter in taken:
            yield fault(f"project.walls[{index}].letter", Why.SAME_LETTER, text=wall.letter)
        taken.add(wall.letter)


def end_in_room(end: Point, room: Room, place: str) -> Iterator[Fault]:
    """A wall ends inside the room or a wing of it, but for a millimetre of rounding."""
    if stands_in_wing(room, (end.across.mm, end.along.mm), limits.OUTSIDE_MM):
        return
    sides = ((end.across, room.width), (end.along, room.length))
    for index, (stated, side) in enumerate(sides):
        if not -limits.OUTSIDE_MM <= stated.mm <= side.mm + limits.OUTSIDE_MM:
            values = {"found": f"{stated}", "limit": f"{side}"}
            yield fault(f"{place}[{index}]", Why.OUTSIDE_ROOM, **values)


def pencil_letters(letters: Letters, place: str) -> Iterator[Fault]:
    """What is pencilled beside a line is short, and can be seen."""
    for name in letters.__struct_fields__:
        text = getattr(letters, name)
        if text is None:
            continue
        if not 1 <= len(text) <= limits.PENCIL_LETTERS or not text.isprintable() or " " in text:
            yield fault(
                f"{place}.{name}",
                Why.BAD_PENCIL_LETTER,
                text=text,
                limit=limits.PENCIL_LETTERS,
            )
