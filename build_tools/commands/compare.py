"""`compare`: what changed between two editions of a unit, in a reader's words."""

from __future__ import annotations

from pathlib import Path

from build_tools.checking.report_text import as_text
from build_tools.comparing.change import WrittenUnit
from build_tools.comparing.comparison import compared
from build_tools.editions.unit_texts import text_at
from build_tools.misuse import Misuse
from build_tools.packs.reading.refusal import RefusedError


def run(old: Path, new: Path) -> int:
    """Print what changed between the units `old` and `new`, each a unit's folder or its pack.

    Returns 0 when both could be read; 1 when one has errors of shape, or is a pack that is refused.
    Raises Misuse where there is no unit at all.
    """
    texts: list[WrittenUnit] = []
    for path in (old, new):
        if not (path / "unit.md").is_file() and not path.is_file():
            raise Misuse(f"{path} holds no unit.md; name the folder of a unit, or its pack")
        try:
            found = text_at(path)
        except RefusedError as refused:
            print(f"{path.as_posix()}: refused: {refused}")
            return 1
        if isinstance(found, list):
            print(as_text(found, f"{path.as_posix()}: " if path.is_file() else ""))
            return 1
        texts.append(found)
    comparison = compared(*texts)
    if not comparison.changes:
        print("nothing changed but, perhaps, the edition and its date")
    for heading, lines in comparison.under_headings():
        print(heading, *(f"  {line}" for line in lines), sep="\n")
    print(comparison.verdict())
    return 0
