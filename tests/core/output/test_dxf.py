"""Hand-made drawings written to DXF and read back."""

import io
import math
import os
import subprocess
import sys

import ezdxf
import pytest
from ezdxf.document import Drawing as Document
from ezdxf.entities.dxfentity import DXFEntity
from ezdxf.filemanagement import read

from core.drawing import Align, Dimension, Drawing, Element, Fill, Pen, Stroke, Text
from core.drawing.typeface import cap_height
from core.output.dxf import write_dxf
from core.output.dxf_entities import APP_ID
from core.output.layers import LAYERS

TRIANGLE = ((0.0, 0.0), (254.0, 0.0), (254.0, 127.0))


def written(*elements: Element, scale: float = 1.0, metric: bool = True) -> str:
    out = io.StringIO()
    write_dxf((elements,), out, scale=scale, metric=metric)
    return out.getvalue()


def document(*elements: Element, scale: float = 1.0, metric: bool = True) -> Document:
    return read(io.StringIO(written(*elements, scale=scale, metric=metric)))


def entities(*elements: Element, scale: float = 1.0, metric: bool = True) -> list[DXFEntity]:
    return list(document(*elements, scale=scale, metric=metric).modelspace())


@pytest.mark.parametrize(
    ("metric", "insunits", "measurement"),
    [
        # DXF reference: $INSUNITS 1 inches, 4 millimetres; $MEASUREMENT 0 English, 1 metric.
        (False, 1, 0),
        (True, 4, 1),
    ],
)
def test_the_file_names_its_unit(metric: bool, insunits: int, measurement: int) -> None:
    made = document(metric=metric)
    assert made.dxfversion == "AC1024"  # R2010
    assert (made.header["$INSUNITS"], made.header["$MEASUREMENT"]) == (insunits, measurement)


@pytest.mark.parametrize(("metric", "expected"), [(True, 254.0), (False, 10.0)])
@pytest.mark.parametrize("scale", [1.0, 1 / 24])
def test_lines_are_as_long_as_the_timber_whatever_the_scale(
    metric: bool, expected: float, scale: float
) -> None:
    (line,) = entities(Stroke(((0, 0), (254, 0)), Pen.STUD), scale=scale, metric=metric)
    assert line.dxftype() == "LINE"
    assert line.dxf.end.x - line.dxf.start.x == expected


@pytest.mark.parametrize("closed", [True, False])
def test_outlines_are_one_polyline(closed: bool) -> None:
    (outline,) = entities(Stroke(TRIANGLE, Pen.STUD, closed=closed), metric=False)
    assert outline.dxftype() == "LWPOLYLINE"
    assert list(outline.vertices()) == [(0, 0), (10, 0), (10, 5)]  # type: ignore[attr-defined]
    assert outline.closed is closed  # type: ignore[attr-defined]


def test_every_pen_is_a_layer_with_its_look() -> None:
    made = document(*(Stroke(((0, n), (9, n)), pen) for n, pen in enumerate(Pen)))
    assert [e.dxf.layer for e in made.modelspace()] == [LAYERS[pen].name for pen in Pen]
    for layer in LAYERS.values():
        entry = made.layers.get(layer.name)
        assert (entry.dxf.color, entry.dxf.lineweight) == (layer.colour, layer.weight)
    # Colour, weight and line type of every entity are those of its layer.
    assert not any(
        e.dxf.hasattr(name)
        for e in made.modelspace()
        for name in ("color", "lineweight", "linetype")
    )


@pytest.mark.parametrize(("metric", "unit"), [(True, 1.0), (False, 1 / 25.4)])
def test_dashes_are_as_long_as_on_paper(metric: bool, unit: float) -> None:
    """3 mm drawn and 1.5 mm left out, times the line type scale: 20 mm of the model for each."""
    made = document(scale=1 / 20, metric=metric)
    name = made.layers.get("UNBUILDABLE").dxf.linetype
    assert made.layers.get("STUD").dxf.linetype == "Continuous"
    assert made.linetypes.get(name).simplified_line_pattern() == (3.0, 1.5)
    assert made.header["$LTSCALE"] == pytest.approx(20 * unit)


@pytest.mark.parametrize(
    ("align", "middle", "halign", "valign"),
    [
        # DXF reference, groups 72 and 73: 0 left, 1 centre, 2 right; 0 baseline, 2 middle.
        (Align.START, False, 0, 0),
        (Align.MIDDLE, False, 1, 0),
        (Align.END, False, 2, 0),
        (Align.START, True, 0, 2),
        (Align.MIDDLE, True, 1, 2),
        (Align.END, True, 2, 2),
    ],
)
def test_texts_stand_at_their_place(align: Align, middle: bool, halign: int, valign: int) -> None:
    made = Text("A7", (254, 127), 3.5, Pen.LABEL, align=align, middle=middle, angle=math.pi / 2)
    (text,) = entities(made, metric=False)
    assert (text.dxf.text, text.dxf.style, text.dxf.rotation) == ("A7", "EAVEWRIGHT", 90)
    assert (text.dxf.halign, text.dxf.valign) == (halign, valign)
    place = text.dxf.insert if (halign, valign) == (0, 0) else text.dxf.align_point
    assert (place.x, place.y) == (10, 5)


@pytest.mark.parametrize(("metric", "unit"), [(True, 1.0), (False, 1 / 25.4)])
def test_the_height_of_a_text_is_that_of_its_capitals_on_paper(metric: bool, unit: float) -> None:
    """A 3.5 mm font has capitals of 2.45 mm; at one to twenty they stand 49 mm high."""
    assert cap_height(3.5) == pytest.approx(2.45)
    text = Text("A7", (0, 0), 3.5, Pen.LABEL)
    (found,) = entities(text, scale=1 / 20, metric=metric)
    assert found.dxf.height == pytest.approx(49 * unit)


def test_the_text_style_names_a_plain_font() -> None:
    style = document().styles.get("EAVEWRIGHT")
    assert style.dxf.font == "txt"
    assert entities(Text("A7", (0, 0), 3.5, Pen.LABEL, narrow=True))[0].dxf.width < style.dxf.width


@pytest.mark.parametrize(
    "text", ['57 3/16"', "57 ³⁄₁₆″", "36.9°", "838 × 2035", "Türöffnung", "A^J", "100%", "{a}\\P"]
)
def test_texts_read_back_as_written(text: str) -> None:
    assert entities(Text(text, (0, 0), 3.5, Pen.LABEL))[0].plain_text() == text  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    "element",
    [
        Stroke(((0, 0), (9, 0)), Pen.STUD, "A/layout/3"),
        Stroke(TRIANGLE, Pen.STUD, "A/layout/3", closed=True),
        Text("A7", (0, 0), 3.5, Pen.LABEL, "A/layout/3"),
        Dimension((0, 0), (9, 0), 5, "9", 3.5, key="A/layout/3"),
        Fill(TRIANGLE, Pen.ABOVE_ROOF, "A/layout/3"),
    ],
)
def test_the_key_goes_with_the_entity(element: Element) -> None:
    (found,) = entities(element)
    assert found.get_xdata(APP_ID) == [(1000, "A/layout/3")]


def test_what_has_no_key_carries_none() -> None:
    (found,) = entities(Stroke(((0, 0), (9, 0)), Pen.FLOOR))
    assert not found.has_xdata(APP_ID)


SPAN = Dimension((0, 0), (1016, 0), -254, '40"', 3.5, key="A/door-1")


def test_a_dimension_measures_what_it_says() -> None:
    """Aligned (1, with 32 for a block of its own), from 0 to 40 in., its line 10 in. below."""
    (found,) = entities(SPAN, scale=1 / 24, metric=False)
    assert (found.dxftype(), found.dxf.dimtype, found.dxf.text) == ("DIMENSION", 33, '40"')
    points = [found.dxf.defpoint2, found.dxf.defpoint3, found.dxf.defpoint]
    flat = [number for p in points for number in (p.x, p.y)]
    assert flat == pytest.approx([0, 0, 40, 0, 40, -10])
    assert found.get_measurement() == pytest.approx(40)  # type: ignore[attr-defined]
    assert found.dxf.actual_measurement == pytest.approx(40)


def test_a_dimension_carries_its_picture() -> None:
    """Line, two extension lines, two ticks and the figure; the figure 1 mm above the line."""
    made = document(SPAN, scale=1 / 24)
    (found,) = made.modelspace()
    picture = list(made.blocks.get(found.dxf.geometry))
    assert [e.dxftype() for e in picture] == ["LINE"] * 5 + ["TEXT"]
    assert {e.dxf.layer for e in picture} == {"DIMENSION"}
    line, text = picture[0], picture[-1]
    assert (line.dxf.start.x, line.dxf.end.x, line.dxf.start.y) == (0, 1016, -254)
    assert text.dxf.text == '40"'
    assert text.dxf.align_point.y == pytest.approx(-254 + 24)


def test_dimensions_of_one_size_share_a_style() -> None:
    """Sizes in the unit at the scale: 2.45 mm capitals, 1/16 in. off, 1/8 in. past, at 1 to 10."""
    made = document(SPAN, Dimension((0, 0), (0, 90), 9, "9", 3.5), scale=0.1)
    assert [e.dxf.dimstyle for e in made.modelspace()] == ["EAVEWRIGHT-3.5"] * 2
    style = made.dimstyles.get("EAVEWRIGHT-3.5").dxf
    assert (style.dimtxt, style.dimexo, style.dimexe) == pytest.approx((24.5, 15.875, 31.75))


def test_a_dimension_without_a_text_shows_none() -> None:
    (found,) = entities(Dimension((0, 0), (9, 0), 5, "", 3.5))
    assert found.dxf.text == " "


def test_only_what_lies_above_the_roof_is_filled() -> None:
    (found,) = entities(Fill(TRIANGLE, Pen.STUD), Fill(TRIANGLE, Pen.ABOVE_ROOF), metric=False)
    assert (found.dxftype(), found.dxf.layer, found.dxf.solid_fill) == ("HATCH", "ABOVE-ROOF", 0)
    (path,) = found.paths.paths  # type: ignore[attr-defined]
    assert [(x, y) for x, y, _ in path.vertices] == [(0, 0), (10, 0), (10, 5)]


def test_nothing_twice_and_nothing_without_length() -> None:
    line = Stroke(((0, 0), (9, 0)), Pen.STUD)
    turned = Stroke(((9, 0), (0, 0)), Pen.STUD)
    assert len(entities(line, turned, Stroke(((5, 5), (5, 5)), Pen.STUD))) == 1


def test_the_same_thing_in_two_drawings_is_written_once() -> None:
    out = io.StringIO()
    line: Drawing = (Stroke(((0, 0), (9, 0)), Pen.STUD),)
    write_dxf((line, line), out, scale=1.0, metric=True)
    assert len(read(io.StringIO(out.getvalue())).modelspace()) == 1


def test_it_opens_on_the_whole_drawing() -> None:
    made = document(Stroke(((-254, 0), (2286, 1016)), Pen.ROOF), metric=False)
    low, high = made.header["$EXTMIN"], made.header["$EXTMAX"]
    assert (*low[:2], *high[:2]) == pytest.approx((-10, 0, 90, 40))
    (view,) = made.viewports.get_config("*Active")
    assert (view.dxf.center.x, view.dxf.center.y) == pytest.approx((40, 20))
    assert view.dxf.height > 40


EVERYTHING: Drawing = (
    *(Stroke(((0, n), (9, n)), pen, f"A/{n}") for n, pen in enumerate(Pen)),
    *(Text(pen.value, (0, n), 3.5, pen, bold=n % 2 > 0) for n, pen in enumerate(Pen)),
    Fill(TRIANGLE, Pen.ABOVE_ROOF),
    Stroke(TRIANGLE, Pen.STUD, closed=True),
    SPAN,
    Dimension((0, 0), (30, 40), 9, "50", 5.0),
)


@pytest.mark.parametrize("elements", [(), EVERYTHING])
@pytest.mark.parametrize("metric", [True, False])
def test_an_audit_finds_nothing_to_mend(elements: Drawing, metric: bool) -> None:
    auditor = document(*elements, scale=1 / 24, metric=metric).audit()
    assert (auditor.errors, auditor.fixes) == ([], [])


def test_the_same_drawing_gives_the_same_text() -> None:
    assert written(*EVERYTHING) == written(*EVERYTHING)


def test_the_text_does_not_hang_on_the_run() -> None:
    code = (
        "import io, hashlib; from core.drawing import *; from core.output.dxf import write_dxf;"
        "out = io.StringIO();"
        "drawing = tuple(Text(p.value, (0, n), 3.5, p, 'A/1') for n, p in enumerate(Pen));"
        "write_dxf((drawing,), out, scale=1 / 24, metric=False);"
        "print(hashlib.sha256(out.getvalue().encode()).hexdigest())"
    )
    runs = [
        subprocess.run(
            [sys.executable, "-c", code],
            env={**os.environ, "PYTHONHASHSEED": seed},
            capture_output=True,
            check=True,
            text=True,
        ).stdout
        for seed in ("1", "2")
    ]
    assert runs[0] == runs[1] != ""


def test_the_librarys_own_setting_is_left_as_it_was() -> None:
    before = ezdxf.options.write_fixed_meta_data_for_testing  # type: ignore[attr-defined]
    written(*EVERYTHING)
    assert ezdxf.options.write_fixed_meta_data_for_testing == before  # type: ignore[attr-defined]
