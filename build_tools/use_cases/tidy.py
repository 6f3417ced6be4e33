"""Files written anew in the one canonical form, where they lie, each whole or not at all."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from build_tools.disk.sure_files import write_whole
from build_tools.problem import Problem
from build_tools.source.folder import BANK_FILES, unit_slugs
from build_tools.source.front_matter import kind_of_file
from build_tools.source.tidy import NotTidied, Tidied, tidied


@dataclass(frozen=True, slots=True)
class FileTidied:
    """One file: whether it was written anew, and what in it was read otherwise than typed."""

    file: str
    written: bool
    read_as: tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class FileLeft:
    """A file that stays as it is, and why."""

    file: str
    reason: str
    problems: tuple[Problem, ...]


def tidy(content: Path, wanted: Sequence[str]) -> Iterator[FileTidied | FileLeft]:
    """Tidy the files below `wanted`, paths relative to the folder `content` with `/`; else all.

    A file that cannot be read as it should be, or not be written with all that it holds, is left.
    """
    for file in _files(content):
        if wanted and not any(w == "." or file == w or file.startswith(f"{w}/") for w in wanted):
            continue
        path = content / file
        try:
            raw = path.read_bytes()
            made = tidied(file, raw)
            if isinstance(made, Tidied):
                fresh = made.text.encode("utf-8")
                if fresh != raw:
                    write_whole(path, fresh)
                yield FileTidied(file, fresh != raw, made.read_as)
                continue
        except OSError as error:
            made = NotTidied(f"it cannot be opened ({error.strerror})")
        yield FileLeft(file, made.reason, made.problems)


def _files(content: Path) -> Iterator[str]:
    """The bank's own files, then each unit's, in order."""
    yield from (file for file in BANK_FILES if (content / file).is_file())
    for slug in unit_slugs(content)[0]:
        for path in sorted((content / "units" / slug).glob("*.md")):
            if path.is_file() and kind_of_file(path.name) is not None:
                yield f"units/{slug}/{path.name}"
