"""`from-word-file` writes a draft and says where every word is, or stops and writes nothing."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools import cli
from tests.support.banks import copy_base
from tests.support.word_files import document, paragraph, table, written

SAY = [["Minutes", "5"], ["Say", "“Freeze.”"], ["Pupils", "Walk and stop."], ["Drink", "Water."]]
LESSON = paragraph("Lesson 1: Waves", "heading1") + table(SAY)
YEARS = ("--years", "England 3 and 4")


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


def asked(bank: Path, tmp_path: Path, data: bytes, *more: str) -> int:
    file = tmp_path / "waves.docx"
    file.write_bytes(data)
    return cli.main(["from-word-file", str(file), "waves", "--content", str(bank), *more])


def test_a_draft_is_written_and_every_word_accounted_for(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert asked(bank, tmp_path, written(document(LESSON)), *YEARS) == 0
    said = capsys.readouterr().out
    lesson = (bank / "units" / "waves" / "lesson-1.md").read_text(encoding="utf-8")
    assert "1 lesson with 3 steps, a draft" in said
    assert "lesson-1.md: 1 line without a place of its own kept in its notes" in said
    assert "standing as those: Lesson; Minutes; Pupils; Say; minutes" in said
    assert "say: Freeze." in lesson
    assert "task: Walk and stop." in lesson
    assert "- Step 1, Drink: Water." in lesson
    assert "draft: true" in (bank / "units" / "waves" / "unit.md").read_text(encoding="utf-8")


def test_its_shape_is_sound_and_check_lists_what_is_open(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    asked(bank, tmp_path, written(document(LESSON)), *YEARS)
    capsys.readouterr()
    cli.main(["check", str(bank / "units" / "waves"), "--content", str(bank), "--all"])
    said = capsys.readouterr().out
    assert "[open-place]" in said
    for shape in ("missing-field", "unknown-field", "wrong-type", "raw-html", "hidden-character"):
        assert shape not in said


@pytest.mark.parametrize(
    ("data", "more", "says"),
    [
        (b"PK", YEARS, "it is no word-processor file, or is damaged: save it again as .docx"),
        (written(document(paragraph("Walk."))), YEARS, "no step was found in it"),
        (written(document(LESSON)), (), "it does not say for which school years it is"),
    ],
)
def test_what_makes_no_draft_is_refused_in_words(
    data: bytes,
    more: tuple[str, ...],
    says: str,
    bank: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert asked(bank, tmp_path, data, *more) == 1
    said = capsys.readouterr().out
    assert said.startswith(f"waves.docx: {says}")
    assert said.endswith("; nothing was written\n")
    assert not (bank / "units" / "waves").exists()


def test_what_cannot_be_asked_is_told(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert asked(bank, tmp_path, written(document(LESSON)), "--years", "France 3") == 2
    assert "none of the nations" in capsys.readouterr().err
    command = ["from-word-file", str(tmp_path / "none.docx"), "waves", "--content", str(bank)]
    assert cli.main(command) == 2
    assert "cannot be opened" in capsys.readouterr().err
    assert not (bank / "units" / "waves").exists()
