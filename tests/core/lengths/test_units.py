"""Units and systems of measure."""

from fractions import Fraction

import pytest

from core.lengths import System, Unit
from core.lengths.units import LIMIT_MM

# 1 in = 25.4 mm exactly; 1 ft = 12 x 25.4 = 304.8 mm.
MM_EACH = [
    (Unit.MM, Fraction(1)),
    (Unit.CM, Fraction(10)),
    (Unit.M, Fraction(1000)),
    (Unit.INCH, Fraction("25.4")),
    (Unit.FEET, Fraction("304.8")),
]


@pytest.mark.parametrize(("unit", "mm"), MM_EACH)
def test_millimetres_in_a_unit(unit: Unit, mm: Fraction) -> None:
    assert unit.mm_each == mm


def test_three_units_are_metric() -> None:
    assert [unit for unit in Unit if unit.metric] == [Unit.MM, Unit.CM, Unit.M]


def test_a_bare_number_means_inches_or_millimetres() -> None:
    assert System.INCH.bare_unit is Unit.INCH
    assert System.METRIC.bare_unit is Unit.MM


def test_values_are_the_words_written_in_files() -> None:
    assert [unit.value for unit in Unit] == ["mm", "cm", "m", "in", "ft"]
    assert [system.value for system in System] == ["inch", "metric"]


def test_the_limit_is_a_mile() -> None:
    assert 5280 * Unit.FEET.mm_each == LIMIT_MM
