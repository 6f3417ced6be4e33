"""How long a showing takes: the sums by hand, for a class of 30 (common practice, no source)."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.sentences.words_about_dance import groups_at_a_time
from build_tools.views.lesson.showing import (
    CHANGE_OVER_SECONDS,
    TALK_SECONDS,
    Showing,
    longest_seconds,
    showing,
)
from tests.rules.contents import base


@pytest.fixture(scope="module")
def boats() -> Unit:
    """A dance of 24, 32 and 24 counts with 16 between at 100 a minute, and 20 to 30 seconds."""
    return base().units()[0]


def step_with(unit: Unit, **fields: object) -> Step:
    show = next(s for s in unit.lessons[-1].steps if s.phase == "show")
    return replace(show, **fields)  # type: ignore[arg-type]


def shown(unit: Unit, step: Step, after: Step | None = None, pupils: int = 30) -> Showing | None:
    """How `step` is shown by itself, with `after` following it where there is one."""
    lesson: Lesson = replace(unit.lessons[-1], steps=(step, after) if after else (step,))
    return showing(replace(unit, lessons=(lesson,)), lesson, 0, pupils)


def test_counts_the_whole_by_its_most(boats: Unit) -> None:
    assert longest_seconds(boats.dance, ("whole",)) == Fraction(96 * 60, 100) + 30


def test_adds_the_parts_that_are_named(boats: Unit) -> None:
    parts = longest_seconds(boats.dance, ("A", "C", "drift-slow"))
    assert parts == Fraction((24 + 12) * 60, 100) + 30


def test_has_no_length_without_a_tempo(boats: Unit) -> None:
    dance = replace(boats.dance, tempo=None)
    assert longest_seconds(dance, ("A",)) is None
    assert shown(replace(boats, dance=dance), step_with(boats)) is None
    assert longest_seconds(dance, ("C",)) == 30


def test_a_step_that_shows_nothing_is_no_showing(boats: Unit) -> None:
    assert shown(boats, step_with(boats, shows=())) is None


def test_halves_take_two_runs_and_talk_in_the_next_step(boats: Unit) -> None:
    talk = step_with(boats, phase="look and talk", shows=())
    found = shown(boats, step_with(boats), talk)
    assert found is not None
    assert (found.runs, found.talk) == (2, 0)
    # 57.6 seconds and 30, rounded up
    assert found.seconds == 2 * (88 + CHANGE_OVER_SECONDS)


def test_groups_in_turn_take_a_run_each(boats: Unit) -> None:
    step = step_with(boats, grouping="fours", task="Show one four at a time.", shows=("A",))
    found = shown(boats, step)
    assert found is not None
    assert (found.groups, found.runs, found.talk) == (8, 8, TALK_SECONDS)
    # 14.4 seconds, rounded up
    assert found.seconds == 8 * (15 + 15) + 60
    assert found.in_halves().seconds == 2 * (15 + 15) + 60


def test_half_a_minute_is_let_pass(boats: Unit) -> None:
    found = shown(boats, step_with(boats, shows=("A",)))
    assert found is not None
    assert [replace(found, talk=talk).needs for talk in (29, 30, 31)] == [1, 1, 2]
    assert replace(found, run=0, talk=0, runs=1).needs == 1


@pytest.mark.parametrize(
    "into", ["I touch two fours at a time: you belong together.", "I name three pairs at a time."]
)
def test_how_many_are_told_off_at_a_time_is_not_how_many_show(boats: Unit, into: str) -> None:
    """A teacher read seven showings of two pairs where half the class shows at once."""
    found = shown(boats, step_with(boats, grouping="fours", into=into, shows=("A",)))
    assert found is not None
    assert (found.at_once, found.runs) == (None, 2)


@pytest.mark.parametrize(
    ("pupils", "task", "runs"),
    [
        (27, "Two fours at a time.", 4),
        (28, "Two fours at a time.", 4),
        (12, "Each four dances alone.", 3),
    ],
)
def test_fits_the_runs_to_the_class(boats: Unit, pupils: int, task: str, runs: int) -> None:
    found = shown(boats, step_with(boats, grouping="fours", task=task), None, pupils)
    assert found is not None
    assert found.runs == runs


@pytest.mark.parametrize(
    ("text", "at_once"),
    [
        ("Show one group at a time.", 1),
        ("Three pairs at a time, please.", 3),
        ("Group by group.", 1),
        ("Each pair shows it to the class.", 1),
        ("Half dance while half watch. Swap.", None),
        ("Dance for the next four, then swap.", None),
        ("One after another, in canon.", None),
    ],
)
def test_reads_how_many_show_at_once(text: str, at_once: int | None) -> None:
    assert groups_at_a_time(text) == at_once
