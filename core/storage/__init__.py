"""The project file: a document as text for people, opened with all faults told, saved whole."""

from core.storage.document import Document
from core.storage.faults import Fault, StorageError
from core.storage.plain import text_of
from core.storage.read import read_document
from core.storage.save import load, save

__all__ = [
    "Document",
    "Fault",
    "StorageError",
    "load",
    "read_document",
    "save",
    "text_of",
]
