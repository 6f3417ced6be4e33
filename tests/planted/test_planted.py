"""Faults planted in sound units by code: the right rule reports each at the line it was put on.

A changed copy of a sound unit is the mutant of mutation testing (DeMillo, Lipton and Sayward 1978,
"Hints on test data selection"; from memory): the rules are the test, and a copy they pass is one
that survives.
"""

from __future__ import annotations

import os
from itertools import islice

import pytest

from build_tools.rules.catalogue import all_rules
from tests.planted.planting import Outcome, faults_of, outcomes, sound_units
from tests.support.banks import THOROUGH

FEWEST = 3
"""Sound units, each of another pattern, in which a fault against a rule is found."""
MOST = None if os.environ.get(THOROUGH) else FEWEST
"""In so many units each fault is planted in the usual run, and in all that it fits in the long."""


def tried(rule: str) -> tuple[Outcome, ...]:
    return tuple(outcome for fault in faults_of(rule) for outcome in islice(outcomes(fault), MOST))


@pytest.mark.parametrize("rule", sorted(rule.name for rule in all_rules()))
def test_the_right_rule_reports_at_the_right_line_in_three_or_more_units(rule: str) -> None:
    planted = tried(rule)
    for outcome in planted:
        assert outcome.misshapen == (), outcome.key
        where = f"{outcome.key}: planted at {outcome.file}:{outcome.line}"
        assert outcome.found, (where, sorted(outcome.reported))
    found = {outcome.slug for outcome in planted if outcome.found}
    assert len(found) >= FEWEST, f"{rule}: plant a fault in tests/planted/faults_*.py"


def test_a_unit_written_out_and_read_back_is_the_same_unit() -> None:
    for unit in sound_units():
        own, lessons = unit.written()
        assert {d.file: d.data for d in (own, *lessons)} == unit.data
        assert {d.file: d.body for d in (own, *lessons)} == unit.bodies
