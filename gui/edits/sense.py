"""What no project file may hold is refused here as well, so that whatever is shown can be saved."""

from collections.abc import Iterable

from core.model import Project
from core.storage.faults import Fault
from core.storage.sense import project_faults
from core.storage.sense_wall import wall_faults
from core.wording import message
from gui.edits.refusal import Refusal


def check_sense(project: Project) -> Project:
    """The project itself; refused with the first of its faults."""
    _refuse_first(project_faults(project))
    return project


def check_wall(project: Project, letter: str) -> Project:
    """The project itself; refused with the first fault of this wall, the rest being as it was."""
    _refuse_first(wall_faults(project.wall(letter), ""))
    return project


def _refuse_first(faults: Iterable[Fault]) -> None:
    for fault in faults:
        raise Refusal(message("edit.senseless", reason=fault.reason, remedy=fault.remedy))
