"""Words round the steps: what was looked for, and what a teacher short of time leaves out."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from build_tools.model.lesson import Question
from build_tools.views.lesson.lesson_wording import (
    into_in_words,
    looked_for_last_time,
    question_said,
    trouble_in_words,
)
from build_tools.views.words.punctuation import small, stopped
from tests.support.sound_bank import real_unit, whole_bank

LESSON = real_unit().lessons[0]
TALK = LESSON.look_and_talk


@pytest.mark.parametrize(
    ("looking_for", "said"),
    [
        ("still feet", "Last time you looked for still feet."),
        ("A push from the feet.", "Last time you looked for a push from the feet."),
        ("Newton's push", "Last time you looked for this: Newton's push."),
        ("Landings as soft as wool.", "Last time you looked for this: Landings as soft as wool."),
        ("Is the clump still? (2 counts)", "Last time you looked: Is the clump still? (2 counts)."),
        ("who grows, one by one?", "Last time you looked: Who grows, one by one?"),
    ],
)
def test_what_was_looked_for_reads_as_one_sentence(looking_for: str, said: str) -> None:
    assert TALK is not None
    assert looked_for_last_time(replace(TALK, looking_for=looking_for)) == said


def test_a_mark_at_the_end_is_not_doubled() -> None:
    assert stopped("clump!") == "clump!"
    assert stopped("clump") == "clump."
    assert small("A push") == "a push"
    assert small("") == ""


def test_leaving_out_exploring_is_the_step_that_explores() -> None:
    """It is not told to be shortened after it was left out."""
    steps = tuple(replace(one, can_wait=False) for one in LESSON.steps)
    explores = [n for n, one in enumerate(steps, start=1) if one.phase == "explore"]
    assert explores
    trouble = {**LESSON.trouble, "short_of_time": "Leave out exploring."}
    lesson = replace(LESSON, steps=steps, trouble=trouble)
    (said,) = (text for _, text in trouble_in_words(lesson) if "Leave out exploring" in text)
    assert re.search(rf"step {explores[0]}, \d+ minutes? of the plan", said)
    assert f"off step {explores[0]}" not in said


def test_steps_that_are_over_are_shortened_beforehand_or_not_at_all() -> None:
    """A teacher who saw in step 7 that time was short read of five steps that were over."""
    unit = next(one for one in whole_bank().units if one.slug == "magnets")
    steps = tuple(replace(one, can_wait=False) for one in unit.lessons[0].steps)
    lesson = replace(unit.lessons[0], steps=steps)
    late = replace(lesson, trouble={"short_of_time": "Rehearse it once."})
    ((_, said),) = trouble_in_words(late)
    assert "If you know beforehand that time is short, take" in said
    early = replace(lesson, trouble={"short_of_time": "Leave out step 2."})
    ((_, said),) = trouble_in_words(early)
    assert "If you run short after that, take" in said


def test_what_is_for_the_teacher_is_not_said_to_pupils() -> None:
    assert into_in_words("Face your partner.") == "“Face your partner.”"
    assert into_in_words("Face the nearest person. One over makes a three.") == (
        "“Face the nearest person.” One over makes a three."
    )
    assert into_in_words("One with two. A pair left over joins a four.") == (
        "“One with two.” A pair left over joins a four."
    )
    assert into_in_words("One left makes a three.") == "“One left makes a three.”"


def test_the_lesson_before_is_last_time_to_who_is_asked() -> None:
    question = Question("What is stiller than in lesson 1?", ("feet",), 1)
    second, third = (replace(LESSON, number=number) for number in (2, 3))
    assert question_said(question, second) == "What is stiller than last time?"
    assert question_said(question, third) == "What is stiller than in lesson 1?"
