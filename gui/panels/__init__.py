"""The side panels: typed, exact fields for what is held, its numbers, and the cautions."""
