"""What there is to choose stands in the step in which it is done.

A teacher of a trial read "choose your puddle shape" on the lesson, and the shapes stood elsewhere.
"""

from __future__ import annotations

from build_tools.views.words.choices_said import chosen_in_step
from tests.support.sound_bank import whole_bank


def test_every_option_is_told_in_the_step_that_settles_it() -> None:
    seen = 0
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            for step in lesson.steps:
                told = chosen_in_step(unit.dance, step)
                assert len(told) == len(step.settles)
                for name, line in zip(step.settles, told, strict=True):
                    choice = unit.dance.choices[name]
                    options = [option.casefold().rstrip(".") for option in choice.options]
                    assert all(option in line.casefold() for option in options)
                    assert "If they have not decided: " in line
                    seen += 1
    assert seen
