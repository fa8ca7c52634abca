"""How the wall at hand is looked at, and its drawing for that look. No Qt but the desk's."""

from core.drawing import Drawing, View
from core.drawing.above import above
from core.drawing.elevation import elevation
from core.job import WallResult
from core.kept import Kept
from core.wording import Wording
from gui.desk import Desk
from gui.sketcher.camera import XY, Camera, Rect
from gui.sketcher.fitting import fitted, wall_rect

_PAST_PX = 8.0
"""How far past the upper edge of the window what lies under the drawing reaches, px."""


class Sight:
    """The camera, and whether it was fitted to the wall or chosen by the person.

    A fitted camera follows the wall's size and the window's; a chosen one stays.
    """

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._fitted = True
        self._seen: tuple[str, Rect] | None = None
        self._laid: tuple[WallResult, View, Wording, Drawing] | None = None
        self._kept = Kept()
        self._camera = Camera(1.0, 0.0, 0.0)
        self._wanted: tuple[WallResult, XY, float] | None = None

    @property
    def camera(self) -> Camera:
        """How the wall is looked at; fitted to it only now, for a window is sized more than once
        before it is first painted."""
        if self._wanted is not None:
            (result, size, density), self._wanted = self._wanted, None
            self._camera = fitted(result, self._desk.wording, size, density, self._kept)
        return self._camera

    def look(self, camera: Camera) -> None:
        """Look as the person chooses."""
        self._camera, self._wanted = camera, None
        self._fitted = False

    def fit(self, size: XY, density: float) -> None:
        """Show the whole wall in a window of `size` px, and go on doing so."""
        self._fitted = True
        result = self._desk.result
        if result is not None and min(size) >= 1:
            self._wanted = (result, size, density)
            self._seen = _seen(result)

    def follow(self, size: XY, density: float, *, resized: bool = False) -> None:
        """Fit again if another wall is shown, or if a fitted one or its window changed size."""
        result = self._desk.result
        if result is None:
            return
        seen = _seen(result)
        another = self._seen is None or seen[0] != self._seen[0]
        if another or (self._fitted and (resized or seen != self._seen)):
            self.fit(size, density)

    def drawing(self, density: float) -> Drawing:
        """The drawing of the wall for this look; the very same until something changes."""
        result, wording = self._desk.result, self._desk.wording
        if result is None:
            return ()
        view = self.camera.view(density)
        laid = self._laid
        same = laid and laid[0] is result and laid[1] == view and laid[2] is wording
        if laid is None or not same:
            drawn = elevation(result, view, wording, self._kept)
            laid = self._laid = (result, view, wording, drawn)
        return laid[3]

    def under(self) -> Drawing:
        """What lies under the drawing as far up as the window goes: the space above the roof."""
        result = self._desk.result
        if result is None or result.inputs.near is None or result.frame is None:
            return ()
        _, high = self.camera.to_model((0.0, -_PAST_PX))
        return above(result.inputs.near, high)


def _seen(result: WallResult) -> tuple[str, Rect]:
    return result.wall.letter, wall_rect(result)
