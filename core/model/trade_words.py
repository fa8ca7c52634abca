"""The trade's words that a project is spoken in, apart from the units it is measured in."""

import enum


class TradeWords(enum.Enum):
    """US: header, sill, blocking. METRIC: lintel, cill, noggin."""

    US = "us"
    METRIC = "metric"
