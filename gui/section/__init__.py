"""The section in the window: the room cut across, with what shapes it to be pulled."""
