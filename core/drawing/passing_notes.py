"""What a sheet and the window say of the purlins that a wall meets: the rule, and each stud."""

from core.checks import percent_taken
from core.drawing.table import notch_message
from core.framing import Member, Notch, keys, spoken
from core.job import WallResult
from core.model import Passing
from core.roof import PurlinThrough
from core.wording import Message, Mm, Wording, message


def passing_notes(result: WallResult, wording: Wording) -> tuple[str, ...]:
    """For every purlin that studs give way to their rule, then a sentence for each stud."""
    around = (p for p in result.inputs.crossings if p.passing is not Passing.THROUGH)
    found = [(_rule(purlin), _studs(purlin, result)) for purlin in around]
    return tuple(wording.say(said) for rule, studs in found if studs for said in (rule, *studs))


def purlin_notes(result: WallResult, purlin: str, wording: Wording) -> tuple[str, ...]:
    """The same for one purlin, with the rule where no stud meets it too.

    Nothing for one that the wall passes under or only stops its plates at: cautions tell of that.
    """
    around = (p for p in result.inputs.crossings if p.passing is not Passing.THROUGH)
    return tuple(
        wording.say(said)
        for found in around
        if found.id == purlin
        for said in (_rule(found), *_studs(found, result))
    )


def _rule(purlin: PurlinThrough) -> Message:
    """The rule that studs go by at a purlin."""
    name, gap = spoken(purlin.id), Mm(purlin.gap)
    return message(f"passing.rule-{purlin.passing.value}", purlin=name, gap=gap)


def _studs(purlin: PurlinThrough, result: WallResult) -> list[Message]:
    """What becomes of each stud that meets a purlin."""
    frame, labels = result.frame, result.label_of
    found = []
    for member in frame.members if frame else ():
        found += [
            _notched(member, notch, labels[member.key])
            for notch in member.notches
            if notch.purlin == purlin.id
        ]
        if keys.is_over(member.key) and member.key.endswith(f"/{purlin.id}"):
            found.append(message("passing.goes-on", label=labels[member.key]))
        elif _stops_at(member, purlin):
            label = labels[member.key]
            found.append(message("passing.ends", label=label, long=Mm(member.long_point)))
    return found


def _notched(member: Member, notch: Notch, label: str) -> Message:
    cut, left = notch_message(notch), Mm(member.thickness - notch.depth)
    percent = 100 - percent_taken(member, notch)
    return message("passing.notch", label=label, cut=cut, left=left, percent=percent)


def _stops_at(member: Member, purlin: PurlinThrough) -> bool:
    """Whether a member ends under this purlin."""
    beside = member.left < purlin.right and member.right > purlin.left
    return member.stops and beside and abs(member.top - (purlin.bottom - purlin.gap)) < 1.0
