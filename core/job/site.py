"""How the walls of a job go up, worked out when it is asked for."""

from core.job.results import Results
from core.roof import roof_of, roof_to
from core.site import GoingUp, Surroundings, Turn, going_up, turns


def raising_of(results: Results, letter: str) -> GoingUp | None:
    """How one wall goes up among roof, room and the other walls; None for a wall with no frame."""
    around = surroundings_of(results, letter)
    frame = results.wall(letter).frame
    if around is None or frame is None:
        return None
    return going_up(around, frame, results.project.habits.tape.step_mm)


def raising_order(results: Results) -> tuple[Turn, ...]:
    """The order in which all walls of the job go up, each with why then."""
    letters = [result.wall.letter for result in results.walls]
    found = ((letter, raising_of(results, letter)) for letter in letters)
    going = [(letter, up) for letter, up in found if up is not None]
    return turns(going, results.project.habits.tape.step_mm)


def surroundings_of(results: Results, letter: str) -> Surroundings | None:
    """What a wall is put up among; None for a wall that is not under the roof."""
    result, project = results.wall(letter), results.project
    if result.inputs.near is None:
        return None
    standing = (other.wall for other in results.walls if other.inputs.near is not None)
    others = tuple(other for other in standing if other.letter != letter)
    roof = roof_to(project.room, roof_of(project.room), result.wall)
    return Surroundings(roof, project.room, result.wall, result.inputs.near, others)
