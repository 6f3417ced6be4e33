"""How a step's minutes are run: to invent where something is theirs, to learn where it is given."""

from __future__ import annotations

from build_tools.model.unit import Unit
from build_tools.views.lesson.running_minutes import run_in_words
from tests.support.sound_bank import every_unit, whole_bank


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
                given = (
                    not step.settles
                    and all(one.choice is None for one in changes)
                    and all(one.made_by == "teacher" for one in motifs)
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
                assert ("Nothing is fixed" in said) == free, (lesson.file, index + 1)
                seen["Keep one" in said] += 1
    assert min(seen.values()) > 5


def test_what_is_made_up_on_the_spot_is_never_fixed() -> None:
    storm = {
        said
        for unit in every_unit()
        for made, said in run_lines(unit)
        if any(
            name in unit.dance.sections and unit.dance.sections[name].kind == "improvised"
            for name in made
        )
    }
    assert len(storm) == 1
    assert "Play it again, another way" in storm.pop()


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
