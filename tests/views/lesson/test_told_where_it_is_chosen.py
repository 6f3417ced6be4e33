"""What there is to choose, and who says which words, stand in the step in which it is done.

A teacher of a trial read "choose your puddle shape" on the lesson, and the shapes stood elsewhere.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from build_tools.model.dance import Heard
from build_tools.views.lesson.words_on_beats import words_on_beats
from build_tools.views.words.choices_said import chosen_in_step
from tests.support.sound_bank import real_unit, whole_bank


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


def spoken(by: str | None, *says: tuple[str, ...]) -> tuple[str, ...]:
    """What the steps of the first lesson tell of a part A whose beat has these words on it."""
    unit = real_unit()
    pieces = tuple(Heard("beat", counts=Fraction(8), by=by, says=one) for one in says)
    letter = next(x for x in unit.dance.form if unit.dance.sections[x].counts is not None)
    section = replace(unit.dance.sections[letter], heard=pieces)
    dance = replace(unit.dance, sections={**unit.dance.sections, letter: section})
    lessons = tuple(
        replace(one, steps=(replace(one.steps[0], makes=(letter,)), one.steps[1], one.steps[1]))
        for one in unit.lessons[:1]
    )
    changed = replace(unit, dance=dance, lessons=lessons)
    first, *others = words_on_beats(changed, changed.lessons[0])
    assert not any(others), "told once"
    return first


def test_who_says_the_words_is_told_with_them() -> None:
    (teacher,) = spoken(None, ("rise", "two"), ("fall", "-"), ("rise", "two"))
    assert teacher.endswith(": say on the beats “rise two”, “fall”.")
    (everyone,) = spoken("class", ("rise", "-", "fall"))
    assert everyone.endswith(": the class says on the beats “rise – fall”.")


def test_counting_aloud_is_no_words() -> None:
    assert spoken("teacher", ("one", "two", "three")) == ()
