"""Who starts on which count of which phrase."""

from __future__ import annotations

import re
from fractions import Fraction

from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.lesson.who_starts import starts_in_words
from build_tools.views.words.marked_words import with_words
from tests.support.sound_bank import whole_bank


def unit_named(slug: str) -> Unit:
    return next(unit for unit in whole_bank().units if unit.slug == slug)


def test_the_chain_starts_where_a_teacher_counted_it_by_hand() -> None:
    """By hand, from a teacher's reading: north on 1, 3, 5, 7; south 4 on 17, 3 on 19 and so on.

    17 is the first count of the third eight.
    """
    assert starts_in_words(unit_named("magnets").dance, "C") == (
        "The first eight: number 1 on 1, 2 on 3, 3 on 5 and 4 on 7. The third eight: "
        "number 4 on 1, 3 on 3, 2 on 5 and 1 on 7."
    )
    assert starts_in_words(unit_named("magnets").dance, "A") == ""


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
                        at = (begin + n * passage.after) % unit.dance.phrase
                        # who starts alone on the first count of a phrase has no count told
                        assert at == 0 or re.search(rf" on {at + 1}\b", told)
                        seen += 1
                begin = span.end
    assert seen > 8


def test_where_all_start_at_once_after_parts_in_turn_they_are_told_too() -> None:
    """An adviser missed it: "in the fourth and the fifth, all on 5"."""
    told = with_words(starts_in_words(unit_named("rope-bridge").dance, "A"))
    assert told.endswith(" The fourth and fifth eights: all on 5.")
    told = starts_in_words(unit_named("rope-bridge").dance, "A'")
    assert told == "The first eight: wests. The second eight: easts. From the third eight on: all."


def test_one_each_phrase_is_told_without_counts() -> None:
    """Question and answer: each has its own start, and who asks again is said to.

    A teacher read "Ones, then twos, one each eight; then all at once" three times.
    """
    assert with_words(starts_in_words(unit_named("rock-pool").dance, "C")) == (
        "The first eight: ones. The second eight: twos. The third eight: twos again. "
        "The fourth eight: ones."
    )


def test_the_same_in_two_phrases_is_told_once() -> None:
    assert starts_in_words(unit_named("road-builders").dance, "B") == (
        "The first and second eights: ends on 1 and middles on 5. "
        "The third and fourth eights: middles on 1 and ends on 5."
    )
