"""Pictures that units of a bank share: one file, rights said once, and what is missing is told."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools.checking.check_bank import check_folder
from build_tools.problem import Problem
from build_tools.source.folder import read_unit_folder
from build_tools.source.front_matter import Document, read_markdown, read_strictly
from build_tools.source.shared_spelled import as_it_goes
from tests.support.banks import BASE_UNIT, change
from tests.support.shared_pictures import LIST, UNIT, bank_that_shares, photograph, png


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return bank_that_shares(tmp_path)


def told(bank: Path) -> list[Problem]:
    """What is told of pictures, but not how they are published."""
    return [p for p in check_folder(bank).problems if "picture" in p.rule and p.severity != "note"]


def test_a_unit_is_read_as_if_it_had_the_picture_and_said_the_rest(bank: Path) -> None:
    assert [p for p in check_folder(bank).problems if p.severity == "error"] == []
    read = read_unit_folder(bank, BASE_UNIT)
    assert read.unit is not None
    first = read.unit.data["stimulus"]["items"][0]
    assert first == {
        "title": "The harbour at dawn",
        "by": "The pupils of a Year 4 class",
        "licence": "CC0-1.0",
        "source": "Taken for this bank",
        "text_version": "Boats lie still on flat water: one has its sail up.",
        "file": "media/harbour.jpg",
    }
    assert read.lessons[1].data["pictures"][0] == first
    assert set(read.media) == {"media/boat.svg", "media/harbour.jpg", "media/whirl.png"}
    # told where it lies, since that is where it is upright no more
    noted = [p for p in read.notes if p.file == "pictures/Harbour.JPG"]
    assert "turned upright" in noted[0].message


def test_a_name_that_is_not_shared_is_told_with_those_that_are(bank: Path) -> None:
    change(bank / UNIT / "unit.md", "- shared: harbour", "- shared: harbor")
    (problem,) = told(bank)
    assert (problem.file, problem.rule) == (f"{UNIT}/unit.md", "shared-picture-missing")
    assert "`harbor`" in problem.message
    assert "`harbour`" in problem.message
    assert "harbor.jpg" in problem.help


def test_a_picture_that_is_gone_is_told_in_the_list_and_in_each_file_that_shows_it(
    bank: Path,
) -> None:
    (bank / "pictures" / "Harbour.JPG").unlink()
    assert sorted((p.file, p.rule, p.severity) for p in told(bank)) == [
        ("pictures/pictures.yml", "shared-picture-odd", "question"),
        (f"{UNIT}/lesson-2.md", "shared-picture-missing", "error"),
        (f"{UNIT}/unit.md", "shared-picture-missing", "error"),
    ]


def test_a_picture_whose_rights_nobody_says_is_told(bank: Path) -> None:
    (bank / "pictures" / "tide.png").write_bytes(png())
    change(bank / UNIT / "unit.md", "- shared: harbour", "- shared: tide")
    found = told(bank)
    assert {p.file for p in found} == {"pictures/tide.png", f"{UNIT}/unit.md"}
    assert all("pictures/pictures.yml" in p.message for p in found)


def test_a_list_that_is_not_sound_is_told_at_its_line(bank: Path) -> None:
    (bank / "pictures" / "pictures.yml").write_text(LIST.replace("  by:", "  made_by:"), "utf-8")
    found = [p for p in check_folder(bank).problems if p.file == "pictures/pictures.yml"]
    assert {(p.rule, p.line) for p in found} == {("missing-field", 1), ("unknown-field", 3)}


def test_a_picture_that_no_unit_shows_is_told(bank: Path) -> None:
    assert not [p for p in check_folder(bank).problems if p.rule == "shared-picture-unused"]
    (bank / "pictures" / "tide.png").write_bytes(png())
    more = LIST + LIST.replace("harbour:", "tide:")
    (bank / "pictures" / "pictures.yml").write_text(more, encoding="utf-8")
    (note,) = [p for p in check_folder(bank).problems if p.rule == "shared-picture-unused"]
    assert (note.severity, note.line) == ("note", more.split("\n").index("tide:") + 1)


def test_a_picture_of_the_units_own_is_not_mistaken_for_it(bank: Path) -> None:
    (bank / UNIT / "media" / "harbour.jpg").write_bytes(photograph("red"))
    found = [p for p in told(bank) if p.rule == "shared-picture-missing"]
    assert {p.file for p in found} == {f"{UNIT}/unit.md", f"{UNIT}/lesson-2.md"}
    assert "of its own" in found[0].message


@pytest.mark.parametrize("data", [b"", b"\xff\xd8\xff\xe0", png()])
def test_one_that_cannot_be_published_stops_the_units_that_show_it_alone(
    bank: Path, data: bytes
) -> None:
    shutil.copytree(bank / UNIT, bank / "units" / "other")
    change(bank / "units" / "other" / "unit.md", "    - shared: harbour\n", "")
    change(bank / "units" / "other" / "lesson-2.md", "  - shared: harbour\n", "")
    (bank / "pictures" / "Harbour.JPG").write_bytes(data)
    found = [p for p in check_folder(bank).problems if p.rule == "picture-unsound"]
    assert {p.file for p in found} == {f"{UNIT}/unit.md", f"{UNIT}/lesson-2.md"}


def test_nothing_else_may_stand_beside_shared(bank: Path) -> None:
    change(bank / UNIT / "unit.md", "- shared: harbour", "- shared: harbour\n      title: Mine")
    found = [p for p in check_folder(bank).problems if p.severity == "error"]
    assert [(p.file, p.rule) for p in found] == [(f"{UNIT}/unit.md", "wrong-value")]
    assert "alone" in f"{found[0].message} {found[0].help}"


@pytest.mark.parametrize(
    "typed", ["- shared: harbour", "- {shared: harbour}", "-shared : Harbour  # by the class"]
)
def test_it_is_written_out_for_others_however_it_was_typed(bank: Path, typed: str) -> None:
    change(bank / UNIT / "unit.md", "- shared: harbour", typed)
    read = read_unit_folder(bank, BASE_UNIT)
    assert read.problems == []
    assert read.unit is not None
    made = as_it_goes(bank / UNIT, "unit.md")
    strictly = read_strictly("unit.md", made)
    assert isinstance(strictly, Document)
    assert strictly.data == read.unit.data
    assert strictly.body == read.unit.body


def test_a_text_that_looks_like_it_stays_a_text(bank: Path) -> None:
    note = "\n  look_for: >-\n    this line\n    - shared: harbour\n    and that\n"
    text = (bank / UNIT / "unit.md").read_text("utf-8")
    line = next(one for one in text.split("\n") if one.startswith("  look_for:"))
    change(bank / UNIT / "unit.md", f"\n{line}\n", note)
    made = read_markdown("unit.md", as_it_goes(bank / UNIT, "unit.md"))
    assert isinstance(made, Document)
    assert made.data["stimulus"]["look_for"] == "this line - shared: harbour and that"
