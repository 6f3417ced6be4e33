"""Steps that go over what was made before are in the grouping in which it was made."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from build_tools.model.lesson import Lesson, LookAndTalk, Step
from build_tools.source.said_once.steps_in_full import AS_MADE, LOOKING, who_looks


def with_groupings(lessons: Sequence[Lesson]) -> tuple[Lesson, ...]:
    """The lessons of a unit, in order, each step with a grouping of its own."""
    made: dict[str, str] = {}
    return tuple(_with_groupings(one, made) for one in lessons)


def _with_groupings(lesson: Lesson, made: dict[str, str]) -> Lesson:
    steps = tuple(_steps(lesson.steps, made))
    if steps == lesson.steps:
        return lesson
    looks = next((n for n, step in enumerate(steps) if step.phase in LOOKING), None)
    talk = lesson.look_and_talk
    if talk and looks is not None and lesson.steps[looks].grouping == AS_MADE:
        talk = _with_lookers(talk, steps[looks].grouping)
    return replace(lesson, steps=steps, look_and_talk=talk)


def _with_lookers(talk: LookAndTalk, grouping: str) -> LookAndTalk:
    """Who looks follows from the grouping too, where it followed from what was not known yet."""
    return replace(talk, who=who_looks(grouping)) if talk.who == who_looks(AS_MADE) else talk


def _steps(steps: Iterable[Step], made: dict[str, str]) -> Iterable[Step]:
    """The steps of one lesson; `made` has the grouping of each part that was made before them."""
    before = "alone"
    for step in steps:
        grouping = _made_in(step, made) or before if step.grouping == AS_MADE else step.grouping
        for name in (*step.makes, *step.develops):
            made.setdefault(name, grouping)
        before = grouping
        yield step if grouping == step.grouping else replace(step, grouping=grouping)


def _made_in(step: Step, made: Mapping[str, str]) -> str | None:
    """The grouping of the first part that a step dances, shows or joins."""
    parts = (*step.dances, *step.shows, *step.joins)
    return next((made[name] for name in parts if name in made), None)
