"""Comparing two editions of a unit, each a folder or a pack."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from build_tools.comparing.change import WrittenUnit
from build_tools.comparing.comparison import Comparison, compared
from build_tools.misuse import Misuse
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.walled import Refused, walled
from build_tools.problem import Problem
from build_tools.unit_editions.unit_texts import text_at


@dataclass(frozen=True, slots=True)
class NotCompared:
    """Which of the two could not be read: a pack that is refused, or files out of shape."""

    path: Path
    refusal: str | None
    problems: tuple[Problem, ...] = ()


def compare(old: Path, new: Path) -> Comparison | NotCompared:
    """What changed between the units `old` and `new`, each a unit's folder or its pack.

    Raises Misuse where there is no unit at all.
    """
    for path in (old, new):
        if not (path / "unit.md").is_file() and not path.is_file():
            raise Misuse(f"{path} holds no unit.md; name the folder of a unit, or its pack")
    found = walled(_compare, old, new)
    return NotCompared(new, found.why) if isinstance(found, Refused) else found


def _compare(old: Path, new: Path) -> Comparison | NotCompared | Refused:
    texts: list[WrittenUnit] = []
    for path in (old, new):
        try:
            found = text_at(path)
        except RefusedError as refused:
            return NotCompared(path, str(refused))
        if isinstance(found, list):
            return NotCompared(path, None, tuple(found))
        texts.append(found)
    return compared(*texts)
