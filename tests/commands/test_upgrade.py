"""`upgrade` writes units of format 1 in format 2, whole or not at all, and says what it left."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools import cli
from build_tools.checking.check_bank import check_folder
from tests.support.banks import BASE_UNIT, change, copy_base


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    """The small bank as it was in format 1."""
    bank = copy_base(tmp_path)
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, "format: 2\n", "format: 1\n")
    change(unit, ", heard: [{counts: 8, sound: voice, by: teacher}]", "")
    change(bank / "bank.yml", "format: 2\n", "format: 1\n")
    return bank


def upgrade(bank: Path, *units: str) -> int:
    return cli.main(["upgrade", *units, "--content", str(bank)])


def test_a_bank_of_format_1_is_sound_and_becomes_one_of_format_2(
    bank: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    unit = bank / "units" / BASE_UNIT / "unit.md"
    before, sound = unit.read_bytes(), check_folder(bank).problems
    assert not [p for p in sound if p.severity == "error"]
    assert upgrade(bank) == 0
    assert unit.read_bytes() == before.replace(b"format: 1\n", b"format: 2\n", 1)
    assert (bank / "bank.yml").read_text(encoding="utf-8").startswith("format: 2\n")
    asked = [p for p in check_folder(bank).problems if p not in sound]
    assert {p.rule for p in asked} <= {"sound-unsaid"}, "only what format 1 could not say is asked"
    assert f"units/{BASE_UNIT}/unit.md: `format: 2` is written" in capsys.readouterr().out
    assert upgrade(bank) == 0
    assert f"units/{BASE_UNIT}/unit.md: nothing to do" in capsys.readouterr().out


def test_fields_of_format_2_in_format_1_name_the_way_out(
    bank: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    unit, lesson = (bank / "units" / BASE_UNIT / n for n in ("unit.md", "lesson-1.md"))
    line = change(unit, "    counts: 24\n", "    counts: 24\n    groups: {size: 4}\n") + 1
    change(lesson, "    look_for: Sharp edges", "    place: home\n    look_for: Sharp edges")
    found = [p for p in check_folder(bank).problems if p.rule == "unknown-field"]
    assert [(p.file.rpartition("/")[2], p.line) for p in found][1] == ("unit.md", line)
    assert "`groups` is of format 2, and the unit says `format: 1`" in found[1].message
    assert "`place`" in found[0].message
    assert all("`upgrade`" in p.help for p in found)
    assert upgrade(bank, BASE_UNIT) == 0
    assert not [p for p in check_folder(bank).problems if p.severity == "error"]
    capsys.readouterr()


def test_a_changed_return_is_of_format_2(bank: Path) -> None:
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, "motifs:\n", "  A':\n    returns: A\nmotifs:\n")
    assert [p.message for p in check_folder(bank).problems if p.rule == "unknown-field"] == [
        "`A'` is of format 2, and the unit says `format: 1`"
    ]


def test_a_unit_that_is_not_sound_is_left_as_it_is(
    bank: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    unit = bank / "units" / BASE_UNIT / "unit.md"
    change(unit, "  front: The long wall, where watchers sit\n", "")
    before = unit.read_bytes()
    assert upgrade(bank, BASE_UNIT) == 1
    assert unit.read_bytes() == before
    out = capsys.readouterr().out
    assert "`front`" in out
    assert "its files are not sound; it was left as it is" in out


def test_a_unit_that_is_not_there_is_said(bank: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert upgrade(bank, "red-boats") == 2
    assert "there is no unit red-boats" in capsys.readouterr().err
