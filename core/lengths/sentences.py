"""Why a text is refused as a length or a pitch, and the sentence for each reason.

All sentences of this room stand here, so that they can move to the wording
catalogues as they are; values in braces are put in by ``errors.sentence``.
"""

import enum
from typing import Final


class Reason(enum.StrEnum):
    """What is wrong with a text; the key of its sentence."""

    EMPTY = "empty"
    TOO_LONG = "too-long"
    TOO_FAR = "too-far"
    UNKNOWN_MARK = "unknown-mark"
    UNKNOWN_WORD = "unknown-word"
    NO_NUMBER = "no-number"
    BAD_NUMBER = "bad-number"
    THOUSANDS_OR_DECIMALS = "thousands-or-decimals"
    FRACTION_PARTS = "fraction-parts"
    ZERO_DENOMINATOR = "zero-denominator"
    IMPROPER_FRACTION = "improper-fraction"
    METRIC_FRACTION = "metric-fraction"
    PART_BESIDE_FRACTION = "part-beside-fraction"
    PART_FEET = "part-feet"
    TWO_SIGNS = "two-signs"
    TWO_NUMBERS = "two-numbers"
    NUMBERS_WITH_DASH = "numbers-with-dash"
    LOOSE_DASH = "loose-dash"
    UNITS_TOGETHER = "units-together"
    UNREADABLE = "unreadable"
    PITCH_EMPTY = "pitch-empty"
    PITCH_TOO_LONG = "pitch-too-long"
    PITCH_UNREADABLE = "pitch-unreadable"
    PITCH_TWO_WAYS = "pitch-two-ways"
    PITCH_ONE_UNIT = "pitch-one-unit"
    PITCH_HEIGHTS = "pitch-heights"
    PITCH_NO_RUN = "pitch-no-run"
    PITCH_NEGATIVE = "pitch-negative"
    PITCH_FALLS = "pitch-falls"
    PITCH_TOO_STEEP = "pitch-too-steep"


SENTENCES: Final = {
    Reason.EMPTY: ("Nothing is written here; write a length such as 5' 3 1/2\" or 1613 mm."),
    Reason.TOO_LONG: (
        "“{text}” is longer than {limit} characters; write a length such as 5' 3 1/2\" or 1613 mm."
    ),
    Reason.TOO_FAR: (
        "“{text}” is more than one mile (1609.344 m), the most a length may be;"
        " check the number and its unit, as in 16 in or 1613 mm."
    ),
    Reason.UNKNOWN_MARK: (
        "“{text}” has “{part}”, which has no place in a length; write it as 5' 3 1/2\" or 1613 mm."
    ),
    Reason.UNKNOWN_WORD: (
        "“{text}” has “{part}”, which is not a unit known here; write in, ft, mm,"
        " cm or m, as in 63 1/2 in."
    ),
    Reason.NO_NUMBER: (
        "“{text}” lacks a number before “{part}”; write a length such as 5' 3 1/2\" or 1613 mm."
    ),
    Reason.BAD_NUMBER: (
        "“{text}” has “{part}”, which is not a number; write a number with at most"
        " one decimal mark and a digit after it, as in 1613.5."
    ),
    Reason.THOUSANDS_OR_DECIMALS: (
        "“{part}” can be read two ways; write {thousands} if the comma marks"
        " thousands, or {decimals} if it marks decimals."
    ),
    Reason.FRACTION_PARTS: (
        "“{text}” has a fraction that is not made of two whole numbers; write it as in 3/8."
    ),
    Reason.ZERO_DENOMINATOR: (
        "“{text}” has a fraction with nothing under the line; write it as in 3/8."
    ),
    Reason.IMPROPER_FRACTION: (
        "“{text}” has “{part}” beside a whole number, where a fraction is less than one; write it"
        " as in {better}."
    ),
    Reason.METRIC_FRACTION: (
        "“{text}” has a fraction, and {unit} is not written with fractions; write"
        " decimals, as in 63.5 {unit}, or name inches, as in 63 1/2 in."
    ),
    Reason.PART_BESIDE_FRACTION: (
        "“{text}” has decimals beside a fraction; write one or the other, as in 3 1/2 in or 3.5 in."
    ),
    Reason.PART_FEET: (
        "“{text}” has a part of a foot beside inches; write whole feet and inches,"
        " as in 5' 3 1/2\"."
    ),
    Reason.TWO_SIGNS: (
        "“{text}” has more than one sign; write one sign in front of the whole"
        " length, as in -5' 3\"."
    ),
    Reason.TWO_NUMBERS: (
        "“{text}” has two numbers and does not say which is feet; write it as in 5' 3 1/2\"."
    ),
    Reason.NUMBERS_WITH_DASH: (
        "“{text}” can be read in more than one way; write {better} if feet and inches are meant."
    ),
    Reason.LOOSE_DASH: (
        "“{text}” has a blank beside the dash, which could mean taking away; write"
        " {better} if that is meant."
    ),
    Reason.UNITS_TOGETHER: (
        "“{text}” puts units together that do not go together; only inches may"
        " follow feet, so write it as in 5' 3 1/2\", 1.6 m or 63 1/2 in."
    ),
    Reason.UNREADABLE: (
        "“{text}” cannot be read as a length; write it as in 5' 3 1/2\", 63 1/2 in or 1613 mm."
    ),
    Reason.PITCH_EMPTY: ("Nothing is written here; write a pitch such as 9 in 12 or 38°."),
    Reason.PITCH_TOO_LONG: (
        "“{text}” is longer than {limit} characters; write a pitch such as 9 in 12 or 38°."
    ),
    Reason.PITCH_UNREADABLE: (
        "“{text}” cannot be read as a pitch; write it as in 9 in 12, 38°,"
        " 150 mm / 250 mm or 33 in at 0 in, 69 in at 48 in."
    ),
    Reason.PITCH_TWO_WAYS: (
        "“{text}” can be read in more than one way; write rise and run with “in”"
        " between them, as in 8 1/2 in 12."
    ),
    Reason.PITCH_ONE_UNIT: (
        "“{text}” names a unit for only one of rise and run; write both with a unit"
        " or neither, as in 9 in 12 or 150 mm / 250 mm."
    ),
    Reason.PITCH_HEIGHTS: (
        "“{text}” does not give two heights, each at a distance; write them as in"
        " 33 in at 0 in, 69 in at 48 in."
    ),
    Reason.PITCH_NO_RUN: (
        "“{text}” has no run between its heights; write a run of more than zero,"
        " as in 9 in 12 or 33 in at 0 in, 69 in at 48 in."
    ),
    Reason.PITCH_NEGATIVE: (
        "“{text}” has a minus sign, and a pitch rises from the eave wall; write it"
        " without, as in 9 in 12 or 38°."
    ),
    Reason.PITCH_FALLS: (
        "“{text}” falls away from the eave wall; measure from the low side, as in"
        " 33 in at 0 in, 69 in at 48 in."
    ),
    Reason.PITCH_TOO_STEEP: (
        "“{text}” is 80 degrees or steeper, which is a wall and not a roof; write"
        " the rise first and then the run, as in 9 in 12."
    ),
}
