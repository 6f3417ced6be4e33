"""What a step says to who sits or uses a wheelchair: the author's own words, and where they stand.

No wheelchair rolls backwards without a look behind, and room is left on each side of it: common
practice, no source. A manual wheelchair is about 0.7 metre wide and turns in a circle of 1.5
(ISO 7176-5; BS 8300-2, from memory), which two steps of a child hold beside it.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

import pytest

from build_tools.model.unit import Unit
from build_tools.views.lesson.as_in_steps import as_in_steps, ways_of_other_steps
from build_tools.views.lesson.checks_before import ROOM_BESIDE_CHAIRS, checks_before
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.room_beside_chairs import tells_room_beside_chairs
from build_tools.views.lesson.sitting_or_wheels import (
    AGREE_WITH_OTHERS,
    SeatedWays,
    all_seated_ways,
)
from build_tools.views.written.jumps import jump_in
from tests.support.sound_bank import real_unit, whole_bank
from tests.views.lesson.test_moves_in_steps import with_notes


def published(slug: str) -> Unit:
    return next(unit for unit in whole_bank().units if unit.slug == slug)


@cache
def ways_of(slug: str, number: int) -> tuple[SeatedWays, ...]:
    return ways_in(published(slug), number)


def ways_in(unit: Unit, number: int) -> tuple[SeatedWays, ...]:
    lesson = unit.lessons[number - 1]
    return all_seated_ways(unit, lesson.steps, todays_moves(unit, lesson).steps)


def test_what_the_author_says_of_a_chair_and_wheels_is_said() -> None:
    notes = "- **Rush**: Run low. Seated: Feet patter. On wheels: Push, then roll.\n"
    unit = with_notes(real_unit(), 1, notes)
    lesson = unit.lessons[0]
    moves = todays_moves(unit, lesson).steps
    ways = all_seated_ways(unit, lesson.steps, moves)
    rush = [one for way in ways for one in way.moves if one.word == "rush"]
    assert rush
    said = {(one.chair, one.wheels) for one in rush}
    assert said == {("Feet patter", "Push, then roll")}, "the page sets the full stop"
    assert all("Seated:" not in (one.means or "") for step in moves for one in step.danced)


@pytest.mark.parametrize(
    "notes",
    [
        "- **Storm**: Go. Seated: Rock from the hips. On wheels: Roll a little.\n",
        "- **Part D**: Seated: Rock from the hips. On wheels: Roll a little.\n",
        "In the storm, go. Seated: Rock from the hips. On wheels: Roll a little.\n",
        "Seated: Rock from the hips, all through the storm. On wheels: Roll a little.\n",
    ],
)
def test_a_part_that_is_made_up_has_the_ways_its_author_wrote(notes: str) -> None:
    """The storm of the rock pool has no moves of its own; in bold or in a paragraph it is named."""
    unit = with_notes(published("rock-pool"), 4, notes)
    lesson = unit.lessons[3]
    step = next(n for n, one in enumerate(lesson.steps) if "D" in one.makes)
    told = ways_in(unit, 4)[step].moves
    assert any(one.chair.startswith("Rock from the hips") for one in told)
    assert any(one.wheels == "Roll a little" for one in told)


@pytest.mark.parametrize("word", ["Storm", "Nothing of the sort", "Rush"])
def test_no_way_that_an_author_wrote_is_lost(word: str) -> None:
    """Whatever the line is about, each of its words is in a step or at the foot of the notes."""
    line = f"- **{word}**: Say it. Seated: Hum from the chair. On wheels: Ring from the wheels.\n"
    unit = with_notes(published("rock-pool"), 4, line)
    lesson = unit.lessons[3]
    moves = todays_moves(unit, lesson)
    ways = all_seated_ways(unit, lesson.steps, moves.steps)
    told = [moves.notes, *(f"{m.chair} {m.wheels}" for way in ways for m in way.moves)]
    told += [one.means or "" for step in moves.steps for one in (*step.made, *step.danced)]
    for words in ("Say it", "Hum from the chair", "Ring from the wheels"):
        assert any(words in text for text in told), words


def test_a_way_that_goes_the_other_way_is_told_again() -> None:
    unit = with_notes(real_unit(), 1, "")
    lesson = unit.lessons[0]
    ways = all_seated_ways(unit, lesson.steps, todays_moves(unit, lesson).steps)
    said = " ".join(one.chair for way in ways for one in way.moves if one.word == "rush")
    assert "left" in said
    assert "right" in said


def test_a_chair_is_not_asked_to_turn_quicker_than_it_can() -> None:
    for unit in whole_bank().units:
        if not unit.dance.tempo:
            continue
        for lesson in unit.lessons:
            steps = todays_moves(unit, lesson).steps
            seconds = {
                (one.word, float(one.action.counts) * 60 / unit.dance.tempo)
                for step in steps
                for one in step.danced
                if one.action is not None and one.wheels is None
            }
            quickest = {word: min(s for w, s in seconds if w == word) for word, _ in seconds}
            for way in all_seated_ways(unit, lesson.steps, steps):
                for one in way.moves:
                    if "turn to the" in one.wheels.casefold() and one.word in quickest:
                        assert max(s for w, s in seconds if w == one.word) >= 3, (unit.slug, one)


def call_and_answer(call: str) -> tuple[Unit, str]:
    """The unit whose lesson 1 makes a call and then answers it with another feel, all through."""
    unit = with_notes(published("rope-bridge"), 1, call)
    made = unit.dance.developments
    answers = {**made, "answer": replace(made["answer"], only=())}
    return replace(unit, dance=replace(unit.dance, developments=answers)), "haul"


def test_a_new_feel_keeps_the_authors_way_with_its_glance() -> None:
    notes = (
        "- **Haul**: small steps back. Seated: lean back, slowly, hand over hand. "
        "On wheels: a glance, then one slow roll back to your mark.\n"
    )
    unit, word = call_and_answer(notes)
    wheels = [one.wheels for way in ways_in(unit, 1) for one in way.moves if one.word == word]
    assert wheels == ["A glance, then one slow roll back to your mark"]
    steps = todays_moves(unit, unit.lessons[0]).steps
    means = {one.means for step in steps for one in step.danced if one.word == word}
    assert means == {"Small steps back."}, "slow is said of wheels alone"


def test_a_speed_in_the_words_for_standing_is_not_said_of_another_feel() -> None:
    unit, word = call_and_answer("- **Haul**: quick, small steps back.\n")
    steps = todays_moves(unit, unit.lessons[0]).steps
    means = {one.motif: one.means for step in steps for one in step.danced if one.word == word}
    assert means == {"call": "Quick, small steps back.", "answer": None}


def test_every_step_that_told_a_way_is_named() -> None:
    assert as_in_steps([(None, 4)]) == "As in step 4."
    assert as_in_steps([(None, 4), (None, 2), (None, 3), (None, 4)]) == "As in steps 2, 3 and 4."
    assert as_in_steps([(None, 2)], more=True) == "As in step 2; and:"
    assert as_in_steps([(None, 4), ("A'", 3)]) == "As in step 4; in A', as in step 3."
    assert as_in_steps([(None, 4), ("A'", 4)]) == "As in step 4."
    assert as_in_steps([("A'", 3)], more=True) == "In A', as in step 3; elsewhere:"


def test_a_step_leads_to_the_steps_that_hold_the_words_of_each_of_its_moves() -> None:
    led = 0
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            moves = todays_moves(unit, lesson).steps
            told: dict[int, set[str]] = {}
            ways = all_seated_ways(unit, lesson.steps, moves)
            for number, (step, way) in enumerate(zip(moves, ways, strict=True), start=1):
                if ways_of_other_steps(step.ways):
                    told[number] = set()
                    continue
                told[number] = {re.sub(r" in (?:[A-Z]'?|“.+”)$", "", one.word) for one in way.moves}
                named = [
                    int(n)
                    for line in way.lines
                    if "s in step" in line
                    for n in re.findall(r"\d+", line)
                ]
                held = told[number].union(*(told[n] for n in named))
                wanted = {m.word for m in step.danced if m.seated or m.wheels}
                assert wanted <= held, (unit.slug, lesson.number, number)
                led += bool(wanted and named)
    assert led > 20


def test_a_run_tells_the_ways_of_the_changed_return_as_well() -> None:
    run = {one.word: one.wheels for one in ways_of("leaving", 6)[2].moves}
    made = {one.word: one.wheels for one in ways_of("leaving", 5)[2].moves}
    assert run["sling in “the hook”"] == made["sling"] != run["sling in A"]
    assert any("in “the hook”, as in step 3" in line for line in ways_of("leaving", 5)[4].lines)


def test_nobody_is_asked_to_wheel_backwards_without_a_look() -> None:
    bare = with_notes(published("rope-bridge"), 1, "")
    told = [one.wheels for way in ways_in(bare, 1) for one in way.moves if "back" in one.wheels]
    assert told == ["Wheel backwards, after a look behind"]


@pytest.mark.parametrize(
    ("said", "tells"),
    [
        ("On wheels, leave two steps round.", True),
        ("Give a wheelchair a step more behind.", True),
        ("A line with a wheelchair in it leaves one step more on each side.", True),
        ("On wheels, one push does for two steps.", False),
        ("The chair stands one step outside the ring.", False),
        ("Leave two steps between rows. On wheels, push once.", False),
    ],
)
def test_the_bank_says_no_room_where_the_unit_does(said: str, tells: bool) -> None:
    silent = replace(
        real_unit(),
        notes=said,
        lessons=tuple(replace(one, notes="", change={}, safety=()) for one in real_unit().lessons),
    )
    assert tells_room_beside_chairs(silent) == tells
    told = [ROOM_BESIDE_CHAIRS in checks_before(silent, one) for one in silent.lessons]
    assert any(told) is not tells


@pytest.mark.parametrize(("number", "step"), [(2, 6), (3, 6), (4, 6)])
def test_who_shows_a_part_has_the_ways_of_who_made_it(number: int, step: int) -> None:
    """Who opened lesson 4 alone did not learn of the room that a chair has in part C."""
    found = ways_of("leaving", number)[step - 1]
    assert found.any
    assert any(line.startswith("As in step") for line in found.lines)


def test_what_a_four_varies_has_the_ways_of_the_theme() -> None:
    """A chair was led to step 1, which has no look behind, where step 2 has the slide back."""
    unit = published("magnets")
    (number,) = (n for n, one in enumerate(unit.lessons[3].steps) if "our-own" in one.develops)
    assert any(line.startswith("As in step 2") for line in ways_of("magnets", 4)[number].lines)


def test_a_word_that_is_danced_in_two_ways_says_in_which_motif() -> None:
    """Which swing is meant: a needle's, or the shiver of the chain?"""
    told = [one.word for ways in ways_of("magnets", 5) for one in ways.moves]
    assert "swing in C" in told
    assert len(told) == len(set(told))


def test_nobody_is_told_of_jumps_where_there_are_none() -> None:
    """Two advisers asked which jump is meant."""
    for unit in whole_bank().units:
        steps = [one for lesson in unit.lessons for one in lesson.steps]
        jumps = any(jump_in(unit.dance, one) for one in steps)
        for lesson in unit.lessons:
            lines = [line for ways in ways_in(unit, lesson.number) for line in ways.lines]
            assert jumps or not any("jump" in line for line in lines)
    assert not jump_in(published("leaving").dance, published("leaving").lessons[0].steps[0])


@pytest.mark.parametrize(
    ("slug", "number"), [("magnets", 1), ("marble-run", 2), ("marble-run", 3), ("leaving", 5)]
)
def test_who_meet_nobody_have_nothing_to_agree(slug: str, number: int) -> None:
    bare = with_notes(published(slug), number, "")
    assert all(AGREE_WITH_OTHERS not in way.lines for way in ways_in(bare, number))


def test_partners_who_come_near_agree_unless_the_author_settles_it() -> None:
    bare = with_notes(published("rope-bridge"), 3, "")
    agreed = [n for n, way in enumerate(ways_in(bare, 3), 1) if AGREE_WITH_OTHERS in way.lines]
    assert agreed == [2], "where both edge to the brink; said once"
    assert all(AGREE_WITH_OTHERS not in way.lines for way in ways_of("rope-bridge", 3))


def test_a_way_of_the_changed_return_waits_for_the_lesson_that_makes_it() -> None:
    made_in = 5
    for number in range(1, 7):
        wheels = [one.wheels for way in ways_of("leaving", number) for one in way.moves]
        if number < made_in:
            assert not [said for said in wheels if "A'" in said], number
    assert any("In A' it turns to the gate" in one.wheels for one in ways_of("leaving", 5)[3].moves)


def test_only_what_a_step_dances_has_a_way_in_it() -> None:
    pops, goes = ways_of("seeds-on-the-move", 3)[3], ways_of("seeds-on-the-move", 3)[4]
    assert [one.word for one in pops.moves] == ["tight", "pop", "settle"]
    assert "go" in [one.word for one in goes.moves]


def test_a_step_that_goes_out_and_back_keeps_the_look_behind() -> None:
    """The software's own ways, in every lesson in which somebody goes back on wheels."""
    seen = 0
    for unit in whole_bank().units:
        plain = with_notes(unit, 1, "")
        for lesson in plain.lessons:
            steps = todays_moves(plain, lesson).steps
            for n, ways in enumerate(all_seated_ways(plain, lesson.steps, steps), start=1):
                back = {
                    one.word.casefold()
                    for one in steps[n - 1].danced
                    if one.action
                    and one.action.direction == "backwards"
                    and one.action.kind == "travel"
                }
                told = {one.word.casefold().split(" in ")[0] for one in ways.moves}
                for word in back & told:
                    its = [m for m in ways.moves if m.word.casefold().split(" in ")[0] == word]
                    earlier = "step" in " ".join(ways.lines)
                    assert any("look behind" in m.wheels for m in its) or earlier, (unit.slug, n)
                    seen += 1
    assert seen


def test_a_chair_is_not_told_to_rise() -> None:
    """To rise from a chair is to stand up, which who sits there may not be able to do."""
    for unit in whole_bank().units:
        plain = with_notes(unit, 1, "")
        for lesson in plain.lessons:
            steps = todays_moves(plain, lesson).steps
            for way in all_seated_ways(plain, lesson.steps, steps):
                assert all(one.chair != "Rise" and one.wheels != "Rise" for one in way.moves)


@pytest.mark.parametrize(
    ("own", "told"),
    [
        ("one gentle push.", "One gentle push, after a look behind"),
        ("one small roll back.", "One small roll back, after a look behind"),
        ("one push, after a look.", "One push, after a look"),
        ("brakes stay on; sit back.", "Brakes stay on; sit back"),
    ],
)
def test_an_own_way_of_a_way_back_has_the_look_behind(own: str, told: str) -> None:
    """Written for the way out as well, it may say no direction."""
    unit = published("rope-bridge")
    bare = with_notes(unit, 1, "")
    number, (step, word) = (
        1,
        next(
            (n, one.word)
            for n, step in enumerate(todays_moves(bare, bare.lessons[0]).steps)
            for one in step.danced
            if one.action and one.action.kind == "travel" and one.action.direction == "backwards"
        ),
    )
    noted = with_notes(unit, number, f"- **{word.capitalize()}**: Go back. On wheels: {own}")
    ways = ways_in(noted, number)[step].moves
    assert [one.wheels for one in ways if one.word.casefold() == word.casefold()] == [told]


def test_who_tries_moves_out_has_their_ways_and_not_those_of_walking() -> None:
    """A teacher read "As in step 1" beside a tug and a flutter, of which step 1 says nothing."""
    lesson = published("through-the-gap").lessons[0]
    step = next(n for n, one in enumerate(lesson.steps) if one.does == "Find low, and find high")
    told = {one.word: one.chair for one in ways_of("through-the-gap", 1)[step].moves}
    assert told["nibble"] == "Lean, and let the hands go down past the knees"
    assert told["look up"].startswith("Sit up tall")


def test_an_authors_line_that_sends_to_other_steps_stands_alone() -> None:
    """A lesson said "As in steps 3, 4 and 7" of a step and its notes "as in steps 3, 5 and 6"."""
    unit = published("through-the-gap")
    notes = "- **Each half**: Seated: as in steps 2 and 4. On wheels: as in steps 2 and 4."
    shows = ways_in(with_notes(unit, 3, notes), 3)[4]
    assert (shows.moves, shows.lines) == ((), ("As in steps 2 and 4.",))


@pytest.mark.parametrize(
    ("slug", "number", "step", "word"),
    [("through-the-gap", 1, 3, "Shape"), ("through-the-gap", 3, 2, "Go to sleep")],
)
def test_a_word_and_its_seated_way_are_no_two_rows_of_one_name(
    slug: str, number: int, step: int, word: str
) -> None:
    """A teacher read "Shape" twice in one step, with two things after it."""
    unit = published(slug)
    lesson = unit.lessons[number - 1]
    told = [one.word for one in todays_moves(unit, lesson).steps[step - 1].made]
    seated = [one.word for one in ways_in(unit, number)[step - 1].moves]
    assert word in told
    assert f"{word}, seated" in seated
    assert not set(told) & set(seated)


def test_a_way_that_says_the_way_home_holds_for_what_comes_back() -> None:
    """An adviser read "Lean to the right" of a way home whose line says to roll back along it."""
    unit = published("kite-and-string")
    out, back = (ways_in(unit, 1)[n] for n in (1, 3))
    (swoop,) = (one for one in out.moves if one.word == "swoop")
    assert "on the way home, look, and roll back" in swoop.wheels
    assert (back.moves, back.lines) == ((), ("As in step 2.",))
    notes = "- **Swoop**: glide to the left. Seated: lean left. On wheels: one short push left."
    silent = ways_in(with_notes(unit, 1, notes), 1)[3]
    assert [one.wheels for one in silent.moves if one.word == "swoop in kite back"] == [
        "Lean to the right and reach that way"
    ]
