"""Ticking a piece off as cut or nailed: the record of the site that follows from it."""

import msgspec

from core.job import WallResult, piece_made, with_cut, without_cut
from core.model import PieceMade, PrintedLabel, SiteRecord


def tick_cut(site: SiteRecord, result: WallResult, key: str) -> SiteRecord:
    """The piece is cut as it is drawn now; ticked again it is not cut.

    One that no longer serves as it was cut is taken to be cut anew.
    """
    stale = any(change.key == key for change in result.changes)
    if _done(site, key) is None or stale:
        return _cut(site, result, key, nailed=False)
    return without_cut(site, key)


def tick_nailed(site: SiteRecord, result: WallResult, key: str) -> SiteRecord:
    """The piece is nailed, and so it is cut; ticked again it is cut but not nailed."""
    nailed = _done(site, key)
    if nailed is None:
        return _cut(site, result, key, nailed=True)
    piece = next(done.piece for done in site.cut if done.piece.key == key)
    return with_cut(site, piece, nailed=not nailed)


def _done(site: SiteRecord, key: str) -> bool | None:
    """Whether the piece is nailed; None if it is not even cut."""
    return next((done.nailed for done in site.cut if done.piece.key == key), None)


def _cut(site: SiteRecord, result: WallResult, key: str, *, nailed: bool) -> SiteRecord:
    piece = piece_made(result, key)
    return with_cut(_pencilled(site, piece), piece, nailed=nailed)


def _pencilled(site: SiteRecord, piece: PieceMade) -> SiteRecord:
    """The label is on the wood now, so it stays with the piece as one on paper does."""
    if any(label.key == piece.key for label in site.printed):
        return site
    label = PrintedLabel(piece.key, piece.label)
    return msgspec.structs.replace(site, printed=(*site.printed, label))
