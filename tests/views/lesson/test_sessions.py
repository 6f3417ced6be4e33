"""How few minutes a lesson needs, the same here as where the page fits it."""

from __future__ import annotations

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.lesson.sessions import (
    LessonNeeds,
    each_of_two,
    least,
    lesson_needs,
    sessions,
)
from build_tools.views.lesson.step_facts import StepFacts, step_facts
from tests.sums.lessons import Lesson, lessons
from tests.support.page_script import ask
from tests.support.sound_bank import every_unit


def facts(lesson: Lesson) -> list[StepFacts]:
    return [
        StepFacts(
            number=step["number"],
            minutes=step["minutes"],
            least=step["least"],
            phase=step["phase"],
            grouping=step["grouping"],
            sits=step["sits"],
            showing=None,
            can_wait=False,
            travels=False,
            parts=(),
        )
        for step in lesson
    ]


def for_page(steps: tuple[StepFacts, ...]) -> list[dict[str, Any]]:
    return [
        {
            "number": one.number,
            "minutes": one.minutes,
            "least": one.least,
            "phase": one.phase,
            "grouping": one.grouping,
            "sits": one.sits,
        }
        for one in steps
    ]


@given(lessons())
def test_the_page_fits_a_lesson_from_the_same_minutes_on(lesson: Lesson) -> None:
    at_once = least(facts(lesson))
    assert ask("sums.shareMinutes", lesson, at_once) is not None
    assert ask("sums.shareMinutes", lesson, at_once - 1) is None
    assert (each_of_two(facts(lesson)) or 0) == ask("sums.sittings", lesson, 1)["least"]


def test_so_it_does_for_every_lesson_of_every_unit() -> None:
    for unit in every_unit():
        for lesson, needs in zip(unit.lessons, lesson_needs(unit), strict=True):
            steps = for_page(step_facts(unit, lesson))
            assert ask("sums.shareMinutes", steps, needs.at_once) is not None
            assert ask("sums.shareMinutes", steps, needs.at_once - 1) is None
            assert ask("sums.sittings", steps, 1)["least"] == (needs.each_of_two or 0)


@given(
    st.lists(st.tuples(st.integers(20, 60), st.one_of(st.none(), st.integers(10, 20))), min_size=1),
    st.integers(5, 70),
)
def test_sessions_never_grow_with_the_minutes(
    pairs: list[tuple[int, int | None]], minutes: int
) -> None:
    needs = [LessonNeeds(45, at_once, of_two) for at_once, of_two in pairs]
    now, more = sessions(needs, minutes), sessions(needs, minutes + 1)
    if now is not None:
        assert more is not None
        assert len(needs) <= more <= now <= 2 * len(needs)
    script = {"lessons": [[at_once, of_two or 0] for at_once, of_two in pairs]}
    assert ask("finding.sessions", script, minutes) == now
