"""What is computed: no window, no clock, no global state."""

__version__ = "0.1.0"
