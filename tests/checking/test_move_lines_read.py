"""What of a lesson's notes is read as a move's line, though typed otherwise, has a note there."""

from __future__ import annotations

import shutil
from pathlib import Path

from build_tools.checking.check_bank import check_folder
from tests.support.banks import ROOT

BASE = ROOT / "tests" / "rules" / "base"


def test_a_note_says_how_a_line_was_read(tmp_path: Path) -> None:
    folder = tmp_path / "bank"
    shutil.copytree(BASE, folder)
    lesson = folder / "units" / "paper-boats" / "lesson-1.md"
    text = lesson.read_text(encoding="utf-8")
    typed = text.replace("Notes.\n", "- Float: four soft steps.\n- **Hop**: two feet.\n")
    lesson.write_text(typed, encoding="utf-8")
    found = [(p.line, p.severity, p.message) for p in check_folder(folder).problems]
    line = typed[: typed.index("- Float")].count("\n") + 1
    said = "“- Float: four soft steps.” is read as the line of the move float"
    assert found == [(line, "note", said)]
