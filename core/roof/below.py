"""Where one line over a wall lies below another."""

import msgspec

from core.roof.line import TOUCH, RoofLine, Segment


def below(line: RoofLine, over: RoofLine) -> tuple[Segment, ...]:
    """The pieces of `line` that lie below the line `over`, from left to right."""
    found: list[Segment] = []
    for segment in line.segments:
        for roof in over.segments:
            left, right = max(segment.left, roof.left), min(segment.right, roof.right)
            closing = segment.along - roof.along
            if abs(closing) > 1e-12:
                meet = (roof.height - segment.height) / closing
                left, right = (left, min(right, meet)) if closing > 0 else (max(left, meet), right)
            elif segment.height >= roof.height:
                continue
            if right - left > TOUCH:
                _append(found, msgspec.structs.replace(segment, left=left, right=right))
    return tuple(found)


def _append(found: list[Segment], new: Segment) -> None:
    """Add a piece, or lengthen the last one where the same line goes on."""
    last = found[-1] if found else None
    same = last is not None and (last.height, last.along) == (new.height, new.along)
    if last is not None and same and abs(last.right - new.left) <= TOUCH:
        found[-1] = msgspec.structs.replace(last, right=new.right)
    else:
        found.append(new)
