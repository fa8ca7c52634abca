"""The words and the tape that a project is shown with."""

from functools import cache

from core.lengths import System, Tape
from core.model import Project
from core.wording import Wording

_CATALOGUES = {System.INCH: "us", System.METRIC: "metric"}


def wording_of(project: Project) -> Wording:
    """US words for a project in inches, metric words for one in mm, both on the person's tape."""
    return _wording(project.system, project.habits.tape)


def plain_wording() -> Wording:
    """The words of what has no project yet: the command line and the title of an empty window."""
    return _wording(System.INCH, Tape.usual(System.INCH))


@cache
def _wording(system: System, tape: Tape) -> Wording:
    return Wording(_CATALOGUES[system], tape)
