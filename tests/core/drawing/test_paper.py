"""Papers and scales by their published sizes and ratios."""

import pytest

from core.drawing.paper import Paper, scales
from core.lengths import System


@pytest.mark.parametrize(
    ("paper", "inches"),
    [
        # ANSI Y14.1 (1980), sizes A and B, as tabulated in drafting handbooks; from memory.
        (Paper.LETTER, (11, 8.5)),
        (Paper.TABLOID, (17, 11)),
    ],
)
def test_inch_papers(paper: Paper, inches: tuple[float, float]) -> None:
    assert paper.size == pytest.approx([25.4 * side for side in inches])


def test_iso_papers() -> None:
    """ISO 216: A3 is 297 by 420 mm; halved across its long side it is A4. From memory."""
    assert Paper.A3.size == (420, 297)
    assert Paper.A4.size == (297, 420 / 2)


@pytest.mark.parametrize("paper", Paper)
def test_papers_lie(paper: Paper) -> None:
    assert paper.size[0] > paper.size[1]


def test_the_usual_paper() -> None:
    assert [Paper.usual(system) for system in System] == [Paper.LETTER, Paper.A4]


INCH_SCALES = {
    # A foot is 12 inches: 12 / 8 = 1 1/2, 12 / 12 = 1, 12 / 16 = 3/4, 12 / 24 = 1/2, ...
    '1 1/2" = 1\'-0"': 8,
    '1" = 1\'-0"': 12,
    '3/4" = 1\'-0"': 16,
    '1/2" = 1\'-0"': 24,
    '3/8" = 1\'-0"': 32,
    '1/4" = 1\'-0"': 48,
    '3/16" = 1\'-0"': 64,
    '1/8" = 1\'-0"': 96,
    '3/32" = 1\'-0"': 128,
    '1/16" = 1\'-0"': 192,
}

METRIC_SCALES = {f"1:{n}": n for n in (10, 20, 25, 50, 75, 100, 125, 200)}


@pytest.mark.parametrize(
    ("system", "published"), [(System.INCH, INCH_SCALES), (System.METRIC, METRIC_SCALES)]
)
def test_scales(system: System, published: dict[str, int]) -> None:
    """The largest first, each written as it is spoken of."""
    assert [scale.text for scale in scales(system)] == list(published)
    assert [1 / scale.ratio for scale in scales(system)] == pytest.approx([*published.values()])


@pytest.mark.parametrize("system", System)
def test_only_scales_under_one_to_a_hundred_are_reduced(system: System) -> None:
    for scale in scales(system):
        assert scale.reduced == (scale.ratio < 1 / 100 - 1e-9)
        assert scale.size == (2.5 if scale.reduced else 3.5)
