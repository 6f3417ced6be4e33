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
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property, lru_cache

from build_tools.sentences.many_texts import ManyTexts
from build_tools.sentences.phrases import Phrase, Words
from build_tools.sentences.plain import plain_words, words_by_sentence
from build_tools.sentences.reading import Reading, read

_GOES_ON = re.compile(r"(?<=\|)\s*\n\s*|\s*\n\s*(?= [~!])")


@dataclass(frozen=True, slots=True)
class Said:
    """Where a text says something: the text from its first word to its last.

    `words` are the words' places in what was read: the sentence, or the whole text where every
    place was asked for.
    """

    words: Words
    text: str
    read: str


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
    def anchors(self) -> frozenset[str]:
        """Words as they are written, of which each text that says it holds one: the rarest.

        A phrase that needs no word, only a number, has none.
        """
        return frozenset(self._by_written)

    def may_be_in(self, words: frozenset[str]) -> bool:
        """Whether a text with these words, split at hyphens, could say it: some phrase fits."""
        return bool(self._fitting(words))

    @cached_property
    def _without_words(self) -> tuple[Phrase, ...]:
        """Phrases that need no word, only a number."""
        return tuple(phrase for phrase in self._phrases if not phrase.needed)

    @cached_property
    def _by_written(self) -> dict[str, list[tuple[Phrase, tuple[frozenset[str], ...]]]]:
        """Phrases by their rarest word, so that most are never tried, and what else each needs."""
        found: dict[str, list[tuple[Phrase, tuple[frozenset[str], ...]]]] = {}
        for phrase in self._phrases:
            rarest, *others = phrase.needed_as_written or (frozenset(),)
            row = (phrase, tuple(others))
            for word in rarest:
                found.setdefault(word, []).append(row)
        return found

    def may_be_where(self, texts: ManyTexts, among: int) -> int:
        """Of many texts those that could say it: a bit each, as in `among`."""
        if self._without_words:
            return among
        found, with_any = 0, texts.with_any
        for phrase in self._phrases:
            # what is found already need not be asked again
            left = among & ~found
            for one in phrase.needed_as_written:
                left &= with_any(one)
                if not left:
                    break
            found |= left
        return found

    def _fitting(self, words: frozenset[str]) -> dict[Phrase, None]:
        """The phrases of which a text with these words holds all that they need, each once."""
        found = dict.fromkeys(self._without_words)
        # plain loops: this is asked of every text for every saying
        for word in self.anchors & words:
            for phrase, others in self._by_written[word]:
                for one in others:
                    if one.isdisjoint(words):
                        break
                else:
                    found[phrase] = None
        return found

    def _in_sentences(self, text: str) -> Iterator[tuple[str, Collection[Phrase]]]:
        """The sentences that could say it, each with the phrases of which it holds all words."""
        for sentence, words in words_by_sentence(text):
            if not self.anchors.isdisjoint(words):
                if phrases := self._fitting(words):
                    yield sentence, phrases
            elif self._without_words:
                yield sentence, self._without_words

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
        if not text or self._has_no_anchor_in(text):
            return ()
        phrases = {one: None for _, some in self._in_sentences(text) for one in some}
        if not phrases:
            return ()
        reading = read(text)
        found = sorted({words for phrase in phrases for words in phrase.found_in(reading)})
        return tuple(_said(reading, one) for one in found if not meant or _meant(reading, one))

    def in_any(self, texts: Iterable[str | None]) -> bool:
        """Whether one of the texts says it."""
        return any(self.said(text) for text in texts)

    def _first(self, text: str | None, wanted: Callable[[Reading, Words], bool]) -> Said | None:
        if not text or self._has_no_anchor_in(text):
            return None
        for sentence, phrases in self._in_sentences(text):
            reading = read(sentence)
            found = (words for phrase in phrases for words in phrase.found_in(reading))
            first = min((words for words in found if wanted(reading, words)), default=None)
            if first:
                return _said(reading, first)
        return None

    def _has_no_anchor_in(self, text: str) -> bool:
        """Whether the words of a text alone show that it does not say it, as most do not."""
        return self.anchors.isdisjoint(plain_words(text)) and not self._without_words


@lru_cache(maxsize=512)
def saying_of(phrases: str) -> Saying:
    """A saying of a unit's own words; asked for again soon, it is not made again."""
    return Saying(phrases)


def _meant(reading: Reading, words: Words) -> bool:
    return not any(reading.words[at].denied or reading.words[at].unreal for at in words)


def _not_denied(reading: Reading, words: Words) -> bool:
    return not _denied(reading, words)


def _denied(reading: Reading, words: Words) -> bool:
    return any(reading.words[at].denied for at in words)


def _in_any_way(reading: Reading, words: Words) -> bool:
    return bool(reading.words and words)


def _said(reading: Reading, words: Words) -> Said:
    return Said(words, reading.between(words[0], words[-1]), reading.text)
