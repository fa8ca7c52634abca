"""The sheet of paper in the window: one wall, drawn, looked at and taken hold of."""
