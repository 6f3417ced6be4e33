"""Which pages a change touches, and that only they are written."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools.building.rebuild import Touched, rebuild, sound_bank, touched
from build_tools.checking.check_bank import check_folder
from tests.support.banks import BASE_UNIT, change, copy_base

HERE = Path("/bank/content")


@pytest.mark.parametrize(
    ("changed", "slugs", "everything"),
    [
        (["units/a/unit.md"], {"a"}, False),
        (["units/a/unit.md", "units/b/media/x.svg"], {"a", "b"}, False),
        (["bank.yml"], set(), True),
        (["vocabulary/words.yml", "units/a/unit.md"], set(), True),
        (["units/a"], set(), True),
        (["units"], set(), True),
        ([], set(), False),
    ],
)
def test_a_change_touches_its_unit_or_everything(
    changed: list[str], slugs: set[str], everything: bool
) -> None:
    found = touched(HERE, [HERE / path for path in changed])
    assert found == Touched(frozenset(slugs), everything)


def test_a_change_elsewhere_touches_nothing() -> None:
    assert touched(HERE, [Path("/elsewhere/x.md")]) == Touched(frozenset(), False)


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


def test_a_unit_with_errors_is_left_as_it_is(bank: Path, tmp_path: Path) -> None:
    change(bank / "units" / BASE_UNIT / "lesson-1.md", "\nminutes: 40\n", "\nminutes: 41\n")
    report = check_folder(bank)
    assert report.bank is not None
    found = sound_bank(report)
    assert found is not None
    assert found.units == ()
    assert rebuild(bank, tmp_path / "out", Touched(frozenset([BASE_UNIT]), False), report) == []
    assert not (tmp_path / "out").exists()


def test_nothing_is_written_without_a_bank(bank: Path, tmp_path: Path) -> None:
    (bank / "bank.yml").unlink()
    report = check_folder(bank)
    assert sound_bank(report) is None
    assert rebuild(bank, tmp_path / "out", Touched(frozenset(), True), report) == []


def test_a_draft_is_previewed(bank: Path, tmp_path: Path) -> None:
    change(bank / "units" / BASE_UNIT / "unit.md", "\ntitle:", "\ndraft: true\ntitle:")
    report = check_folder(bank)
    assert rebuild(bank, tmp_path / "out", Touched(frozenset(), True), report) == ["every page"]
    assert (tmp_path / "out" / "units" / BASE_UNIT / "lesson-1.html").is_file()


def test_a_unit_that_was_never_shown_brings_every_page_anew(bank: Path, tmp_path: Path) -> None:
    """So that the front page, and the units beside it, lead to it once it is mended."""
    report = check_folder(bank)
    only = Touched(frozenset([BASE_UNIT]), False)
    out = tmp_path / "out"
    assert rebuild(bank, out, only, report) == ["every page"]
    (out / "index.html").write_bytes(b"untouched")
    assert rebuild(bank, out, only, report) == [f"the pages of {BASE_UNIT}"]
    assert (out / "index.html").read_bytes() == b"untouched"
