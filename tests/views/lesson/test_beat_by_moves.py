"""Which of several moves the words and the beat of a part are for, by their names.

A Reception teacher read "The class says the words for two eights. Then pat softly once on each
word", and would have patted, and slowed the words, for all of three sheep.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from build_tools.model.dance import Heard
from build_tools.model.unit import Unit
from build_tools.views.dance.timeline import section_sounding
from build_tools.views.lesson.beat_by_moves import beat_by_moves
from build_tools.views.lesson.beat_of_parts import own_words
from build_tools.views.words.marked_words import with_words, without_words
from tests.support.sound_bank import whole_bank

NIGHT = "A'"
DAY = Heard("voice", counts=Fraction(8), by="class", says=("trot", "stop", "nib", "up"))
ODD = tuple(Fraction(n) for n in range(1, 16, 2))
SLOW = Heard(
    "soft beat", counts=Fraction(16), by="teacher", on=ODD, says=("trot", "-", "stop", "-") * 4
)


def night(*heard: Heard) -> Unit:
    """The unit with its third part, sheep, lamb and sleepy sheep, sounding so."""
    unit = next(one for one in whole_bank().units if one.slug == "through-the-gap")
    section = replace(unit.dance.sections[NIGHT], heard=heard)
    assert [one.what for one in section.danced] == [("sheep",), ("lamb",), ("sleepy-sheep",)]
    dance = replace(unit.dance, sections={**unit.dance.sections, NIGHT: section})
    return replace(unit, dance=dance)


def beat(*heard: Heard) -> str:
    dance = night(*heard).dance
    section = dance.sections[NIGHT]
    pieces = section_sounding(dance, section).pieces
    return beat_by_moves(dance, section, pieces, own_words(dance, section))


def test_a_beat_on_the_words_of_one_move_names_it_and_those_that_are_only_said() -> None:
    told = beat(DAY, DAY, SLOW)
    assert without_words(told) == (
        "For sheep and lamb, the class whispers the words, with no beat. "
        "For sleepy sheep, pat softly once on each word."
    )
    assert with_words(told) == (
        "For sheep and lamb, the class whispers the words, with no beat: “trot stop nib up” twice. "
        "For sleepy sheep, pat softly once on each word: “trot stop trot stop trot stop trot stop”."
    )


def test_where_sounds_do_not_change_with_the_moves_it_is_told_by_phrases() -> None:
    half = replace(SLOW, counts=Fraction(8), on=ODD[:4], says=SLOW.says[:8])
    assert beat(DAY, half, DAY, half) == "", "the sleepy sheep has both"
    assert beat(DAY, DAY, DAY, DAY) == "", "there is no beat"
    assert beat(half, half, SLOW) == "", "all of it has one"
    assert beat(replace(DAY, says=()), DAY, SLOW), "a voice without words has those of the moves"
