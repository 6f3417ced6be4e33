"""What holds of the files of cases: they are in form, named after a rule, and short."""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import pytest

from build_tools.rules.catalogue import rule_named
from tests.rules.cases import HERE, case_files, read_cases

FILES = case_files()
MOST_LINES = 150
MOST_LINES_IN_ALL = 9_000
MOST_IN_A_NAME = 80
TEXTS = {".md", ".py", ".svg", ".yml"}


def of(path: Path) -> str:
    return path.relative_to(HERE).as_posix()


def lines(path: Path) -> int:
    return path.read_text(encoding="utf-8").count("\n")


@pytest.mark.parametrize("path", FILES, ids=of)
def test_is_written_as_files_of_cases_are(path: Path) -> None:
    is_in_form_and_lies_in_the_family_of_its_rule(path)
    assert {case.bad for case in read_cases(path)} == {True, False}, "a bad and a good case"
    tries_each_thing_once_under_a_name_in_words(path)
    assert lines(path) <= MOST_LINES


def is_in_form_and_lies_in_the_family_of_its_rule(path: Path) -> None:
    assert read_cases(path)
    rule = rule_named(path.stem)
    assert rule is not None, "the file is named after a rule"
    assert rule.family == path.parent.name


def tries_each_thing_once_under_a_name_in_words(path: Path) -> None:
    cases = read_cases(path)
    assert max(Counter(case.name for case in cases).values()) == 1
    assert max(Counter(repr(case.edits) for case in cases).values()) == 1
    for case in cases:
        assert " " in case.name, case.name
        assert len(case.name) <= MOST_IN_A_NAME, case.name
        assert not case.name.endswith("."), case.name


def test_all_are_short_together() -> None:
    found = [path for path in HERE.rglob("*") if path.suffix in TEXTS]
    assert sum(map(lines, found)) <= MOST_LINES_IN_ALL
