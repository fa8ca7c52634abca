"""The terms of openings and boxes: rough opening, where an opening fits, edges of a box."""

import math
from collections.abc import Iterator

from core.framing.boxes import PlacedBox, box_bottom
from core.framing.given import Given
from core.framing.heads import plumb_rise
from core.framing.near import end_spans
from core.framing.placed import PlacedOpening
from core.framing.working import Term, Working
from core.model import BoxHeight, Opening, Side
from core.wording import Mm, message

_SAME = 1e-5
"""Places nearer than this (mm) are one."""

Terms = tuple[Term, ...]


def rough_opening_workings(opening: Opening) -> tuple[Working, ...]:
    """The width and the height of a rough opening: leaf and allowances, or as they are stated."""
    leaf = opening.leaf
    wide: Terms = (Term(message("working.as-stated"), opening.width.mm),)
    high: Terms = (
        Term(message("working.head"), opening.head.mm),
        *_unless_none(Term(message("working.sill"), -opening.sill.mm)),
    )
    if leaf is not None and abs(leaf.rough_width - opening.width.mm) <= _SAME:
        wide = (
            Term(message("working.leaf-width"), leaf.width.mm),
            Term(message("working.leaf-wider"), leaf.wider.mm),
        )
    if leaf is not None and abs(leaf.rough_height - opening.head.mm + opening.sill.mm) <= _SAME:
        high = (
            Term(message("working.leaf-height"), leaf.height.mm),
            Term(message("working.leaf-higher"), leaf.higher.mm),
        )
    return (
        Working(message("working.rough-width"), wide),
        Working(message("working.rough-height"), high),
    )


def fit_workings(given: Given, placed: PlacedOpening) -> tuple[Working, ...]:
    """The two ends of every range of an opening's left edge, each from what is in its way."""
    made = []
    for low, high in placed.fit.ranges:
        for name, value in (("working.fits-from", low), ("working.fits-to", high)):
            terms = _limit(given, placed.opening, value)
            made.append(Working(message(name), terms))
    return tuple(made)


def box_workings(given: Given, placed: PlacedBox) -> dict[str, tuple[Working, ...]]:
    """The workings of a box's edges and heights."""
    box, stud = placed.box, given.frame.member(placed.box.stud)
    bottom: Terms = (Term(message(f"working.box-{box.to.value}"), box.height.mm),)
    below = box_bottom(box) - box.height.mm
    if box.to is not BoxHeight.BOTTOM:
        part = "half" if box.to is BoxHeight.CENTRE else "all"
        bottom = (*bottom, Term(message(f"working.box-{part}"), below))
    edges: Terms = (Term(message("working.stands-at"), placed.left),)
    if stud is not None:
        left = Term(message("working.stud-left", label=given.label(stud)), stud.left)
        edges = (left, Term(message("working.box-width"), -box.width.mm))
        if box.side is Side.RIGHT:
            edges = (left, Term(message("working.stud-thickness"), stud.right - stud.left))
    wide, tall = (
        Term(message("working.box-width"), box.width.mm),
        Term(message("working.box-tall"), box.tall.mm),
    )
    return {
        "edges": (
            Working(message("working.left-edge"), edges),
            Working(message("working.right-edge"), (*edges, wide)),
        ),
        "heights": (
            Working(message("working.bottom"), bottom),
            Working(message("working.top-edge"), (*bottom, tall)),
        ),
        "height": (Working(message("working.height"), bottom[:1]),),
    }


def _unless_none(term: Term) -> Terms:
    return (term,) if abs(term.value) > _SAME else ()


def _limit(given: Given, opening: Opening, value: float) -> Terms:
    """The terms that come to an end of a range."""
    for terms in _limits(given, opening):
        if abs(math.fsum(term.value for term in terms) - value) <= _SAME:
            return tuple(term for term in terms if abs(term.value) > _SAME) or terms[:1]
    return (Term(message("working.limit"), value),)


def _limits(given: Given, opening: Opening) -> Iterator[Terms]:
    """Whatever may limit an opening's left edge: the wall's ends, other openings, the plates."""
    thick, width, run = given.wall.stud.thickness.mm, opening.width.mm, given.wall.run
    (_, first), (last, _) = end_spans(given.wall)
    own = Term(message("working.opening-width"), -width)
    trimmer, king = message("working.trimmer"), message("working.king")
    ends = Term(message("working.end-stud"), first)
    yield ends, Term(king, thick), Term(trimmer, thick)
    yield ends, Term(trimmer, thick)
    end_stud = Term(message("working.end-stud"), last - run)
    back = (Term(message("working.wall-length"), run), end_stud)
    yield *back, Term(king, -thick), Term(trimmer, -thick), own
    yield *back, Term(trimmer, -thick), own
    for placed in given.frame.openings:
        if placed.opening.id != opening.id and placed.fit.fits:
            yield from _beside(given, placed.opening, own)
    for line in (given.frame.near, given.frame.far):
        for segment in line.segments:
            places = [(segment.left, "working.roof-ends"), (segment.right, "working.roof-ends")]
            rake = segment.along if opening.is_raked else 0.0
            need = opening.head.mm + plumb_rise(opening.header, rake)
            if abs(segment.along) > 1e-12:
                places.append(((need - segment.height) / segment.along, "working.roof-meets"))
            for x, name in places:
                at = Term(message(name, need=Mm(need)), x)
                yield at, Term(trimmer, thick)
                yield at, Term(trimmer, -thick), own
                # A raked header is as far under the plates at its jamb as at its ends.
                yield from ((at,), (at, own)) if opening.is_raked else ()


def _beside(given: Given, other: Opening, own: Term) -> Iterator[Terms]:
    """An opening to the right of another one, and to the left of it, with and without its king."""
    thick = given.wall.stud.thickness.mm
    low, high = other.left.mm, other.left.mm + other.width.mm
    after = Term(message("working.other-right", other=other.id.replace("-", " ")), high)
    before = Term(message("working.other-left", other=other.id.replace("-", " ")), low)
    for count, name in ((4, "working.two-kings"), (3, "working.shared-king")):
        yield after, Term(message(name), count * thick)
        yield before, Term(message(name), -count * thick), own
