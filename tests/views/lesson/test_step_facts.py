"""What a page tells its scripts of each step."""

from __future__ import annotations

import pytest

from build_tools.checking.check_bank import check_folder
from build_tools.model.bank import Bank
from build_tools.views.lesson.fit import fit
from build_tools.views.lesson.showing import showing
from build_tools.views.lesson.step_facts import regrouped, step_facts
from tests.support.built_sites import CONTENT


@pytest.fixture(scope="module")
def bank() -> Bank:
    found = check_folder(CONTENT).bank
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("before", "grouping", "regroups"),
    [
        (None, "pairs", False),
        ("pairs", "pairs", False),
        ("pairs", "fours", True),
        ("alone", "fours", True),
        ("whole class", "half class", True),
        ("pairs", "alone", False),
        ("fours", "whole class", False),
    ],
)
def test_who_has_others_to_find(before: str | None, grouping: str, regroups: bool) -> None:
    assert regrouped(before, grouping) is regroups


def test_every_lesson_as_planned_is_its_own_fit(bank: Bank) -> None:
    for unit in bank.units:
        for lesson in unit.lessons:
            facts = step_facts(unit, lesson)
            assert [one.number for one in facts] == list(range(1, len(lesson.steps) + 1))
            assert fit(facts, lesson.minutes) == tuple(step.minutes for step in lesson.steps)


def test_what_is_shown_lasts_what_the_rules_count(bank: Bank) -> None:
    shown = 0
    for unit in bank.units:
        for lesson in unit.lessons:
            for step, facts in zip(lesson.steps, step_facts(unit, lesson), strict=True):
                counted = showing(unit.dance, step)
                assert facts.shows == (None if counted is None else float(counted.run))
                shown += counted is not None
    assert shown >= 3


def test_what_can_wait_is_what_the_author_says_to_leave(bank: Bank) -> None:
    for unit in bank.units:
        for lesson in unit.lessons:
            waits = [facts.phase for facts in step_facts(unit, lesson) if facts.can_wait]
            line = lesson.trouble["short_of_time"]
            expected = ["explore"] if "eave out exploring" in line else []
            expected += ["join"] if "Leave the join" in line else []
            assert waits == expected, (unit.slug, lesson.number, line)
