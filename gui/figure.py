"""A number under its caption, and the numbers of a thing; no Qt."""

import msgspec

from core.framing import Role
from core.job import Number
from core.wording import Wording


class Figure(msgspec.Struct, frozen=True):
    """A number or a few words under a caption; the heroes among them are `large`.

    `number` is what to ask for its working, for a mark with the key of its `plate`, for a notch
    with the id of its purlin there; None where the words have none.
    """

    caption: str
    text: str
    large: bool = False
    number: Number | None = None
    plate: str = ""


class Numbers(msgspec.Struct, frozen=True):
    """The name of a thing, what it is, and its figures."""

    name: str
    what: str
    figures: tuple[Figure, ...]


def role_word(role: Role, wording: Wording) -> str:
    """The trade's word for a role."""
    return wording.word(f"role.{role.value.replace(' ', '-')}")
