"""The words and the tape that a project is shown with."""

from functools import cache

from core.lengths import System, Tape
from core.model import Project, TradeWords
from core.wording import Wording

_USUAL = {System.INCH: TradeWords.US, System.METRIC: TradeWords.METRIC}
"""The words that go with the units where none are stated."""


def wording_of(project: Project) -> Wording:
    """The words that the project states or that go with its units, on the person's tape."""
    return _wording(words_of(project), project.habits.tape)


def words_of(project: Project) -> TradeWords:
    """The stated words, or US words for a project in inches and metric words for one in mm."""
    return project.habits.words or _USUAL[project.system]


def said_in(project: Project) -> tuple[System, TradeWords]:
    """What all that is made once with words in it goes by: the units and the words."""
    return project.system, words_of(project)


def plain_wording() -> Wording:
    """The words of what has no project yet: the command line and the title of an empty window."""
    return _wording(TradeWords.US, Tape.usual(System.INCH))


@cache
def _wording(words: TradeWords, tape: Tape) -> Wording:
    return Wording(words.value, tape)
