"""Rule, page and browser say the same of lessons that nobody has written."""

from __future__ import annotations

import pytest
from playwright.sync_api import Browser

from build_tools.views.lesson import showing
from build_tools.views.paper import paper_size
from tests.agreement.disagreements import (
    LESSONS,
    LESSONS_THOROUGH,
    PRINTED,
    PRINTED_THOROUGH,
    Counts,
    compare_sides,
    compare_sums,
)
from tests.agreement.made_lessons import made

AT_ONCE = 300


def test_rule_and_page_say_the_same_of_minutes_showing_groups_and_space(thorough: bool) -> None:
    counts = Counts()
    many = LESSONS_THOROUGH if thorough else LESSONS
    for start in range(0, many, AT_ONCE):
        compare_sums(range(start, start + AT_ONCE), counts)
    assert counts.differing() == []
    for count in (counts.minutes, counts.talk, counts.showing, counts.groups):
        assert count.compared >= many
    assert counts.space.compared >= many // 4


def test_rule_and_browser_say_the_same_of_sides(thorough: bool, browser: Browser) -> None:
    counts = Counts()
    many = PRINTED_THOROUGH if thorough else PRINTED
    compare_sides(range(many), browser, counts)
    assert counts.differing() == []
    assert counts.sides.compared == many


def test_another_tolerance_in_the_rule_is_noticed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(showing, "LET_PASS_SECONDS", 0)
    counts = Counts()
    compare_sums(range(100), counts)
    assert counts.showing.differing
    assert counts.minutes.differing == counts.groups.differing == []


def test_a_rule_that_takes_words_to_be_narrower_is_noticed(
    monkeypatch: pytest.MonkeyPatch, browser: Browser
) -> None:
    monkeypatch.setattr(paper_size, "STRETCHES", (0.6,))
    counts = Counts()
    compare_sides(range(6), browser, counts)
    assert counts.sides.differing


def test_made_lessons_are_the_same_each_time_and_of_every_kind() -> None:
    lessons = [made(number) for number in range(150)]
    again = made(7)
    assert (again.lesson, again.unit.space) == (lessons[7].lesson, lessons[7].unit.space)
    assert len({one.unit.slug for one in lessons}) >= 8
    steps = {len(one.lesson.steps) for one in lessons}
    assert steps == set(range(3, 11))
    missing = {*paper_size.SETTINGS, paper_size.MORE_SIDES}
    for one in lessons:
        # most are of the largest size, and each is laid out line by line
        missing -= {paper_size.on_paper(one.unit, one.lesson).size} if missing else set()
    assert missing == set()
    adding_up = [
        sum(step.minutes for step in one.lesson.steps) == one.lesson.minutes for one in lessons
    ]
    assert 50 < sum(adding_up) < 145
