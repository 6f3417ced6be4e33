"""A unit read as it is written, for comparing one edition with another."""

from __future__ import annotations

import hashlib
from pathlib import Path

from build_tools.comparing.change import UnitText
from build_tools.pipeline import check_shape
from build_tools.problem import Problem
from build_tools.source.folder import read_unit_folder


def text_of_folder(folder: Path) -> UnitText | list[Problem]:
    """The unit in `folder`, wherever it lies; or what is wrong with the shape of its files."""
    folder = folder.resolve()
    read = read_unit_folder(folder.parent.parent, folder.name, folder.parent.name)
    problems = [*read.problems, *check_shape(read)]
    if problems or read.unit is None:
        return problems
    return UnitText(
        fields=read.unit.data,
        notes=read.unit.body,
        lessons={one.data["lesson"]: (one.data, one.body) for one in read.lessons},
        media={
            file: hashlib.sha256((folder / file).read_bytes()).hexdigest()
            for file in sorted(read.media)
        },
    )
