"""What the window's foot tells of a wall and of the whole job: studs, and cautions."""

import msgspec

from core.checks import Severity
from core.framing import Role
from core.job.results import Results, WallResult


class Totals(msgspec.Struct, frozen=True):
    """Counts: studs, cautions but for those that always stand, and what cannot be built of them."""

    studs: int
    cautions: int
    unbuildable: int


def wall_totals(result: WallResult) -> Totals:
    """The totals of one wall."""
    members = result.frame.members if result.frame else ()
    grave = [c.severity for c in result.cautions if c.severity is not Severity.STANDING]
    studs = sum(member.role is Role.STUD for member in members)
    return Totals(studs, len(grave), grave.count(Severity.UNBUILDABLE))


def job_totals(results: Results) -> Totals:
    """The totals of all walls, and the cautions of the job."""
    walls = [wall_totals(result) for result in results.walls]
    own = [c.severity for c in results.cautions if c.severity is not Severity.STANDING]
    return Totals(
        sum(wall.studs for wall in walls),
        sum(wall.cautions for wall in walls) + len(own),
        sum(wall.unbuildable for wall in walls) + own.count(Severity.UNBUILDABLE),
    )
