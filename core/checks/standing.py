"""The cautions that go with the work itself, whatever the drawing says."""

from core.checks.caution import Caution, Severity
from core.wording import message

_STANDING = ("structure", "floor", "lifting", "dust", "exits", "codes")


def standing_cautions() -> tuple[Caution, ...]:
    """Structure, floor load, lifting alone, dust and saw, ways out, and the local code."""
    return tuple(Caution(Severity.STANDING, "", message(f"standing.{name}")) for name in _STANDING)
