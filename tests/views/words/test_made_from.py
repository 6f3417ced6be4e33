"""How one motif is made from another, in words that its moves tell."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.movement.development import actions_of
from build_tools.views.dance.journey import journeys
from build_tools.views.words.made_from import made_from_in_words
from tests.support.sound_bank import whole_bank
from tests.views.lesson.test_sitting_or_wheels import published


def said(slug: str, name: str) -> str:
    dance = published(slug).dance
    return made_from_in_words(dance, dance.developments[name])


def test_a_published_change_of_speed_is_slower_or_faster_and_not_both() -> None:
    """An adviser read "slower or faster" of a marble that rolls half as fast."""
    assert said("marble-run", "slow-run") == "marble, half as fast"
    for unit in whole_bank().units:
        for one in unit.dance.developments.values():
            told = made_from_in_words(unit.dance, one)
            assert one.choice or "slower or faster" not in told, (unit.slug, one.name)


@pytest.mark.parametrize(
    ("times", "words"),
    [
        ((2, 2, 2, 2), "half as fast"),
        ((4, 4, 4, 4), "slower, on 4 times the counts"),
        (("1/2",) * 4, "twice as fast"),
        (("3/2",) * 4, "slower"),
        ((2, 3, 2, 2), "slower"),
        ((1, 2, 1, 1), "some of it slower"),
        (("1/2", 1, 1, 1), "some of it faster"),
        (("1/2", 2, 1, 1), "some of it slower, some of it faster"),
    ],
)
def test_a_speed_is_that_of_the_counts(times: tuple[int | str, ...], words: str) -> None:
    """Twice the counts at one tempo take twice as long: the definition of a metronome mark."""
    dance = published("marble-run").dance
    old = [one.counts for one in actions_of(dance, "marble")]
    counts = tuple(n * Fraction(t) for n, t in zip(old, times, strict=True))
    slow = replace(dance.developments["slow-run"], counts=counts)
    changed = replace(dance, developments={**dance.developments, "slow-run": slow})
    assert made_from_in_words(changed, slow) == f"marble, {words}"


def test_what_is_added_is_named_with_its_place() -> None:
    assert said("gathering-peascods", "meet-next") == (
        "meet, with “wait” before it and “stand by” after it"
    )
    assert said("gathering-peascods", "inner-ring") == (
        "step in, with “round inside” after “inside”"
    )


def test_what_pupils_decide_is_left_open() -> None:
    assert said("weaving-shed", "trimmed-build").endswith("with something added, as pupils choose")


def test_a_motif_that_a_lesson_makes_is_not_made_again_where_it_is_danced() -> None:
    """An adviser read "made in lessons 2 and 3" of a knock that lesson 2 makes."""
    (knock,) = (one for one in journeys(published("marble-run")) if one.motif == "knock")
    assert [one.lesson for one in knock.stops if "made" in one.deeds] == [2]
