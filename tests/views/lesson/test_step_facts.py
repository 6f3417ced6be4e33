"""What a page tells its scripts of each step."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from build_tools.model.bank import Bank
from build_tools.model.unit import SchoolYears
from build_tools.views.lesson.longest_talk import is_sat_through, longest_talk
from build_tools.views.lesson.showing import showing
from build_tools.views.lesson.step_facts import step_facts
from tests.support.banks import LOOKED_AT
from tests.support.sound_bank import unit_named, whole_bank


@pytest.fixture(scope="module")
def bank() -> Bank:
    return whole_bank()


def test_every_step_is_told_by_its_number_and_its_minutes(bank: Bank) -> None:
    for unit in bank.units:
        for lesson in unit.lessons:
            facts = step_facts(unit, lesson)
            assert [one.number for one in facts] == list(range(1, len(lesson.steps) + 1))
            told = [(one.minutes, one.least, one.grouping) for one in facts]
            assert told == [(step.minutes, step.least, step.grouping) for step in lesson.steps]


def test_what_is_shown_lasts_what_the_rules_count(bank: Bank) -> None:
    shown = 0
    for unit in bank.units:
        for lesson in unit.lessons:
            for index, facts in enumerate(step_facts(unit, lesson)):
                assert facts.showing == showing(unit, lesson, index)
                shown += facts.showing is not None
    assert shown >= 3


def test_what_is_sat_through_has_the_limit_of_the_rule(bank: Bank) -> None:
    sat = 0
    for unit in bank.units:
        for lesson in unit.lessons:
            for step, facts in zip(lesson.steps, step_facts(unit, lesson), strict=True):
                most = longest_talk(unit, lesson)
                assert facts.sits == (most if is_sat_through(step) else None)
                sat += facts.sits is not None
    assert sat >= 3


@pytest.mark.parametrize(
    ("year", "place", "most"), [("2", 0, 4), ("2", -1, 6), ("3", 0, 6), ("3", -1, 9)]
)
def test_how_long_an_age_can_sit(bank: Bank, year: str, place: int, most: int) -> None:
    """About four minutes up to age 7, six from then on, half as many more in the last lesson."""
    unit = replace(bank.units[0], years=(SchoolYears("England", (year,)),))
    assert longest_talk(unit, unit.lessons[place]) == most


def test_what_can_wait_is_what_the_author_says_to_leave(bank: Bank) -> None:
    """Of units whose authors say it by the phase's name or the step's; others say what is done."""
    by_phase = [unit for unit in bank.units if unit.slug in LOOKED_AT]
    assert len(by_phase) == len(LOOKED_AT)
    for unit in by_phase:
        for lesson in unit.lessons:
            waits = [facts.phase for facts in step_facts(unit, lesson) if facts.can_wait]
            line = lesson.trouble["short_of_time"]
            named = [one.phase for one in lesson.steps if f"eave out “{one.does}”" in line]
            expected = ["explore"] if "eave out exploring" in line else named
            expected += (
                ["rehearse"] if re.search("eave out (rehearsing|the long stretches)", line) else []
            )
            assert waits == expected, (unit.slug, lesson.number, line)


def test_steps_danced_alone_on_the_spots_of_pairs_say_so() -> None:
    """Not the walk before they are sent there, nor the cool-down on any spot."""
    unit = unit_named("kite-and-string")
    assert [one.number for one in step_facts(unit, unit.lessons[0]) if one.stands == "pairs"] == [
        2, 3, 4,
    ]  # fmt: skip
