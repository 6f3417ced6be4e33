"""Lessons of any shape, for the laws of fitting."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import strategies as st

from build_tools.views.lesson.step_facts import StepFacts, regrouped
from tests.vectors.make_vectors import GROUPINGS

PHASES = ("recall", "explore", "make", "develop", "join", "rehearse", "show", "look and talk")


@st.composite
def steps(draw: st.DrawFn, phase: st.SearchStrategy[str]) -> StepFacts:
    minutes = draw(st.integers(1, 15))
    return StepFacts(
        number=1,
        minutes=minutes,
        least=draw(st.integers(1, minutes)),
        phase=draw(phase),
        grouping=draw(st.sampled_from(GROUPINGS)),
        regroups=False,
        shows=None,
        can_wait=draw(st.booleans()),
    )


@st.composite
def lessons(draw: st.DrawFn) -> tuple[StepFacts, ...]:
    """A warm-up, up to eight steps of other kinds, and a cool-down."""
    found = [
        draw(steps(st.just("warm-up"))),
        *draw(st.lists(steps(st.sampled_from(PHASES)), max_size=8)),
        draw(steps(st.just("cool-down"))),
    ]
    befores = (None, *(step.grouping for step in found[:-1]))
    return tuple(
        replace(step, number=number, regroups=regrouped(before, step.grouping))
        for number, (before, step) in enumerate(zip(befores, found, strict=True), start=1)
    )


def planned(lesson: tuple[StepFacts, ...]) -> int:
    """Its planned minutes."""
    return sum(step.minutes for step in lesson)
