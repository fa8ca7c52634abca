"""Whatever a person states: members apart and inside, ends that bear, marks that carry."""

from __future__ import annotations

from hypothesis import given

import sound
from core.job import work_out
from core.model import Project, SiteRecord
from strategies import projects


@given(projects(most_walls=2))
def test_every_wall_of_a_job_is_sound(project: Project) -> None:
    for found in work_out(project, SiteRecord()).walls:
        if found.frame is None:
            continue
        sound.no_two_overlap(found, found.frame)
        sound.nothing_is_outside(found, found.frame, project.room)
        sound.every_place_is_taken_or_told(found, found.frame)
        sound.ends_bear_fully(found, found.frame)
