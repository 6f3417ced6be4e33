"""The wall's page: only the author's words, the picture, the moves as bodies, the count."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from build_tools.model.unit import Unit
from build_tools.pages.wall.wall import WallLesson, WallView, wall_page
from build_tools.pages.wall.wall_step import danced_in
from tests.support.sound_bank import real_bank

LESSONS = [(unit, lesson) for unit in real_bank().units for lesson in unit.lessons]
NAMES = [f"{unit.slug} {lesson.number}" for unit, lesson in LESSONS]


def on_the_wall(unit: Unit, index: int) -> WallLesson:
    view = wall_page(real_bank(), unit).context
    assert isinstance(view, WallView)
    return view.lessons[index]


def wall(unit_slug: str, number: int) -> WallLesson:
    ((unit, lesson),) = [(u, x) for u, x in LESSONS if (u.slug, x.number) == (unit_slug, number)]
    return on_the_wall(unit, unit.lessons.index(lesson))


@pytest.mark.parametrize("at", range(len(LESSONS)), ids=NAMES)
def test_each_step_has_its_task_and_nothing_more(at: int) -> None:
    unit, lesson = LESSONS[at]
    view = on_the_wall(unit, unit.lessons.index(lesson))
    assert len(view.steps) == len(lesson.steps)
    for shown, step in zip(view.steps, lesson.steps, strict=True):
        assert " ".join(shown.lines) == " ".join(step.task.split())
        assert shown.data.minutes == str(step.minutes)
        assert (shown.count is None) == (step.counts is None)


def test_a_step_that_makes_a_motif_draws_it_and_a_dance_of_a_section_draws_its_motifs() -> None:
    view = wall("rock-pool", 3)
    titles = {step.does: [strip.picture.title for strip in step.strips] for step in view.steps}
    assert titles["Set the crab on eight counts in pairs"] == ["Crab"]
    assert titles["Answer it bigger or smaller"] == ["Crab", "Crab answer"]
    assert titles["Dance the crabs' meeting"] == ["Crab", "Crab answer"]
    assert titles["Scuttle, dodge, snap and hide"] == []
    joining = {step.does: step.strips for step in wall("rock-pool", 4).steps}
    assert joining["Join the tide to the anemones"] == ()


def test_the_count_is_the_steps_own_at_the_dances_tempo() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "rock-pool")
    count = wall("rock-pool", 3).steps[3].count
    assert count is not None
    assert (count.counts, count.words) == ("8", "8 counts")
    assert (count.tempo, count.phrase) == (str(unit.dance.tempo), str(unit.dance.phrase))


def test_a_dance_without_a_tempo_has_no_count() -> None:
    unit, lesson = LESSONS[0]
    silent = replace(unit, dance=replace(unit.dance, tempo=None))
    view = on_the_wall(silent, unit.lessons.index(lesson))
    assert [step.count for step in view.steps] == [None] * len(lesson.steps)


def test_the_whole_dance_draws_no_strip() -> None:
    unit, lesson = LESSONS[0]
    whole = replace(lesson.steps[0], makes=(), develops=(), joins=(), dances=("whole",), shows=())
    assert danced_in(unit.dance, whole) == ()


def test_a_step_of_several_sections_shows_their_order_and_one_of_a_single_section_none() -> None:
    steps = {step.does: step for n in (3, 4) for step in wall("rock-pool", n).steps}
    joined = steps["Join the tide to the anemones"]
    assert [(one.letter, one.idea) for one in joined.order] == [
        ("A", "Tide goes out"),
        ("B", "Anemones"),
    ]
    assert steps["Dance the crabs' meeting"].order == ()
    whole = [step.order for step in wall("rock-pool", 6).steps if step.order]
    assert [[one.letter for one in order] for order in whole] == [["A", "B", "C", "D", "A'"]] * 2


def test_moves_are_marked_only_where_what_is_counted_is_what_is_drawn() -> None:
    steps = {step.does: step for step in wall("rock-pool", 3).steps}
    crab = steps["Set the crab on eight counts in pairs"]
    assert [strip.moves.split()[0] for strip in crab.strips] == ["0-2"]
    last = crab.strips[-1].moves.split()[-1].partition("-")[2]
    assert crab.count is not None
    assert float(crab.count.counts) == float(last)
    lit = 0
    for unit, lesson in LESSONS:
        view = on_the_wall(unit, unit.lessons.index(lesson))
        for step in view.steps:
            if any(strip.moves for strip in step.strips):
                # the strips' moves follow one another and end with the count
                marks = [m.split("-") for strip in step.strips for m in strip.moves.split()]
                assert marks[0][0] == "0"
                assert all(a[1] == b[0] for a, b in pairwise(marks))
                assert step.count is not None
                assert float(marks[-1][1]) == float(step.count.counts)
                lit += 1
            for strip in step.strips:
                spans = strip.moves.split()
                assert not spans or len(spans) == len(strip.picture.words)
                assert strip.picture.svg.count('class="move"') == len(strip.picture.words)
    assert lit > 5


def test_what_the_voice_says_is_what_is_lit() -> None:
    """A step that dances two motifs and draws the one that it makes counts both and lights none."""
    unit, lesson = LESSONS[0]
    step = next(one for one in lesson.steps if one.makes and one.counts)
    both = replace(step, dances=("A",), counts=Fraction(16))
    changed = replace(lesson, steps=(both,))
    view = on_the_wall(replace(unit, lessons=(changed,)), 0)
    assert all(strip.moves == "" for shown in view.steps for strip in shown.strips)


def test_the_first_lesson_begins_with_the_picture_and_a_step_without_drawings_has_it_beside() -> (
    None
):
    first, later = wall("rock-pool", 1), wall("rock-pool", 3)
    assert first.picture is not None
    assert [one.src for one in first.opening] == ["media/low-tide.svg"]
    assert first.picture.src == "media/low-tide.svg"
    assert "rock pool" in first.picture.words
    assert later.opening == ()


def test_no_numbers_stand_beside_moves_that_nobody_counts() -> None:
    """A teacher: with 1 2, 3 4 on the wall the class counts the storm, and it is not counted."""
    storm, before = wall("rock-pool", 4).steps[5], wall("rock-pool", 4).steps[4]
    assert storm.phrase
    assert all(move.word and not move.counts for row in storm.phrase for move in row.moves)
    assert not any(">1<" in one.picture.svg or ">1 " in one.picture.svg for one in storm.strips)
    assert any(move.counts for row in before.phrase for move in row.moves) or before.strips
