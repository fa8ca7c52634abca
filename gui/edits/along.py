"""What stands in a wall, counted from its left end, moved along or told from the other end."""

from collections.abc import Callable

import msgspec

from core.lengths import Length
from core.model import Project, Side, Swing, Wall, WallFace
from gui.edits.stating import stated

Place = Callable[[Length, float], Length]
"""From where something begins and how wide it is (mm) to where it begins then."""


def shifted(project: Project, wall: Wall, by: float) -> Wall:
    """The wall with all that is stated in it `by` mm farther from its left end."""
    return _placed(wall, lambda at, _: stated(project, at.mm + by))


def turned_over(project: Project, wall: Wall) -> Wall:
    """The wall with left and right exchanged in all that is stated of it, its ends left alone."""
    run = wall.run
    other = _placed(wall, lambda at, wide: stated(project, run - at.mm - wide))
    layout = msgspec.structs.replace(other.layout, start=wall.layout.start.other)
    openings = tuple(
        opening
        if opening.hung is None
        else msgspec.structs.replace(
            opening,
            hung=msgspec.structs.replace(opening.hung, hinges=opening.hung.hinges.other),
        )
        for opening in other.openings
    )
    boxes = tuple(
        msgspec.structs.replace(box, stud=_key_over(box.stud), side=box.side.other)
        for box in wall.boxes
    )
    doubled = tuple(
        msgspec.structs.replace(d, stud=_key_over(d.stud), side=d.side.other) for d in wall.doubled
    )
    measured = tuple(msgspec.structs.replace(m, key=_key_over(m.key)) for m in wall.measured_studs)
    return msgspec.structs.replace(
        other,
        layout=layout,
        openings=openings,
        boxes=boxes,
        doubled=doubled,
        measured_studs=measured,
        left_lean=wall.right_lean,
        right_lean=wall.left_lean,
    )


def seen_from_behind(wall: Wall) -> Wall:
    """The wall with its two faces exchanged in what hangs on one of them or swings past it."""
    replace = msgspec.structs.replace
    fixtures = tuple(
        replace(f, face=WallFace.FAR if f.face is WallFace.A else WallFace.A) for f in wall.fixtures
    )
    openings = tuple(
        opening
        if opening.hung is None
        else replace(opening, hung=replace(opening.hung, swing=_swung(opening.hung.swing)))
        for opening in wall.openings
    )
    return replace(wall, fixtures=fixtures, openings=openings)


def relettered(wall: Wall, letter: str) -> Wall:
    """The wall under another letter; what is keyed by the letter goes with it."""

    def key(old: str) -> str:
        return f"{letter}/{old.partition('/')[2]}"

    replace = msgspec.structs.replace
    return replace(
        wall,
        letter=letter,
        boxes=tuple(replace(box, stud=key(box.stud)) for box in wall.boxes),
        doubled=tuple(replace(d, stud=key(d.stud)) for d in wall.doubled),
        measured_studs=tuple(replace(m, key=key(m.key)) for m in wall.measured_studs),
    )


def _placed(wall: Wall, place: Place) -> Wall:
    replace, thick = msgspec.structs.replace, wall.stud.thickness.mm
    origin = wall.layout.origin
    layout = wall.layout if origin is None else replace(wall.layout, origin=place(origin, 0.0))
    stations = {
        name: tuple(
            sorted(
                (replace(s, at=place(s.at, 0.0)) for s in getattr(wall, name)),
                key=lambda s: s.at.mm,
            )
        )
        for name in ("roof_points", "floor_points")
    }
    return replace(
        wall,
        layout=layout,
        openings=tuple(replace(o, left=place(o.left, o.width.mm)) for o in wall.openings),
        moved=tuple(replace(m, left=place(m.left, thick)) for m in wall.moved),
        added=tuple(replace(a, left=place(a.left, thick)) for a in wall.added),
        fixtures=tuple(replace(f, left=place(f.left, f.width.mm)) for f in wall.fixtures),
        kept_clear=tuple(replace(z, left=place(z.left, z.width.mm)) for z in wall.kept_clear),
        **stations,
    )


def _swung(swing: Swing) -> Swing:
    return Swing.TOWARD if swing is Swing.AWAY else Swing.AWAY


def _key_over(key: str) -> str:
    """The key of the piece on the other side: left and right exchanged in it."""
    words = {side.value: side.other.value for side in Side}
    return "/".join(words.get(word, word) for word in key.split("/"))
