"""How many words are notation is counted of files as they are typed, tidied or not."""

from __future__ import annotations

from pathlib import Path

from benchmarks.structure_share import share_of_unit
from build_tools.source.tidy import Tidied, tidied
from tests.source.said_once.units import LESSON

TYPED = LESSON.replace("    say: Two taps mean stop.", "    say: Mind: two taps mean stop #1.")


def share(folder: Path, text: str) -> tuple[int, int]:
    folder.mkdir()
    (folder / "unit.md").write_text("", encoding="utf-8")
    (folder / "lesson-1.md").write_text(text, encoding="utf-8")
    found = share_of_unit(folder)
    return found.structure, found.said


def test_a_file_that_yaml_cannot_read_is_counted(tmp_path: Path) -> None:
    assert TYPED != LESSON
    plain, typed = share(tmp_path / "plain", LESSON), share(tmp_path / "typed", TYPED)
    assert typed[1] == plain[1] + 2, "two words more are said"
    assert typed[0] == plain[0]
    made = tidied("lesson-1.md", TYPED.encode())
    assert isinstance(made, Tidied)
    assert share(tmp_path / "tidy", made.text)[1] == typed[1]
