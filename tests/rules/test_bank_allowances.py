"""A unit may allow what a rule for the whole bank finds in it. Common practice, no source."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools.checking.check_bank import Report, check_folder
from build_tools.checking.quick_check import quick_check
from tests.rules.cases import BASE

UNIT = Path("units/paper-boats/unit.md")
SECOND = Path("units/red-boats")
REASON = "The list of topics grows next term."


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    """The base, with a second unit beside it."""
    shutil.copytree(BASE, tmp_path, dirs_exist_ok=True)
    shutil.copytree(tmp_path / UNIT.parent, tmp_path / SECOND)
    change(tmp_path / SECOND / "unit.md", "title: Paper boats", "title: Red boats")
    return tmp_path


def change(file: Path, old: str, new: str) -> None:
    text = file.read_text(encoding="utf-8")
    assert text.count(old) == 1
    file.write_text(text.replace(old, new), encoding="utf-8")


def allow(root: Path, rule: str) -> None:
    change(root / UNIT, "format: 2\n", f"format: 2\nallow: {{{rule}: {REASON}}}\n")


def said(report: Report) -> list[tuple[str, str]]:
    return [(p.rule, p.file) for p in report.problems]


def builds_on(root: Path, name: str) -> None:
    text = (root / UNIT).read_text(encoding="utf-8").split("\n")
    (line,) = (n for n, one in enumerate(text) if one.startswith("builds_on:"))
    text[line] = f"builds_on: {{in_words: Moving to a beat, units: [{name}]}}"
    (root / UNIT).write_text("\n".join(text), encoding="utf-8")


def test_the_bank_is_sound_before_anything_is_changed(bank: Path) -> None:
    assert said(check_folder(bank)) == []


def test_what_is_allowed_is_no_problem_and_keeps_its_reason(bank: Path) -> None:
    builds_on(bank, "volcanoes")
    assert said(check_folder(bank)) == [("earlier-unit-missing", UNIT.as_posix())]
    allow(bank, "earlier-unit-missing")
    report = check_folder(bank)
    assert said(report) == []
    assert [(a.problem.rule, a.problem.file, a.reason) for a in report.allowances] == [
        ("earlier-unit-missing", UNIT.as_posix(), REASON)
    ]


def test_it_is_allowed_to_that_unit_only(bank: Path) -> None:
    builds_on(bank, "volcanoes")
    shutil.rmtree(bank / SECOND)
    shutil.copytree(bank / UNIT.parent, bank / SECOND)
    change(bank / SECOND / "unit.md", "title: Paper boats", "title: Red boats")
    allow(bank, "earlier-unit-missing")
    assert said(check_folder(bank)) == [("earlier-unit-missing", f"{SECOND.as_posix()}/unit.md")]


def test_an_allowance_that_nothing_needs_is_stale(bank: Path) -> None:
    allow(bank, "earlier-unit-missing")
    report = check_folder(bank)
    assert said(report) == [("allowance-stale", UNIT.as_posix())]
    assert report.problems[0].line == 1 + (bank / UNIT).read_text().split("\n").index(
        f"allow: {{earlier-unit-missing: {REASON}}}"
    )


def test_no_allowance_is_called_stale_while_another_unit_is_not_sound(bank: Path) -> None:
    allow(bank, "earlier-unit-missing")
    change(bank / SECOND / "unit.md", "format: 2\n", "format: one\n")
    assert {file for _, file in said(check_folder(bank))} == {f"{SECOND.as_posix()}/unit.md"}


def test_a_unit_that_is_there_but_not_sound_is_not_missing(bank: Path) -> None:
    builds_on(bank, "red-boats")
    assert said(check_folder(bank)) == []
    change(bank / SECOND / "unit.md", "format: 2\n", "format: one\n")
    report = check_folder(bank)
    assert {file for _, file in said(report)} == {f"{SECOND.as_posix()}/unit.md"}
    shutil.rmtree(bank / SECOND)
    assert said(check_folder(bank)) == [("earlier-unit-missing", UNIT.as_posix())]


@pytest.mark.parametrize("name", ["volcanoes", "red-boats"])
def test_the_quick_check_says_the_same_twice(bank: Path, name: str, tmp_path: Path) -> None:
    builds_on(bank, name)
    allow(bank, "earlier-unit-missing")
    kept = tmp_path / "kept" / "one.json"
    whole = check_folder(bank).problems
    assert bool(whole) == (name == "red-boats")
    assert quick_check(bank, kept).problems == whole
    assert quick_check(bank, kept).problems == whole
