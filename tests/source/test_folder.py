"""The content folder: every file on its own, none hidden by another's fault."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

import pytest

from build_tools.checking.check_bank import check_folder
from build_tools.problem import Problem
from build_tools.source.folder import (
    is_slug,
    read_bank_files,
    read_unit_folder,
    unit_slugs,
)
from build_tools.source.media_files import lies_in
from tests.support.banks import UNIT, change, copy_bank

# Names that Windows keeps for devices: Microsoft, "Naming Files, Paths, and Namespaces".
DEVICES = ["con", "prn", "aux", "nul", "com1", "com9", "lpt1", "lpt9"]


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_bank(tmp_path)


def problems(bank: Path) -> list[tuple[str, str]]:
    return [(p.file, p.rule) for p in reading_problems(bank)]


def reading_problems(bank: Path) -> list[Problem]:
    slugs, found = unit_slugs(bank)
    found += read_bank_files(bank)[1]
    for slug in slugs:
        found += read_unit_folder(bank, slug).problems
    return sorted(found)


def test_the_real_bank_is_read_whole(bank: Path) -> None:
    assert reading_problems(bank) == []
    assert unit_slugs(bank)[0] == [UNIT]
    unit = read_unit_folder(bank, UNIT)
    assert [d.data["lesson"] for d in unit.lessons] == list(range(1, len(unit.lessons) + 1))
    files = sorted((bank / "units" / UNIT / "media").iterdir())
    assert unit.media == {f"media/{f.name}": f.stat().st_size for f in files}


def test_lesson_ten_comes_after_lesson_nine(bank: Path) -> None:
    folder = bank / "units" / UNIT
    for number in (9, 10):
        shutil.copy(folder / "lesson-1.md", folder / f"lesson-{number}.md")
    names = [d.file.rpartition("/")[2] for d in read_unit_folder(bank, UNIT).lessons]
    assert names[-2:] == ["lesson-9.md", "lesson-10.md"]


def test_one_bad_file_hides_no_other(bank: Path) -> None:
    folder = bank / "units" / UNIT
    (folder / "lesson-1.md").write_bytes(b"\xff\xfe")
    change(folder / "lesson-2.md", "\nminutes: 45\n", "\nminutes: 45\n// ask\n")
    change(folder / "lesson-3.md", "\nlesson: 3\n", "\nlesson: last\n")
    (bank / "bank.yml").unlink()
    found = {(p.file, p.rule) for p in check_folder(bank).problems}
    assert found == {
        ("bank.yml", "file-missing"),
        (f"units/{UNIT}/lesson-1.md", "not-utf-8"),
        (f"units/{UNIT}/lesson-2.md", "broken-yaml"),
        (f"units/{UNIT}/lesson-3.md", "wrong-value"),
    }


def test_a_folder_with_nothing_in_it(tmp_path: Path) -> None:
    report = check_folder(tmp_path)
    assert report.bank is None
    assert [(p.file, p.rule) for p in report.problems] == [
        ("bank.yml", "file-missing"),
        ("safety.md", "file-missing"),
        ("vocabulary/topics.yml", "file-missing"),
        ("vocabulary/words.yml", "file-missing"),
    ]


@pytest.mark.parametrize(
    ("name", "file"),
    [
        ("Lesson-1.md", "units/rock-pool/Lesson-1.md"),
        ("lesson-01.md", "units/rock-pool/lesson-01.md"),
        ("lesson-0.md", "units/rock-pool/lesson-0.md"),
        ("lesson-1.md.txt", "units/rock-pool/lesson-1.md.txt"),
        ("notes.docx", "units/rock-pool/notes.docx"),
        ("media/pool.html", "units/rock-pool/media/pool.html"),
        ("media/pool.svg.exe", "units/rock-pool/media/pool.svg.exe"),
        ("media/….svg", "units/rock-pool/media/….svg"),
        ("line\nend.md", "units/rock-pool/line?end.md"),
    ],
)
def test_odd_names_are_said(bank: Path, name: str, file: str) -> None:
    (bank / "units" / UNIT / name).write_bytes(b"x")
    assert problems(bank) == [(file, "file-name-odd")]


@pytest.mark.parametrize(
    ("name", "plain"),
    [
        ("Low Tide 2.SVG", "media/low-tide-2.svg"),
        ("Mare\u0301e basse.svg", "media/maree-basse.svg"),
        ("low_tide (copy).svg", "media/low-tide-copy.svg"),
    ],
)
def test_a_picture_may_have_any_sensible_name(bank: Path, name: str, plain: str) -> None:
    """RFC 3986, 2.3: letters, figures and hyphens need no escape in an address."""
    media = bank / "units" / UNIT / "media"
    (media / "low-tide.svg").rename(media / name)
    read = read_unit_folder(bank, UNIT)
    assert read.problems == []
    assert plain in read.media
    assert lies_in(media.parent, plain).read_bytes() == (media / name).read_bytes()
    assert [note.message for note in read.notes] == [
        f"this is published as {plain.removeprefix('media/')}"
    ]


def test_two_pictures_of_one_plain_name_are_told(bank: Path) -> None:
    media = bank / "units" / UNIT / "media"
    shutil.copy(media / "low-tide.svg", media / "Low Tide.svg")
    (found,) = read_unit_folder(bank, UNIT).problems
    assert found.file == f"units/{UNIT}/media/Low Tide.svg"
    assert "two files here are called low-tide.svg" in found.message


def test_a_name_of_bytes_that_are_no_text(bank: Path) -> None:
    path = os.fsencode(bank / "units" / UNIT) + b"/\xff\xfe.md"
    with open(path, "wb") as file:  # noqa: PTH123 - only bytes can name it
        file.write(b"x")
    (found,) = reading_problems(bank)
    assert found.file == f"units/{UNIT}/??.md"
    found.message.encode("utf-8")


@pytest.mark.parametrize("name", [".DS_Store", ".git", "units/.hidden", f"units/{UNIT}/.swp"])
def test_hidden_files_are_passed_over(bank: Path, name: str) -> None:
    (bank / name).write_bytes(b"\xff")
    assert problems(bank) == []


def test_a_file_among_the_units(bank: Path) -> None:
    (bank / "units" / "readme.txt").write_bytes(b"x")
    assert problems(bank) == [("units/readme.txt", "file-name-odd")]


@pytest.mark.parametrize("name", ["Rock Pool", "rock_pool", "é", "a--b", "-a", "a" * 41, *DEVICES])
def test_odd_names_of_units(bank: Path, name: str) -> None:
    assert not is_slug(name)
    shutil.copytree(bank / "units" / UNIT, bank / "units" / name)
    assert problems(bank) == [(f"units/{name}", "file-name-odd")]


@pytest.mark.parametrize("name", ["a", "7", "rock-pool", "a" * 40, "com10", "console"])
def test_names_of_units(name: str) -> None:
    assert is_slug(name)


def test_a_unit_without_its_file_or_without_lessons(bank: Path) -> None:
    (bank / "units" / "empty").mkdir()
    (bank / "units" / "bare").mkdir()
    shutil.copy(bank / "units" / UNIT / "unit.md", bank / "units" / "bare")
    assert problems(bank) == [
        ("units/bare/unit.md", "file-missing"),
        ("units/empty/unit.md", "file-missing"),
    ]


def test_a_folder_where_a_file_belongs_and_a_file_where_a_folder_belongs(bank: Path) -> None:
    lesson = bank / "units" / UNIT / "lesson-1.md"
    lesson.unlink()
    lesson.mkdir()
    media = bank / "units" / UNIT / "media"
    shutil.rmtree(media)
    media.write_bytes(b"x")
    shutil.rmtree(bank / "vocabulary")
    (bank / "vocabulary").write_bytes(b"x")
    assert problems(bank) == [
        (f"units/{UNIT}/lesson-1.md", "file-unreadable"),
        (f"units/{UNIT}/media", "file-name-odd"),
        ("vocabulary/topics.yml", "file-unreadable"),
        ("vocabulary/words.yml", "file-unreadable"),
    ]


def test_a_file_where_the_units_belong(bank: Path) -> None:
    shutil.rmtree(bank / "units")
    (bank / "units").write_bytes(b"x")
    assert problems(bank) == [("units", "file-unreadable")]


def test_links_that_lead_nowhere(bank: Path) -> None:
    (bank / "units" / UNIT / "media" / "gone.svg").symlink_to("nowhere")
    (bank / "units" / "gone").symlink_to("nowhere")
    assert problems(bank) == [
        ("units/gone", "file-name-odd"),
        (f"units/{UNIT}/media/gone.svg", "file-name-odd"),
    ]
