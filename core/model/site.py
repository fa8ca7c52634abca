"""What happened on site: facts that undo never takes back."""

import msgspec


class PrintedLabel(msgspec.Struct, frozen=True):
    """A label that stands on a printed sheet, and the key of the piece it belongs to."""

    key: str
    label: str


class SiteRecord(msgspec.Struct, frozen=True):
    """The record of the site; a printed label stays with its key for good."""

    printed: tuple[PrintedLabel, ...] = ()
