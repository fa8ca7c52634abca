"""Message ids with values in, text out; US and metric wording are two catalogues."""

from core.wording.message import Kg, Message, Mm, Rad, message
from core.wording.wording import CATALOGUES, Wording, texts

__all__ = ["CATALOGUES", "Kg", "Message", "Mm", "Rad", "Wording", "message", "texts"]
