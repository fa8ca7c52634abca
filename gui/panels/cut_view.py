"""The cut of the held member as a small picture, as wide as the panel leaves room for."""

from PySide6.QtGui import QResizeEvent

from core.drawing.cut_picture import cut_picture
from core.framing import Member
from core.model import USUAL_SAW
from gui.desk import Desk
from gui.panels.picture import Picture
from gui.sizes import density


class CutView(Picture):
    """Shows the cut of what the desk holds; hidden for what is square or no timber."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk.wording.word("picture.name"), 1.0, centred=False)
        self._desk = desk
        self._shown: tuple[Member, object, int] | None = None
        self.hide()

    def refresh(self) -> None:
        """Draws anew where the member, the saw or the room for it is another."""
        desk = self._desk
        frame = desk.result.frame if desk.result else None
        member = frame.member(desk.held) if frame and desk.held else None
        saw = desk.project.habits.saw or USUAL_SAW
        if member is None:
            self._shown = None
            self.show_drawing(())
            return
        shown = (member, (saw, desk.wording.tape), self.width())
        if shown == self._shown:
            return
        self._shown = shown
        room = self.width() / density(self)
        self.show_drawing(cut_picture(member, saw, room, desk.wording))

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Sets the pictures out anew where there is another width."""
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self.refresh()
