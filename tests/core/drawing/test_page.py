"""Where a model point lands on the paper."""

import pytest

from core.drawing.elements import XY
from core.drawing.page import Placed


@pytest.mark.parametrize(
    ("point", "expected"),
    [
        ((0, 0), (30, 20)),
        # 480 mm at 1:48 are 10 mm.
        ((480, 0), (40, 20)),
        ((-480, 960), (20, 40)),
    ],
)
def test_on_paper(point: XY, expected: XY) -> None:
    assert Placed((), 1 / 48, (30.0, 20.0)).on_paper(point) == pytest.approx(expected)
