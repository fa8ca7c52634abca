"""The line drawing of whole jobs, read back by ezdxf and by GDAL and held against the figures."""

import io
import re
from collections import Counter
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any, NamedTuple

import pytest
from ezdxf.document import Drawing as Document
from ezdxf.entities.dxfentity import DXFEntity
from ezdxf.filemanagement import read

import jobs
from core.drawing import Pen, View
from core.drawing.arrange import side_by_side
from core.drawing.elevation import elevation
from core.output.dxf import write_dxf
from core.output.dxf_entities import APP_ID
from core.output.figures import figures
from core.output.layers import LAYERS
from tools import run_tool

GAP = 1500.0
CLOSE = 0.01  # mm
Corners = list[tuple[float, float]]


class Case(NamedTuple):
    """A job by name, the scale its texts are meant for, and the mm in a drawing unit."""

    job: str
    scale: float
    unit_mm: float


@pytest.fixture(
    params=[Case("inch", 1 / 24, 25.4), Case("metric", 1 / 20, 1.0)], ids=lambda c: c.job
)
def case(request: pytest.FixtureRequest) -> Case:
    assert isinstance(request.param, Case)
    return request.param


@cache
def text_of(case: Case) -> str:
    results, wording = jobs.job(case.job)
    drawn = tuple(elevation(wall, View(case.scale), wording) for wall in results.walls)
    out = io.StringIO()
    write_dxf(side_by_side(drawn, GAP), out, scale=case.scale, metric=jobs.job(case.job).metric)
    return out.getvalue()


def document(case: Case) -> Document:
    return read(io.StringIO(text_of(case)))


def framed_walls(case: Case) -> list[dict[str, Any]]:
    return [w for w in figures(*jobs.job(case.job))["walls"] if w["members"]]


def layer_of(member: dict[str, Any]) -> str:
    return LAYERS[Pen(member["role"])].name


def key_of(entity: DXFEntity) -> str:
    return str(entity.get_xdata(APP_ID)[0].value) if entity.has_xdata(APP_ID) else ""


def vertices(polyline: DXFEntity) -> Corners:
    return list(polyline.vertices())  # type: ignore[attr-defined]


def outlines(case: Case) -> dict[str, list[Corners]]:
    """The closed outlines on the layers of timber by the key they carry, in mm."""
    found: dict[str, list[Corners]] = {}
    roles = {layer_of(m) for wall in framed_walls(case) for m in wall["members"]}
    for entity in document(case).modelspace().query("LWPOLYLINE"):
        if entity.dxf.layer in roles:
            corners = [(x * case.unit_mm, y * case.unit_mm) for x, y in vertices(entity)]
            found.setdefault(key_of(entity), []).append(corners)
    return found


def shifts(case: Case) -> dict[str, float]:
    """How far each wall was moved to the right, mm: where its sole plate begins."""
    found = outlines(case)
    return {
        wall["letter"]: min(x for x, _ in found[f"{wall['letter']}/sole"][0])
        for wall in framed_walls(case)
    }


def apart(found: Corners, expected: list[list[float]], shift: float) -> float:
    """The greatest distance along an axis between two outlines, corner by corner, mm."""
    assert len(found) == len(expected)
    return max(
        max(abs(x - (a + shift)), abs(y - b))
        for (x, y), (a, b) in zip(found, expected, strict=True)
    )


def test_an_audit_finds_nothing_to_mend(case: Case) -> None:
    auditor = document(case).audit()
    assert (auditor.errors, auditor.fixes) == ([], [])


def test_every_member_is_found_by_its_key_where_the_figures_say(case: Case) -> None:
    found, moved = outlines(case), shifts(case)
    members = [(w["letter"], m) for w in framed_walls(case) for m in w["members"]]
    assert set(found) == {m["key"] for _, m in members}
    for letter, member in members:
        (corners,) = found[member["key"]]
        assert apart(corners, member["near"], moved[letter]) < CLOSE, member["key"]


def test_walls_stand_side_by_side(case: Case) -> None:
    """In their order and not into each other: what belongs to one ends before the next begins."""
    walls = [(shifts(case)[w["letter"]], w["length"]) for w in framed_walls(case)]
    assert len(walls) >= 3
    assert all(b - (a + length) >= GAP for (a, length), (b, _) in pairwise(walls))


def test_labels_lead_to_their_members(case: Case) -> None:
    """Every text on the layer LABEL carries the key of a member whose label it shows.

    Plates that lie over each other share a text: their labels side by side.
    """
    labels = {m["key"]: m["label"] for w in framed_walls(case) for m in w["members"]}
    written = document(case).modelspace().query('TEXT[layer=="LABEL"]')
    assert len(written) > 20
    assert [
        (key_of(t), t.dxf.text) for t in written if labels[key_of(t)] not in t.dxf.text.split()
    ] == []


def test_each_wall_has_its_length_as_a_dimension(case: Case) -> None:
    wording = jobs.job(case.job).wording
    dimensions = document(case).modelspace().query("DIMENSION")
    shown = [(d.dxf.text, d.dxf.actual_measurement * case.unit_mm) for d in dimensions]
    for wall in framed_walls(case):
        told = [mm for text, mm in shown if text == wording.length(wall["length"])]
        assert any(abs(mm - wall["length"]) < CLOSE for mm in told), wall["letter"]


def look(entity: DXFEntity) -> tuple[Any, ...]:
    """What makes an entity look as it does."""
    kind, dxf = entity.dxftype(), entity.dxf
    if kind == "LWPOLYLINE":
        points = [(round(x, 6), round(y, 6)) for x, y in vertices(entity)]
        return kind, dxf.layer, *min(points, points[::-1])
    if kind == "LINE":
        return kind, dxf.layer, *sorted((dxf.start.round(6), dxf.end.round(6)))
    if kind == "TEXT":
        return kind, dxf.layer, dxf.text, dxf.insert.round(6), dxf.rotation, dxf.halign
    places = (dxf.defpoint, dxf.defpoint2, dxf.defpoint3)
    return kind, dxf.layer, dxf.text, *(place.round(6) for place in places)


def test_no_entity_twice_and_none_without_length(case: Case) -> None:
    space = document(case).modelspace()
    assert {e.dxftype() for e in space} == {"LINE", "LWPOLYLINE", "TEXT", "DIMENSION"}
    assert [shown for shown, count in Counter(map(look, space)).items() if count > 1] == []
    assert [e for e in space.query("LINE") if e.dxf.start.isclose(e.dxf.end)] == []
    for line in space.query("LWPOLYLINE"):
        points = vertices(line)
        ring = [*points, points[0]] if line.dxf.flags & 1 else points
        assert all(a != b for a, b in pairwise(ring))


def gdal_rings(case: Case, folder: Path) -> dict[str, list[Corners]]:
    """Closed lines by layer as GDAL reads them, in mm."""
    path = folder / "drawing.dxf"
    path.write_text(text_of(case), encoding="utf-8")
    told = run_tool("gdal-bin", "ogrinfo", "-q", "-al", str(path))
    found: dict[str, list[Corners]] = {}
    feature = r"Layer \(String\) = (\S+)(?:\n .*)*?\n  LINESTRING \((.*)\)"
    for layer, numbers in re.findall(feature, told):
        corners = [(float(x), float(y)) for x, y in (pair.split() for pair in numbers.split(","))]
        if len(corners) > 3 and corners[0] == corners[-1]:
            ring = [(x * case.unit_mm, y * case.unit_mm) for x, y in corners[:-1]]
            found.setdefault(layer, []).append(ring)
    return found


def test_gdal_reads_every_member_where_the_figures_say(case: Case, tmp_path: Path) -> None:
    """Each on the layer of its role, and nothing else there."""
    rings, moved = gdal_rings(case, tmp_path), shifts(case)
    members = [(moved[w["letter"]], m) for w in framed_walls(case) for m in w["members"]]
    assert len(rings["STUD"]) > 20
    for shift, member in members:
        left = rings[layer_of(member)]
        near = member["near"]
        same = [r for r in left if len(r) == len(near) and apart(r, near, shift) < CLOSE]
        assert len(same) == 1, member["key"]
        left.remove(same[0])
    assert [rings[layer_of(member)] for _, member in members if rings[layer_of(member)]] == []


def test_gdal_reads_the_labels(case: Case, tmp_path: Path) -> None:
    path = tmp_path / "drawing.dxf"
    path.write_text(text_of(case), encoding="utf-8")
    told = run_tool("gdal-bin", "ogrinfo", "-q", "-al", "-where", "Layer='LABEL'", str(path))
    read_back = set(re.findall(r"Text \(String\) = (\S+)", told))
    labels = {m["label"] for w in framed_walls(case) for m in w["members"]}
    assert len(read_back) > 20
    assert read_back <= labels
