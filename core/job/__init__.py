"""The one pipeline: project to results."""

from core.job.results import Results, WallInputs, WallResult
from core.job.site import raising_of, surroundings_of
from core.job.work import Memo, work_out

__all__ = [
    "Memo",
    "Results",
    "WallInputs",
    "WallResult",
    "raising_of",
    "surroundings_of",
    "work_out",
]
