"""What the room loads when it is imported."""

import subprocess
import sys


def test_the_slow_libraries_are_loaded_where_they_are_used() -> None:
    """The window must not wait for libraries that only a print or a drawing file needs."""
    slow = {"reportlab", "ezdxf", "fontTools"}
    code = f"import sys, core.output; print(sorted({slow} & set(sys.modules)))"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, check=True, text=True)
    assert done.stdout.strip() == "[]"
