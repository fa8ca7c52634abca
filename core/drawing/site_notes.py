"""What a sheet says of the work on site: how its wall goes up, what it weighs, its nails."""

from collections import Counter

from core.drawing.lean_notes import lean_notes
from core.drawing.passing_notes import passing_notes
from core.framing import Frame
from core.job import Results, WallResult, raising_of
from core.model import Project
from core.site import Turn, conditions, nails, turn_of, verdict, weighed, weights
from core.wording import Wording, message


def site_notes(
    results: Results, letter: str, wording: Wording, turns: tuple[Turn, ...] = ()
) -> tuple[str, ...]:
    """The notes of one wall, each a sentence; none for a wall that has no frame.

    `turns` is the order in which the walls of the job go up.
    """
    result = results.wall(letter)
    up = raising_of(results, letter)
    if up is None or result.frame is None:
        return ()
    return (
        *framing_notes(result, wording),
        *(wording.say(told) for told in (verdict(up), *conditions(up), *turn_of(turns, letter))),
        wording.say(weighed(weights(result.frame, results.project.species), result.label_of)),
        _nails(result, result.frame, results.project, wording),
    )


def framing_notes(result: WallResult, wording: Wording) -> tuple[str, ...]:
    """Those of them that tell how pieces are cut and set: no sheet does without."""
    return (*passing_notes(result, wording), *lean_notes(result, wording))


def _nails(result: WallResult, frame: Frame, project: Project, wording: Wording) -> str:
    """All nails of the wall by their kind."""
    totals: Counter[str] = Counter()
    for line in nails(result.wall, frame, project.nailing):
        totals[wording.say(line.nail)] += line.total
    kinds = (
        message("nail.kind", count=count, nail=nail) for nail, count in totals.items() if count
    )
    return wording.say(message("nail.total", list=", ".join(map(wording.say, kinds))))
