"""What the working of a wall's numbers goes by, gathered from the results."""

from core.framing import Given
from core.job.results import Results
from core.model import Room, StandsOn, Wall
from core.roof import RoofLine, Segment, as_passed, over_place, roof_of
from core.wording import Message, message


def given_of(results: Results, letter: str) -> Given | None:
    """What a wall's workings go by; None for a wall with no frame."""
    result = results.wall(letter)
    near, far = result.inputs.near, result.inputs.far
    if result.frame is None or near is None or far is None:
        return None
    room, wall = results.project.room, result.wall
    on_rafters = wall.stands_on is StandsOn.RAFTERS
    return Given(
        wall=wall,
        frame=result.frame,
        roof=(near, far),
        above=_names(room, wall, (near, far)),
        labels=result.labels,
        stated=result.inputs.stated,
        foot=result.inputs.foot,
        depth=room.rafter.timber.width.mm if on_rafters else 0.0,
        purlins=result.inputs.crossings,
    )


def _names(
    room: Room, wall: Wall, lines: tuple[RoofLine, RoofLine]
) -> tuple[tuple[Message, ...], tuple[Message, ...]]:
    """What each segment of the roof lines over both faces is."""
    room = as_passed(room, wall)
    (u0, v0), (u1, v1) = wall.chalk
    way, roof = ((u1 - u0) / wall.run, (v1 - v0) / wall.run), roof_of(room)

    def name(segment: Segment, away: float) -> Message:
        x = (segment.left + segment.right) / 2
        at = (u0 + x * way[0] - away * way[1], v0 + x * way[1] + away * way[0])
        found = over_place(room, roof, at)
        if found.id:
            return message(f"over.{found.kind.value}-named", id=found.id.replace("-", " "))
        return message(f"over.{found.kind.value}")

    near, far = lines
    width = wall.stud.width.mm
    return tuple(name(s, 0.0) for s in near.segments), tuple(name(s, width) for s in far.segments)
