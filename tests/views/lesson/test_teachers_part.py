"""What a step tells its teacher of the beat, of who starts when and of the signs."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS
from build_tools.movement.whole import lengths, transition_between
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.lesson.teachers_part import (
    Told,
    pace_in_words,
    starts_in_words,
    teachers_parts,
)
from tests.support.sound_bank import real_unit, whole_bank


def unit_named(slug: str) -> Unit:
    return next(unit for unit in whole_bank().units if unit.slug == slug)


def told_of(unit: Unit, lesson: int, step: int, *, in_full: bool = False) -> dict[str, str]:
    found = teachers_parts(unit, unit.lessons[lesson - 1], in_full=in_full)
    return {one.label: one.words for one in found[step - 1]}


def test_the_chain_starts_where_a_teacher_counted_it_by_hand() -> None:
    """By hand, from a teacher's reading: north on 1, 3, 5, 7; south 4 on 17, 3 on 19 and so on."""
    assert starts_in_words(unit_named("magnets").dance, "C") == (
        "Number 1 on 1, 2 on 3, 3 on 5 and 4 on 7; number 4 on 17, 3 on 19, 2 on 21 and 1 on 23."
    )


def test_in_a_strict_canon_each_starts_so_many_counts_after_the_one_before() -> None:
    """Ontario Arts Curriculum 2010: the same phrase, each part starting after the one before."""
    seen = 0
    for unit in whole_bank().units:
        for letter, section in unit.dance.sections.items():
            told = starts_in_words(unit.dance, letter)
            if not told or any(one.fit not in (*CANONS, "unison") for one in section.danced):
                continue
            begin = Fraction(0)
            for span in parts_over_counts(unit.dance, section).passages:
                passage = span.passage
                if passage.fit == "canon" and passage.after:
                    for n in range(passage.parts or 0):
                        assert f" on {begin + n * passage.after + 1}" in told
                        seen += 1
                begin = span.end
    assert seen > 8


def test_a_question_and_each_answer_have_their_own_start() -> None:
    unit = unit_named("rock-pool")
    section = unit.dance.sections["C"]
    asked = next(one for one in section.danced if one.fit == "question and answer")
    long = lengths(unit.dance)[asked.what[0]]
    told = starts_in_words(unit.dance, "C")
    assert told.startswith(f"Ones on 1, twos on {long + 1}, twos again on {2 * long + 1}")


def test_nobody_is_told_to_start_where_all_dance_at_once() -> None:
    unit = unit_named("magnets")
    assert starts_in_words(unit.dance, "A") == ""
    assert "Starts" not in told_of(unit, 1, 4)


def test_the_sign_of_each_join_stands_in_the_step_that_practises_it() -> None:
    found = 0
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            for step, told in zip(
                lesson.steps, teachers_parts(unit, lesson, in_full=True), strict=True
            ):
                words = " ".join(one.words for one in told if one.label.startswith("Sign"))
                if len(step.joins) != 2:
                    continue
                join = transition_between(unit.dance, *step.joins)
                if join is not None:
                    assert join.cue.rstrip(".") in words
                    found += 1
    assert found > 5


def test_a_silence_inside_joined_sections_is_told_beside_the_taps() -> None:
    told = told_of(unit_named("magnets"), 3, 3)
    assert told["Beat"].endswith(
        "Tap on 1 to 36. No sound from 37 to 40. Tap softly on 41 to 72, "
        "louder on 46, 54, 62 and 70."
    )
    assert "four fingers" in told["Sign"]


def test_a_run_of_parts_that_sound_unlike_is_not_told_as_one_beat() -> None:
    # B is rolls and strokes, the join a silence, C a shaker
    assert told_of(unit_named("marble-run"), 4, 4)["Beat"] == "132 counts."
    in_order = told_of(unit_named("seeds-on-the-move"), 3, 2)["Beat"]
    assert "No sound from 17 to 20. The class says the words from 21 to 52." in in_order


def test_music_is_not_played_where_the_step_says_it_goes_without() -> None:
    unit = unit_named("gathering-peascods")
    lesson = unit.lessons[0]
    counted = replace(lesson.steps[2], you="Count aloud.")
    silent = replace(counted, you="Count slowly, with no music.")
    told = [
        {one.label: one.words for one in teachers_parts(unit, made, in_full=True)[2]}["Beat"]
        for made in (
            replace(lesson, steps=(*lesson.steps[:2], step, *lesson.steps[3:]))
            for step in (counted, silent)
        )
    ]
    assert "Play the music." in told[0]
    assert "music" not in told[1]


def test_what_is_rung_is_rung_and_what_is_shaken_is_shaken() -> None:
    sound = told_of(unit_named("through-the-gap"), 2, 4)["Sound"]
    assert "Ring the bell for about 8 seconds." in sound
    assert "Shake the shaker" in told_of(unit_named("marble-run"), 4, 2)["Sound"]


def test_what_nobody_counts_is_told_with_its_sounds_and_its_end() -> None:
    unit = unit_named("seeds-on-the-move")
    sound = told_of(unit, 1, 5)["Sound"]
    section = unit.dance.sections["D"]
    assert f"{section.heard[0].seconds} seconds" in sound
    assert sound.endswith(f"Ends on: {section.ends_on}")


def test_a_long_line_is_told_once_on_a_page_and_in_every_step_of_the_card() -> None:
    unit = unit_named("starlings")
    again = told_of(unit, 1, 5)
    assert again == {"Sound": "As in step 4."}
    assert told_of(unit, 1, 5, in_full=True) == told_of(unit, 1, 4)


@pytest.mark.parametrize(
    ("tempo", "said"),
    [
        (120, "twice a second"),
        (60, "once a second"),
        (108, "a little slower than twice a second"),
        (64, "a little faster than once a second"),
        (75, "75 a minute (Counts for the hall plays it)"),
        (100, "100 a minute (Counts for the hall plays it)"),
        (240, "240 a minute (Counts for the hall plays it)"),
        (None, ""),
    ],
)
def test_the_pace_is_one_that_a_clock_shows_or_the_page_plays(tempo: int | None, said: str) -> None:
    """Beside an easy number of taps a second; else by its number."""
    assert pace_in_words(tempo) == said


def test_only_the_first_counted_step_tells_the_pace_and_none_where_there_is_no_beat() -> None:
    unit = real_unit()
    lesson = unit.lessons[1]
    beats = [
        one.words
        for told in teachers_parts(unit, lesson, in_full=True)
        for one in told
        if one.label == "Beat"
    ]
    # 32 counts at 108 a minute are 17.8 seconds
    first = "32 counts, about 18 seconds. Tap each, a little slower than twice a second."
    assert beats[0] == first
    assert [one.partition(".")[0] for one in beats[1:]] == ["8 counts", "32 counts", "32 counts"]
    still = replace(unit, dance=replace(unit.dance, tempo=None))
    told: list[Told] = [one for step in teachers_parts(still, lesson, in_full=True) for one in step]
    assert all("second" not in one.words for one in told if one.label == "Beat")
