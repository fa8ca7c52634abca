"""What leaves the program: printed sheets, the line drawing, and the figures."""

from core.output.dxf import write_dxf
from core.output.figures import write_figures
from core.output.pdf import write_pdf

__all__ = ["write_dxf", "write_figures", "write_pdf"]
