"""Cuts past the stops of the person's saw, and how they are made all the same."""

from core.checks.caution import Caution, Severity
from core.framing import Facet, Frame, Rip, Setting, Way, past_stops, rip_setting
from core.model import Saw, Wall
from core.wording import Message, Rad, message


def saw_cautions(wall: Wall, frame: Frame, saw: Saw) -> list[Caution]:
    """One caution for every different cut of the wall that the saw does not reach as it stands."""
    found: dict[Message, str] = {}
    seen: set[tuple[Facet, ...]] = set()
    for member in frame.members:
        # Most members are cut alike.
        cuts = (*member.first_cut, *member.last_cut)
        for facet, setting in past_stops(member, saw) if cuts not in seen else ():
            found.setdefault(_past(wall, cut_message(facet), setting_message(setting)), member.key)
        seen.add(cuts)
        if member.rip is not None and (how := rip_message(member.rip, saw)) is not None:
            cut = message("saw.rip-cut", bevel=Rad(round(abs(member.rip.bevel), 6)))
            found.setdefault(_past(wall, cut, how), member.key)
    return [Caution(Severity.WARNING, key, text) for text, key in found.items()]


def cut_message(facet: Facet) -> Message:
    """A facet in words, as the saw would be set from a square cut."""
    return _angles(abs(facet.bevel), abs(facet.mitre))


def setting_message(setting: Setting) -> Message:
    """How a piece is held and what the saw is set to."""
    name = setting.way.value.replace(" ", "-")
    return message(f"saw.{name}", cut=_angles(setting.bevel, setting.mitre))


def rip_message(rip: Rip, saw: Saw) -> Message | None:
    """How edges are ripped that the blade does not tilt for; None where it does."""
    setting = rip_setting(rip, saw)
    if setting.way is Way.FLAT:
        return None
    if setting.way is Way.BY_HAND:
        return message("saw.rip-by-hand")
    return message("saw.rip-on-edge", bevel=Rad(round(setting.bevel, 6)))


def _past(wall: Wall, cut: Message, how: Message) -> Message:
    return message("saw.past", letter=wall.letter, cut=cut, how=how)


def _angles(bevel: float, mitre: float) -> Message:
    # Rounded far below what is shown, so that cuts alike but for floating point say the same.
    bevel, mitre = round(bevel, 6), round(mitre, 6)
    if mitre < 1e-4:
        return message("cut.bevel", bevel=Rad(bevel))
    if bevel < 1e-4:
        return message("cut.mitre", mitre=Rad(mitre))
    return message("cut.both", bevel=Rad(bevel), mitre=Rad(mitre))
