"""`new` writes drafts that are complete in shape, and that pass once they are filled in.

What a draft has to hold is common practice, no source: pupils find before they fix, fix before
they join, and run the whole twice before anyone watches.
"""

from __future__ import annotations

import atexit
import os
import shutil
import tempfile
from collections import Counter
from functools import cache
from pathlib import Path

import pytest

from build_tools.checking.check_bank import Report, check_folder
from build_tools.drafting.asked import LESSONS, MINUTES, PATTERNS, Asked, BankFacts
from build_tools.drafting.draft import draft
from build_tools.model.unit import SchoolYears
from build_tools.views.words.open_places import MARK, open_places
from tests.drafting.filling import STIMULUS, TITLE, fill
from tests.support.banks import BASE, THOROUGH

FACTS = BankFacts("The bank", "2026-11-25", ("rivers",))
YOUNG, MIDDLE, OLD = (SchoolYears("England", y) for y in (("R", "1"), ("3", "4"), ("7", "8")))
SHAPES = [(1, 20), (2, 30), (3, 25), (4, 45), (5, 20), (6, 45), (7, 60), (8, 20), (8, 90)]
TURNS = 1 if os.environ.get(THOROUGH) else 3
"""A pattern is drafted in every so manieth shape in the usual run, and in all in the long."""
SLOT = 60
"""Above the longest usual slot a bank notes that the lesson is long, which is what was asked."""


def asked(pattern: str, lessons: int, minutes: int, years: SchoolYears = MIDDLE) -> Asked:
    return Asked(TITLE, STIMULUS, ("see", "do"), (years,), lessons, minutes, pattern)


def in_a_bank(folder: Path, *units: Asked) -> Path:
    root = folder / "content"
    shutil.copytree(BASE, root, ignore=shutil.ignore_patterns("units"))
    for number, one in enumerate(units):
        unit = root / "units" / f"unit-{number}"
        unit.mkdir(parents=True)
        for file, text in draft(one, FACTS).items():
            text = text.replace(f"title: {TITLE}\n", f"title: {TITLE} {number}\n")
            (unit / file).write_text(text, encoding="utf-8")
    return root


@cache
def drafted(pattern: str) -> tuple[Path, Report]:
    """A bank of all drafts in this pattern and what a check says of it; nobody changes it."""
    folder = Path(tempfile.mkdtemp(prefix="drafted-"))
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    root = in_a_bank(folder, *all_asked(pattern))
    return root, check_folder(root)


def all_asked(pattern: str) -> list[Asked]:
    """The drafts of a pattern; one begins with one shape and the next with the next."""
    every = [
        *(asked(pattern, lessons, minutes) for lessons, minutes in SHAPES),
        *(asked(pattern, lessons, 30, years) for lessons in (1, 4, 8) for years in (YOUNG, OLD)),
    ]
    return every[[*PATTERNS].index(pattern) % TURNS :: TURNS]


def others(report: Report) -> Counter[str]:
    return Counter(
        p.rule
        for p in report.problems
        if p.rule not in ("open-place", "longer-than-a-slot")
        or (p.rule == "longer-than-a-slot" and "90 minutes" not in p.message)
    )


@pytest.mark.parametrize("pattern", PATTERNS)
def test_a_draft_has_open_places_and_no_other_problem(pattern: str) -> None:
    _, report = drafted(pattern)
    assert report.bank is not None
    assert len(report.bank.units) == len(all_asked(pattern))
    assert report.skipped == 0
    assert others(report) == {}


@pytest.mark.parametrize("pattern", PATTERNS)
def test_check_names_every_open_place_on_its_line(pattern: str) -> None:
    root, report = drafted(pattern)
    said = {(p.file, p.line) for p in report.problems if p.rule == "open-place"}
    written = {
        (file.relative_to(root).as_posix(), number)
        for file in root.rglob("units/*/*.md")
        for number, line in enumerate(file.read_text(encoding="utf-8").split("\n"), start=1)
        if MARK in line
    }
    assert said == written
    assert len(written) > 30 * len(list((root / "units").iterdir()))
    marks = sum(file.read_text(encoding="utf-8").count(MARK) for file in root.rglob("units/*/*.md"))
    assert report.bank is not None
    assert sum(len(open_places(unit)) for unit in report.bank.units) == marks
    assert {p.severity for p in report.problems if p.rule == "open-place"} == {"question"}


@pytest.mark.parametrize("pattern", PATTERNS)
def test_filled_in_it_passes_as_a_finished_unit(pattern: str, tmp_path: Path) -> None:
    root = in_a_bank(tmp_path, *all_asked(pattern))
    for folder in sorted((root / "units").iterdir()):
        assert fill(folder) >= 25
    report = check_folder(root)
    assert report.bank is not None
    assert not any(unit.draft for unit in report.bank.units)
    assert report.of_grade("error") == ()
    for unit in report.bank.units:
        questions = [p for p in report.of_grade("question") if f"/{unit.slug}/" in p.file]
        assert len(questions) <= 2, questions


def test_without_draft_every_open_place_is_an_error(tmp_path: Path) -> None:
    root = in_a_bank(tmp_path, asked("one-theme", 4, 45))
    before = [p for p in check_folder(root).problems if p.rule == "open-place"]
    file = root / "units" / "unit-0" / "unit.md"
    text = file.read_text(encoding="utf-8")
    file.write_text(text.replace("draft: true\n", "draft: false\n"), encoding="utf-8")
    after = [p for p in check_folder(root).problems if p.rule == "open-place-left"]
    assert [(p.file, p.line, p.message) for p in after] == [
        (p.file, p.line, p.message) for p in before
    ]
    assert {p.severity for p in after} == {"error"}


@pytest.mark.parametrize("pattern", PATTERNS)
def test_every_number_and_length_can_be_written_and_adds_up(pattern: str, thorough: bool) -> None:
    """Every number of lessons at every length; in the usual run years and lengths take turns."""
    some = (*MINUTES[:8], *MINUTES[8::7], MINUTES[-1])
    everybody = (YOUNG, MIDDLE, OLD)
    for lessons in LESSONS:
        first = lessons + 3 * [*PATTERNS].index(pattern)
        for place, minutes in enumerate(MINUTES if thorough else some[first % 12 :: 12]):
            turn = (lessons + place) % len(everybody)
            for years in everybody if thorough else everybody[turn : turn + 1]:
                files = draft(asked(pattern, lessons, minutes, years), FACTS)
                assert len(files) == lessons + 1
                for number in range(1, lessons + 1):
                    lines = files[f"lesson-{number}.md"].split("\n")
                    steps = [int(s.split(": ")[1]) for s in lines if s.startswith("    minutes: ")]
                    assert sum(steps) == minutes, (lessons, minutes, number)
                    assert min(steps) >= 1


def test_the_same_answers_give_the_same_text() -> None:
    one = asked("pupils-order", 5, 45)
    assert draft(one, FACTS) == draft(one, FACTS)
