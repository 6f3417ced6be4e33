"""What holds of every rule: its name, its manual, its cases, and the wording of what it says."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from build_tools.checking.check_bank import check_folder
from build_tools.problem import GRADES
from build_tools.rules.catalogue import all_rules
from build_tools.rules.rule import Rule
from build_tools.source.yaml_reader import read_yaml
from tests.rules import cases
from tests.rules.old_cases import (
    BASE,
    HERE,
    Case,
    all_cases,
    findings,
    laid_over_base,
    sound_units,
    with_needs,
)

BAD_CASES = [case for case in all_cases() if case.bad]
BANNED = re.compile(
    r"\b(invalid|illegal|must|object|property|properties|array|instance|oneOf|you forgot|"
    r"forgot|wrong|fail(s|ed)?|None|null|True|False)\b"
)
UNIT_RULES = [rule for rule in all_rules() if rule.check is not None]


def the_rules(rules: list[Rule]) -> pytest.MarkDecorator:
    return pytest.mark.parametrize("rule", rules, ids=lambda rule: rule.name)


@the_rules(list(all_rules()))
def test_is_named_after_its_file_and_its_fault(rule: Rule) -> None:
    assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)+", rule.name)
    file = HERE.parents[1] / "build_tools" / "rules" / rule.family / rule.name.replace("-", "_")
    assert file.with_suffix(".py").is_file()


def test_names_are_used_once() -> None:
    names = [rule.name for rule in all_rules()]
    assert len(names) == len(set(names))


@the_rules(list(all_rules()))
def test_has_a_manual_with_a_reason_and_two_examples(rule: Rule) -> None:
    first, *rest = rule.manual.strip().split("\n")
    assert re.fullmatch(r"[A-Z].*\.", first)
    assert len(first) <= 100
    assert rest[0] == "", "a blank line follows the first line"
    assert rest[1], "why a teacher cares comes next"
    assert [line for line in rest if line in ("Bad:", "Good:")] == ["Bad:", "Good:"]


@the_rules(list(all_rules()))
def test_states_its_grade_and_its_source(rule: Rule) -> None:
    assert rule.grade in GRADES
    assert rule.source == "common practice, no source" or len(rule.source) > 20


@the_rules(list(all_rules()))
def test_has_a_bad_and_a_good_case_in_its_family(rule: Rule) -> None:
    old = [case for case in all_cases() if case.rule == rule.name]
    new = [case for case in cases.all_cases() if case.rule == rule.name]
    assert {case.bad for case in old} | {case.bad for case in new} == {True, False}
    families = [*(case.folder.parent.parent.name for case in old), *(case.family for case in new)]
    assert set(families) == {rule.family}


def test_every_case_belongs_to_a_rule() -> None:
    assert {case.rule for case in all_cases()} <= {rule.name for rule in all_rules()}


def test_the_base_is_sound_in_every_way() -> None:
    report = check_folder(BASE)
    assert (report.problems, report.allowances, report.skipped) == ((), (), 0)
    assert report.bank is not None
    assert len(report.bank.units) == 1


@pytest.mark.parametrize("case", BAD_CASES, ids=str)
def test_says_it_in_the_house_style(case: Case, tmp_path: Path) -> None:
    for _, finding, _ in findings(laid_over_base(case, tmp_path), with_needs(case.rule)):
        for text in (finding.message, finding.help):
            assert re.match(r"[a-z0-9`]", text), text
            assert not text.endswith("."), text
            assert not BANNED.search(text), text
            assert "  " not in text, text
        assert re.search(r"`[^`]+`|[0-9]|section [A-Z]", finding.message), finding.message


@pytest.mark.parametrize("case", BAD_CASES, ids=str)
def test_points_at_a_field_that_is_there(case: Case, tmp_path: Path) -> None:
    root = laid_over_base(case, tmp_path)
    _, documents = sound_units(root)
    for _, finding, problem in findings(root, with_needs(case.rule)):
        document = documents[finding.file]
        read = read_yaml(document.yaml_text, document.first_line)
        assert isinstance(read, tuple)
        assert finding.path in read[1]
        lines = (root / problem.file).read_text(encoding="utf-8").split("\n")
        assert 1 <= problem.line <= len(lines)
        assert 1 <= problem.column <= len(lines[problem.line - 1]) + 1


@the_rules(UNIT_RULES)
def test_needs_only_rules_of_one_unit(rule: Rule) -> None:
    names = {r.name for r in UNIT_RULES}
    assert set(rule.needs) <= names - {rule.name}
