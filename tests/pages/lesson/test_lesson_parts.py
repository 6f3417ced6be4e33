"""What a lesson page says of where pupils come from and of what it covers."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.pages.lesson.lesson import LessonView, lesson_page
from build_tools.pages.lesson.lesson_covers import covers
from build_tools.pages.lesson.lesson_steps import StepView
from build_tools.pages.lesson.lesson_story import story_of
from build_tools.pages.moves.moves import motif_views
from build_tools.pages.pieces.trouble import trouble_lines
from build_tools.views.dance.coverage import HEADINGS, met
from build_tools.views.dance.journey import journeys
from build_tools.views.dance.left_open import OPEN, drawn_actions
from build_tools.views.diagrams.strip import strip_title
from build_tools.views.lesson.groups_told import left_over_in_words, watching_in_words
from tests.support.sound_bank import real_bank, real_unit, unit_named


def view_of(unit: Unit, lesson: Lesson) -> LessonView:
    view = lesson_page(real_bank(), unit, lesson).context
    assert isinstance(view, LessonView)
    return view


def steps_of(unit: Unit, lesson: Lesson) -> tuple[StepView, ...]:
    return view_of(unit, lesson).steps


def is_motif(unit: Unit, name: str) -> bool:
    return name in unit.dance.motifs or name in unit.dance.developments


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


def test_a_first_lesson_tells_no_way_that_a_motif_has_come() -> None:
    """A teacher read "Kite is made and changed today" under "The story so far" in lesson 1."""
    for unit in real_bank().units:
        story = story_of(unit, unit.lessons[0])
        assert story is None or not story.journeys


def test_the_journey_of_what_today_changes_names_every_lesson_of_it() -> None:
    unit = real_unit()
    told = {lesson.number: story_of(unit, lesson) for lesson in unit.lessons}
    lines = [(number, line) for number, story in told.items() if story for line in story.journeys]
    assert lines
    for number, line in lines:
        (journey,) = (
            j for j in journeys(unit) if line.lower().startswith(f"the phrase “{j.motif.lower()}”")
        )
        assert line.count("today") == 1
        made = [stop.lesson for stop in journey.stops if "made" in stop.deeds]
        for stop in journey.stops:
            if stop.lesson > number or (stop.lesson in made and stop.lesson != number):
                assert str(stop.lesson) in line


@pytest.mark.parametrize(
    ("slug", "number", "told"),
    [
        ("road-builders", 3, "The phrase “road” was made in lesson 1; today its heave and ram "
         "are danced alone as well. It comes again in lessons 4 and 5."),
        ("magnets", 3, "The phrase “pull” was made in lesson 1; today its swing is danced alone "
         "as well. It comes again in lessons 4 and 5."),
        ("road-builders", 4, "The phrase “road” was made in lesson 1 and is changed today. It "
         "comes again in lesson 5."),
    ],
)  # fmt: skip
def test_a_piece_taken_out_of_a_motif_is_no_change_of_it(slug: str, number: int, told: str) -> None:
    """An adviser read "Road is changed today" where its moves are only danced by themselves."""
    unit = unit_named(slug)
    story = story_of(unit, unit.lessons[number - 1])
    assert story
    assert told in story.journeys
    (when,) = (one.when for one in motif_views(unit) if f"“{one.name}”" in told)
    changed = re.search(r"changed in lessons? ([\d, and]+)", when)
    assert changed
    assert (str(number) in changed[1]) == ("changed" in told)


def test_short_of_time_names_what_to_leave_out_and_what_to_shorten_later() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "rock-pool")
    said = {line.label: line.words for line in trouble_lines(unit.lessons[1])}
    assert said["You are short of time"] == (
        "Leave out exploring. That is step 3, 5 minutes of the plan. If you run short after that, "
        "take 3 minutes off step 4, 2 off step 5, 2 off step 6 and 1 off step 7."
    )


_OFF = "2 off step 6 and 1 off step 7"


@pytest.mark.parametrize(
    ("line", "saved", "later"),
    [
        ("Leave out step 3.", "That is 5", f"3 minutes off step 4, 2 off step 5, {_OFF}"),
        ("Leave out steps 3 and 5.", "That is 11", f"3 minutes off step 4, {_OFF}"),
        ("Leave out step 5.", "That is steps 3 and 5, 11", f"3 minutes off step 4, {_OFF}"),
        (
            "Do not leave out step 5.",
            "That is step 3, 5",
            f"3 minutes off step 4, 2 off step 5, {_OFF}",
        ),
        ("In step 4, try it once.", "That is step 3, 5", f"2 minutes off step 5, {_OFF}"),
    ],
)
def test_a_step_left_out_by_its_number_is_not_shortened_as_well(
    line: str, saved: str, later: str
) -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "rock-pool")
    lesson = unit.lessons[1]
    short = replace(lesson, trouble={**lesson.trouble, "short_of_time": line})
    assert {one.label: one.words for one in trouble_lines(short)}["You are short of time"] == (
        f"{line} {saved} minutes of the plan. If you run short after that, take {later}."
    )


def test_each_part_tells_its_sound_after_what_is_danced() -> None:
    told = joins = rules = 0
    for unit in real_bank().units:
        for lesson in unit.lessons:
            for step in steps_of(unit, lesson):
                for part in (*step.help.parts, *step.help.parts_again):
                    letter = re.split("[:,]", part.heading.removeprefix("Part "))[0]
                    if letter not in unit.dance.sections:
                        # how a join goes, the rules of what is made up, and how it ends
                        joins += 1
                        continue
                    section = unit.dance.sections[letter]
                    if section.kind == "improvised" and part.lines[0] != part.lines[-1]:
                        # the sound is left out where the step's own words have it
                        sounds = [
                            n for n, one in enumerate(part.lines) if one.startswith("Sound: ")
                        ]
                        assert sounds in ([], [len(part.lines) - 1])
                        rules += 1
                        continue
                    assert section.sound.what in part.lines[-1]
                    assert part.lines[-1].startswith("Sound: ")
                    assert len(part.lines) == len(section.danced) + 1
                    told += 1
    assert told > 10
    assert joins
    assert rules


def test_every_motif_that_a_step_makes_for_the_dance_is_drawn_in_it() -> None:
    for unit in real_bank().units:
        danced = {n for s in unit.dance.sections.values() for p in s.danced for n in p.what}
        mirrors = {n for n, d in unit.dance.developments.items() if d.device == "mirror"}
        for lesson in unit.lessons:
            for shown, step in zip(steps_of(unit, lesson), lesson.steps, strict=True):
                made = {n for n in (*step.makes, *step.develops) if n in danced - mirrors}
                titles = [strip.title for strip in shown.strips]
                assert all(any(strip_title(n) == one for one in titles) for n in made), step.does


def test_each_word_of_a_move_that_is_made_is_explained_in_its_step_or_before_it() -> None:
    for unit in real_bank().units:
        for lesson in unit.lessons:
            known: set[str] = set()
            for shown, step in zip(steps_of(unit, lesson), lesson.steps, strict=True):
                known |= {move.word.casefold() for move in (*shown.help.moves, *shown.help.again)}
                assert all(move.means.endswith(".") for move in shown.help.moves)
                for name in (*step.makes, *step.develops):
                    for action in drawn_actions(unit.dance, name) if is_motif(unit, name) else ():
                        assert action.kind == OPEN or (action.word or "").casefold() in known


def test_the_authors_notes_on_a_move_stand_in_its_step_and_not_at_the_foot() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "rock-pool")
    view = view_of(unit, unit.lessons[1])
    (made,) = [step for step in view.steps if step.number == 5]
    assert made.help.moves[0].means == "Open, turn a little way round for two, and back for two."
    assert made.help.moves[0].feel == "Lightly, smoothly."
    (canon,) = [step for step in view.steps if "Canon means taking turns" in step.help.notes]
    assert canon.does == "Dance it one after another"
    assert "turn a little way round" not in view.notes
    assert "Canon means" not in view.notes


def test_every_step_that_travels_turns_or_has_partners_tells_a_seated_way() -> None:
    for unit in real_bank().units:
        for lesson in unit.lessons:
            near: list[str] = []
            for shown, step in zip(steps_of(unit, lesson), lesson.steps, strict=True):
                names = [n for n in (*step.makes, *step.develops) if is_motif(unit, n)]
                kinds = {k for n in names for a in actions_of(unit.dance, n) for k in a.kinds}
                if kinds & {"travel", "turn", "jump"}:
                    assert shown.help.seated is not None, (unit.slug, lesson.number, step.does)
                near += shown.help.seated.lines if shown.help.seated else ()
            # what is to be said of others near by is said once a lesson
            said = sum(line.startswith("With others: ") for line in near)
            assert said <= 1, (unit.slug, lesson.number)


def test_steps_in_which_pupils_make_something_tell_how_to_run_the_minutes() -> None:
    """By the software, or by the author, in whose task one thing comes after another."""
    run = 0
    for unit in real_bank().units:
        for lesson in unit.lessons:
            for shown, step in zip(steps_of(unit, lesson), lesson.steps, strict=True):
                if step.phase == "make" and step.minutes >= 3:
                    author = f"{shown.help.notes} {step.task} {step.you}".casefold()
                    assert shown.help.run or {"keep", "then", "times", "twice", "again"} & set(
                        re.findall(r"\w+", author)
                    )
                    run += bool(shown.help.run)
                if step.phase in ("warm-up", "cool-down", "look and talk"):
                    assert shown.help.run == ()
    assert run > 5


def test_who_is_left_over_is_told_where_groups_are_first_made_and_who_watches_whom() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "seeds-on-the-move")
    # the lesson's own words tell what a three does, and are not said again
    steps = steps_of(unit, unit.lessons[2])
    assert [step.help.left_over for step in steps if step.help.left_over] == []
    silent = replace(
        unit.lessons[2],
        notes="",
        change={},
        steps=tuple(
            replace(one, into=None, say=None, you=None, task="Dance.")
            for one in unit.lessons[2].steps
        ),
    )
    quiet = replace(unit, notes="")
    told = [left_over_in_words(quiet, silent, n) for n in range(len(silent.steps))]
    assert [one for one in told if one] == [
        "If one pupil is left, make a three: the third pupil dances with the ones."
    ]
    assert [step.help.watching for step in steps if step.help.watching] == []
    (watching,) = filter(None, (watching_in_words(silent, one) for one in silent.steps))
    assert watching.startswith("Two pairs sit together")


def test_what_to_get_leads_to_where_it_is_printed_or_heard() -> None:
    unit = next(unit for unit in real_bank().units if unit.slug == "rock-pool")
    found = {one.words: one.href for one in view_of(unit, unit.lessons[0]).collect}
    page = "to-print.html"
    assert found == {
        "A drum": "counts.html",
        "Both drawings and the poem": f"{page}#lesson-1-at-pictures",
        "Word cards: rock, rush, break, sink": f"{page}#lesson-1-at-cards",
        "Wall signs: sea, beach": f"{page}#lesson-1-at-signs",
    }


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
