"""Which parts of the dance a text names, in the words in which a teacher speaks of them.

A motif or development is named by its own name: slow-wave is "the slow wave" or "slow waves". A
section is named by its letter after the word part or section, by the first words of its idea where
they are a title ("The tide. …"), and by what pupils look at in a lesson that shows it alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache

from build_tools.model.unit import Unit
from build_tools.sentences.word_lists import word_list
from build_tools.views.dance.when_made import StepPlace, progress
from build_tools.views.words.numbered import letters_said

_TOKEN = re.compile(r"[a-z]+(?:'s)?|[^\sa-z]")
_WORD = re.compile(r"[a-z]+")
_SENTENCE = re.compile(r"[.!?:;]")
_BETWEEN = re.compile(r",|\band\b|\bthen\b|\bwith\b")
_LITTLE = word_list(
    "the a an this that these those your our their its his her own each every one two three four "
    "five six seven eight first second third last next whole both all part parts section sections "
    "dance dances dancing of in on to for at with from"
)
"""Words that name no part by themselves."""
_BEFORE_A_NAME = word_list(
    "the this that these your our their its own each every one two three four five six many "
    "more slow quick first second last both all , and"
)
"""A name of one word is a name after one of these; elsewhere it may be an everyday word."""
_LONGEST_TITLE = 3


@dataclass(frozen=True, slots=True)
class NamedPart:
    """What a text names: the words, and the motifs, developments or sections so called."""

    said: str
    parts: frozenset[str]


Phrase = tuple[str, ...]


def parts_said(unit: Unit, text: str) -> tuple[NamedPart, ...]:
    """The parts of the dance that `text` names, the longest names first, each once."""
    found: dict[frozenset[str], NamedPart] = {}
    small = text.lower()
    names = [(phrase, parts) for phrase, parts in _names(unit).items() if may_hold(small, phrase)]
    tokens = [(token, stem(token)) for token in _TOKEN.findall(small)] if names else []
    taken: set[int] = set()
    for phrase, parts in names:
        for places in _places(phrase, tokens):
            if taken.intersection(places):
                continue
            taken.update(places)
            said = " ".join(tokens[n][0] for n in places)
            found.setdefault(parts, NamedPart(said, parts))
    for letter in letters_said(text, unit.dance.sections):
        parts = frozenset({letter})
        found.setdefault(parts, NamedPart(f"part {letter}", parts))
    return tuple(found.values())


def first_made(unit: Unit, parts: Iterable[str]) -> StepPlace | None:
    """Where the first of the parts is made; None where none of them is."""
    return min((p.made[0] for part in parts if (p := progress(unit)[part]).made), default=None)


def stems_in(text: str) -> frozenset[str]:
    """The stems of all the words of a text."""
    return frozenset(map(stem, _WORD.findall(text.lower())))


def may_hold(text: str, stems: Iterable[str]) -> bool:
    """Whether a text in small letters may hold a word of each stem; a word begins with its stem."""
    return all(one in text for one in stems)


@lru_cache(maxsize=4096)
def stem(word: str) -> str:
    """A word without the ending that it takes in a sentence: pops, popping and popped are pop."""
    word = word.removesuffix("'s")
    for ending in ("ing", "ed", "es", "s"):
        if word.endswith(ending) and len(word) > len(ending) + 2 and not word.endswith("ss"):
            word = word.removesuffix(ending)
            break
    if len(word) > 3 and word[-1] == word[-2] and word[-1] not in "sl":
        word = word[:-1]
    return word.rstrip("e") if len(word) > 3 else word


@lru_cache(maxsize=4)
def _names(unit: Unit) -> Mapping[Phrase, frozenset[str]]:
    """Every name, as stems, with what is so called; the longest first."""
    found: dict[Phrase, set[str]] = {}
    for part, phrase in (*_own_names(unit), *_titles(unit)):
        if phrase:
            found.setdefault(phrase, set()).add(part)
    own = set(found)
    for part, phrase in _looked_at(unit):
        # a lesson that looks at the wrong part gives the part no new name
        if phrase not in own:
            found.setdefault(phrase, set()).add(part)
    order = sorted(found, key=lambda phrase: (-len(phrase), phrase))
    return {phrase: frozenset(found[phrase]) for phrase in order}


def _own_names(unit: Unit) -> Iterator[tuple[str, Phrase]]:
    for name in (*unit.dance.motifs, *unit.dance.developments):
        yield name, tuple(stem(word) for word in name.split("-") if word.isalpha())


def _titles(unit: Unit) -> Iterator[tuple[str, Phrase]]:
    for letter, section in unit.dance.sections.items():
        if section.returns and "idea" not in section.changes:
            continue
        first = _SENTENCE.split(section.idea)[0]
        words = [w for w in _WORD.findall(first.lower()) if w not in _LITTLE]
        if len(first.split()) <= _LONGEST_TITLE and len(words) < _LONGEST_TITLE:
            yield letter, tuple(stem(word) for word in words)


def _looked_at(unit: Unit) -> Iterator[tuple[str, Phrase]]:
    for lesson in unit.lessons:
        shown = {name for step in lesson.steps for name in step.shows}
        if lesson.look_and_talk is None or len(shown) != 1:
            continue
        part = shown.pop()
        if part not in unit.dance.sections:
            continue
        for one in _BETWEEN.split(lesson.look_and_talk.at.lower()):
            words = [w for w in _WORD.findall(one) if w not in _LITTLE]
            if 0 < len(words) < _LONGEST_TITLE:
                yield part, tuple(stem(word) for word in words)


def _places(phrase: Phrase, tokens: list[tuple[str, str]]) -> Iterator[tuple[int, ...]]:
    """Where a name stands: its words side by side; drift-slow is the slow drift as well."""
    size = len(phrase)
    first = {phrase[0], phrase[-1]} if size == 2 else {phrase[0]}
    for n in range(len(tokens) - size + 1):
        if tokens[n][1] not in first:
            continue
        stems = tuple(one[1] for one in tokens[n : n + size])
        if stems != phrase and (size != 2 or stems != phrase[::-1]):
            continue
        if size > 1 or n == 0 or tokens[n - 1][0] in _BEFORE_A_NAME:
            yield tuple(range(n, n + size))
