"""What the plan says of a chalk line: how long, how it runs, what it was drawn to."""

from core.chalk import Direction, Guide, Kind, Line
from core.framing import spoken
from core.wording import Message, Mm, Wording, message

_WITH_NAME = frozenset(
    {Kind.FACE_A, Kind.FAR_FACE, Kind.WALL_END, Kind.IN_LINE, Kind.WING, Kind.STAIR}
)


def guide_told(guide: Guide) -> Message:
    """What a line of the plan is called."""
    kind = guide.kind.value.replace(" ", "-")
    if guide.kind not in _WITH_NAME:
        return message(f"chalk.{kind}")
    name = spoken(guide.name) if guide.name[:1].islower() else guide.name
    return message(f"chalk.{kind}-of", name=name)


def thing_named(key: str) -> Message:
    """What a thing of the plan is called: a wall by its letter, the rest by its id."""
    if key[:1].isupper():
        return message("plan.wall-named", letter=key)
    return message("plan.thing-named", what=spoken(key))


def line_told(line: Line, wording: Wording) -> str:
    """The length of a line, then how it runs and what it is drawn to."""
    parts = [wording.say(message("chalk.long", run=Mm(line.run)))]
    if line.direction in (Direction.PARALLEL, Direction.SQUARE):
        text = message(f"chalk.{line.direction.value}-to", name=line.beside)
        parts.append(wording.say(text))
    elif line.direction is not Direction.ASKEW:
        parts.append(wording.word(f"chalk.{line.direction.value}"))
    parts += [_at(guide, wording) for guide in line.on]
    return ", ".join(parts)


def on_told(on: tuple[Guide, ...], wording: Wording) -> str:
    """What a point or a moved line was drawn to; nothing if to nothing."""
    return ", ".join(_at(guide, wording) for guide in on)


def _at(guide: Guide, wording: Wording) -> str:
    return wording.say(message("chalk.at", what=guide_told(guide)))
