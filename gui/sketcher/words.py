"""What the sheet says in words: its name, and why there is nothing on it."""

from core.wording import message
from gui.desk import Desk


def sheet_name(desk: Desk) -> str:
    """What a screen reader calls the sheet."""
    if desk.wall is None:
        return desk.wording.word("paper.no-wall")
    return desk.wording.say(message("paper.wall", letter=desk.wall.letter, name=desk.wall.name))


def why_bare(desk: Desk) -> str:
    """Why there is nothing to be seen on the paper: no wall, or what keeps it from being framed."""
    if desk.result is None:
        return desk.wording.word("paper.no-wall")
    return "\n".join(desk.wording.say(caution.message) for caution in desk.result.cautions)
