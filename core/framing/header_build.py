"""How a header is built up through the wall: its plies, the spacers between them, its thickness."""

from core.model import Header, HeaderKind


def spacers(header: Header) -> int:
    """How many spacers stand between the plies of a header on edge."""
    stated = header.spacer is not None and header.spacer.mm > 0
    return header.plies - 1 if stated and header.kind is HeaderKind.ON_EDGE else 0


def header_depth(header: Header) -> float:
    """How thick the header is through the wall, mm: flat its width, on edge plies and spacers."""
    if header.kind is HeaderKind.NONE:
        return 0.0
    if header.kind is HeaderKind.FLAT:
        return header.timber.width.mm
    between = header.spacer.mm if header.spacer is not None else 0.0
    return header.plies * header.timber.thickness.mm + spacers(header) * between


def thickest_spacer(header: Header, wall: float) -> float | None:
    """The spacer, mm, that makes a header as thick as a wall; None if its plies are thicker."""
    room = wall - header.plies * header.timber.thickness.mm
    return room / (header.plies - 1) if header.plies > 1 and room >= 0 else None
