"""`word-file` says what it made, and refuses in words what goes to nobody yet."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools import cli
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.word_files import shown


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


def made(bank: Path, out: Path, *asked: str) -> int:
    return cli.main(["word-file", *asked, "--content", str(bank), "--out", str(out)])


def test_a_unit_is_one_file_with_a_heading_a_lesson(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert made(bank, tmp_path / "out", BASE_UNIT) == 0
    (written,) = (tmp_path / "out").iterdir()
    assert written.name == "paper-boats-1.0.0.docx"
    assert capsys.readouterr().out.startswith(f"made {written.as_posix()}: ")
    headings = [one.text for one in shown(written.read_bytes()) if one.kind == "Heading1"]
    assert [text.partition(":")[0] for text in headings[:-1]] == [
        f"Lesson {n}" for n in range(1, len(headings))
    ]
    assert headings[-1] == "About this file"


def test_one_lesson_is_a_file_of_its_own(bank: Path, tmp_path: Path) -> None:
    assert made(bank, tmp_path / "out", BASE_UNIT, "--lesson", "2") == 0
    (written,) = (tmp_path / "out").iterdir()
    assert written.name == "paper-boats-1.0.0-lesson-2.docx"
    headings = [one.text for one in shown(written.read_bytes()) if one.kind == "Heading1"]
    assert [text.partition(":")[0] for text in headings] == ["Lesson 2", "About this file"]


def refused(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], *asked: str
) -> str:  # fmt: skip
    """What is said where there is no file; nothing is written then."""
    assert made(bank, tmp_path / "out", *asked) == 1
    assert not (tmp_path / "out").exists()
    return capsys.readouterr().out


def test_errors_are_named_as_check_names_them(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    unit = bank / "units" / BASE_UNIT / "unit.md"
    line = change(unit, "\nlicence: CC-BY-4.0\nlanguage", "\nlicence: mine\nlanguage")
    said = refused(bank, tmp_path, capsys, BASE_UNIT)
    assert f"units/{BASE_UNIT}/unit.md:{line + 1}" in said
    assert said.endswith(f"no word-processor file was made of {BASE_UNIT}: it has errors\n")


def test_a_draft_a_lesson_that_is_none_and_a_unit_that_is_none_are_refused(
    bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    said = refused(bank, tmp_path, capsys, BASE_UNIT, "--lesson", "9")
    assert "it has no lesson 9: its lessons are 1 to " in said
    assert "there is no unit in " in refused(bank, tmp_path, capsys, "kites")
    change(bank / "units" / BASE_UNIT / "unit.md", "\nlanguage", "\ndraft: true\nlanguage")
    assert "it is a draft: take out `draft: true`" in refused(bank, tmp_path, capsys, BASE_UNIT)
