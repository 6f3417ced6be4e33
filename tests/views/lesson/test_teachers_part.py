"""What a step tells its teacher of the beat, of who starts when and of the signs."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

from build_tools.model.dance import Dance, Heard
from build_tools.model.unit import Unit
from build_tools.movement.sounding import laid
from build_tools.movement.whole import transition_between
from build_tools.views.lesson.one_thing_at_a_time import one_thing_at_a_time
from build_tools.views.lesson.teachers_part import Told, teachers_parts
from build_tools.views.words.marked_words import with_words
from tests.support.sound_bank import real_unit, whole_bank

_NO_COUNTS = re.compile(r"[\d to]+(?:minutes?|seconds?)|\d+ a minute")
"""Seconds, minutes and the pace, which are no counts."""


def unit_named(slug: str) -> Unit:
    return next(unit for unit in whole_bank().units if unit.slug == slug)


def told_of(unit: Unit, lesson: int, step: int, *, in_full: bool = False) -> dict[str, str]:
    found = teachers_parts(unit, unit.lessons[lesson - 1], in_full=in_full)
    return {one.label: one.on_paper(said=True) for one in found[step - 1]}


def without_says(dance: Dance) -> Dance:
    """The dance with a beat on which nobody says anything."""
    sections = {
        letter: replace(one, heard=tuple(replace(piece, says=()) for piece in one.heard))
        for letter, one in dance.sections.items()
    }
    return replace(dance, sections=sections)


def test_nobody_is_told_to_start_where_all_dance_at_once() -> None:
    assert "Starts" not in told_of(unit_named("magnets"), 1, 4)


def test_the_sign_of_each_join_stands_in_the_step_that_practises_it() -> None:
    found = 0
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            for step, told in zip(
                lesson.steps, teachers_parts(unit, lesson, in_full=True), strict=True
            ):
                words = " ".join(one.words for one in told)
                if len(step.joins) != 2:
                    continue
                join = transition_between(unit.dance, *step.joins)
                if join is not None:
                    assert join.cue.rstrip(".") in words
                    found += 1
    assert found > 5


def test_a_run_of_parts_has_a_row_for_each_with_its_signs() -> None:
    """A teacher: "This one line is what I would write on my hand"."""
    unit = unit_named("magnets")
    told = told_of(unit, 3, 3, in_full=True)
    assert told == {
        "Beat": "A: Tap four eights, louder on each 1 and 6, saying “swing two lean slide slide "
        "clack clamp two”, then “swing south …”, then “swing north …”, then “swing south …”. "
        "To B: The drum taps four and stops; the teacher whispers one, two, three, four, and shows "
        "it on fingers too. Tap four, no sound for four. B: Tap four soft eights, louder on 6 of "
        "the third eight, saying “swing "
        "two lean slide slide clack clamp two” four times."
    }
    assert told_of(unit, 3, 3)["Beat"].endswith("no sound for four. B: as before.")
    (beat,) = teachers_parts(unit, unit.lessons[2], in_full=True)[2]
    assert [row.partition(" ")[0] for row in beat.words.split("\n")] == ["A:", "To", "B:"]
    whole = told_of(unit, 5, 3, in_full=True)["Beat"]
    rows = [f" {whole}".count(f" {letter}: ") for letter in unit.dance.form]
    assert rows == [1, 2, 2, 2], "each part, and but for the first a join to it"
    assert all(join.cue in whole for join in unit.dance.transitions)


def test_on_a_page_the_run_of_the_whole_waits_for_the_last_lesson() -> None:
    unit = unit_named("road-builders")
    assert told_of(unit, 4, 6) == {}
    assert "Beat" in told_of(unit, 4, 6, in_full=True)
    assert "Beat" in told_of(unit, 5, 3)


def test_parts_and_joins_that_sound_alike_are_told_once_in_any_order() -> None:
    assert told_of(unit_named("leaving"), 5, 5, in_full=True)["Beat"].startswith(
        "Each part: Tap four eights; in A, saying “unhook two sling two set out two linger two”"
    )
    assert told_of(unit_named("leaving"), 5, 5, in_full=True)["Beat"].endswith(
        " At each join: The drum taps double for five counts, and singly on six, "
        "seven and eight. For one eight: tap 1 and 2 and 3 and 4 and 5 and 6 7 8."
    )


def test_a_run_that_nobody_counts_only_has_its_signs() -> None:
    assert list(told_of(unit_named("starlings"), 3, 5)) == ["Sign"]
    assert told_of(unit_named("gathering-peascods"), 4, 3)["Beat"] == "Play the music."


def test_no_count_past_sixteen_is_told_in_any_step() -> None:
    """Sixteen is what a class counts in two breaths. Seconds, and beats a minute, are no counts."""
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            told = [one for step in teachers_parts(unit, lesson, in_full=True) for one in step]
            for one in told:
                if one.label.startswith("Sign"):
                    continue
                counts = _NO_COUNTS.sub("", one.words)
                assert all(int(n) <= 16 for n in re.findall(r"\d+", counts)), (lesson.file, one)


def test_pointing_comes_before_tapping_and_the_authors_words_before_the_beats() -> None:
    """Teachers: "I have two hands", and one mouth."""
    pieces = laid([Heard("beat", counts=Fraction(8))], counted=True, tempo=120, phrase=8)
    voice = laid([Heard("voice", counts=Fraction(8))], counted=True, tempo=120, phrase=8)
    assert pieces is not None
    assert voice is not None
    tap, say = "Tap one eight.", "Say the words for one eight."
    assert one_thing_at_a_time(tap, pieces, "Point to each as you say it.") == (
        "First point. When they know it, tap one eight."
    )
    for alone in ("Point to the sea wall.", "Point as you say them. Then tap.", ""):
        assert one_thing_at_a_time(tap, pieces, alone) == tap
    assert one_thing_at_a_time(say, voice, "Call push, swap.").startswith(f"{say} Where “You” has")
    for alike in ("Whisper the words.", "Look at feet.", ""):
        assert one_thing_at_a_time(say, voice, alike) == say


def test_who_says_the_words_of_the_beat_has_nothing_else_to_say() -> None:
    """An adviser: "Where you have something else to say" means nothing to who speaks the words."""
    words = ("tight", "tight", "burst", "stick", "stick", "set", "tle", "-")
    voice = laid(
        [Heard("voice", counts=Fraction(8), says=words)], counted=True, tempo=120, phrase=8
    )
    assert voice is not None
    say = "Say the words for one eight."
    for same in ("All say: tight, tight, burst.", "Call: stick, stick, set – tle"):
        assert one_thing_at_a_time(say, voice, same) == say
    for other in ("Call go, tight, then set.", "Say burst."):
        assert one_thing_at_a_time(say, voice, other) != say


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
    assert "Ring the bell for about 8 seconds, no sound for 4, say “turn round" in sound
    assert "new leader” for 4, ring the bell for 8" in sound
    assert "Shake the shaker" in told_of(unit_named("marble-run"), 4, 2)["Sound"]


def test_what_nobody_counts_is_told_with_its_sounds_and_its_end() -> None:
    unit = unit_named("seeds-on-the-move")
    sound = told_of(unit, 1, 5)["Sound"]
    section = unit.dance.sections["D"]
    assert f"{section.heard[0].seconds} seconds" in sound
    assert sound.endswith(f"At the very end: {section.ends_on}")


def test_an_end_that_is_the_last_strokes_asks_for_no_others() -> None:
    """A teacher read three taps, then three slow drum beats, and would have drummed six."""
    sound = told_of(unit_named("rock-pool"), 4, 6)["Sound"]
    assert "Last, tap 3 times, one a second. That is the end: Three slow" in sound


def test_a_group_that_shows_a_part_of_the_whole_class_has_not_its_sound() -> None:
    """An adviser: one flock turns, and the page sent to the gathering of all for its sound."""
    assert "Sound" in told_of(unit_named("starlings"), 2, 5)
    assert "Sound" not in told_of(unit_named("starlings"), 2, 6, in_full=True)
    assert "Sound" in told_of(unit_named("starlings"), 1, 5, in_full=True), "half the class is one"


def test_a_long_line_is_told_once_on_a_page_and_in_every_step_of_the_card() -> None:
    unit = unit_named("after-home-time")
    (again,) = (
        n
        for n in range(5, len(unit.lessons[2].steps) + 1)
        if told_of(unit, 3, n) == {"Sound": "As in step 4."}
    )
    assert told_of(unit, 3, again, in_full=True)["Sound"] == told_of(unit, 3, 4)["Sound"]
    # a line or two is told where it is done: with a drum in one hand nobody turns a page
    seeds = unit_named("seeds-on-the-move")
    assert told_of(seeds, 4, 6)["Sound"] == told_of(seeds, 4, 3)["Sound"]


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
    first = (
        "Tap four eights, eight beats each, about 18 seconds, a little slower than twice a second."
    )
    assert beats[0] == first
    assert all("second" not in one for one in beats[1:])
    assert len(beats) == 4
    still = replace(unit, dance=replace(unit.dance, tempo=None))
    told: list[Told] = [one for step in teachers_parts(still, lesson, in_full=True) for one in step]
    assert all("second" not in one.words for one in told if one.label == "Beat")


def test_a_beat_says_what_an_eight_is_and_whether_there_are_more_of_them() -> None:
    """A Reception teacher read "Tap one soft eight", and then "Four eights, as before"."""
    gap = unit_named("through-the-gap")
    beats = [
        with_words(one.words)
        for told in teachers_parts(gap, gap.lessons[0], in_full=False)
        for one in told
        if one.label == "Beat"
    ]
    assert beats[:2] == [
        "Pat eight soft beats, about 4 seconds, a little slower than twice a second.",
        "Pat four soft eights, saying “trot trot trot stop nib ble look up” twice, then “spring "
        "spring spring …” twice.",
    ]
    leaving = told_of(unit_named("leaving"), 3, 4)
    assert leaving["Beat"] == "Four eights, as before."
    plain = replace(leaving_unit := unit_named("leaving"), dance=without_says(leaving_unit.dance))
    assert told_of(plain, 1, 4)["Beat"] == "Four eights now, eight beats each, same speed."


def test_music_is_said_to_last_and_not_to_be_a_beat() -> None:
    """A teacher read "Beat About 5 seconds. Play the music.": a beat of five seconds?"""
    kite = unit_named("kite-and-string")
    assert told_of(kite, 1, 3)["Beat"] == "Eight beats last about 5 seconds. Play the music."


def test_a_changed_return_is_called_by_its_name_on_a_lesson() -> None:
    gap = unit_named("through-the-gap")
    run = told_of(gap, 3, 2)["Beat"]
    assert "To “night”" in run
    assert "A'" not in run


def test_the_words_of_a_join_are_told_unless_its_sign_has_them() -> None:
    """ "Say the words for four": which, when the sign beside it asks for others?"""
    gap = unit_named("through-the-gap")
    runs = " ".join(
        one.words for told in teachers_parts(gap, gap.lessons[2], in_full=True) for one in told
    )
    runs = with_words(runs)
    assert "Pat two soft eights, saying “walk and walk and find your partner one in front" in runs
    assert "To “night”: " in runs


def test_words_that_do_not_begin_anew_with_each_eight_are_told_by_their_lengths() -> None:
    """An adviser of the rope bridge: "five eights" where a canon takes twelve counts."""
    bridge = unit_named("rope-bridge")
    runs = " ".join(
        one.words
        for told in teachers_parts(bridge, bridge.lessons[5], in_full=True)
        for one in told
    )
    assert (
        "A: Say the words for 16, 12, 8 and 4 counts in turn: “edge two cast watch haul two three "
        "slack” three times, then “haul two three slack”, then “edge two cast watch haul two three "
        "slack”, then “edge two cast watch”."
    ) in with_words(runs)


def test_a_card_finds_the_whole_of_a_step_in_its_lines_and_those_of_its_fold() -> None:
    """A page has in its fold what differs; `card/from-lesson.js` puts them together."""
    folded = 0
    for unit in whole_bank().units:
        for lesson in unit.lessons:
            page, whole = (teachers_parts(unit, lesson, in_full=full) for full in (False, True))
            for lines, full in zip(page, whole, strict=True):
                fold = {one.label: one for one in full if one not in lines}
                more = [one for label, one in fold.items() if label not in {x.label for x in lines}]
                assert [*(fold.get(one.label, one) for one in lines), *more] == list(full)
                folded += bool(fold)
    assert folded > 20
