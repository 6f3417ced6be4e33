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

A line that ends with `|` goes on in the next.

A text says it where a phrase matches and none of its words is denied ("never hold") or unreal
("as if you held"): `said`. Where it stands denied, `denied` finds it.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property

from build_tools.sentences.forms import forms
from build_tools.sentences.named_lists import NAMED
from build_tools.sentences.reading import Reading, Word, read

Words = tuple[int, ...]
"""Places of words in a reading."""

_NEAR = 3
_GOES_ON = re.compile(r"\|\s*\n\s*")
_NUMBER = re.compile(r"#(\d*)(\.\.)?(\d*)$")


@dataclass(frozen=True, slots=True)
class Said:
    """Where a text says something: the words' places, and the text from the first to the last."""

    words: Words
    text: str


@dataclass(frozen=True, slots=True)
class _Slot:
    """One word of a phrase. `gap` is how many words may stand before it."""

    forms: frozenset[str] | None = None
    numbers: tuple[int, int] | None = None
    only_things: frozenset[str] = frozenset()
    """Those of the forms that fit as a noun only."""
    optional: bool = False
    as_thing: bool | None = None
    gap: int = 0
    over_commas: bool = False
    after_comma: bool = False
    starts: bool = False
    ends: bool = False
    not_before: frozenset[str] = frozenset()
    """Words that may not follow it."""
    not_after: frozenset[str] = frozenset()
    """Words that may not stand before it in its clause, up to `_NEAR` away."""

    def fits(self, word: Word) -> bool:
        if self.as_thing is not None and word.as_thing != self.as_thing:
            return False
        if self.numbers is not None:
            return word.number is not None and self.numbers[0] <= word.number <= self.numbers[1]
        if self.forms is None:
            return True
        if word.form not in self.forms:
            return False
        return word.as_thing or word.form not in self.only_things


@dataclass(frozen=True, slots=True)
class _Phrase:
    """A phrase ready to be looked for. `needed`: of each of these sets a text holds one form."""

    slots: tuple[_Slot, ...]
    needed: tuple[frozenset[str], ...]

    @property
    def first(self) -> frozenset[str] | None:
        """The forms of the first word, where it has to be there."""
        slot = self.slots[0]
        return None if slot.optional else slot.forms


@dataclass(frozen=True)
class Saying:
    """What may be said, as phrases. See the module for how they are written."""

    phrases: str
    lists: Mapping[str, str] = field(default_factory=dict)
    """Word lists of its own, by name; the names in `named_lists` are known to all."""

    @cached_property
    def _phrases(self) -> tuple[_Phrase, ...]:
        slots = (self._slots(line) for line in self._lines())
        return tuple(_Phrase(row, tuple(_needed(row))) for row in slots)

    @cached_property
    def words(self) -> frozenset[str]:
        """The dictionary words it is written with, those of its lists among them."""
        parts = [part for line in self._lines() for part in line.split()]
        parts += [word for words in self.lists.values() for word in words.split()]
        plain = (part.lstrip("?!").removeprefix("v:").removeprefix("n:") for part in parts)
        return frozenset(word.rstrip("+") for part in plain for word in part.split("|"))

    @cached_property
    def anchors(self) -> frozenset[str] | None:
        """Forms of which each text that says it holds one; None if a phrase has only numbers."""
        found: set[str] = set()
        for phrase in self._phrases:
            if not phrase.needed:
                return None
            found |= min(phrase.needed, key=len)
        return frozenset(found)

    @cached_property
    def written(self) -> frozenset[str]:
        """The first part of each anchor as it is written: thirty of thirty-two, each of each other.

        Empty where there are no anchors.
        """
        return frozenset(form.partition("-")[0] for form in self.anchors or ())

    def said(self, text: str | None) -> Said | None:
        """The first place where the text says it, and means it."""
        return self._first(text, _meant)

    def denied(self, text: str | None) -> Said | None:
        """The first place where the text rules it out: "nobody holds hands"."""
        return self._first(text, _denied)

    def mentioned(self, text: str | None) -> Said | None:
        """The first place where the text speaks of it, in whatever way."""
        return self._first(text, _in_any_way)

    def all_in(self, text: str | None) -> tuple[Said, ...]:
        """Every place where the text says it and means it, in the order of the text."""
        if not text:
            return ()
        reading = read(text)
        found = sorted(set(self._matches(reading)))
        return tuple(_said(reading, words) for words in found if _meant(reading, words))

    def in_any(self, texts: Iterable[str | None]) -> bool:
        """Whether one of the texts says it."""
        return any(self.said(text) for text in texts)

    def _first(self, text: str | None, wanted: Callable[[Reading, Words], bool]) -> Said | None:
        if not text:
            return None
        reading = read(text)
        found = (words for words in self._matches(reading) if wanted(reading, words))
        first = min(found, default=None)
        return _said(reading, first) if first else None

    def _matches(self, reading: Reading) -> Iterator[Words]:
        places = reading.places
        if self.anchors is not None and self.anchors.isdisjoint(places):
            return
        for phrase in self._phrases:
            if any(forms.isdisjoint(places) for forms in phrase.needed):
                continue
            starts: Iterable[int]
            if phrase.first is None:
                starts = range(len(reading.words))
            else:
                starts = (at for form in phrase.first.intersection(places) for at in places[form])
            for start in starts:
                yield from _fit(reading.words, phrase.slots, 0, start, ())

    def _lines(self) -> tuple[str, ...]:
        lines = _GOES_ON.sub("|", self.phrases).splitlines()
        return tuple(line for written in lines if (line := written.strip()))

    def _slots(self, line: str) -> tuple[_Slot, ...]:
        slots: list[_Slot] = []
        gap, over, comma, starts = 0, False, False, False
        for part in line.split():
            if part == "^":
                starts = True
            elif part == ",":
                over = comma = True
            elif part == "$":
                slots[-1] = replace(slots[-1], ends=True)
            elif part.startswith("~"):
                over = part.startswith("~~")
                gap = int(part.lstrip("~"))
            elif part.startswith("!<"):
                slots[-1] = replace(slots[-1], not_after=self._forms(part[2:]))
            elif part.startswith("!"):
                slots[-1] = replace(slots[-1], not_before=self._forms(part[1:]))
            else:
                slot = self._slot(part, gap, over)
                if slot.optional and (gap or comma or starts):
                    raise ValueError(f"a gap stands before a word that may be missing: {line}")
                slots.append(replace(slot, after_comma=comma, starts=starts))
                gap, over, comma, starts = 0, False, False, False
        if gap or comma or starts:
            raise ValueError(f"a word is missing at the end of: {line}")
        return tuple(slots)

    def _slot(self, part: str, gap: int, over: bool) -> _Slot:
        optional = part.startswith("?")
        part = part.removeprefix("?")
        as_thing = {"v:": False, "n:": True}.get(part[:2])
        part = part if as_thing is None else part[2:]
        slot = _Slot(optional=optional, as_thing=as_thing, gap=gap, over_commas=over)
        if match := _NUMBER.match(part):
            least, dots, most = match.groups()
            low = int(least) if least else 0
            high = int(most) if most else (10**9 if dots or not least else low)
            return replace(slot, numbers=(low, high))
        if part == "*":
            return slot
        return replace(slot, forms=self._forms(part), only_things=self._only_things(part))

    def _forms(self, part: str) -> frozenset[str]:
        return frozenset().union(*(forms(word.removeprefix("n:")) for word in self._named(part)))

    def _only_things(self, part: str) -> frozenset[str]:
        nouns = (word.removeprefix("n:") for word in self._named(part) if word.startswith("n:"))
        return frozenset().union(*map(forms, nouns))

    def _named(self, part: str) -> Iterator[str]:
        """The dictionary words of a part, with those of the lists it names."""
        for name in part.split("|"):
            if name.startswith("@"):
                listed = self.lists[name[1:]] if name[1:] in self.lists else NAMED[name[1:]]
                for word in listed.split():
                    yield from self._named(word)
            else:
                yield name


def _needed(slots: tuple[_Slot, ...]) -> Iterator[frozenset[str]]:
    return (slot.forms for slot in slots if slot.forms and not slot.optional)


def _fit(
    words: tuple[Word, ...],
    phrase: tuple[_Slot, ...],
    at_slot: int,
    start: int,
    found: Words,
) -> Iterator[Words]:
    """Every way in which the phrase from `at_slot` on fits the words from `start` on."""
    if at_slot == len(phrase):
        if found:
            yield found
        return
    slot = phrase[at_slot]
    if slot.optional:
        yield from _fit(words, phrase, at_slot + 1, start, found)
    before = words[found[-1]] if found else None
    for at in range(start, min(start + slot.gap + 1, len(words))):
        word = words[at]
        if before is not None and not _together(before, word, slot.over_commas):
            return
        if not slot.fits(word):
            continue
        if not _stands(words, at, slot):
            continue
        if slot.after_comma and before is not None and before.clause == word.clause:
            continue
        yield from _fit(words, phrase, at_slot + 1, at + 1, (*found, at))


def _stands(words: tuple[Word, ...], at: int, slot: _Slot) -> bool:
    """Whether the words around the one at `at` are as its slot wants them."""
    word = words[at]
    after = words[at + 1] if at + 1 < len(words) else None
    if slot.starts and at and words[at - 1].sentence == word.sentence:
        return False
    if slot.ends and after and after.sentence == word.sentence:
        return False
    if after and after.form in slot.not_before:
        return False
    near = words[max(0, at - _NEAR) : at] if slot.not_after else ()
    return not any(one.clause == word.clause and one.form in slot.not_after for one in near)


def _together(first: Word, second: Word, over_commas: bool) -> bool:
    if first.sentence != second.sentence:
        return False
    return over_commas or first.clause == second.clause


def _meant(reading: Reading, words: Words) -> bool:
    return not any(reading.words[at].denied or reading.words[at].unreal for at in words)


def _denied(reading: Reading, words: Words) -> bool:
    return any(reading.words[at].denied for at in words)


def _in_any_way(reading: Reading, words: Words) -> bool:
    return bool(reading.words and words)


def _said(reading: Reading, words: Words) -> Said:
    return Said(words, reading.between(words[0], words[-1]))
