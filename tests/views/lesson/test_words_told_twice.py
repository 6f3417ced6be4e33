"""Words stand once in a step: where the author has them, the beat has them no more.

A Reception teacher read "walk and walk and find your partner" under You, and again under Beat.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.views.lesson.words_told_twice import without_words_given
from build_tools.views.words.marked_words import marked
from tests.support.sound_bank import real_unit

STEP = replace(real_unit().lessons[0].steps[0], say=None)
SAID = marked(", saying “walk and find your partner one behind and” twice")
BEAT = f"A: Pat four eights.\nTo B: Go. Pat two soft eights{SAID}."


@pytest.mark.parametrize(
    "you",
    [
        "Pat and say: walk and find your partner, one behind, and.",
        "Say: Walk, and find your partner. Then hold up one: one behind and. Ring.",
    ],
)
def test_words_that_the_author_gives_are_told_once(you: str) -> None:
    told = without_words_given(BEAT, replace(STEP, you=you))
    assert told == "A: Pat four eights.\nTo B: Go. Pat two soft eights."


@pytest.mark.parametrize(
    "you",
    [
        "",
        "Say: walk and find your partner.",
        "One behind and, then walk and find your partner.",
        "Walk. And find a place. Your partner is one step behind and waits.",
    ],
)
def test_words_that_the_author_does_not_give_whole_and_in_order_stay(you: str) -> None:
    assert without_words_given(BEAT, replace(STEP, you=you)) == BEAT


def test_other_quotations_and_counting_stay() -> None:
    step = replace(STEP, you="Say: one, two, and turn.")
    assert without_words_given("To “one two and turn”: Go.", step) == "To “one two and turn”: Go."
    counted = f"Count aloud{marked(': 1 to 8, then “1 2 3 4, 2 2 3 4”')}."
    assert without_words_given(counted, step) == counted


def test_words_of_one_eight_do_not_take_away_those_of_others() -> None:
    """A call that the author gives by its first words was silent in all five eights."""
    beat = f"Tap two eights{marked(', saying “four takes”, then “three takes two takes”')}."
    step = replace(STEP, you="Say four takes on the first tap.")
    assert without_words_given(beat, step) == beat
