"""The pictures and recordings of a unit: what a file is called where it lies, and in the bank."""

from __future__ import annotations

import re
from pathlib import Path

from build_tools.source.file_names import plain_picture_name

PLAIN = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\.(svg|png|jpg|webp|mp3)\Z")


def lies_in(folder: Path, file: str) -> Path:
    """Where the file that the unit in `folder` calls `file`, such as media/pool.jpg, lies.

    A file may have any sensible name there: Pool.JPG is read as pool.jpg.
    """
    path = folder / file
    if path.is_file() or not path.parent.is_dir():
        return path
    alike = (one for one in path.parent.iterdir() if plain_picture_name(one.name) == path.name)
    return min(alike, default=path)
