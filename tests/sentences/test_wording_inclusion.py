"""Words of inclusion: kinds of pupils, work apart, no part, demonstrations."""

from __future__ import annotations

import re

import pytest

from build_tools.sentences.wording_inclusion import (
    APART,
    APART_WORDS,
    KINDS_OF_PUPILS,
    KINDS_WORDS,
    demonstrations,
    gives_no_part,
)


def words(text: str) -> set[str]:
    return set(re.findall("[a-z0-9]+", text.lower()))


@pytest.mark.parametrize(
    "text",
    [
        "Less able pupils do four counts.",
        "For the least-able: four counts.",
        "Higher ability: add a turn.",
        "Weaker dancers stand at the back.",
        "SEN: use a card.",
        "EAL pupils point.",
        "Gifted pupils lead.",
        "The bottom group claps.",
        "Struggling children clap.",
        "Boys jump higher.",
        "Autistic pupils may wear ear defenders.",
        "Those with special educational needs clap.",
    ],
)
def test_kinds_of_pupils_are_found(text: str) -> None:
    assert KINDS_OF_PUPILS.search(text)
    assert not KINDS_WORDS.isdisjoint(words(text))


@pytest.mark.parametrize(
    "text",
    [
        "Make the second push weaker than the first.",
        "Send the wave to a partner.",
        "Dance the slower one first.",
        "Start at the top of the hall; the group behind waits.",
        "Ask what the girl at the loom would do.",
        "Clap it, if you are able to.",
    ],
)
def test_words_of_dance_are_no_kind_of_pupil(text: str) -> None:
    assert not KINDS_OF_PUPILS.search(text)


@pytest.mark.parametrize(
    ("text", "apart"),
    [
        ("Work separately with an adult.", True),
        ("Do a different task in the corner.", True),
        ("Go back in class.", True),
        ("Dance with an adult beside you.", False),
        ("Use a corner for each four.", False),
        ("Stand away from the others.", False),
    ],
)
def test_work_apart(text: str, apart: bool) -> None:
    assert bool(APART.search(text)) is apart
    assert not apart or not APART_WORDS.isdisjoint(words(text))


@pytest.mark.parametrize(
    ("text", "nothing"),
    [
        ("Sits and watches.", True),
        ("Rests on a chair at the side, and looks on quietly.", True),
        ("Reads a book.", True),
        ("None", True),
        ("Sits and watches for four clear starts.", False),
        ("Tells a row where its beat had a gap.", False),
        ("Reads the poem aloud.", False),
        ("Writes down each row's order.", False),
    ],
)
def test_no_part(text: str, nothing: bool) -> None:
    assert gives_no_part(text) is nothing


def test_demonstrations_need_all_their_words() -> None:
    assert demonstrations(words("Watch me and do it")) == ("watch me",)
    assert demonstrations(words("Show a partner")) == ()
