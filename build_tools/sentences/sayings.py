"""One thing that texts may say in many wordings, and whether a text says it.

A saying is written as a list of phrases, one a line, in dictionary words:

    hold|take|grab ~4 @hands        any form of the words; up to 4 words between; a named list
    v:lift ~2 @somebody             `v:` as a verb: no article, owner or "no" stands before it
    n:drop                          `n:` as a noun: "the drop"; in a list too, for that word alone
    ?right down                     `?` may be missing
    soft+ ~3 land                   `soft+` also softer, softly, softness
    =felt                           that form alone
    #20.. jump                      a number of 20 or more; `#` any number, `#2..4` from 2 to 4
    tap ~~2 , stop                  a comma or colon stands between
    ^ run                           at the start of a sentence; `$` at its end
    turn !into|to                   not followed by these words
    crawl !<finger|hand             none of these in the clause before it, up to 3 words away
    hand ~~8 shoulder               `~~8` may also pass commas; `~` stays between commas

A line that ends with `|` goes on in the next, and one that starts with `~` or `!` goes on from
the last.

A text says it where a phrase matches and none of its words is denied ("never hold") or unreal
("as if you held"): `said`. Where it stands denied, `denied` finds it.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property

from build_tools.sentences.phrases import Phrase, Words
from build_tools.sentences.reading import Reading, first_part, plain_words, read

_GOES_ON = re.compile(r"(?<=\|)\s*\n\s*|\s*\n\s*(?= [~!])")


@dataclass(frozen=True, slots=True)
class Said:
    """Where a text says something: the words' places, and the text from the first to the last."""

    words: Words
    text: str


@dataclass(frozen=True)
class Saying:
    """What may be said, as phrases. See the module for how they are written."""

    phrases: str
    lists: Mapping[str, str] = field(default_factory=dict)
    """Word lists of its own, by name; the names in `named_lists` are known to all."""

    @cached_property
    def _phrases(self) -> tuple[Phrase, ...]:
        lines = _GOES_ON.sub("", self.phrases).splitlines()
        return tuple(Phrase(line, self.lists) for one in lines if (line := one.strip()))

    @cached_property
    def words(self) -> frozenset[str]:
        """The dictionary words it is written with, those of its lists among them."""
        return frozenset().union(*(phrase.words for phrase in self._phrases))

    @cached_property
    def anchors(self) -> frozenset[str] | None:
        """Forms of which each text that says it holds one; None if a phrase has only numbers."""
        return None if self._anywhere else frozenset(self._by_form)

    @cached_property
    def written(self) -> frozenset[str]:
        """The first part of each anchor as it is written; empty where there are no anchors."""
        return frozenset(map(first_part, self.anchors or ()))

    def may_be_in(self, words: frozenset[str]) -> bool:
        """Whether a text with these words, split at hyphens, could say it: some phrase fits."""
        if self._anywhere:
            return True
        return any(
            not any(one.isdisjoint(words) for one in phrase.needed_as_written)
            for word in self.written.intersection(words)
            for phrase in self._by_written[word]
        )

    @cached_property
    def _anywhere(self) -> tuple[Phrase, ...]:
        """Phrases that need no word, only a number."""
        return tuple(phrase for phrase in self._phrases if not phrase.needed)

    @cached_property
    def _by_form(self) -> dict[str, list[Phrase]]:
        """The phrases by the forms of their rarest word, so that most are never tried."""
        return _index((phrase, phrase.needed) for phrase in self._phrases)

    @cached_property
    def _by_written(self) -> dict[str, list[Phrase]]:
        return _index((phrase, phrase.needed_as_written) for phrase in self._phrases)

    def said(self, text: str | None, likened: bool = False) -> Said | None:
        """The first place where the text says it, and means it.

        With `likened`, also where it is only likened or imagined: land like a cat.
        """
        return self._first(text, _not_denied if likened else _meant)

    def denied(self, text: str | None) -> Said | None:
        """The first place where the text rules it out: "nobody holds hands"."""
        return self._first(text, _denied)

    def mentioned(self, text: str | None) -> Said | None:
        """The first place where the text speaks of it, in whatever way."""
        return self._first(text, _in_any_way)

    def all_in(self, text: str | None, meant: bool = True) -> tuple[Said, ...]:
        """Every place where the text says it, in the order of the text.

        With `meant`, only those where it is neither denied nor only likened.
        """
        if not text or not self.may_be_in(plain_words(text)):
            return ()
        reading = read(text)
        found = sorted(set(self._matches(reading)))
        return tuple(_said(reading, one) for one in found if not meant or _meant(reading, one))

    def in_any(self, texts: Iterable[str | None]) -> bool:
        """Whether one of the texts says it."""
        return any(self.said(text) for text in texts)

    def _first(self, text: str | None, wanted: Callable[[Reading, Words], bool]) -> Said | None:
        if not text or not self.may_be_in(plain_words(text)):
            return None
        reading = read(text)
        found = (words for words in self._matches(reading) if wanted(reading, words))
        first = min(found, default=None)
        return _said(reading, first) if first else None

    def _matches(self, reading: Reading) -> Iterator[Words]:
        tried: set[int] = set()
        for form in self._by_form.keys() & reading.places.keys():
            for phrase in self._by_form[form]:
                if id(phrase) not in tried:
                    tried.add(id(phrase))
                    yield from phrase.found_in(reading)
        for phrase in self._anywhere:
            yield from phrase.found_in(reading)


def _index(
    rows: Iterable[tuple[Phrase, tuple[frozenset[str], ...]]],
) -> dict[str, list[Phrase]]:
    found: dict[str, list[Phrase]] = {}
    for phrase, needed in rows:
        for form in needed[0] if needed else ():
            found.setdefault(form, []).append(phrase)
    return found


def _meant(reading: Reading, words: Words) -> bool:
    return not any(reading.words[at].denied or reading.words[at].unreal for at in words)


def _not_denied(reading: Reading, words: Words) -> bool:
    return not _denied(reading, words)


def _denied(reading: Reading, words: Words) -> bool:
    return any(reading.words[at].denied for at in words)


def _in_any_way(reading: Reading, words: Words) -> bool:
    return bool(reading.words and words)


def _said(reading: Reading, words: Words) -> Said:
    return Said(words, reading.between(words[0], words[-1]))
