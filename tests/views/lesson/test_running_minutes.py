"""How a step's minutes are run: to invent where something is theirs, to learn where it is given."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.views.lesson.running_minutes import run_in_words
from build_tools.views.words.marked_words import said_in, with_words
from tests.support.sound_bank import every_unit, unit_named, whole_bank


def run_lines(unit: Unit) -> list[tuple[tuple[str, ...], str]]:
    """What each making step of a unit makes or changes, and what is said of its minutes."""
    return [
        ((*step.makes, *step.develops), said)
        for lesson in unit.lessons
        for index, step in enumerate(lesson.steps)
        if step.phase in ("make", "develop") and (said := run_in_words(unit.dance, lesson, index))
    ]


def test_only_what_is_theirs_is_tried_and_kept() -> None:
    seen = {True: 0, False: 0}
    for unit in every_unit():
        dance = unit.dance
        for lesson in unit.lessons:
            for index, step in enumerate(lesson.steps):
                said = run_in_words(dance, lesson, index)
                if step.phase not in ("make", "develop") or said is None:
                    continue
                named = (*step.makes, *step.develops)
                changes = [dance.developments[n] for n in named if n in dance.developments]
                motifs = [dance.motifs[n] for n in named if n in dance.motifs]
                text = f"{step.task} {step.say}".casefold()
                asks = any(
                    word in text for word in ("choose", "try ", "agree", "pick", "find")
                ) or ("learn" not in text and ("cards" in text or "your own" in text))
                given = (
                    not step.settles
                    and all(one.choice is None for one in changes)
                    and all(
                        one.made_by == "teacher"
                        or (one.made_by == "teacher then pupils" and not asks)
                        for one in motifs
                    )
                )
                free = any(
                    n in dance.sections and dance.sections[n].kind == "improvised" for n in named
                )
                voted = bool(step.settles) and all(
                    dance.choices[one].by == "class" for one in step.settles
                )
                tried = "Keep one" in said or "Then they vote" in said
                assert tried == (not given and not free), (lesson.file, index + 1)
                assert ("Then they vote" in said) == (voted and not free), (lesson.file, index + 1)
                played = "Nothing is fixed" in said or "the rest is new" in said
                assert played == free, (lesson.file, index + 1)
                seen["Keep one" in said] += 1
    assert min(seen.values()) > 5


def test_of_what_is_made_up_only_what_pupils_choose_is_kept() -> None:
    """An adviser read "Nothing is fixed or kept" where each leader chooses a gap to show again."""
    unit = next(unit for unit in whole_bank().units if unit.slug == "through-the-gap")
    index = next(n for n, step in enumerate(unit.lessons[1].steps) if "B" in step.makes)
    said = run_in_words(unit.dance, unit.lessons[1], index) or ""
    assert said.endswith("Only what they choose is kept; the rest is new every time.")
    step = replace(unit.lessons[1].steps[index], task="Play it.", settles=(), you=None)
    assert said_of(unit, step).endswith("Play it again, another way. Nothing is fixed or kept.")


def test_no_other_number_of_goes_is_given_beside_the_authors() -> None:
    """A teacher read "two or three times" just below "Walk it once, dance it twice"."""
    unit = next(unit for unit in whole_bank().units if unit.slug == "magnets")
    lesson = unit.lessons[0]
    given = replace(lesson.steps[3], task="Dance the theme.", you=None, say=None)
    steps = (*lesson.steps[:3], given, *lesson.steps[4:])
    alone = replace(lesson, steps=steps)
    assert "two or three times" in (run_in_words(unit.dance, alone, 3) or "")
    assert run_in_words(unit.dance, alone, 3, ["Walk it once, dance it twice."]) is None
    for task in ("Dance it north. Then dance it south.", "Dance it twice.", "Dance it. Rest."):
        ordered = replace(lesson, steps=(*steps[:3], replace(given, task=task), *steps[4:]))
        assert run_in_words(unit.dance, ordered, 3) is None


def test_two_sides_have_no_more_goes_than_the_minutes_hold() -> None:
    """An adviser: two sides and a change in three minutes, and "two or three times" for each."""
    unit = next(unit for unit in whole_bank().units if unit.slug == "magnets")
    step = replace(unit.lessons[0].steps[3], task="Dance it. Change over.", you=None, say=None)
    assert said_of(unit, replace(step, minutes=3)).endswith("then each side dances it once.")
    assert said_of(unit, replace(step, minutes=8)).endswith("then each side dances it twice.")


def test_nothing_is_shown_twice_in_a_row() -> None:
    for unit in every_unit():
        for lesson in unit.lessons:
            for index in range(len(lesson.steps) - 1):
                said = run_in_words(unit.dance, lesson, index) or ""
                assert not ("In the last minute" in said and lesson.steps[index + 1].shows)


def test_an_uncounted_dance_is_joined_with_no_counts() -> None:
    said = [
        run_in_words(unit.dance, lesson, index) or ""
        for unit in whole_bank().units
        for lesson in unit.lessons
        for index, step in enumerate(lesson.steps)
        if step.phase == "join"
        and step.joins
        and all(
            unit.dance.sections[n].kind != "counted" for n in step.joins if n in unit.dance.sections
        )
    ]
    assert any("saying each cue" in text for text in said)
    assert all("once with counts" not in text for text in said)


def test_what_the_notes_tell_is_not_told_again() -> None:
    unit = next(unit for unit in every_unit())
    lesson = unit.lessons[0]
    for index in range(len(lesson.steps)):
        assert run_in_words(unit.dance, lesson, index, ["Try three, keep one."]) is None


def test_nothing_is_tried_where_the_task_only_has_moves_to_learn() -> None:
    unit, step = making("Learn the four moves on eight counts.")
    assert said_of(unit, step).startswith(
        "The moves are given: how each pupil does them is their own."
    )
    unit, step = making("Learn it with the cards, eight counts, with your own thing in mind.")
    assert said_of(unit, step).startswith(
        "The moves are given: how each pupil does them is their own."
    )
    unit, step = making("Learn the four moves. Try two ways to stand; keep one.")
    assert "tries ways of doing it" in said_of(unit, step)


def test_what_they_have_already_is_said_to_be_changed_or_put_together() -> None:
    """A teacher read "make a popping seed" beside "nothing to invent", and asked which it was."""
    for unit in every_unit():
        for made, said in run_lines(unit):
            if any(name in unit.dance.motifs for name in made) or "Take it a piece" not in said:
                continue
            changed = any(name in unit.dance.developments for name in made)
            assert ("How it is changed is given" in said) == changed
            assert made == () or "nothing to invent" not in said


def making(task: str) -> tuple[Unit, Step]:
    """A unit whose teacher begins a motif and pupils end it, and its step with this task."""
    unit = next(one for one in whole_bank().units if one.slug == "rock-pool")
    step = replace(
        unit.lessons[0].steps[2], say=None, task=task, settles=(), develops=(), makes=("wave",)
    )
    assert unit.dance.motifs["wave"].made_by == "teacher then pupils"
    return unit, step


def said_of(unit: Unit, step: Step) -> str:
    lesson = replace(unit.lessons[0], steps=(step,))
    return run_in_words(unit.dance, lesson, 0) or ""


def test_where_only_joins_are_walked_nothing_is_danced_into_them() -> None:
    unit, step = making("Walk both orders, joins only. Vote.")
    joining = replace(step, phase="join", makes=(), joins=("A", "B"))
    assert said_of(unit, joining) == (
        "Walk each join through once with no counts, and once with counts. Dance nothing yet."
    )
    danced = replace(joining, task="Walk it.")
    assert said_of(unit, danced).endswith("Then dance from the part before into it.")


def test_where_the_task_limits_the_goes_no_more_are_asked_for() -> None:
    """An adviser counted sixteen leans in a step whose task asks for three."""
    unit = next(unit for unit in whole_bank().units if unit.slug == "rope-bridge")
    lesson = unit.lessons[3]
    index = next(n for n, step in enumerate(lesson.steps) if step.develops == ("low-span",))
    step = lesson.steps[index]

    def said(task: str) -> str:
        made = replace(step, task=task, you=None)
        steps = (*lesson.steps[:index], made, *lesson.steps[index + 1 :])
        return run_in_words(unit.dance, replace(lesson, steps=steps), index) or ""

    assert "a few times" in said("Try both lower, both taller, one of each. Choose.")
    for limited in ("Try each way once each. Choose.", "Try both; rest; once more."):
        assert "only as often as the step says" in said(limited)
        assert "a few times" not in said(limited)
        assert "In the last minute" not in said(limited)


def test_moves_that_are_given_may_still_be_done_in_ones_own_way() -> None:
    """What the teacher begins and pupils end is never said to leave them nothing."""
    for unit in whole_bank().units:
        own = {name for name, one in unit.dance.motifs.items() if one.made_by != "teacher"}
        for made, said in run_lines(unit):
            assert not (own & set(made) and "nothing to invent" in said), (unit.slug, made)


def test_what_is_open_is_named_where_the_moves_are_given() -> None:
    """A teacher read "tries ways of doing it" of four fixed moves with one part to choose."""
    unit = next(unit for unit in whole_bank().units if unit.slug == "kite-and-string")
    lesson = unit.lessons[0]
    index = next(n for n, step in enumerate(lesson.steps) if "kite" in step.makes)
    said = run_in_words(unit.dance, lesson, index) or ""
    assert ": the part of the body that the string is tied to." in said


def test_the_last_minute_of_a_short_step_is_for_dancing() -> None:
    unit, step = making("Learn the four moves on eight counts.")
    assert "In the last minute" not in said_of(unit, replace(step, minutes=4))
    assert "In the last minute" in said_of(unit, replace(step, minutes=7))


def test_the_order_that_is_given_is_that_of_the_tasks() -> None:
    """A teacher read "the order that Pupils has" as one that the children own."""
    kite = next(unit for unit in whole_bank().units if unit.slug == "kite-and-string")
    index = next(n for n, step in enumerate(kite.lessons[0].steps) if "kite" in step.makes)
    said = run_in_words(kite.dance, kite.lessons[0], index) or ""
    assert said.startswith("Teach the moves first: they are given. ")
    assert with_words(said).endswith("Then say “Keep one”, and dance the task with it.")
    minutes = kite.lessons[0].steps[index].minutes
    assert said_in(said) == f"{minutes // 2} minutes", "half of the step's"


def test_two_things_to_choose_are_kept_one_of_each() -> None:
    """A teacher read "Keep one" of a card and a shape: "One what?"."""
    leaving = next(unit for unit in whole_bank().units if unit.slug == "leaving")
    index = next(n for n, step in enumerate(leaving.lessons[2].steps) if len(step.settles) == 2)
    said = run_in_words(leaving.dance, leaving.lessons[2], index) or ""
    assert "say “Keep one of each”" in said


def test_moves_that_are_given_are_learned_before_they_are_danced_in_order() -> None:
    """A teacher: "From whom, how often, all at once or ones only?"."""
    seeds = next(unit for unit in whole_bank().units if unit.slug == "seeds-on-the-move")
    lesson = seeds.lessons[2]
    made = next(step for step in lesson.steps if step.phase == "make")
    step = replace(made, makes=("seed",), task="Learn it. Then dance it in turn.")
    taught = replace(lesson, steps=(step,))
    given = replace(seeds.dance.motifs["seed"], made_by="teacher")
    dance = replace(seeds.dance, motifs={**seeds.dance.motifs, "seed": given})
    assert (run_in_words(dance, taught, 0) or "").startswith("All learn the moves together")
    danced = replace(step, makes=(), task="Dance it. Then rest.")
    assert run_in_words(dance, replace(lesson, steps=(danced,)), 0) is None


@pytest.mark.parametrize(
    ("task", "told"),
    [
        ("Try it twice.", "After the first go, name"),
        ("There are three goes.", "After the second go, name"),
        ("Do it four times.", "After the second go, name"),
        ("Try it once each way.", "After a go, name"),
    ],
)
def test_what_was_seen_is_named_after_a_go_that_there_is(task: str, told: str) -> None:
    """A teacher: "There are three goes: half way is in the middle of one"."""
    unit = next(iter(every_unit()))
    lesson = unit.lessons[0]
    step = replace(
        lesson.steps[0], phase="explore", task=task, you=None, say=None, minutes=4, does="Try it"
    )
    assert (run_in_words(unit.dance, replace(lesson, steps=(step,)), 0) or "").startswith(told)


def test_what_may_be_chosen_anew_at_any_time_is_never_to_be_kept() -> None:
    """A teacher read "Keep one" of whom to touch, where each may choose again at any time."""
    rope = unit_named("rope-bridge")
    lesson = rope.lessons[2]
    (index,) = (n for n, step in enumerate(lesson.steps) if "link" in step.settles)
    said = run_in_words(rope.dance, lesson, index)
    assert said == (
        "First each pair tries, only as often as the step says. Before each go, say “You may "
        "choose again.”"
    )
    link = replace(rope.dance.choices["link"], what="What joins the two in the lean")
    fixed = replace(rope.dance, choices={**rope.dance.choices, "link": link})
    assert "Then say “Keep one”" in (run_in_words(fixed, lesson, index) or "")


def test_rest_after_each_go_is_no_trying_again_and_again() -> None:
    """An adviser counted up to twelve leans where the step asks for a rest after each."""
    rope = unit_named("rope-bridge")
    lesson = rope.lessons[3]
    (index,) = (n for n, step in enumerate(lesson.steps) if "second-level" in step.settles)
    said = run_in_words(rope.dance, lesson, index) or ""
    assert said.startswith("First each pair tries, only as often as the step says.")
    steps = list(lesson.steps)
    steps[index] = replace(steps[index], you="Say the words.")
    often = run_in_words(rope.dance, replace(lesson, steps=tuple(steps)), index) or ""
    assert "again and again" in often
