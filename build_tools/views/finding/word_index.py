"""The index of all words, cut into small parts by the first two letters of a word.

A browser that opens a page from a folder can only load scripts, so each part is one, and is loaded
when somebody types its letters. Measured on 1,500 units: 0.16 s to a first result from parts, 0.5
to 2.4 s from one whole index, with the processor slowed four times.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence

from build_tools.model.bank import Bank
from build_tools.views.finding.findable import Findable
from build_tools.views.finding.unit_words import Strength
from build_tools.views.finding.words_typed import shard_of, words_typed

Postings = tuple[tuple[int, ...], ...]
"""For each `Strength` in its order, the numbers of the units that have the word so."""
_MOST_SAID = 0.2
"""A word that more units than this part say in passing tells none of them apart."""
_FEW = 10
"""Below so many units every word is kept."""


def word_index(units: Sequence[Findable]) -> Mapping[str, Mapping[str, Postings]]:
    """The parts by their letters, each with its words; units are numbered as they stand."""
    numbers: dict[str, list[list[int]]] = defaultdict(lambda: [[] for _ in Strength])
    for number, unit in enumerate(units):
        for word, strength in unit.words.items():
            numbers[word][strength].append(number)
    most = len(units) * _MOST_SAID if len(units) >= _FEW else len(units)
    parts: dict[str, dict[str, Postings]] = defaultdict(dict)
    for word in sorted(numbers):
        found = numbers[word]
        if len(found[Strength.SAID]) > most:
            found[Strength.SAID] = []
        if any(found):
            parts[shard_of(word)][word] = tuple(tuple(of) for of in found)
    return parts


def words_for_slips(parts: Mapping[str, Mapping[str, Postings]]) -> tuple[str, ...]:
    """The words that a slip is set right to: all but those that are only said in passing."""
    return tuple(
        word
        for part in parts.values()
        for word, found in part.items()
        if any(found[: Strength.SAID])
    )


def words_that_are_no_slips(bank: Bank, units: Sequence[Findable]) -> frozenset[str]:
    """Words of ordinary English that the bank writes: its vocabulary, and all that its units say.

    Many of them lead to no unit, since every unit has them; who types one means it.
    """
    texts = [
        *(t for word in bank.words.values() for t in (word.word, word.plain, word.in_class or "")),
        *bank.thesaurus.of_the_hall,
    ]
    said = (word for unit in units for word in unit.words)
    return frozenset({word for text in texts for word in words_typed(text)} | {*said})


def words_of_the_bank(bank: Bank) -> frozenset[str]:
    """The words of the bank's topics and thesaurus, whether or not a unit has them: no slips."""
    texts = [
        *(text for topic in bank.topics.values() for text in (topic.name, *topic.also)),
        *(text for entry in bank.thesaurus.near for text in entry.typed),
    ]
    return frozenset(word for text in texts for word in words_typed(text))
