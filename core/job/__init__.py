"""The one pipeline: project to results."""

from core.job.change import Change, What, since_cut, since_print
from core.job.given import given_of
from core.job.made import (
    changes_since_print,
    cut_changes,
    piece_made,
    wall_made,
    with_cut,
    with_sheet,
    without_cut,
)
from core.job.results import Results, WallInputs, WallResult
from core.job.site import raising_of, raising_order, surroundings_of
from core.job.totals import Totals, job_totals, wall_totals
from core.job.work import Memo, work_out
from core.job.working import Number, workings, workings_of

__all__ = [
    "Change",
    "Memo",
    "Number",
    "Results",
    "Totals",
    "WallInputs",
    "WallResult",
    "What",
    "changes_since_print",
    "cut_changes",
    "given_of",
    "job_totals",
    "piece_made",
    "raising_of",
    "raising_order",
    "since_cut",
    "since_print",
    "surroundings_of",
    "wall_made",
    "wall_totals",
    "with_cut",
    "with_sheet",
    "without_cut",
    "work_out",
    "workings",
    "workings_of",
]
