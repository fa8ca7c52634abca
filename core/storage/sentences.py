"""Why a project file is refused, each reason with its remedy.

All sentences of this room stand in `SENTENCES`, by reason, so that they can move to the wording
catalogues as they are. Lengths and pitches bring their own from `core.lengths`.
"""

import enum
from typing import Final

from core.storage.faults import Fault, quoted


class Why(enum.StrEnum):
    """What is wrong; the key of its sentence."""

    NOT_FOUND = "not-found"
    IS_FOLDER = "is-folder"
    NO_ORDINARY_FILE = "no-ordinary-file"
    BAD_NAME = "bad-name"
    MAY_NOT_READ = "may-not-read"
    READING_FAILED = "reading-failed"
    FILE_TOO_LARGE = "file-too-large"
    EMPTY = "empty"
    NOT_UTF8 = "not-utf8"
    NOT_JSON = "not-json"
    TOO_DEEP = "too-deep"
    FOLDER_MISSING = "folder-missing"
    MAY_NOT_WRITE = "may-not-write"
    PROTECTED = "protected"
    DISK_FULL = "disk-full"
    WRITING_FAILED = "writing-failed"
    NOT_CONFIRMED = "not-confirmed"
    NOT_READ_BACK = "not-read-back"
    LEFTOVERS = "leftovers"
    NO_FORMAT = "no-format"
    BAD_FORMAT = "bad-format"
    NEWER = "newer"
    OLDER = "older"
    NOT_MIGRATED = "not-migrated"
    UNKNOWN_KEY = "unknown-key"
    MISTYPED_KEY = "mistyped-key"
    MISSING_KEY = "missing-key"
    REPEATED_KEY = "repeated-key"
    WRONG_TYPE = "wrong-type"
    WRONG_COUNT = "wrong-count"
    BAD_CHOICE = "bad-choice"
    NO_UNIT = "no-unit"
    PITCH_NO_UNIT = "pitch-no-unit"
    NOT_FINITE = "not-finite"
    TOO_MANY_ITEMS = "too-many-items"
    TEXT_TOO_LONG = "text-too-long"
    HALF_CHARACTER = "half-character"
    NOT_POSITIVE = "not-positive"
    TOO_SMALL = "too-small"
    TOO_LARGE = "too-large"
    OUT_OF_RANGE = "out-of-range"
    NO_SLOPE = "no-slope"
    NO_STUD_KEY = "no-stud-key"
    DOUBLED_TWICE = "doubled-twice"
    NOT_THE_SUM = "not-the-sum"
    BAD_LETTER = "bad-letter"
    SAME_LETTER = "same-letter"
    BAD_ID = "bad-id"
    RESERVED_ID = "reserved-id"
    SAME_ID = "same-id"
    SAME_PLACE = "same-place"
    SAME_STATION = "same-station"
    NOT_OF_WALL = "not-of-wall"
    SAME_STUD = "same-stud"
    HEAD_NOT_ABOVE_SILL = "head-not-above-sill"
    ENDS_TOO_NEAR = "ends-too-near"
    WALL_TOO_LONG = "wall-too-long"
    OUTSIDE_ROOM = "outside-room"
    BAD_PENCIL_LETTER = "bad-pencil-letter"
    BAD_NAIL = "bad-nail"
    SAME_JOINT = "same-joint"
    BREAKS_UNSORTED = "breaks-unsorted"
    SAME_PART_ID = "same-part-id"
    SAME_RECORD = "same-record"
    NO_SLOPE_THERE = "no-slope-there"
    PAST_ROOM = "past-room"
    PURLIN_TOO_SHORT = "purlin-too-short"
    EXISTING_TOO_SHORT = "existing-too-short"
    NO_PURLIN = "no-purlin"
    PASSED_TWICE = "passed-twice"
    LEANS_TO_NO_HEIGHT = "leans-to-no-height"


SENTENCES: Final = {
    # Opening
    Why.NOT_FOUND: ("there is no such file", "check the name and the folder"),
    Why.IS_FOLDER: ("this is a folder", "name a file, such as loft.eave"),
    Why.NO_ORDINARY_FILE: ("this is not an ordinary file", "name a file, such as loft.eave"),
    Why.BAD_NAME: ("no file can have this name", "choose a shorter or plainer one"),
    Why.MAY_NOT_READ: (
        "you have no permission to read this file",
        "ask its owner for it, or open a copy of your own",
    ),
    Why.READING_FAILED: ("it cannot be read ({detail})", "try again, or open another copy"),
    Why.FILE_TOO_LARGE: (
        "the file is larger than {limit} MiB, the most a project may be",
        "check that it is a project file",
    ),
    Why.EMPTY: ("the file is empty", "open an earlier copy of it"),
    Why.NOT_UTF8: (
        "the text is not UTF-8 here",
        "save it as UTF-8 from a text editor, or open an earlier copy",
    ),
    Why.NOT_JSON: (
        "the JSON is broken here ({detail})",
        "mend it in a text editor, or open an earlier copy",
    ),
    Why.TOO_DEEP: (
        "lists and objects stand more than {limit} deep in one another here",
        "take the inner ones out",
    ),
    # Saving
    Why.FOLDER_MISSING: ("its folder is not there", "make the folder, or save elsewhere"),
    Why.MAY_NOT_WRITE: (
        "nothing may be written in its folder, and nothing was changed",
        "save in a folder of your own",
    ),
    Why.PROTECTED: (
        "the file is write-protected, and nothing was changed",
        "allow writing to it, or save under another name",
    ),
    Why.DISK_FULL: (
        "the disk is full, and nothing was changed",
        "free some space and save again, or save on another disk",
    ),
    Why.WRITING_FAILED: (
        "it cannot be written ({detail}), and nothing was changed",
        "save again, or save elsewhere",
    ),
    Why.NOT_CONFIRMED: (
        "it was saved, but the disk did not confirm it ({detail})",
        "save again, and on another disk as well",
    ),
    Why.NOT_READ_BACK: (
        "what would be written does not read back as the same project, and nothing was changed",
        "undo the last step and save again",
    ),
    Why.LEFTOVERS: (
        "its folder is full of unfinished savings, and nothing was changed",
        "remove the hidden files {pattern} from the folder",
    ),
    # The format
    Why.NO_FORMAT: (
        "the file does not state its format",
        'check that it is a project file, and begin it with "format": "{current}"',
    ),
    Why.BAD_FORMAT: (
        "“{text}” is no format known here",
        'check that it is a project file, and write "{current}"',
    ),
    Why.NEWER: (
        "“{text}” is newer than “{current}”, the newest known here, so the file was left as it is",
        "open it with a newer version of the program",
    ),
    Why.OLDER: (
        "“{text}” is older than any format known here",
        "open and save it with the version that wrote it or the one after",
    ),
    Why.NOT_MIGRATED: (
        "what follows “{text}” does not fit that format, so it cannot be brought up to date",
        "open it with the version that wrote it, and mend and save it there",
    ),
    # Structure
    Why.UNKNOWN_KEY: ("this key is not known here", "take it out, or write one of {known}"),
    Why.MISTYPED_KEY: ("this key is not known here", "write “{near}” if that is meant"),
    Why.MISSING_KEY: ("this key is missing", "add it, as in “{key}”: {example}"),
    Why.REPEATED_KEY: ("this key is there more than once", "keep the one that is meant"),
    Why.WRONG_TYPE: ("{found} is here instead of {wanted}", "write it as in {example}"),
    Why.WRONG_COUNT: (
        "a list of {found} is here instead of one of {wanted}",
        "write it as in {example}",
    ),
    Why.BAD_CHOICE: ("“{text}” is no choice here", "write {allowed}"),
    Why.NO_UNIT: ("“{text}” has no unit", "write {ways}"),
    Why.PITCH_NO_UNIT: (
        "“{text}” has heights without a unit",
        "write them as in 33 in at 0 in, 69 in at 48 in",
    ),
    Why.NOT_FINITE: ("“{text}” is not a number", "write the number out, as in 16"),
    Why.TOO_MANY_ITEMS: ("{found} are more than the {limit} that may be here", "take some out"),
    Why.TEXT_TOO_LONG: (
        "a text of {found} characters is longer than the {limit} that may be here",
        "shorten it",
    ),
    Why.HALF_CHARACTER: ("the text has half a character in it", "type the text anew"),
    # Sense
    Why.NOT_POSITIVE: ("{found} is not above zero", "write more than zero"),
    Why.TOO_SMALL: ("{found} is less than {limit}", "write {limit} or more"),
    Why.TOO_LARGE: ("{found} is more than {limit}", "write {limit} or less"),
    Why.OUT_OF_RANGE: ("{found} is not from {least} to {most}", "write {least} to {most}"),
    Why.NO_SLOPE: (
        "the roof has no slope",
        "state its “left” slope, its “right” one, or both",
    ),
    Why.NO_STUD_KEY: (
        "“{text}” is the key of no stud of wall {limit}",
        "write one, as in {limit}/layout/3, {limit}/end/left or {limit}/stud-1",
    ),
    Why.DOUBLED_TWICE: ("“{text}” has a second stud already", "name each stud once"),
    Why.NOT_THE_SUM: (
        "{found} is not the sum of the leaf and what is added to it",
        "write {limit}, or change the leaf",
    ),
    Why.BAD_LETTER: (
        "“{text}” is no letter of a wall",
        "write one to {limit} capital letters, as in A or AB",
    ),
    Why.SAME_LETTER: ("another wall has the letter {text} already", "give this wall its own"),
    Why.BAD_ID: (
        "“{text}” is no id",
        "write small letters, digits and dashes after a small letter, as in door-1",
    ),
    Why.RESERVED_ID: ("“{text}” is kept for the wall's own parts", "write another, as in door-1"),
    Why.SAME_ID: ("“{text}” is in this wall already", "give this one its own id"),
    Why.SAME_PLACE: ("place {found} is in this list already", "name each place once"),
    Why.SAME_STATION: (
        "another point of this line was measured at {found} already",
        "keep one of them, or move one by what lies between them",
    ),
    Why.NOT_OF_WALL: (
        "“{text}” is no stud of wall {limit}",
        "write the key of one of its own, as in {limit}/layout/3",
    ),
    Why.SAME_STUD: ("“{text}” is in this list already", "keep the length that is meant"),
    Why.HEAD_NOT_ABOVE_SILL: (
        "a head at {found} is not above the sill at {limit}",
        "raise the head or lower the sill",
    ),
    Why.ENDS_TOO_NEAR: (
        "the wall's ends are {found} apart, less than {limit}",
        "move them apart",
    ),
    Why.WALL_TOO_LONG: ("the wall is {found} long, more than {limit}", "bring its ends nearer"),
    Why.OUTSIDE_ROOM: (
        "{found} is outside the room, which ends at {limit}",
        "write 0 to {limit}, or widen the room",
    ),
    Why.BAD_PENCIL_LETTER: (
        "“{text}” does not do for a pencil mark",
        "write one to {limit} letters, as in X",
    ),
    Why.BAD_NAIL: (
        "“{text}” does not do for the name of a nail",
        "write one to {limit} characters, as in 16d common",
    ),
    Why.SAME_JOINT: ("“{text}” is in this list already", "name each joint once"),
    Why.BREAKS_UNSORTED: (
        "a change of pitch at {found} is not farther in than {limit}",
        "write the changes from the eave inward",
    ),
    Why.SAME_PART_ID: ("“{text}” is in this roof already", "give this one its own id"),
    Why.SAME_RECORD: ("“{text}” is in this list already", "keep the later record"),
    Why.NO_SLOPE_THERE: (
        "there is no {text} slope for it to stand on",
        "state that slope, or put it on the other side",
    ),
    Why.PAST_ROOM: (
        "it reaches to {found}, past the end of the room at {limit}",
        "start it nearer to the room's start, or make it narrower",
    ),
    Why.PURLIN_TOO_SHORT: (
        "the purlin's ends are {found} apart, less than {limit}",
        "move its end farther from its start",
    ),
    Why.EXISTING_TOO_SHORT: (
        "the wall's ends are {found} apart, less than {limit}",
        "move one end farther from the other",
    ),
    Why.NO_PURLIN: (
        "“{text}” is no purlin of this room",
        "write one that is there ({known}), or take this out",
    ),
    Why.LEANS_TO_NO_HEIGHT: (
        "a corner up at {found} is stated with no height that it is at",
        "state the height first, or take the corner out",
    ),
    Why.PASSED_TWICE: ("“{text}” is in this list already", "keep the way that is meant"),
}
"""The reason and the remedy of every `Why`, with names for the values put in."""


def fault(place: str, why: Why, **values: str | int) -> Fault:
    """The fault at a place, its reason and remedy with the values put in.

    What a person or the system wrote, `text` and `detail`, is cleaned and shortened first.

    >>> str(fault("project.room", Why.NO_SLOPE))
    'the roof has no slope; state its “left” slope, its “right” one, or both.'
    """
    reason, remedy = SENTENCES[why]
    safe = {
        name: quoted(str(value)) if name in ("text", "detail") else value
        for name, value in values.items()
    }
    return Fault(place, reason.format(**safe), remedy.format(**safe))


def stated_fault(place: str, sentence: str) -> Fault:
    """The fault whose sentence another room made: the reason before the last semicolon."""
    reason, _, remedy = sentence.rstrip(".").rpartition("; ")
    return Fault(place, reason, remedy) if reason else Fault(place, remedy, "write another value")
