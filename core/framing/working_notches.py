"""The terms of a notch round a purlin: how deep it is, and from where to where above the foot."""

from core.framing.given import Given
from core.framing.keys import spoken
from core.framing.member import Member
from core.framing.working import Term, Working
from core.framing.working_heights import Place, foot_terms
from core.model import Side
from core.wording import Message, message


def notch_workings(given: Given, member: Member, purlin_id: str) -> tuple[Working, ...]:
    """How a member's notch round the purlin with this id comes about; nothing where it has none."""
    notch = next((n for n in member.notches if n.purlin == purlin_id), None)
    purlin = next((p for p in given.purlins if p.id == purlin_id), None)
    if notch is None or purlin is None:
        return ()
    named, label = spoken(purlin.id), given.label(member)
    side = message("working.purlin-side", purlin=named)
    if notch.side is Side.LEFT:
        deep = (Term(side, purlin.right), Term(_edge("stud-left", label), -member.left))
        edge = member.left
    else:
        deep = (Term(_edge("stud-right", label), member.right), Term(side, -purlin.left))
        edge = member.right
    foot = foot_terms(given, member, Place(edge, 0))
    gap = message("working.gap-kept")
    low = (
        Term(message("working.purlin-underside", purlin=named), purlin.bottom),
        *_unless_none(Term(gap, -purlin.gap)),
        *foot,
    )
    high = (
        Term(message("working.purlin-top", purlin=named), purlin.top),
        *_unless_none(Term(gap, purlin.gap)),
        *foot,
    )
    made = [
        Working(message("working.notch-depth"), deep),
        Working(message("working.notch-bottom"), low),
    ]
    return (*made, *(() if notch.top is None else (Working(message("working.notch-top"), high),)))


def _edge(name: str, label: str) -> Message:
    return message(f"working.{name}", label=label)


def _unless_none(term: Term) -> tuple[Term, ...]:
    return (term,) if term.value else ()
