"""Results of pure functions, kept from one round to the next by whoever owns them."""

from collections.abc import Callable
from typing import Any, TypeVar, TypeVarTuple

Given = TypeVarTuple("Given")
Made = TypeVar("Made")

ROUNDS = 16
"""After so many rounds that is forgotten which the last of them did not ask for."""


class Kept:
    """What functions gave for what they were given; asked again they give the very same value.

    Only for functions whose result depends on nothing but what they are given, so that a result
    worked out step by step equals a fresh one. A round is one working out of the whole: one frame
    of a drag. Kept is at most what `ROUNDS` rounds asked for, so memory has its bound.
    """

    def __init__(self) -> None:
        """Nothing kept yet."""
        self._round = 0
        self._kept: dict[tuple[Any, ...], list[Any]] = {}

    @property
    def size(self) -> int:
        """How many results are kept."""
        return len(self._kept)

    def next_round(self) -> None:
        """Begin a round; now and then forget what was not asked for in the last one."""
        self._round += 1
        if self._round % ROUNDS == 0:
            last = self._round - 1
            for key in [key for key, (asked, _) in self._kept.items() if asked < last]:
                del self._kept[key]

    def of(self, make: Callable[[*Given], Made], *given: *Given) -> Made:
        """What `make` gives for these values, made only if it is not at hand; they must hash."""
        key = (make, *given)
        entry = self._kept.get(key)
        if entry is None:
            entry = self._kept[key] = [self._round, make(*given)]
        entry[0] = self._round
        made: Made = entry[1]
        return made
