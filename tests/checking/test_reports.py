"""Problems as text and as data."""

from __future__ import annotations

import json

from hypothesis import given
from hypothesis import strategies as st

from build_tools.checking.report_data import as_json
from build_tools.checking.report_text import as_text, counted, skipped_line
from build_tools.problem import GRADES, Fault, Grade, Problem

FIRST = Problem("units/u/lesson-1.md", 7, 1, "a-rule", "error", "`minutes` is 3", "write 4")
SECOND = Problem(
    "units/u/lesson-1.md", 9, 3, "b-rule", "question", "says “é”", "say " + "more " * 40
)
OTHER = Problem("bank.yml", 1, 1, "c-rule", "note", "is so", "leave it")


def test_a_problem_is_a_line_that_editors_can_jump_to_and_a_line_of_help() -> None:
    lines = as_text([OTHER, FIRST], "content/").splitlines()
    assert lines == [
        "content/bank.yml:1:1: note: is so [c-rule]",
        "    to mend it: leave it",
        "content/units/u/lesson-1.md:7:1: error: `minutes` is 3 [a-rule]",
        "    to mend it: write 4",
    ]


def test_long_help_is_wrapped_and_indented() -> None:
    lines = as_text([SECOND], "").splitlines()
    assert len(lines) > 2
    assert all(line.startswith("    ") and len(line) <= 100 for line in lines[1:])


def test_nothing_found_is_no_text() -> None:
    assert as_text([], "content/") == ""


def problem(grade: Grade, line: int) -> Problem:
    return Problem("a.md", line, 1, "r", grade, "m", "h")


def test_grades_are_counted_in_words() -> None:
    assert counted([]) == "no problems"
    assert counted([FIRST]) == "1 error"
    assert counted([problem("error", 1), problem("error", 2), SECOND]) == "2 errors, 1 question"
    assert counted([problem("note", n) for n in range(3)]) == "3 notes"


def test_rules_not_run_are_counted_in_words() -> None:
    assert skipped_line(0) == ""
    assert skipped_line(1).startswith("1 rule was not run")
    assert skipped_line(6).startswith("6 rules were not run")


def test_data_is_sorted_and_complete() -> None:
    found = json.loads(as_json([SECOND, FIRST, OTHER], "content/"))
    assert [entry["file"] for entry in found] == [
        "content/bank.yml",
        "content/units/u/lesson-1.md",
        "content/units/u/lesson-1.md",
    ]
    assert found[1] == {
        "rule": "a-rule",
        "severity": "error",
        "file": "content/units/u/lesson-1.md",
        "line": 7,
        "column": 1,
        "message": "`minutes` is 3",
        "help": "write 4",
    }
    assert list(found[0]) == ["rule", "severity", "file", "line", "column", "message", "help"]
    assert json.loads(as_json([], "content/")) == []


problems = st.builds(
    Problem,
    st.text(min_size=1),
    st.integers(1, 9999),
    st.integers(1, 999),
    st.text(min_size=1),
    st.sampled_from(GRADES),
    st.text(),
    st.text(),
)


@given(st.lists(problems, max_size=6))
def test_any_text_comes_through_as_data(given_problems: list[Problem]) -> None:
    found = json.loads(as_json(given_problems, ""))
    again = [Problem(**{**entry, "severity": entry["severity"]}) for entry in found]
    assert again == sorted(given_problems)


def test_a_fault_of_reading_is_an_error_of_its_file() -> None:
    fault = Fault("broken-yaml", 3, 4, "message", "help")
    assert fault.at("a.md") == Problem("a.md", 3, 4, "broken-yaml", "error", "message", "help")
