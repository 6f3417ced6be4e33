"""What a lesson page says of where pupils come from and of what it covers."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.pages.lesson.lesson import lesson_page
from build_tools.pages.lesson.lesson_covers import covers
from build_tools.pages.lesson.lesson_moves import moves_view
from build_tools.pages.lesson.lesson_steps import step_views
from build_tools.pages.lesson.lesson_story import story_of
from build_tools.pages.pieces.trouble import trouble_lines
from build_tools.views.dance.coverage import HEADINGS, met
from build_tools.views.dance.journey import journeys
from build_tools.views.lesson.lesson_wording import pace_in_words
from tests.support.sound_bank import real_bank, real_unit


def test_each_lesson_tells_both_starts_that_the_one_before_left() -> None:
    for unit in real_bank().units:
        for before, lesson in zip(unit.lessons, unit.lessons[1:], strict=False):
            assert before.look_and_talk is not None
            left = before.look_and_talk.next
            assert left is not None
            story = story_of(unit, lesson)
            assert story is not None
            assert story.last_time is not None
            assert story.last_time.lesson == str(before.number)
            assert before.look_and_talk.looking_for in story.last_time.looked_for
            assert left.seen[1:] in story.last_time.seen
            assert left.not_yet[1:] in story.last_time.not_yet
            assert story.never_did == f"Never did lesson {before.number}? Start here:"


def test_a_first_lesson_has_no_last_time() -> None:
    story = story_of(real_unit(), real_unit().lessons[0])
    assert story is None or story.last_time is None


def test_the_journey_of_what_today_changes_names_every_lesson_of_it() -> None:
    unit = real_unit()
    told = {lesson.number: story_of(unit, lesson) for lesson in unit.lessons}
    lines = [(number, line) for number, story in told.items() if story for line in story.journeys]
    assert lines
    for number, line in lines:
        (journey,) = (j for j in journeys(unit) if line.lower().startswith(j.motif.lower()))
        assert line.count("today") == 1
        for stop in journey.stops:
            assert stop.lesson == number or str(stop.lesson) in line


def test_short_of_time_names_what_to_leave_out_and_what_to_shorten_later() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "rock-pool")
    said = {line.label: line.words for line in trouble_lines(unit.lessons[1])}
    assert said["You are short of time"] == (
        "Leave out exploring. That is step 3: it saves 5 minutes. Later, shorten step 4 by 3, "
        "step 5 by 2, step 6 by 2 and step 7 by 1."
    )


@pytest.mark.parametrize(
    ("tempo", "said"),
    [(120, ", 20 in ten seconds"), (108, ", 18 in ten seconds"), (100, ", 17 in ten seconds")],
)
def test_the_pace_of_the_counts_can_be_timed_by_a_clock(tempo: int, said: str) -> None:
    """A sixth of a minute is ten seconds, so a sixth of the beats; to the nearest beat."""
    assert pace_in_words(tempo) == said


def test_only_the_first_counted_step_tells_the_pace_and_none_where_there_is_no_beat() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "rock-pool")
    counts = [step.counts for step in step_views(unit, unit.lessons[1], ()) if step.counts]
    assert counts == ["32, 18 in ten seconds", "8", "32", "32"]
    still = replace(unit, dance=replace(unit.dance, tempo=None))
    assert all("seconds" not in (s.counts or "") for s in step_views(still, unit.lessons[1], ()))


def test_each_part_tells_its_sound_after_what_is_danced() -> None:
    for unit in real_bank().units:
        for lesson in unit.lessons:
            for row in moves_view(unit, lesson, 4).parts:
                letter = row.label.removeprefix("Part ").partition(":")[0]
                section = unit.dance.sections[letter]
                assert row.lines[-1] == f"Sound: {section.sound.what}"
                assert len(row.lines) == len(section.danced) + 1


def test_a_lesson_covers_what_its_own_steps_do() -> None:
    for unit in real_bank().units:
        found = set[str]()
        for lesson in unit.lessons:
            alone = met(replace(unit, lessons=(lesson,)))
            said = {row.label.lower(): row.words for row in covers(unit, lesson).movement}
            for heading, words in HEADINGS.items():
                listed = set(said.get(heading, "").replace(" and ", ", ").split(", "))
                known = {part for word in words if word in alone for part in word.split(" and ")}
                assert listed - {""} == known
            found |= alone
        assert found == met(unit)


def test_curriculum_credits_and_tried_come_with_every_lesson() -> None:
    for unit in real_bank().units:
        view = covers(unit, unit.lessons[0])
        assert len(view.curriculum) == len(unit.curriculum)
        assert any(unit.edition in line for line in view.credits)
        assert "taught" in view.tried


def test_a_page_belongs_to_its_own_lesson() -> None:
    unit = real_unit()
    page = lesson_page(real_bank(), unit, unit.lessons[2])
    assert page.path == f"units/{unit.slug}/lesson-3.html"
