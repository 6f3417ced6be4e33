"""The examples of a rule's manual are told apart in the published units, word for word."""

from __future__ import annotations

import re

import pytest

from build_tools.rules.catalogue import all_rules, rule_named
from tests.manuals.examples import fields_of
from tests.manuals.laying import PLACES, UNITS, Layout, layouts, new_findings, written

LAID = sorted(name for name, said in written().items() if not isinstance(said, str))
NOT_LAID = 2
"""So many rules, or fewer, have examples that no unit can have laid in, each with the reason."""


def test_every_rule_has_places_or_a_reason_in_its_familys_file() -> None:
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


def test_few_examples_are_laid_into_no_unit() -> None:
    assert len(written()) - len(LAID) <= NOT_LAID


@pytest.mark.parametrize("name", LAID)
def test_the_bad_example_is_found_in_each_unit_and_the_good_one_is_not(name: str) -> None:
    rule = rule_named(name)
    assert rule is not None
    known = {*fields_of(rule, "bad"), *fields_of(rule, "good")}
    for slug, layout in layouts(name).items():
        if isinstance(layout, str):
            continue
        assert set(layout.where) == known, f"{name}: the manual and places/ name other fields"
        assert new_findings(rule, slug, "bad", layout), f"{name}: Bad is not found in {slug}"
        assert new_findings(rule, slug, "good", layout) == [], f"{name}: Good, in {slug}"


@pytest.mark.parametrize("name", LAID)
def test_an_example_is_laid_into_two_units_of_three(name: str) -> None:
    laid = layouts(name)
    assert set(laid) == set(UNITS)
    assert sum(isinstance(layout, Layout) for layout in laid.values()) >= 2
