"""A change: what became of a piece or a box since it was printed or cut, and how it is told."""

import enum

import msgspec

from core.framing import spoken
from core.wording import Message, Mm, message


class What(enum.Enum):
    """What became of a piece, or of a box, since it was printed or cut."""

    NEW = "new"
    GONE = "gone"
    LENGTH = "length"
    SHORT_POINT = "short point"
    MARK = "mark"
    NO_MARK = "no mark"
    MOVED = "moved"
    RAISED = "raised"


class Change(msgspec.Struct, frozen=True):
    """A piece or box that is not as it was: `was` and `now` in mm, `stud` whose mark it is.

    `label` is that of the piece, or the key of a box. A box `moved` along the wall or was `raised`
    or lowered.
    """

    key: str
    label: str
    what: What
    was: float | None = None
    now: float | None = None
    stud: str = ""

    @property
    def name(self) -> str:
        """What it is called: the label of a piece, the id of a box."""
        return spoken(self.label.rpartition("/")[2])


def since_print(change: Change) -> Message:
    """What a sheet that was printed before no longer shows as it is."""
    return message(f"since.{_way(change)}", **_values(change))


def since_cut(change: Change) -> Message:
    """Why a piece that was cut no longer serves as it was cut."""
    return message(f"as-cut.{_way(change)}", **_values(change))


def _way(change: Change) -> str:
    new = change.what is What.MARK and change.was is None
    return "new-mark" if new else change.what.value.replace(" ", "-")


def _values(change: Change) -> dict[str, str | Mm]:
    """What a sentence may name: only what the change has."""
    values: dict[str, str | Mm] = {"name": change.name}
    if change.was is not None:
        values["was"] = Mm(change.was)
    if change.now is not None:
        values["now"] = Mm(change.now)
    return {**values, "stud": change.stud} if change.stud else values
