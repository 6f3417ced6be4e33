from __future__ import annotations

import pytest

from build_tools.sentences.plain import plain_letters
from build_tools.sentences.reading import Word, read


def word(text: str, form: str) -> Word:
    return next(one for one in read(text).words if one.form == form)


@pytest.mark.parametrize(
    ("text", "form"),
    [
        ("Never hold hands.", "hold"),
        ("Don't hold hands.", "hold"),
        ("Nobody holds hands.", "holds"),
        ("No one holds hands.", "holds"),
        ("Dance without holding hands.", "holding"),
        ("No kneeling, crawling or rolling.", "rolling"),
        ("Reach up instead of jumping.", "jumping"),
        ("Step in place of the jump.", "jump"),
        ("Bend rather than jump.", "jump"),
        ("Keep low, do not ever jump.", "jump"),
    ],
)
def test_what_is_ruled_out(text: str, form: str) -> None:
    assert word(text, form).denied


@pytest.mark.parametrize(
    ("text", "form"),
    [
        ("Hold hands, never too tight.", "hold"),
        ("Never look down. Jump.", "jump"),
        ("Do not run but jump.", "jump"),
        ("Jump no more than four times.", "jump"),
        ("No more than four jumps.", "jumps"),
        ("Not only jump.", "jump"),
        ("Never stop spinning.", "spinning"),
        ("Land without a sound, then jump.", "jump"),
        ("Jump, or not, as you like.", "jump"),
        ("Those not dancing hold the cards.", "hold"),
    ],
)
def test_what_is_not_ruled_out(text: str, form: str) -> None:
    assert not word(text, form).denied


@pytest.mark.parametrize(
    ("text", "form", "unreal"),
    [
        ("As if you held hands.", "held", True),
        ("Move as though you were lifting a friend.", "lifting", True),
        ("Imagine the lights going out.", "lights", True),
        ("Pull an imaginary rope.", "rope", True),
        ("Fall like a dropped plate.", "plate", True),
        ("Fall like a dropped plate.", "fall", False),
        ("Fall like a plate, then run.", "run", False),
        ("Jump as high as you like in the air.", "air", False),
        ("Pretend to sleep. Wake up.", "wake", False),
        ("Hold the picture up high.", "high", False),
    ],
)
def test_what_is_only_likened_or_imagined(text: str, form: str, unreal: bool) -> None:
    assert word(text, form).unreal is unreal


def test_things_and_deeds() -> None:
    assert word("Take the lift up.", "lift").as_thing
    assert not word("You lift your arms.", "lift").as_thing
    assert word("Your partner's lift.", "lift").as_thing
    assert word("One loud tap means stop.", "tap").as_thing
    assert word("Three quick turns.", "turns").as_thing
    assert not word("Quick turns.", "turns").as_thing


def test_sentences_and_clauses() -> None:
    words = read("Walk, then stop. Freeze! Look").words
    assert [(w.form, w.sentence, w.clause) for w in words] == [
        ("walk", 0, 0),
        ("then", 0, 1),
        ("stop", 0, 1),
        ("freeze", 1, 2),
        ("look", 2, 3),
    ]


def test_sentences_as_they_are_written() -> None:
    reading = read("Hold on, please. Why? Because!  Go")
    assert reading.sentences == ("Hold on, please", "Why", "Because", "Go")
    assert reading.sentence_of(1) == "Hold on, please"


@pytest.mark.parametrize(
    ("text", "form", "number"),
    [
        ("four steps", "four", 4),
        ("16 counts", "16", 16),
        ("thirty-two counts", "thirty-two", 32),
        ("twenty four counts", "twenty-four", 24),
        ("twice", "twice", 2),
        ("steps", "steps", None),
    ],
)
def test_numbers(text: str, form: str, number: int | None) -> None:
    assert word(text, form).number == number


def test_owners_and_short_forms() -> None:
    assert [
        w.form for w in read("Your partner’s hand; we'll go, it's the dancers' turn").words
    ] == [
        "your",
        "partner",
        "hand",
        "we",
        "go",
        "it",
        "the",
        "dancers",
        "turn",
    ]
    assert word("Your partner's hand", "partner").owner


def test_words_stand_where_they_are_written() -> None:
    text = "The fête: “hold” each other’s hands – gently…"
    for one in read(text).words:
        assert plain_letters(text)[one.start : one.end].startswith(one.form[:1])
    assert "each-other" in read(text).places


def test_letters_without_accents_stay_in_their_places() -> None:
    assert plain_letters("Fête à ½…") == "fete a 1."


@pytest.mark.parametrize("text", ["… and wait. Then go.", ". Go", "- Go", "!"])
def test_a_text_may_begin_with_a_mark(text: str) -> None:
    reading = read(text)
    assert reading.sentences[:1] == tuple(
        reading.sentence_of(at) for at in range(min(1, len(reading.words)))
    )
    assert all(word.sentence < len(reading.sentences) for word in reading.words)
