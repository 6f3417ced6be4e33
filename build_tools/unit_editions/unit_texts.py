"""A unit read as it is written, from its folder or its pack, for comparing two editions."""

from __future__ import annotations

import hashlib
from pathlib import Path

from build_tools.checking.check_bank import check_shape
from build_tools.comparing.change import WrittenUnit
from build_tools.packs.reading.scratch import laid_out
from build_tools.packs.reading.verified import verified
from build_tools.pictures.publishable import as_published
from build_tools.problem import Problem
from build_tools.source.folder import read_unit_folder
from build_tools.source.media_files import lies_in


def text_at(path: Path) -> WrittenUnit | list[Problem]:
    """The unit in the folder or the pack at `path`; or what is wrong with the shape of its files.

    Raises RefusedError in a reader's words for a pack that is not sound.
    """
    return text_of_folder(path) if path.is_dir() else text_of_pack(path)


def text_of_pack(file: Path) -> WrittenUnit | list[Problem]:
    """The unit in the pack `file`, verified first; RefusedError says what is not sound."""
    pack = verified(file)
    with laid_out(pack) as content:
        return text_of_folder(content / "units" / pack.slug)


def text_of_folder(folder: Path) -> WrittenUnit | list[Problem]:
    """The unit in `folder`, wherever it lies; or what is wrong with the shape of its files."""
    folder = folder.resolve()
    read = read_unit_folder(folder.parent.parent, folder.name, folder.parent.name)
    problems = [*read.problems, *check_shape(read)]
    if problems or read.unit is None:
        return problems
    return WrittenUnit(
        fields=read.unit.data,
        notes=read.unit.body,
        lessons={one.data["lesson"]: (one.data, one.body) for one in read.lessons},
        media={
            file: hashlib.sha256(as_published(file, lies_in(folder, file).read_bytes())).hexdigest()
            for file in sorted(read.media)
        },
    )
