"""The errors that refuse a text as a length or a pitch."""

from core.lengths.sentences import SENTENCES, Reason


class LengthError(ValueError):
    """A text that is refused: the text, the reason and one sentence about it."""

    def __init__(self, text: str, reason: Reason, sentence: str) -> None:
        """Keep the parts; all three are arguments, so that it can be pickled."""
        super().__init__(text, reason, sentence)
        self.text = text
        self.reason = reason
        self.sentence = sentence

    def __str__(self) -> str:
        """Return the sentence, fit to be shown to a person."""
        return self.sentence


class PitchError(LengthError):
    """A text that is refused as a pitch."""


def sentence(reason: Reason, text: str, **values: str) -> str:
    """The sentence for a reason, with the text and further values put in."""
    safe = {name: shown(value) for name, value in values.items()}
    return SENTENCES[reason].format(text=shown(text), **safe)


def refused(reason: Reason, text: str, **values: str) -> LengthError:
    """The error that refuses a text as a length, ready to be raised."""
    return LengthError(text, reason, sentence(reason, text, **values))


def refused_pitch(reason: Reason, text: str, **values: str) -> PitchError:
    """The error that refuses a text as a pitch, ready to be raised."""
    return PitchError(text, reason, sentence(reason, text, **values))


def shown(text: str) -> str:
    """A text as it can stand inside one sentence on one line, 40 characters at most.

    Blanks are single; what cannot be printed shows as a replacement mark.
    """
    line = " ".join(text.split())
    line = "".join(c if c.isprintable() else "\ufffd" for c in line)
    return line if len(line) <= 40 else line[:39] + "…"
