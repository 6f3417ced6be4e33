"""A unit's own names in a text: whether pupils are asked to dance something as if they had it.

A motif is called by an everyday word. "The ember, then the gust" names the motif; "like an ember",
"an ember glows" and "the ember in the picture" do not.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache

from build_tools.sentences.explained import LATER
from build_tools.sentences.forms import forms
from build_tools.sentences.plain import first_part, plain_words, words_by_sentence
from build_tools.sentences.reading import Reading, Word, read
from build_tools.sentences.sayings import Saying
from build_tools.sentences.word_lists import word_list

_OWNED = word_list("the your our their my whole both that this each every entire of in with and to")
_DANCE = (
    "dance show run start begin go add put remember repeat perform do know play practise practice "
    "finish end use keep recall call join rehearse link bring take show answer try lead mark walk "
    "open close continue follow swap teach revise review"
)
_HAD = Saying(
    """
    v:@dance
    motif
    made|learnt|learned|know|again|remember|last|already
    first|second|third|next|then
    """,
    {"dance": _DANCE},
)
"""The sentence asks for dancing, or looks back."""
_DANCED = word_list("motif moves move goes went again first second once twice together now")
_HAVE = Saying("made|know|learnt|learned|again|remember|last|back|from|reminded|add|each|our|whole")


@lru_cache(maxsize=256)
def _parts(name: str) -> tuple[frozenset[str], ...]:
    """The words of a name, the last one also in the plural."""
    *others, last = name.casefold().replace("-", " ").split()
    return (*(frozenset((word,)) for word in others), frozenset((last, f"{last}s")))


def holds_word(text: str, word: str) -> bool:
    """Whether a word or a name stands in a text as it is."""
    parts = [one.form for one in read(word).words]
    forms_in = [one.form for one in read(text).words]
    starts = range(len(forms_in) - len(parts) + 1)
    return any(forms_in[at : at + len(parts)] == parts for at in starts)


def danced_by_name(text: str, name: str) -> str | None:
    """Where the text has pupils dance what is called `name`; None where it only uses the word."""
    parts = _parts(name)
    low = text.lower()
    if not any(last in low for last in parts[-1]):
        return None
    for sentence, words in words_by_sentence(text):
        if not parts[-1].isdisjoint(words) and (said := _danced_in(read(sentence), parts)):
            return said
    return None


def _danced_in(reading: Reading, parts: tuple[frozenset[str], ...]) -> str | None:
    starts = sorted(at for form in parts[0] for at in reading.places.get(form, ()))
    for at in starts:
        row = reading.words[at : at + len(parts)]
        if len(row) < len(parts) or not all(map(_is_form, row, parts)):
            continue
        if _as_name(reading, at, at + len(parts) - 1):
            return reading.between(at, at + len(parts) - 1)
    return None


def _is_form(word: Word, forms: frozenset[str]) -> bool:
    return word.form in forms


def _as_name(reading: Reading, first: int, last: int) -> bool:
    word = reading.words[first]
    if word.denied or word.unreal:
        return False
    sentence = reading.sentence_of(first)
    if not _asked(sentence):
        return False
    before = _before(reading, first)
    after = reading.words[last + 1] if last + 1 < len(reading.words) else None
    if before is not None and before.form in ("a", "an"):
        return False
    if before is None or before.clause != word.clause:
        ends = after is None or after.clause != word.clause
        return ends or (after is not None and after.form in _DANCED)
    return before.form in _OWNED or before.as_thing or (after is not None and after.form == "motif")


def _before(reading: Reading, at: int) -> Word | None:
    if at == 0 or reading.words[at - 1].sentence != reading.words[at].sentence:
        return None
    return reading.words[at - 1]


def danced_by_moves(text: str, moves: tuple[str, ...]) -> str | None:
    """Where the text has pupils dance moves as something they have: the glow you made."""
    low = text.lower()
    moves = tuple(move for move in moves if move.casefold() in low)
    reading = read(text) if moves else read("")
    for move in moves:
        for form in (move.casefold(), f"{move.casefold()}s"):
            for at in reading.places.get(form, ()):
                word = reading.words[at]
                before = _before(reading, at)
                if word.denied or word.unreal or before is None:
                    continue
                if before.form not in ("the", "your", "our", "their", "each"):
                    continue
                sentence = reading.sentence_of(at)
                if _HAVE.said(sentence) and not LATER.mentioned(sentence):
                    return reading.between(at - 1, at)
    return None


def listed_moves(text: str, moves: tuple[str, ...]) -> str | None:
    """Where the text names two or more of the moves one after another: glow, flicker, crumble."""
    if plain_words(text).isdisjoint(_first_parts(moves)):
        return None
    known, reading = _by_form(moves), read(text)
    row: list[int] = []
    for at, word in enumerate(reading.words):
        if word.form in known and not word.denied and not word.unreal:
            if row and at - row[-1] <= 2 and known[reading.words[row[-1]].form] != known[word.form]:
                row.append(at)
            else:
                row = [at]
            if len(row) > 1 and _asked(reading.sentence_of(at)):
                return reading.between(row[0], at)
    return None


@lru_cache(maxsize=256)
def _by_form(moves: tuple[str, ...]) -> Mapping[str, str]:
    return {form: move for move in moves for form in forms(move.casefold())}


@lru_cache(maxsize=256)
def _first_parts(moves: tuple[str, ...]) -> frozenset[str]:
    return frozenset(map(first_part, _by_form(moves)))


def _asked(sentence: str) -> bool:
    return _HAD.said(sentence) is not None and LATER.mentioned(sentence) is None


def named_title(text: str, letter: str, title: str) -> str | None:
    """Where the text has pupils dance a section, by its letter or by its idea as a title."""
    # read as words, the mark of A' is gone: "part A" does not name it
    written = letter.isalpha() or letter in text.replace("’", "'")
    called = [f"section {letter}", f"part {letter}"] if written else []
    if 2 <= len(title.split()) <= 6:
        called.append(title)
    for name in called:
        if said := _phrase(text, name):
            return said
    return None


@lru_cache(maxsize=256)
def _forms_of(name: str) -> tuple[list[str], frozenset[str]]:
    """The words of a name, and the first part of each."""
    forms_in_it = [word.form for word in read(name).words]
    return forms_in_it, frozenset(map(first_part, forms_in_it))


def _phrase(text: str, name: str) -> str | None:
    parts, needed = _forms_of(name)
    if not needed <= plain_words(text):
        return None
    reading = read(text)
    for at in range(len(reading.words) - len(parts) + 1):
        row = reading.words[at : at + len(parts)]
        if [word.form for word in row] != parts or any(w.denied or w.unreal for w in row):
            continue
        around = reading.sentence_of(at)
        rest = around.replace(reading.between(at, at + len(parts) - 1), "")
        if not LATER.mentioned(around) and _HAD.said(rest):
            return reading.between(at, at + len(parts) - 1)
    return None
