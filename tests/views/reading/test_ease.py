"""Reading ease, reading time and sentences, against published worked examples."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.reading.ease import (
    flesch_kincaid_grade,
    flesch_reading_ease,
    longest_sentence,
    reading_ease,
    reading_minutes,
    sentences,
    smog,
    smog_grade,
    words,
)

CAT = "The cat sat on the mat."
PLATYPUS = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."
POINT = "This sentence, taken as a reading passage unto itself, is being used to prove a point."

# Words, sentences, syllables, reading ease, grade. Sources: the formulas of Flesch (1948) and of
# Kincaid et al. (1975) worked by hand; the first four rows are the worked examples of Wikipedia,
# "Flesch-Kincaid readability tests" (121.22 and -3.40 as the extremes, 116, 37.5 and 69).
FLESCH = (
    (1, 1, 1, 121.22, -3.40),
    (6, 1, 6, 116.145, -1.45),
    (13, 1, 24, 37.455, 11.265),
    (16, 1, 23, 68.983, 7.613),
    (100, 5, 150, 59.635, 9.91),
    (120, 8, 160, 78.81, 5.993),
)


@pytest.mark.parametrize(("word", "sentence", "syllable", "ease", "grade"), FLESCH)
def test_published_counts(
    word: int, sentence: int, syllable: int, ease: float, grade: float
) -> None:
    averages = word / sentence, syllable / word
    # 0.0006, for the sources round half a thousandth either way
    assert flesch_reading_ease(*averages) == pytest.approx(ease, abs=0.0006)
    assert flesch_kincaid_grade(*averages) == pytest.approx(grade, abs=0.0006)


def test_a_published_book_on_its_averages() -> None:
    # Source: Wikipedia, "Flesch-Kincaid readability tests": Green Eggs and Ham, 5.7 words a
    # sentence and 1.02 syllables a word, is of grade -1.3.
    assert round(flesch_kincaid_grade(5.7, 1.02), 1) == -1.3


@pytest.mark.parametrize(
    ("text", "row"), [("Go.", FLESCH[0]), (CAT, FLESCH[1]), (POINT, FLESCH[3])]
)
def test_published_sentences(text: str, row: tuple[int, int, int, float, float]) -> None:
    found = reading_ease(text)
    assert found is not None
    assert (found.words, found.sentences, found.syllables) == row[:3]
    assert found.ease == pytest.approx(row[3], abs=0.0006)
    assert found.grade == pytest.approx(row[4], abs=0.0006)


def test_the_published_platypus() -> None:
    found = reading_ease(PLATYPUS)
    assert found is not None
    assert (found.words, found.sentences, found.syllables) == (13, 1, 24)
    assert (round(found.ease, 1), round(found.grade, 1)) == (37.5, 11.3)


# Polysyllables in 30 sentences and the grade. Source: McLaughlin 1969, SMOG grading, Journal of
# Reading 12, formula 1.0430 x sqrt(polysyllables) + 3.1291 worked by hand.
@pytest.mark.parametrize(("long", "grade"), [(9, 6.258), (30, 8.842), (64, 11.473)])
def test_smog_on_thirty_sentences(long: int, grade: float) -> None:
    found = smog_grade(long, 30)
    assert found is not None
    assert round(found, 3) == grade
    assert smog_grade(2 * long, 60) == found
    # McLaughlin's quick form, the square root of the count and three more, is near it.
    assert abs(found - (math.sqrt(long) + 3)) < 0.5


def test_smog_is_refused_under_thirty_sentences() -> None:
    line = "Remember the opposite direction. "
    assert smog_grade(64, 29) is None
    assert smog(line * 29) is None
    assert smog(line * 30) == smog_grade(90, 30)
    assert smog(line * 30, ["direction", "opposite"]) == smog_grade(30, 30)


# Source: Brysbaert 2019, Journal of Memory and Language 109:104047: 238 words a minute.
@pytest.mark.parametrize(
    ("word_count", "minutes"), [(238, 1.0), (500, 2.101), (600, 2.521), (714, 3.0), (900, 3.782)]
)
def test_reading_minutes(word_count: int, minutes: float) -> None:
    assert round(reading_minutes(word_count), 3) == minutes


def test_words() -> None:
    assert words("Don’t rush: 8 counts, side-step (the class's) “wave” - then 1/2.") == (
        "Don’t",
        "rush",
        "8",
        "counts",
        "side-step",
        "the",
        "class's",
        "wave",
        "then",
        "1",
        "2",
    )


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("", 0),
        ("...", 0),
        ("No mark at the end", 1),
        ("Walk. Freeze! Who is still? All of us…", 4),
        ('"Freeze!" she says. Stop.', 2),
        ("Walk (softly.) Then stop.", 2),
        ("Use a drum, e.g. Mrs. Reed's, for 1.5 minutes.", 1),
        ("A drum\nTwo cards", 2),
        ("Ready... and go.", 1),
    ],
)
def test_sentences(text: str, count: int) -> None:
    assert len(sentences(text)) == count


def test_the_longest_sentence() -> None:
    assert longest_sentence("Go. Walk eight counts. Freeze for eight.") == "Walk eight counts."
    assert longest_sentence(" \n ") == ""


def test_taught_words_are_left_out_of_the_syllables_only() -> None:
    text = "Make the choreography clear. Add one change of level, then two motifs."
    plain = reading_ease(text)
    allowed = reading_ease(text, ["Choreography", "change of level", "motif"])
    assert plain is not None
    assert allowed is not None
    assert (allowed.words, allowed.sentences, allowed.taught) == (12, 2, 5)
    assert plain.syllables - allowed.syllables == 5 + 4 + 2
    assert allowed.ease > plain.ease
    assert reading_ease("Motifs!", ["motif"]) is None
    assert reading_ease("") is None


WORDS = st.sampled_from(["walk", "dance", "slowly", "direction", "improvised", "8", "warm-up"])
TEXTS = st.lists(st.lists(WORDS, min_size=1).map(" ".join).map("{}.".format), min_size=1)


@given(TEXTS, WORDS)
def test_one_more_word_never_counts_less(lines: list[str], word: str) -> None:
    text = "\n".join(lines)
    before, after = reading_ease(text), reading_ease(f"{text} {word}")
    assert before is not None
    assert after is not None
    assert after.words == before.words + 1
    assert after.syllables > before.syllables
    assert after.sentences >= before.sentences
    assert len(words(longest_sentence(f"{text} {word}"))) >= len(words(longest_sentence(text)))
    assert reading_minutes(after.words) > reading_minutes(before.words)


@given(TEXTS, TEXTS)
def test_lines_add_up(one: list[str], other: list[str]) -> None:
    halves = reading_ease("\n".join(one)), reading_ease("\n".join(other))
    whole = reading_ease("\n".join([*one, *other]))
    assert whole is not None
    for name in ("words", "sentences", "syllables"):
        assert getattr(whole, name) == sum(getattr(half, name) for half in halves)


@given(st.text())
def test_sentences_hold_every_word(text: str) -> None:
    assert tuple(w for one in sentences(text) for w in words(one)) == words(text)


@given(TEXTS, st.sets(WORDS))
def test_teaching_never_adds_syllables(lines: list[str], taught: set[str]) -> None:
    text = "\n".join(lines)
    plain, allowed = reading_ease(text), reading_ease(text, taught)
    assert plain is not None
    if allowed is not None:
        assert allowed.syllables <= plain.syllables
        assert allowed.words == plain.words
