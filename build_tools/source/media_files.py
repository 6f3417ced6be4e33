"""The pictures and recordings of a unit: what a file is called where it lies, and in the bank."""

from __future__ import annotations

import re
from pathlib import Path

from build_tools.source.file_names import plain_picture_name

PLAIN = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\.(svg|png|jpg|webp|mp3)\Z")
SHARED = "pictures"
"""The folder beside `units` with the pictures that units share."""


def lies_in(folder: Path, file: str) -> Path:
    """Where the file that the unit in `folder` calls `file`, such as media/pool.jpg, lies.

    A file may have any sensible name there: Pool.JPG is read as pool.jpg. What is not in the unit's
    own folder is one that its bank's units share.
    """
    path = folder / file
    name = path.name
    found = _called(path.parent, name) or _called(folder.resolve().parent.parent / SHARED, name)
    return found or path


def _called(folder: Path, name: str) -> Path | None:
    """The file in `folder` that is published as `name`."""
    path = folder / name
    if path.is_file():
        return path
    if not folder.is_dir():
        return None
    return min((p for p in folder.iterdir() if plain_picture_name(p.name) == name), default=None)
