"""The words of a beat, in the order said, what comes again told shortly.

A teacher: "One eight of what, and in which order?", and of words for sixteen counts of thirty-two
"What do I say in the other sixteen?"
"""

from __future__ import annotations

import re
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Heard
from build_tools.movement.sounding import laid
from build_tools.views.words.beat_in_phrases import made_in_words
from build_tools.views.words.deeds_of_sound import NO_WORDS, OwnWords
from build_tools.views.words.marked_words import said_in, with_words, without_words

SEED = "tight tight burst go go go set tle"
STICK = "tight tight burst stick stick stick set tle"


def told(*lines: str, sound: str = "beat", by: str = "teacher", own: OwnWords = NO_WORDS) -> str:
    """What is told of phrases, each with the words of one line: "-" on a count of none."""
    heard = [Heard(sound, counts=Fraction(8), by=by, says=tuple(one.split())) for one in lines]
    pieces = laid(heard, counted=True, tempo=120, phrase=8)
    assert pieces is not None
    return made_in_words(pieces, 8, own)


def test_words_are_told_with_the_beat_in_their_order() -> None:
    assert with_words(told(SEED, SEED)) == f"Tap two eights, saying “{SEED}” twice."
    assert without_words(told(SEED, SEED)) == "Tap two eights."
    assert said_in(told(STICK, SEED)) == (
        f", saying “{STICK}”, then the same with “go” for “stick”"
    )
    lines = [f"swing {way} lean slide slide clack clamp two" for way in ("two", "south", "two")]
    assert with_words(said_in(told(*lines))) == (
        f", saying “{lines[0]}”, then “swing south …”, then “swing two …”"
    )


def test_a_voice_alone_says_its_words_and_who_says_them() -> None:
    one = with_words(told(SEED, sound="voice", by="class"))
    assert one == f"The class says the words for one eight: “{SEED}”."
    hushed = told(SEED, sound="voice", by="class", own=OwnWords("The class whispers them"))
    assert hushed.startswith("The class whispers the words for one eight")


def test_where_nothing_is_said_it_is_told_when() -> None:
    assert said_in(told(SEED, "", "")) == f", saying “{SEED}”, then nothing"
    assert said_in(told("", "", SEED)) == f", saying nothing for two eights, then “{SEED}”"
    few = "- - - - - clack - clack"
    assert said_in(told(few, SEED)) == f", saying “clack” on 6 and 8, then “{SEED}”"


def test_a_word_after_each_other_is_told_once() -> None:
    slow = " ".join(f"{word} and" for word in SEED.split()).split()
    lines = (" ".join(slow[:8]), " ".join(slow[8:]))
    assert said_in(told(*lines)) == f", saying “{SEED}”, with “and” after each word"


def test_counting_is_told_where_it_is_more_than_one_to_eight() -> None:
    plain = "one two three four five six seven eight"
    assert told(plain, plain, sound="voice") == "Count aloud for two eights."
    assert with_words(told(plain, "one two three four two two three four", sound="voice")) == (
        "Count aloud for two eights: 1 to 8, then “1 2 3 4 2 2 3 4”."
    )


def test_numbers_with_gaps_between_are_told_by_their_counts() -> None:
    """Who takes the stone is called by number: "four" on 1 and "three" on 5 is no counting."""
    few = told("four - - - three - - -", "one two three four five six seven eight")
    assert with_words(few) == "Tap two eights, saying “four” on 1 and “three” on 5, then 1 to 8."


def test_the_whole_comes_again_where_lines_do() -> None:
    few, other = "- - - - - clack - clack", "- clack - clack - - - -"
    assert said_in(told(few, other, few, other)) == (
        ", saying “clack” on 6 and 8, then “clack” on 2 and 4, then all of it again"
    )


WORD = st.sampled_from(["swing", "lean", "clamp", "two", "and", "slide"])
LINES = st.lists(st.lists(WORD, min_size=8, max_size=8).map(" ".join), min_size=1, max_size=4)
_QUOTED = re.compile(r"“([^”]*)”")
_EXCHANGED = re.compile(r"the same with “(\w+)” for “(\w+)”")


def spoken(said: str) -> list[str]:
    """Every line that is told, spelled out again by another way than it was shortened."""
    body, again, _rest = said.partition(", then all of it again")
    filler = re.search(r", with “(\w+)” after each word", body)
    found: list[list[str]] = []
    for one in re.split(r", then |, with “\w+” after each word", body.removeprefix(", saying ")):
        if not one:
            continue
        times = next(
            (n for word, n in (("twice", 2), ("three times", 3), ("four times", 4)) if word in one),
            1,
        )
        if exchanged := _EXCHANGED.search(one):
            line = [exchanged[1] if word == exchanged[2] else word for word in found[-1]]
        else:
            quote = _QUOTED.search(one)
            assert quote, one
            line = quote[1].split()
            if line[-1] == "…":
                line = [*line[:-1], *found[-1][len(line) - 1 :]]
        found += [line] * times
    words = [word for line in found for word in line]
    if filler:
        words = [each for word in words for each in (word, filler[1])]
    return words * (2 if again else 1)


@given(LINES)
def test_the_words_told_are_the_words_said(lines: list[str]) -> None:
    assert spoken(with_words(said_in(told(*lines)))) == " ".join(lines).split()


def test_the_words_of_those_who_dance_may_be_only_thought() -> None:
    """A teacher read dancers who speak over a knock that should hardly be heard."""
    assert ", to the words “knock knock" in with_words(told("knock knock hush -", by="dancers"))
    assert ", saying “knock knock" in with_words(told("knock knock hush -", by="class"))
