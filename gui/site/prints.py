"""What a print leaves in the record of the site: labels that stay, and each wall as it stood."""

from functools import reduce

import msgspec

from core.job import Results, wall_made, with_sheet
from core.model import PrintedLabel, SiteRecord


def printed(site: SiteRecord, results: Results, date: str) -> SiteRecord:
    """The record after the sheets of all walls were printed on a date (year-month-day)."""
    known = {p.key for p in site.printed}
    labels = [pair for wall in results.walls for pair in wall.labels]
    new = (PrintedLabel(key, label) for key, label in labels if key not in known)
    kept = msgspec.structs.replace(site, printed=(*site.printed, *new))
    framed = (wall for wall in results.walls if wall.frame is not None)
    return reduce(with_sheet, (wall_made(wall, date) for wall in framed), kept)
