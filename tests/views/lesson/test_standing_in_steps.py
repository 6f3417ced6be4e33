"""In which steps the floor is shown."""

from __future__ import annotations

from build_tools.model.unit import Unit
from build_tools.views.lesson.standing_in_steps import (
    MOST_KNOWN,
    MOST_PLANS,
    plans_of,
    stands_anew,
)
from tests.support.sound_bank import every_unit, whole_bank


def unit_named(slug: str) -> Unit:
    return next(unit for unit in whole_bank().units if unit.slug == slug)


def test_the_floor_is_shown_in_the_step_that_first_stands_so() -> None:
    """As a teacher asked for it: lesson 1 step 4 for the fours, lesson 3 for the files."""
    unit = unit_named("magnets")
    assert stands_anew(unit, unit.lessons[0])[3] == ("A",)
    assert stands_anew(unit, unit.lessons[2])[4] == ("C",)


def test_no_floor_is_shown_twice_in_a_lesson_and_never_too_many() -> None:
    shown = 0
    for unit in every_unit():
        for lesson in unit.lessons:
            letters = [one for step in stands_anew(unit, lesson) for one in step]
            starts = [unit.dance.sections[letter].start for letter in letters]
            floors = {(s.formation, s.within, s.apart, s.groups_apart, s.columns) for s in starts}
            sizes = {
                g.size if (g := unit.dance.sections[letter].groups) else 1 for letter in letters
            }
            assert len(letters) <= MOST_KNOWN
            assert len(plans_of(unit, lesson)) <= MOST_PLANS
            assert len(floors) * len(sizes) >= len(letters)
            assert all(s.apart is not None and s.formation != "scattered" for s in starts)
            shown += len(letters)
    assert shown > 10


def test_no_warm_up_or_cool_down_shows_a_floor() -> None:
    for unit in every_unit():
        for lesson in unit.lessons:
            for step, letters in zip(lesson.steps, stands_anew(unit, lesson), strict=True):
                assert not letters or step.phase not in ("warm-up", "cool-down")


def test_paper_names_the_step_of_each_plan() -> None:
    unit = unit_named("magnets")
    titles = [one.title for one in plans_of(unit, unit.lessons[2])]
    # the push of step 2 is only danced again
    assert titles == ["Step 5. Where they stand: C: chain"]


def test_a_lesson_that_dances_known_parts_shows_the_floor_where_it_begins() -> None:
    """A teacher stood in step 2 with "stand in your ring" and the plans of two later parts."""
    unit = unit_named("magnets")
    shown = stands_anew(unit, unit.lessons[4])
    assert shown[1] == ("D",)
    assert [letter for letters in shown for letter in letters] == ["D", "A", "C"]
    assert [one.letter for one in plans_of(unit, unit.lessons[4])] == ["D", "A"]


def test_how_pairs_stand_waits_for_the_step_that_has_pairs() -> None:
    """A teacher read "three steps from your partner" in a lesson of pupils each alone."""
    unit = next(unit for unit in whole_bank().units if unit.slug == "seeds-on-the-move")
    assert not any(stands_anew(unit, unit.lessons[0]))
    assert any(stands_anew(unit, unit.lessons[1]))
