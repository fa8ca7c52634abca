"""Setting what is stated of the work on site: the species of the timber, and the nailing."""

from typing import Any

import msgspec

from core.model import Joint, Nailing, Project, Species
from gui.edits.sense import check_sense


def set_species(project: Project, species: Species | None) -> Project:
    """The project with its timber of another species; None where it is not known."""
    return check_sense(msgspec.structs.replace(project, species=species))


def set_nailing(project: Project, joint: Joint, **changes: Any) -> Project:
    """The schedule with one joint nailed otherwise; what becomes None is as usual again."""
    before = {row.joint: row for row in project.nailing}
    row = msgspec.structs.replace(before.get(joint, Nailing(joint)), **changes)
    rows = {**before, joint: row}
    kept = tuple(r for r in rows.values() if r != Nailing(r.joint))
    return check_sense(msgspec.structs.replace(project, nailing=kept))
