"""A caution: what is wrong or to be minded, how grave it is, and where."""

import enum

import msgspec

from core.wording import Message


class Severity(enum.Enum):
    """How grave a caution is.

    UNBUILDABLE: cannot be built as stated. WARNING: can be built, but will trouble the builder.
    STANDING: goes with the work itself and stays.
    """

    UNBUILDABLE = "unbuildable"
    WARNING = "warning"
    STANDING = "standing"


class Caution(msgspec.Struct, frozen=True):
    """A caution with its severity, the key of what it is about ("" for the job), and its words."""

    severity: Severity
    key: str
    message: Message
