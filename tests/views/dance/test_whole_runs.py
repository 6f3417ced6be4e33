"""Runs of the whole dance, counted. Common practice, no source."""

from __future__ import annotations

from dataclasses import replace

from build_tools.model.unit import Unit
from build_tools.views.dance.when_made import StepPlace
from build_tools.views.dance.whole_runs import step_of_showing, whole_runs
from tests.support.sound_bank import real_unit


def test_the_rock_pool_is_run_in_its_last_two_lessons_and_then_shown() -> None:
    unit = real_unit()
    assert step_of_showing(unit) == StepPlace(6, 3)
    assert [(str(run.place), run.times) for run in whole_runs(unit) if run.named] == [
        ("lesson 5, step 6", 1),
        ("lesson 5, step 8", 2),
        ("lesson 6, step 3", 2),
        ("lesson 6, step 4", 1),
    ]


def test_every_letter_in_one_step_is_a_run_that_is_not_named() -> None:
    unit: Unit = real_unit()
    chain = replace(unit, dance=replace(unit.dance, form=tuple("ABCD")))
    places = [str(run.place) for run in whole_runs(chain) if not run.named]
    assert places == ["lesson 5, step 2"]


def test_each_letter_once_is_no_run_of_a_dance_in_which_one_comes_back() -> None:
    unit = real_unit()
    back = replace(unit, dance=replace(unit.dance, form=tuple("ABCDA")))
    assert all(run.named for run in whole_runs(back))
    assert all(run.named for run in whole_runs(unit))


def test_a_whole_shown_only_earlier_is_not_the_showing() -> None:
    unit = real_unit()
    assert step_of_showing(replace(unit, lessons=unit.lessons[:5])) is None
    assert step_of_showing(replace(unit, lessons=())) is None


def test_in_a_dance_of_one_section_its_letter_is_the_whole() -> None:
    unit: Unit = real_unit()
    alone = replace(unit, dance=replace(unit.dance, form=("A",)), lessons=unit.lessons[:1])
    assert step_of_showing(alone) == StepPlace(1, 6)
    assert [str(run.place) for run in whole_runs(alone)] == ["lesson 1, step 6", "lesson 1, step 7"]
