"""The one way an edit says no."""

from core.wording import Message


class Refusal(Exception):
    """An edit that cannot be made; `message` says what does not fit and what would."""

    def __init__(self, message: Message) -> None:
        super().__init__(message)
        self.message = message
