"""The plan in the window: the room from above, in which walls are drawn and taken hold of."""
