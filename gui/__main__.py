"""The program: a window, or a command that needs no screen."""

import sys

from gui.commands import main

if __name__ == "__main__":
    sys.exit(main())
