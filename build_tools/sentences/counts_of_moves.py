"""How many counts a text gives to a unit's own moves and motifs: "sink for six", "rock, two".

`numbers_of_counts` tells which numbers may be meant so.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from build_tools.sentences.forms import forms
from build_tools.sentences.numbers_of_counts import Length, length_at
from build_tools.sentences.numbers_said import has_number, parts_with_numbers
from build_tools.sentences.plain import first_part, plain_words
from build_tools.sentences.reading import Reading, Word, read
from build_tools.sentences.word_lists import word_list

_PASSES_ON = word_list("of for to on in")
_EACH = word_list("each apiece every")
_LASTS = word_list(
    "last lasts lasting take takes taking is are be fill fills filling has have make "
    "makes need needs for uses use gets get"
)
_ALL = word_list("altogether all total whole")
_ALL_TOLD = word_list("in all altogether total")
_HOLDS = word_list(
    "hold holds holding freeze freezes frozen stay stays wait waits keep keeps after"
)
"""Before a move, these make the number that of what comes when it is done: hold the sink."""
_BREAKS = word_list("and then while but or before after until so when")
_BESIDE = word_list(
    "for in over takes take lasts last is are just only about of a an the all exactly with your "
    "its "
    "this together be gets get has have needs need down up out it us them still full slow long "
    "make makes"
)
"""Words that may stand between a move and its number."""
_FOR = word_list("for in over")
_FAR = 6


FROM_TO = ("first", "to", "last")
"""The form of `moves` in a claim about everything from one move to another."""


@dataclass(frozen=True, slots=True)
class Claim:
    """A length that a text gives: to a move, to all from one to another, or to the motif `name`.

    `listed` are the moves named in a row up to the move: the number may be that of them all.
    """

    moves: tuple[str, ...]
    name: str | None
    counts: int
    said: str
    listed: tuple[str, ...] = ()
    in_all: bool = False
    """Whether it is said to be that of all together: eight counts in all."""


def lengths_said(text: str, moves: Sequence[str], names: Sequence[str]) -> tuple[Claim, ...]:
    """Every length the text gives to one of `moves` or to one of the motifs `names`."""
    named = _any_of((*moves, *names))
    words = plain_words(text)
    if words.isdisjoint(named) or not has_number(text, words):
        return ()
    return tuple(
        claim
        for part in parts_with_numbers(text, named, _EACH)
        for claim in _Text(read(part), _at_words(moves), _at_words(names)).claims()
    )


_Forms = Mapping[str, tuple[frozenset[str], ...]]


@lru_cache(maxsize=64)
def _spelt(written: tuple[str, ...]) -> _Forms:
    """The forms of each word of what is written, longer ones last."""
    found = {one: tuple(forms(part) for part in one.casefold().split()) for one in written}
    return dict(sorted(found.items(), key=lambda item: len(item[1])))


@lru_cache(maxsize=64)
def _any_of(written: tuple[str, ...]) -> frozenset[str]:
    """Words of which every text with one of the moves or names holds one, as they are written."""
    known = (forms(one.casefold().split()[0]) for one in written)
    return frozenset(first_part(form) for some in known for form in some)


def _at_words(written: Sequence[str]) -> _Forms:
    return _spelt(tuple(written))


def _is_form(word: Word, forms: frozenset[str]) -> bool:
    return word.form in forms


class _Text:
    """One text with the moves and names found in it."""

    def __init__(self, reading: Reading, moves: _Forms, names: _Forms) -> None:
        self.words = reading.words
        self.reading = reading
        self.moves = dict(self._places(moves))
        self.names = dict(self._places(names))

    def _places(self, written: _Forms) -> Iterator[tuple[int, str]]:
        """The place of the last word of each, longer ones first so that they win."""
        places = self.reading.places
        for one, parts in written.items():
            starts = parts[0] & self.reading.forms
            for at in (at for form in starts for at in places[form]):
                row = self.words[at : at + len(parts)]
                if len(row) == len(parts) and all(map(_is_form, row, parts)):
                    yield at + len(parts) - 1, one

    def claims(self) -> Iterator[Claim]:
        """Each number that is a length, with what it is the length of."""
        at = 0
        while at < len(self.words):
            says_number = self.words[at].number is not None
            number = length_at(self.words, at, self.moves) if says_number else None
            if number is None:
                at += 1
                continue
            yield from self._claims_of(number)
            at = number.last + 1

    def _claims_of(self, number: Length) -> Iterator[Claim]:
        sentence = self.words[number.first].sentence
        if number.with_noun and (span := self._from_to(number)):
            yield span
            return
        after = self._word(number.last + 1, sentence)
        if (after and after.form in _EACH) or self._for_each(number):
            for place in self._before(number, sentence):
                yield self._claim(place, number)
            return
        if number.with_noun and (ahead := self._ahead(number)) is not None:
            of_motif = ahead in self.names and ahead not in self.moves
            yield self._whole(ahead, number) if of_motif else self._claim(ahead, number)
            return
        behind = self._behind(number)
        if behind is not None:
            yield self._claim(behind, number)
        elif number.with_noun and (whole := self._whole_behind(number)) is not None:
            yield self._whole(whole, number)

    def _from_to(self, number: Length) -> Claim | None:
        """Ten counts from the first rock to the final sink."""
        sentence = self.words[number.first].sentence
        after = [self._word(number.last + at, sentence) for at in (1, 2, 3)]
        said = [word.form for word in after if word]
        if "from" not in said or not _ALL_TOLD.issuperset(said[: said.index("from")]):
            return None
        ahead = [p for p in sorted(self.moves) if p > number.last and self._in(p, sentence)]
        if len(ahead) != 2:
            return None
        return Claim(
            (self.moves[ahead[0]], *FROM_TO[1:-1], self.moves[ahead[1]]),
            None,
            number.counts,
            self.reading.between(number.first, ahead[1]),
        )

    def _for_each(self, number: Length) -> bool:
        first, second = self._word(number.last + 1), self._word(number.last + 2)
        if not (first and second and first.form == "for" and second.form in _EACH):
            return False
        return self._ahead(number) is None

    def _before(self, number: Length, sentence: int) -> list[int]:
        """The moves in the sentence up to the number, or those of the sentence before it."""
        places = [p for p in sorted(self.moves) if p < number.first and self._in(p, sentence)]
        if places and self._behind(number) is None and len(places) < 2:
            return []
        if not places:
            places = [p for p in sorted(self.moves) if self._in(p, sentence - 1)]
            places = places if len(places) > 1 else []
        return [p for p in places if not self._numbers_between(p, number.first)]

    def _numbers_between(self, first: int, last: int) -> bool:
        return any(word.number is not None for word in self.words[first + 1 : last])

    def _ahead(self, number: Length) -> int | None:
        """Four counts of the sink, two counts for each glow, two counts rock; counts of a motif."""
        after = self._word(number.last + 1, self.words[number.first].sentence)
        if after is None or not self._same_clause(number.last, number.last + 1):
            return None
        if number.last + 1 in self.moves:
            return number.last + 1
        if after.form not in _PASSES_ON:
            return None
        passed = {after.form}
        for place in range(number.last + 2, min(number.last + 8, len(self.words))):
            word = self.words[place]
            passed.add(word.form)
            if not self._same_clause(number.last, place) or word.form in _BREAKS:
                return None
            if place in self.moves or (place in self.names and "of" in passed):
                return place
        return None

    def _behind(self, number: Length) -> int | None:
        """Sink for six; the break takes one count; a slow rock, six counts."""
        before = self._word(number.first - 1)
        said_for = number.with_noun and before is not None and before.form in _FOR
        for place in range(number.first - 1, max(-1, number.first - _FAR - 2), -1):
            word = self.words[place]
            if word.sentence != self.words[number.first].sentence:
                return None
            if self.words[number.first].clause - word.clause > 1:
                return None
            if place in self.moves:
                held = any(one.form in _HOLDS for one in self._clause_before(place))
                return None if word.denied or held else place
            if word.form in _BREAKS or word.number is not None or place in self.names:
                return None
            if not said_for and word.form not in _BESIDE and not word.form.endswith("ly"):
                return None
        return None

    def _clause_before(self, place: int) -> Sequence[Word]:
        """The words before `place` in its clause, the nearest few."""
        near = self.words[max(0, place - _FAR) : place]
        return [word for word in near if word.clause == self.words[place].clause]

    def _whole_behind(self, number: Length) -> int | None:
        """Our wave lasts for sixteen counts; the whole wave, sixteen counts in all."""
        sentence = self.words[number.first].sentence
        places = [p for p in self.names if p < number.first and self._in(p, sentence)]
        if not places:
            return None
        place = max(places)
        between = {word.form for word in self.words[place + 1 : number.first]}
        after = self.words[number.last + 1 : number.last + 3]
        says_all = any(word.form in _ALL for word in after if word.sentence == sentence)
        return place if says_all or between & (_LASTS - {"for"}) else None

    def _claim(self, place: int, number: Length) -> Claim:
        listed = self._listed(place)
        first, last = min(place, number.first), max(place, number.last)
        return Claim(
            (self.moves[place],),
            None,
            number.counts,
            self.reading.between(first, last),
            listed,
            in_all=self._in_all(number),
        )

    def _in_all(self, number: Length) -> bool:
        """A quarter turn and a rest, eight counts in all."""
        after = [self._word(number.last + at, self.words[number.last].sentence) for at in (1, 2)]
        said = [word.form for word in after if word]
        return bool(said) and (
            said[0] == "altogether" or said[:2] in (["in", "all"], ["in", "total"])
        )

    def _whole(self, place: int, number: Length) -> Claim:
        first, last = min(place, number.first), max(place, number.last)
        return Claim((), self.names[place], number.counts, self.reading.between(first, last))

    def _listed(self, place: int) -> tuple[str, ...]:
        """The moves named one after another up to `place`: rock and rush, or rock, rush, break."""
        sentence = self.words[place].sentence
        row = []
        for at in range(place, -1, -1):
            if self.words[at].sentence != sentence or self.words[at].number is not None:
                break
            if at in self.moves:
                row.append(self.moves[at])
        return tuple(reversed(row))

    def _word(self, at: int, sentence: int | None = None) -> Word | None:
        if not 0 <= at < len(self.words):
            return None
        word = self.words[at]
        return word if sentence is None or word.sentence == sentence else None

    def _in(self, place: int, sentence: int) -> bool:
        return self.words[place].sentence == sentence

    def _same_clause(self, first: int, second: int) -> bool:
        return self.words[first].clause == self.words[second].clause
