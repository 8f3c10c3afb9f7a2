"""Writes a CSV of check values with its source on top."""

import pathlib

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "resources" / "independent"


def write(name, script, page, columns, rows):
    """Writes rows, each a list as long as columns; numbers with all their digits."""
    lines = [f"# Recomputed by src/test/scripts/{script} from the equations of {page}."]
    lines.append(",".join(columns))
    for row in rows:
        assert len(row) == len(columns)
        lines.append(",".join(text(cell) for cell in row))
    (FOLDER / name).write_text("\n".join(lines) + "\n", encoding="utf-8", newline="\n")


def text(cell):
    """A list is written with spaces between, a float so that it reads back the same to 12 digits."""
    if isinstance(cell, (list, tuple)):
        return " ".join(text(part) for part in cell)
    if isinstance(cell, float):
        return format(cell, ".12g")
    return str(cell)
