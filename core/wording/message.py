"""Messages: what is to be said, as an id and values, before any language is chosen."""

import msgspec


class Mm(msgspec.Struct, frozen=True):
    """A length in mm inside a message; it is written to the person's tape."""

    mm: float


class Rad(msgspec.Struct, frozen=True):
    """An angle in radians inside a message; it is written in degrees."""

    radians: float


class Kg(msgspec.Struct, frozen=True):
    """A weight in kg inside a message; it is written in pounds on a tape in inches."""

    kg: float


class Message(msgspec.Struct, frozen=True):
    """A message id of the catalogues with the values its text asks for."""

    id: str
    values: tuple[tuple[str, "str | int | Mm | Rad | Kg | Message | tuple[Message, ...]"], ...] = ()


def message(
    message_id: str, **values: "str | int | Mm | Rad | Kg | Message | tuple[Message, ...]"
) -> Message:
    """A message from keyword values.

    >>> message("wall.named", letter="B").values
    (('letter', 'B'),)
    """
    return Message(message_id, tuple(values.items()))
