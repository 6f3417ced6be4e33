"""By which words a unit is found, and how surely."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from build_tools.model.bank import NearWord, Thesaurus
from build_tools.model.unit import Unit
from build_tools.views.finding.findable import Findable, findable
from build_tools.views.finding.unit_words import Strength, unit_words
from build_tools.views.finding.word_index import word_index, words_for_slips, words_of_the_bank
from build_tools.views.finding.words_typed import shard_of
from tests.support.sound_bank import real_bank, real_unit


def all_found(units: Sequence[Unit]) -> list[Findable]:
    return [findable(real_bank(), unit) for unit in units]


def test_a_word_is_as_strong_as_where_it_stands() -> None:
    words = unit_words(real_bank(), real_unit())
    assert words["geography"] is Strength.ABOUT  # a subject
    assert words["seaside"] is Strength.ABOUT  # beside a topic in the bank's list
    assert words["anemone"] is Strength.IN_IT  # a motif
    assert words["rivers"] is Strength.NEAR  # the thesaurus
    assert words["tentacles"] is Strength.SAID  # what a drawing shows


def test_a_word_of_a_longer_phrase_for_a_topic_comes_after_a_topic_of_its_own() -> None:
    """Who types farm means farms before the farm animals of a unit about animals."""
    bank = real_bank()
    assert "farm animals" in bank.topics["animals"].also
    about_animals = replace(real_unit(), topics=("animals",))
    assert unit_words(bank, about_animals)["farm"] is Strength.IN_IT
    assert unit_words(bank, replace(real_unit(), topics=("farms",)))["farm"] is Strength.ABOUT
    assert "under the sea" in bank.topics["ocean-life"].also
    at_sea = replace(real_unit(), topics=("ocean-life",))
    assert unit_words(bank, at_sea)["sea"] is Strength.ABOUT, "little words make no phrase"


def test_little_words_and_words_of_the_room_lead_nowhere() -> None:
    words = unit_words(real_bank(), real_unit())
    assert not {"the", "under", "about", "walk", "knees", "drum"} & set(words)


def test_the_thesaurus_leads_to_what_it_means() -> None:
    bank = replace(
        real_bank(),
        thesaurus=Thesaurus(
            near=(
                NearWord(("paddling",), (), ("coasts",), ()),
                NearWord(("harvest mice",), (), (), ("habitats",)),
                NearWord(("terrain",), ("Geography",), (), ()),
            )
        ),
    )
    words = unit_words(bank, real_unit())
    assert words["paddling"] is words["terrain"] is Strength.ABOUT
    assert words["mice"] is Strength.NEAR


def test_the_thesaurus_of_the_bank_names_topics_and_subjects_that_there_are() -> None:
    bank = real_bank()
    for entry in bank.thesaurus.near:
        assert {*entry.topics, *entry.near} <= set(bank.topics), entry.typed


def test_every_word_lies_in_the_part_of_its_first_letters_and_leads_back_to_its_unit() -> None:
    bank = real_bank()
    parts = word_index(all_found(bank.units))
    for letters, words in parts.items():
        assert {shard_of(word) for word in words} == {letters}
    for number, unit in enumerate(bank.units):
        for word, strength in unit_words(bank, unit).items():
            assert number in parts[shard_of(word)][word][strength]


def test_a_word_that_many_units_say_in_passing_is_left_out() -> None:
    many = (real_unit(),) * 12
    parts = word_index(all_found(many))
    assert "tentacles" not in parts["te"]
    assert len(parts["an"]["anemone"][Strength.IN_IT]) == len(many)


def test_slips_are_set_right_to_words_that_units_have() -> None:
    bank = real_bank()
    known = set(words_for_slips(word_index(all_found(bank.units))))
    assert {"storms", "victorian"} <= known
    assert "tentacles" not in known
    assert "romans" in words_of_the_bank(bank) - known
