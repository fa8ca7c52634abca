"""Stating the species and the nailing, and taking it back."""

from __future__ import annotations

import pytest

from core.lengths import Length
from core.model import Joint, Nailing, Species
from gui.edits import Refusal, set_nailing, set_species
from loft import loft

SOLE = Joint.STUD_TO_SOLE


def test_the_species_of_the_timber() -> None:
    project = set_species(loft(), Species.WESTERN_LARCH)
    assert project.species is Species.WESTERN_LARCH
    assert set_species(project, None) == loft()


def test_a_joint_nailed_otherwise_and_as_usual_again() -> None:
    project = set_nailing(loft(), SOLE, count=3)
    project = set_nailing(project, SOLE, nail="10d box")
    project = set_nailing(project, Joint.SOLE_TO_FLOOR, every=Length.of_inches(12))
    assert project.nailing == (
        Nailing(SOLE, "10d box", 3),
        Nailing(Joint.SOLE_TO_FLOOR, every=Length.of_inches(12)),
    )
    project = set_nailing(project, SOLE, count=None)
    project = set_nailing(project, SOLE, nail=None)
    assert [row.joint for row in project.nailing] == [Joint.SOLE_TO_FLOOR]


@pytest.mark.parametrize("changes", [{"count": 0}, {"nail": "x" * 61}, {"every": Length(1.0)}])
def test_what_makes_no_sense_is_refused(changes: dict[str, object]) -> None:
    with pytest.raises(Refusal):
        set_nailing(loft(), SOLE, **changes)
