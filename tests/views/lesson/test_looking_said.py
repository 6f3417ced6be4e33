"""Who looks at what, where the class shows and talks in one step, and where it talks afterwards.

A teacher read "Half the class looks at the other half" in a step that was talk in pairs, and would
have set up another showing.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.model.lesson import Lesson, Step
from build_tools.views.lesson.looking_said import LOOKED, LOOKERS, looking_said
from tests.support.sound_bank import real_unit

STEP = real_unit().lessons[0].steps[0]
SHOWING = replace(STEP, phase="show", shows=("A",))
TALKING = replace(STEP, phase="look and talk", shows=())
BOTH = replace(STEP, phase="look and talk", shows=("A",))
SHOWN = "Half the class looks at the other half. They look at the tide."
TALKED = "Half the class watched the other half. They talk about the tide."


def said(lesson: Lesson, who: str) -> str:
    assert lesson.look_and_talk is not None
    return looking_said(lesson, replace(lesson.look_and_talk, who=who, at="the tide"))


@pytest.mark.parametrize(
    ("steps", "told"),
    [
        ((STEP, SHOWING, TALKING), TALKED),
        ((STEP, SHOWING, STEP, TALKING), TALKED),
        ((STEP, BOTH), SHOWN),
        ((STEP, TALKING), SHOWN),
        ((STEP, TALKING, SHOWING), SHOWN),
        ((STEP, SHOWING, TALKING, BOTH), SHOWN),
    ],
)
def test_a_step_that_only_talks_after_the_showing_says_so(
    steps: tuple[Step, ...], told: str
) -> None:
    assert said(replace(real_unit().lessons[0], steps=steps), "half the class") == told


def test_everyone_who_may_look_can_be_told_after_it() -> None:
    """But for those who look back at their own dance, which nobody watched."""
    lesson = replace(real_unit().lessons[0], steps=(SHOWING, TALKING))
    assert set(LOOKERS) - set(LOOKED) == {"yourself"}
    for who, words in LOOKED.items():
        assert said(lesson, who) == f"{words}. They talk about the tide."
    assert said(lesson, "yourself").endswith("They look at the tide.")
