"""Over random jobs every number has its working, and what is printed adds up as it is printed."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from hypothesis import given

from core.framing import Given, Working, printed
from core.job import Number, WallResult, given_of, work_out, workings_of
from core.model import Project, SiteRecord
from core.wording import Wording
from strategies import projects

NOT_NAMED = {"working.top", "working.foot", "working.stands-at", "working.limit"}
"""The names of terms that stand for what has no names of its own."""


def asked(result: WallResult, of: Given | None) -> Iterator[tuple[float, Working]]:
    """Every length and mark of a wall's members with its last working."""
    for member in result.frame.members if result.frame else ():
        for number, exact in (
            (Number.LONG, member.long_point),
            (Number.SHORT, member.short_point),
            (Number.OVERALL, member.overall),
        ):
            for working in workings_of(result, of, member.key, number):
                yield exact, working
        for notch in member.notches:
            sizes = (notch.depth, notch.bottom, *(() if notch.top is None else (notch.top,)))
            found = workings_of(result, of, member.key, Number.NOTCH, notch.purlin)
            yield from zip(sizes, found, strict=True)
    for mark in result.marks:
        yield mark.along, workings_of(result, of, mark.member, Number.MARK, mark.plate)[-1]


def others(result: WallResult, of: Given | None) -> Iterator[tuple[float, Working]]:
    """Openings, boxes and the wall itself."""
    yield result.wall.run, workings_of(result, of, None, Number.WALL_LENGTH)[0]
    for placed in result.frame.openings if result.frame else ():
        ends = [end for bounds in placed.fit.ranges for end in bounds]
        yield from zip(ends, workings_of(result, of, placed.key, Number.FITS), strict=True)
        opening = placed.opening
        sizes = (opening.width.mm, opening.head.mm - opening.sill.mm)
        found = workings_of(result, of, placed.key, Number.ROUGH_OPENING)
        yield from zip(sizes, found, strict=True)
    for box in result.boxes:
        edges = workings_of(result, of, box.key, Number.BOX_EDGES)
        yield from zip((box.left, box.right), edges, strict=True)
        heights = workings_of(result, of, box.key, Number.BOX_HEIGHTS)
        yield from zip((box.bottom, box.top), heights, strict=True)


@given(projects())
def test_terms_have_names_and_add_up_in_full_and_as_they_are_printed(project: Project) -> None:
    results = work_out(project, SiteRecord())
    wording = Wording("us", project.habits.tape)
    for result in results.walls:
        of = given_of(results, result.wall.letter)
        members = list(asked(result, of))
        for _, working in members:
            assert not {term.name.id for term in working.terms} & NOT_NAMED
        for exact, working in (*members, *others(result, of)):
            assert working.exact == pytest.approx(exact, abs=1e-5)
            shown = printed(working, wording)
            assert sum(line.steps for line in shown.lines) == shown.steps
            assert shown.result == wording.tape.text(working.exact)
