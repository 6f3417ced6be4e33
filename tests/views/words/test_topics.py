"""Topics in words, with capitals where a topic is a proper name."""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.model.bank import Topic
from build_tools.views.words.topics import topics_in_words
from tests.support.sound_bank import real_bank


@pytest.mark.parametrize(
    ("topics", "shown"),
    [
        (("rock-pools", "coasts", "storms"), "Rock pools, coasts and storms"),
        (("machines", "victorians"), "Machines and Victorians"),
        (("rain", "romans", "vikings", "tudors"), "Rain, Romans, Vikings and Tudors"),
        (("rain", "stone-age"), "Rain and Stone Age"),
        (("rain", "iron-age"), "Rain and Iron Age"),
        (("rain", "great-fire"), "Rain and Great Fire"),
        (("rain", "ancient-greeks"), "Rain and ancient Greeks"),
    ],
)
def test_topics_are_words_and_proper_names_keep_their_capitals(
    topics: tuple[str, ...], shown: str
) -> None:
    assert topics_in_words(real_bank(), topics) == shown


def test_a_topic_that_the_bank_does_not_list_is_shown_too() -> None:
    bank = replace(real_bank(), topics={})
    assert topics_in_words(bank, ("victorians",)) == "Victorians"
    assert topics_in_words(bank, ("rain", "victorians")) == "Rain and victorians"


def test_a_word_is_no_proper_name_because_one_near_word_starts_with_a_capital() -> None:
    topic = replace(next(iter(real_bank().topics.values())), also=("court dance", "Court"))
    assert isinstance(topic, Topic)
    bank = replace(real_bank(), topics={"courts": topic})
    assert topics_in_words(bank, ("rain", "courts")) == "Rain and courts"
