"""The examples of a rule's manual are told apart in the published units, word for word."""

from __future__ import annotations

import re

import pytest

from build_tools.rules.catalogue import all_rules
from build_tools.rules.rule import Rule
from tests.manuals.examples import fields_of
from tests.manuals.laying import PLACES, Layout, layouts, new_findings, written

LAID = [rule for rule in all_rules() if rule.name in written()]


def test_every_rule_has_places_in_its_familys_file() -> None:
    found = {(path.stem, name) for path in PLACES.glob("*.yml") for name in _names(path.stem)}
    rules = {(rule.family, rule.name) for rule in all_rules()}
    assert not rules - found, "places/<family>.yml says nothing of these: " + _listed(rules - found)
    assert not found - rules, "places/ names what is no rule there: " + _listed(found - rules)


def _listed(rules: set[tuple[str, str]]) -> str:
    return ", ".join(f"{family}: {name}" for family, name in sorted(rules))


def _names(family: str) -> list[str]:
    text = (PLACES / f"{family}.yml").read_text(encoding="utf-8")
    names = re.findall(r"(?m)^([a-z-]+):", text)
    assert names == sorted(set(names)), f"{family}.yml: rules by name, each once"
    return names


@pytest.mark.parametrize("rule", LAID, ids=lambda rule: rule.name)
def test_the_bad_example_is_found_in_each_unit_and_the_good_one_is_not(
    rule: Rule, thorough: bool
) -> None:
    """In the usual run in one unit, the units taking turns, in the long one in each."""
    known = {*fields_of(rule, "bad"), *fields_of(rule, "good")}
    laid = layouts(written()[rule.name])
    told_in = [slug for slug, layout in laid.items() if isinstance(layout, Layout)]
    turn = LAID.index(rule) % len(told_in)
    for slug in told_in if thorough else told_in[turn : turn + 1]:
        layout = laid[slug]
        assert isinstance(layout, Layout)
        assert set(layout.where) == known, "the manual and places/ name other fields"
        told = new_findings(rule, slug, "bad", layout)
        assert told, (
            f"Bad is not found in {slug}: mend the manual or the rule; where the unit moved on, "
            "choose another place for it, or tell in its `ground` what has to be so there"
        )
        assert len(told) == 1, f"one fault is told more than once in {slug}: {told}"
        assert new_findings(rule, slug, "good", layout) == [], f"this is said of Good in {slug}"
    told_why = [slug for slug, layout in laid.items() if not isinstance(layout, Layout)]
    assert len(told_why) <= 1, f"the example is laid into too few units, not {told_why}"
