"""The examples of a rule's manual are told apart in the published units, word for word.

A manual whose examples tell of a whole unit, or name motifs that no published unit has, is not laid
in: faults of its kind are planted in the same units by `tests/planted`.
"""

from __future__ import annotations

import pytest

from build_tools.rules.catalogue import rule_named
from tests.manuals.laying import UNITS, edits, fields_of, fires, places

LAID = sorted(places())
FEWEST = 105
"""So many rules, or more, have examples that are laid in."""


@pytest.mark.parametrize("name", LAID)
def test_the_bad_example_is_found_in_each_unit_and_the_good_one_is_not(name: str) -> None:
    rule = rule_named(name)
    assert rule is not None
    for slug, where in places()[name].items():
        if isinstance(where, str):
            continue
        known = {*fields_of(rule, "bad"), *fields_of(rule, "good")}
        assert set(where) == known, f"{name}: the manual and places.yml name other fields"
        assert fires(rule, slug, edits(rule, "bad", where)), f"{name}: Bad is not found in {slug}"
        assert fires(rule, slug, edits(rule, "good", where)) is False, f"{name}: Good, in {slug}"


@pytest.mark.parametrize("name", LAID)
def test_an_example_is_laid_into_two_units_of_three(name: str) -> None:
    laid = places()[name]
    assert set(laid) == set(UNITS)
    assert sum(isinstance(where, str) for where in laid.values()) <= 1


def test_most_manuals_with_words_of_a_unit_are_laid_in() -> None:
    assert len(LAID) >= FEWEST
