"""What holds of every rule: its name, its manual, its grade and source, and that it has cases."""

from __future__ import annotations

import re

import pytest

from build_tools.checking.check_bank import check_folder
from build_tools.problem import GRADES
from build_tools.rules.catalogue import all_rules
from build_tools.rules.rule import Rule
from tests.rules.cases import BASE, HERE

OF_ONE_UNIT = {rule.name for rule in all_rules() if rule.check is not None}


@pytest.mark.parametrize("rule", all_rules(), ids=lambda rule: rule.name)
def test_is_written_as_rules_are(rule: Rule) -> None:
    is_named_after_its_file_and_its_fault(rule)
    has_a_manual_with_a_reason_and_two_examples(rule)
    states_its_grade_and_its_source(rule)
    assert (HERE / rule.family / f"{rule.name}.yml").is_file(), "its cases"
    if rule.check is not None:
        needs_only_rules_of_one_unit(rule)
        states_the_language_of_the_sentences_it_reads(rule)


def is_named_after_its_file_and_its_fault(rule: Rule) -> None:
    assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)+", rule.name)
    file = HERE.parents[1] / "build_tools" / "rules" / rule.family / rule.name.replace("-", "_")
    assert file.with_suffix(".py").is_file()


def test_names_are_used_once() -> None:
    names = [rule.name for rule in all_rules()]
    assert len(names) == len(set(names))


def has_a_manual_with_a_reason_and_two_examples(rule: Rule) -> None:
    first, *rest = rule.manual.strip().split("\n")
    assert re.fullmatch(r"[A-Z].*\.", first)
    assert len(first) <= 100
    assert rest[0] == "", "a blank line follows the first line"
    assert rest[1], "why a teacher cares comes next"
    assert [line for line in rest if line in ("Bad:", "Good:")] == ["Bad:", "Good:"]


def states_its_grade_and_its_source(rule: Rule) -> None:
    assert rule.grade in GRADES
    assert rule.source == "common practice, no source" or len(rule.source) > 20


def test_the_base_is_sound_in_every_way() -> None:
    report = check_folder(BASE)
    assert (report.problems, report.allowances, report.skipped) == ((), (), 0)
    assert report.bank is not None
    assert len(report.bank.units) == 1


def needs_only_rules_of_one_unit(rule: Rule) -> None:
    assert set(rule.needs) <= OF_ONE_UNIT - {rule.name}


ANY_LANGUAGE = {"looks-like-personal-data", "lookers-do-not-fit-grouping"}
"""A telephone number is one in any language, and who looks is a field."""
READ_OTHERWISE = {
    "join-names-another-part": "looks for letters in the words of a sign",
    "option-cut-at-a-comma": "looks for how an option begins",
    "facing-nobody-turns-to": "looks for turning in how a change is made",
    "hall-said-too-small": "looks for a hall in the words for it",
    "line-hard-to-read": "has an ease of reading for English",
    "space-for-fewer": "looks for square metres in the words for the hall",
    "too-few-whole-runs": "counts runs that are danced twice",
}
"""Rules that read English without the room for sentences: test_languages.py found them."""


def states_the_language_of_the_sentences_it_reads(rule: Rule) -> None:
    file = HERE.parents[1] / "build_tools" / "rules" / rule.family / rule.name.replace("-", "_")
    reads = "from build_tools.sentences" in file.with_suffix(".py").read_text(encoding="utf-8")
    english = (reads and rule.name not in ANY_LANGUAGE) or rule.name in READ_OTHERWISE
    assert rule.reads == ("en" if english else None)
