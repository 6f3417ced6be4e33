"""The edition before: found as a folder or a pack, its publisher's own, and compared."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.unit_editions.earlier_editions import since_last_edition
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.built_packs import made


@pytest.fixture
def content(tmp_path: Path) -> Path:
    """The rules' own bank, its unit at edition 1.1.0 with one question more than 1.0.0."""
    return copy_base(tmp_path)


def edition(content: Path, number: str) -> None:
    change(
        content / "units" / BASE_UNIT / "unit.md", "\nedition: 1.0.0\n", f"\nedition: {number}\n"
    )


def keep(content: Path, name: str) -> Path:
    folder = content / "earlier" / name
    shutil.copytree(content / "units" / BASE_UNIT, folder)
    return folder


def retitle(folder: Path) -> None:
    lines = (folder / "lesson-1.md").read_text(encoding="utf-8").splitlines(keepends=True)
    at = next(n for n, line in enumerate(lines) if line.startswith("title:"))
    lines[at] = "title: Other words\n"
    (folder / "lesson-1.md").write_text("".join(lines), encoding="utf-8")


def test_no_edition_before(content: Path) -> None:
    assert since_last_edition(content, BASE_UNIT).comparison is None


def test_a_folder_is_compared(content: Path) -> None:
    retitle(keep(content, f"{BASE_UNIT}-1.0.0"))
    edition(content, "1.0.1")
    since = since_last_edition(content, BASE_UNIT)
    assert since.place == f"earlier/{BASE_UNIT}-1.0.0"
    assert since.comparison is not None
    assert [c.sentence[:8] for c in since.comparison.changes] == ["lesson 1"]
    assert since.comparison.verdict() == "from edition 1.0.0 to 1.0.1, as these changes call for"


def test_a_pack_is_compared(content: Path) -> None:
    pack = made(content, BASE_UNIT)
    (content / "earlier").mkdir()
    (content / "earlier" / f"{BASE_UNIT}-1.0.0.zip").write_bytes(pack.data)
    retitle(content / "units" / BASE_UNIT)
    since = since_last_edition(content, BASE_UNIT)
    assert since.place == f"earlier/{BASE_UNIT}-1.0.0.zip"
    assert since.comparison is not None
    said = since.comparison.verdict()
    assert said == "these changes call for edition 1.0.1; the unit says 1.0.0"


def test_the_newest_that_is_not_later_and_its_publishers_own(content: Path) -> None:
    for name, number in (("9.0.0", "9.0.0"), ("1.9.0", "1.9.0"), ("1.10.0", "1.10.0")):
        folder = keep(content, f"{BASE_UNIT}-{name}")
        change(folder / "unit.md", "\nedition: 1.0.0\n", f"\nedition: {number}\n")
    stranger = keep(content, f"{BASE_UNIT}-1.11.0")
    change(stranger / "unit.md", "\nedition: 1.0.0\n", "\nedition: 1.11.0\n")
    fields = (stranger / "unit.md").read_text(encoding="utf-8").splitlines()
    publisher = next(line for line in fields if line.startswith("publisher:"))
    change(stranger / "unit.md", publisher, "publisher: Somebody else")
    keep(content, f"{BASE_UNIT}-boats-1.0.0")
    edition(content, "1.12.0")
    since = since_last_edition(content, BASE_UNIT)
    assert since.place == f"earlier/{BASE_UNIT}-1.10.0"
    assert since.comparison is not None
    said = since.comparison.verdict()
    assert said == "nothing calls for another edition than 1.10.0; the unit says 1.12.0"


def test_a_copy_of_this_very_edition_is_no_edition_before(content: Path) -> None:
    keep(content, f"{BASE_UNIT}-1.0.0")
    assert since_last_edition(content, BASE_UNIT).comparison is None


def test_what_cannot_be_read_is_named(content: Path) -> None:
    (keep(content, f"{BASE_UNIT}-0.9.0") / "unit.md").write_bytes(b"no fields")
    (content / "earlier" / f"{BASE_UNIT}-0.9.1.zip").write_bytes(b"no zip")
    since = since_last_edition(content, BASE_UNIT)
    assert since.comparison is None
    first, second = since.unreadable
    assert first.startswith(f"earlier/{BASE_UNIT}-0.9.0: unit.md, line 1: ")
    assert second.startswith(f"earlier/{BASE_UNIT}-0.9.1.zip: it is ")


def test_the_advisers_page_says_what_changed(content: Path, tmp_path: Path) -> None:
    retitle(keep(content, f"{BASE_UNIT}-1.0.0"))
    out = tmp_path / "site"
    assert cli.main(["site", "--review", "--content", str(content), "--out", str(out)]) == 0
    page = (out / "review.html").read_text(encoding="utf-8")
    assert "These changes call for edition 1.0.1; the unit says 1.0.0." in page
    assert "Lesson 1: " in page
