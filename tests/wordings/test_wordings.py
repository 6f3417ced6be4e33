"""The rules that read sentences know their faults, over wordings by people who had not read them.

A rule of grade error stops a unit from being published, so it is nearly never wrong.
"""

from __future__ import annotations

import pytest

from build_tools.rules.catalogue import rule_named
from tests.wordings.lists import HERE, Wordings, all_wordings, faults_of_shape
from tests.wordings.measure import by_rule, together

EVERY_LIST = all_wordings()
RECALL, PRECISION = 0.85, 0.95
"""Over all rules."""
OF_A_RULE = 0.85
"""Recall and precision of each rule."""
OF_AN_ERROR = 0.98
"""Precision of a rule of grade error."""


def test_each_list_has_texts_of_both_kinds() -> None:
    for wordings in EVERY_LIST:
        assert len(set(wordings.faulty)) >= 6, wordings.name
        assert len(set(wordings.sound)) >= 6, wordings.name
        assert not set(wordings.faulty) & set(wordings.sound), wordings.name


def test_the_first_writer_wrote_ten_of_each_for_a_rule() -> None:
    first = all_wordings(HERE)
    for rule in {one.rule.name for one in first}:
        lists = [one for one in first if one.rule.name == rule]
        assert len({(one.name, text) for one in lists for text in one.faulty}) >= 10, rule
        assert len({(one.name, text) for one in lists for text in one.sound}) >= 10, rule


@pytest.mark.parametrize("wordings", EVERY_LIST, ids=lambda w: w.name)
def test_texts_fit_the_schemas_in_their_setting(wordings: Wordings) -> None:
    for text in (*wordings.faulty, *wordings.sound):
        assert list(faults_of_shape(wordings, text)) == []


def test_rules_know_what_is_said_to_them() -> None:
    measures = by_rule()
    weak = {
        name: (one.precision, one.recall, *one.missed, *one.alarms)
        for name, one in measures.items()
        if one.recall < OF_A_RULE or one.precision < _least_precision(name)
    }
    assert not weak
    every = together(measures.values())
    assert every.recall >= RECALL
    assert every.precision >= PRECISION


def _least_precision(name: str) -> float:
    rule = rule_named(name)
    assert rule is not None
    return OF_AN_ERROR if rule.grade == "error" else OF_A_RULE
