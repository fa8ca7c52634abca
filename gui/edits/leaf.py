"""Stating the leaf or unit that an opening is made for, and how it hangs."""

from typing import Any

import msgspec

from core.framing import spoken
from core.lengths import Length, System
from core.model import Leaf, Opening, Project
from core.wording import Mm, message
from gui.edits.refusal import Refusal
from gui.edits.stating import stated
from gui.edits.usual import length

_ALLOWED = {
    # The common rule: 2 in. for jambs and shims, 2 1/2 in. for head jamb, shims and finished floor.
    System.INCH: ("2 in", "2 1/2 in"),
    # A lining of 32 mm with 12 mm of play: 2 x 32 + 12, and 32 + 12 and 10 mm under the leaf.
    System.METRIC: ("76 mm", "54 mm"),
}


def leaf_within(project: Project, opening: Opening) -> Leaf:
    """The leaf that a rough opening was made for, less the usual allowances if it has them."""
    width, height = opening.width.mm, opening.head.mm - opening.sill.mm
    wider, higher = (length(project.system, text) for text in _ALLOWED[project.system])
    none = length(project.system, "0")
    wider = wider if wider.mm < width else none
    higher = higher if higher.mm < height else none
    wide, high = stated(project, width - wider.mm), stated(project, height - higher.mm)
    return Leaf(wide, high, wider, higher)


def sized_by(project: Project, opening: Opening, leaf: Leaf) -> dict[str, Any]:
    """The changes that make an opening the sum of a leaf and its allowances, above its sill."""
    head = opening.sill.mm + leaf.rough_height
    return {
        "leaf": leaf,
        "width": stated(project, leaf.rough_width),
        "head": stated(project, head),
    }


def with_leaf(project: Project, letter: str, before: Opening, after: Opening) -> Opening:
    """A changed opening with its leaf's sums kept true.

    A raised sill takes the head with it; another rough width or head is taken as another
    allowance, and refused where it is less than the leaf.
    """
    leaf = after.leaf
    if leaf is None or leaf != before.leaf:
        return after
    if after.sill != before.sill and after.head == before.head:
        head = stated(project, after.sill.mm + leaf.rough_height)
        return msgspec.structs.replace(after, head=head)
    wider = after.width.mm - leaf.width.mm
    higher = after.head.mm - after.sill.mm - leaf.height.mm
    if wider < 0:
        raise _too_small("edit.narrower-than-leaf", letter, after, leaf.width.mm)
    if higher < 0:
        raise _too_small("edit.lower-than-leaf", letter, after, after.sill.mm + leaf.height.mm)
    changes: dict[str, Length] = {}
    if after.width != before.width:
        changes["wider"] = stated(project, wider)
    if after.head != before.head or after.sill != before.sill:
        changes["higher"] = stated(project, higher)
    return msgspec.structs.replace(after, leaf=msgspec.structs.replace(leaf, **changes))


def _too_small(message_id: str, letter: str, opening: Opening, least: float) -> Refusal:
    name = spoken(opening.id)
    return Refusal(message(message_id, opening=name, letter=letter, least=Mm(least)))
