"""What a step would do to pieces that are cut already, found before the step is made."""

from collections.abc import Callable
from typing import NamedTuple

from core.job import Change, cut_changes, since_cut, work_out
from core.model import Project, SiteRecord
from core.wording import Wording, message


class Doubt(NamedTuple):
    """A step that would spoil cut pieces, and how it is made all the same."""

    changes: tuple[Change, ...]
    go_on: Callable[[], None]

    def sentence(self, wording: Wording) -> str:
        """Says what the first of the pieces suffers, and how many more there are."""
        first = wording.say(since_cut(self.changes[0]))
        more = len(self.changes) - 1
        if not more:
            return first
        return f"{first} {wording.say(message('doubt.more', count=more))}"


def spoilt(site: SiteRecord, before: Project, after: Project) -> tuple[Change, ...]:
    """The cut pieces that serve before a step and no longer after it."""
    if not site.cut:
        return ()
    known = {change.key for change in cut_changes(site, work_out(before, site))}
    changes = cut_changes(site, work_out(after, site))
    return tuple(change for change in changes if change.key not in known)
