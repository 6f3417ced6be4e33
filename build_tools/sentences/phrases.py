"""One phrase of a saying: how it is written, and where in a text's words it stands.

`sayings` tells how phrases are written.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property, lru_cache

from build_tools.sentences.forms import UNCHANGING, forms
from build_tools.sentences.named_lists import NAMED
from build_tools.sentences.plain import first_part
from build_tools.sentences.reading import Reading, Word

Words = tuple[int, ...]
"""Places of words in a reading."""

_NEAR = 3
_LITTLE_WORD = 60
"""A word such as in or the stands in as many texts as this many forms of others."""
_NUMBER = re.compile(r"#(\d*)(\.\.)?(\d*)$")


@dataclass(frozen=True, slots=True)
class Slot:
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
    looks_around: bool = field(init=False)
    """Whether the words around it decide too."""

    def __post_init__(self) -> None:
        around = self.starts or self.ends or self.not_before or self.not_after
        object.__setattr__(self, "looks_around", bool(around))

    def fits(self, word: Word) -> bool:
        """Whether a word alone is what the slot asks for."""
        if self.as_thing is not None and word.as_thing != self.as_thing:
            return False
        if self.numbers is not None:
            return word.number is not None and self.numbers[0] <= word.number <= self.numbers[1]
        if self.forms is None:
            return True
        if word.form not in self.forms:
            return False
        return word.as_thing or word.form not in self.only_things


@dataclass(frozen=True, eq=False)
class Phrase:
    """A phrase as it is written, and the word lists that it may name."""

    written: str
    lists: Mapping[str, str]

    @cached_property
    def slots(self) -> tuple[Slot, ...]:
        """Its words in order."""
        slots: list[Slot] = []
        gap, over, comma, starts = 0, False, False, False
        for part in self.written.split():
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
                slot = self._slot(part, gap, over, comma, starts)
                if slot.optional and (gap or comma or starts):
                    raise ValueError(
                        f"a gap stands before a word that may be missing: {self.written}"
                    )
                slots.append(slot)
                gap, over, comma, starts = 0, False, False, False
        if gap or comma or starts:
            raise ValueError(f"a word is missing at the end of: {self.written}")
        return tuple(slots)

    @cached_property
    def needed(self) -> tuple[frozenset[str], ...]:
        """Sets of forms, of each of which a text with the phrase holds one; the rarest first."""
        sets = (slot.forms for slot in self.slots if slot.forms and not slot.optional)
        return tuple(sorted(sets, key=_commonness))

    @cached_property
    def needed_as_written(self) -> tuple[frozenset[str], ...]:
        """The same by the first part of each form: thirty of thirty-two, each of each other."""
        return tuple(map(_as_written, self.needed))

    def may_be_in(self, words: frozenset[str]) -> bool:
        """Whether a sentence with these words, split at hyphens, holds all that it needs."""
        return not any(one.isdisjoint(words) for one in self.needed_as_written)

    @cached_property
    def words(self) -> frozenset[str]:
        """The dictionary words it is written with, those of the lists it names among them."""
        parts = (part.lstrip("?!<") for part in self.written.split())
        plain = (part.removeprefix("v:").removeprefix("n:") for part in parts)
        named = (word.removeprefix("n:") for part in plain for word in self._named(part))
        return frozenset(word.rstrip("+") for word in named if word)

    def found_in(self, reading: Reading) -> Iterator[Words]:
        """Every place where the phrase stands, whether it is meant or not, in no order."""
        words, first = reading.words, self.slots[0]
        if first.forms is None or first.optional:
            for start in range(len(words)):
                yield from _fit(words, self.slots, 0, start, ())
            return
        for form in first.forms & reading.forms:
            for start in reading.places[form]:
                yield from _fit(words, self.slots, 0, start, ())

    def _slot(self, part: str, gap: int, over: bool, comma: bool, starts: bool) -> Slot:
        optional = part.startswith("?")
        part = part.removeprefix("?")
        as_thing = {"v:": False, "n:": True}.get(part[:2])
        part = part if as_thing is None else part[2:]
        numbers = _numbers(part)
        named = () if numbers or part == "*" else self._named(part)
        return Slot(
            forms=_forms_of(named) if named else None,
            numbers=numbers,
            only_things=_only_things(named),
            optional=optional,
            as_thing=as_thing,
            gap=gap,
            over_commas=over,
            after_comma=comma,
            starts=starts,
        )

    def _forms(self, part: str) -> frozenset[str]:
        return _forms_of(self._named(part))

    def _named(self, part: str) -> tuple[str, ...]:
        """The dictionary words of a part, with those of the lists it names."""
        if "@" not in part:
            return tuple(part.split("|"))
        found: list[str] = []
        for name in part.split("|"):
            if name.startswith("@"):
                listed = self.lists[name[1:]] if name[1:] in self.lists else NAMED[name[1:]]
                found += self._in_list(listed)
            else:
                found.append(name)
        return tuple(found)

    def _in_list(self, listed: str) -> Sequence[str]:
        if "@" not in listed and "|" not in listed:
            return listed.split()
        return [word for one in listed.split() for word in self._named(one)]


def _numbers(part: str) -> tuple[int, int] | None:
    """The least and the most that a part with `#` asks for; None where it asks for words."""
    match = _NUMBER.match(part)
    if not match:
        return None
    least, dots, most = match.groups()
    low = int(least) if least else 0
    return low, int(most) if most else (10**9 if dots or not least else low)


# Many phrases name the same lists: their forms are spelt out once, and kept once.


@lru_cache(maxsize=4096)
def _forms_of(named: tuple[str, ...]) -> frozenset[str]:
    return frozenset().union(*(forms(word.removeprefix("n:")) for word in named))


@lru_cache(maxsize=4096)
def _only_things(named: tuple[str, ...]) -> frozenset[str]:
    """Those of the forms that fit as a noun only."""
    nouns = [forms(word[2:]) for word in named if word.startswith("n:")]
    if not nouns:
        return frozenset()
    others = (forms(word) for word in named if not word.startswith("n:"))
    return frozenset().union(*nouns).difference(*others)


@lru_cache(maxsize=4096)
def _as_written(some: frozenset[str]) -> frozenset[str]:
    """The first part of each form."""
    together = " ".join(some)
    if "-" not in together and "'" not in together:
        return some
    return frozenset(map(first_part, some))


def _commonness(one: frozenset[str]) -> int:
    """Roughly how often a text holds one of the forms: little words stand everywhere."""
    return len(one) + _LITTLE_WORD * len(one & UNCHANGING)


def _fit(
    words: tuple[Word, ...],
    phrase: tuple[Slot, ...],
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
    forms = slot.forms
    is_last = at_slot == len(phrase) - 1
    for at in range(start, min(start + slot.gap + 1, len(words))):
        word = words[at]
        if before is not None and not _together(before, word, slot.over_commas):
            return
        # most words are seen here to be others, without another call
        if forms is not None and word.form not in forms:
            continue
        if not slot.fits(word) or (slot.looks_around and not _stands(words, at, slot)):
            continue
        if slot.after_comma and before is not None and before.clause == word.clause:
            continue
        if is_last:
            yield (*found, at)
        else:
            yield from _fit(words, phrase, at_slot + 1, at + 1, (*found, at))


def _stands(words: tuple[Word, ...], at: int, slot: Slot) -> bool:
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
