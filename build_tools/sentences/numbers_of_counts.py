"""Numbers of counts in a text: "sixteen counts", "four apart", "in eight".

`length_at` finds a number that may be the length of a move: not four times, on four or four apart.
`counts_said` finds all that a text counts, and `lengths_after` bare numbers too, after some word.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence
from dataclasses import dataclass

from build_tools.sentences.plain import plain_words
from build_tools.sentences.reading import Word, read
from build_tools.sentences.word_lists import word_list

_COUNTS = word_list("count counts beat beats")
_SEVERAL = word_list("counts beats")
_SOFT = word_list("slow quick full whole more long steady even clear big small last first")
_GOES_ON = word_list(
    "and then as or but while before again each altogether together in to towards until with so "
    "exactly only now next please"
)
"""Words after a bare number with which something else begins."""
_NOT_A_LENGTH = word_list(
    "on from number numbers part lesson step by until till count counts at after another dancer "
    "dancers partner year years page wall than every first last next these those dancing letter of"
)
_APART = word_list("after apart later before behind between ahead early late")
_BEHIND = word_list("after apart later behind")
"""After a number of counts, these make it the time between one start and the next."""
_ROUGHLY = word_list(
    "within about every another first last than under over nearly roughly around at-least at-most "
    "least most almost"
)
"""Before a number of counts, these leave it open, or say which counts are meant."""
_OR_SO = word_list("so more less thereabouts")
"""After "or", these leave a number open."""
_INSTEAD = 8
"""Words within which the right number follows one that is denied: not four counts but eight."""
_FROM = 2
"""Counting aloud that starts later than this does not start with the move."""
_TIMES = word_list("once twice thrice single dozen")


@dataclass(frozen=True, slots=True)
class Length:
    """A number: the places of its first word and of the last that belongs to it.

    `with_noun`: it says what it counts, four counts; else it stands alone, rock four.
    """

    first: int
    last: int
    counts: int
    with_noun: bool


@dataclass(frozen=True, slots=True)
class CountsSaid:
    """A number of counts as a text says it.

    `apart`: between one start and the next; `waited`: until one's own start.
    """

    counts: int
    said: str
    apart: bool
    waited: bool = False


def counts_said(text: str) -> Iterator[CountsSaid]:
    """Every number of counts that is said and meant; what is said roughly is none."""
    if _SEVERAL.isdisjoint(plain_words(text)):
        return
    reading = read(text)
    words = reading.words
    for at, word in enumerate(words):
        if word.number is None or (word.form in _TIMES and word.form != "dozen"):
            continue
        noun = _noun(words, at)
        before = _word(words, at - 1, word.sentence)
        if noun is None or words[noun].form not in _SEVERAL or (before and before.form in _ROUGHLY):
            continue
        after = _word(words, noun + 1, word.sentence)
        apart = bool(after and after.form in _BEHIND and _same_clause(words, noun, noun + 1))
        if word.denied:
            right = _said_instead(words, noun)
            if right is not None:
                number, said = words[right].number or 0, reading.between(at, right)
                yield CountsSaid(number, said, apart or _is_between(words, right))
        elif not _left_open(words, noun):
            waited = bool(before and before.form in ("wait", "waits"))
            yield CountsSaid(word.number, reading.between(at, noun + apart), apart, waited)


def _said_instead(words: Sequence[Word], noun: int) -> int | None:
    """The place of the number that takes the place of a denied one: not four counts but eight."""
    for place in range(noun + 1, min(noun + _INSTEAD, len(words))):
        word = words[place]
        if word.sentence != words[noun].sentence:
            return None
        if word.number is not None and word.form not in _TIMES and not word.denied:
            alone = _noun(words, place) is None
            after = _word(words, place + 1, word.sentence)
            fine = after is None or not _same_clause(words, place, place + 1)
            known = fine or (after is not None and after.form in (*_GOES_ON, *_APART))
            return place if alone and known else None
    return None


def _is_between(words: Sequence[Word], number: int) -> bool:
    after = _word(words, number + 1, words[number].sentence)
    return bool(after and after.form in ("between", "apart"))


def _left_open(words: Sequence[Word], noun: int) -> bool:
    """Ten counts or so."""
    first, second = (_word(words, noun + n, words[noun].sentence) for n in (1, 2))
    return bool(first and second and first.form == "or" and second.form in _OR_SO)


def lengths_after(text: str, before: Container[str]) -> Iterator[int]:
    """Every length that stands after one of the words: in eight, for four counts, by twelve."""
    words = read(text).words
    for at, word in enumerate(words):
        if word.number is None or not at or words[at - 1].form not in before:
            continue
        length = length_at(words, at, (), before)
        if length is not None and _same_clause(words, at - 1, at):
            yield length.counts


def lengths_told(text: str) -> Iterator[int]:
    """Every length that the class is told to take, in the order of the text.

    Eight counts to walk; walk for six, two to turn; I count to twelve; four steps on four beats.
    """
    words = read(text).words
    for at, word in enumerate(words):
        if word.number is None or word.denied or word.form in ("once", "twice", "thrice"):
            continue
        before = _word(words, at - 1, word.sentence)
        noun = _noun(words, at)
        said = before.form if before and _same_clause(words, at - 1, at) else ""
        if noun is not None:
            # on ten beats is a length, on three slow beats a signal
            is_counts = words[noun].form == "counts" or (said == "on" and noun == at + 1)
            after = _word(words, noun + 1, word.sentence)
            of_something = after is not None and after.form == "of"
            open_or_when = said in _ROUGHLY or said in ("after", "until")
            if is_counts and not of_something and not open_or_when:
                yield word.number
        elif word.form not in _TIMES and _is_told(words, at, said):
            yield word.number


_GIVES = word_list("for in by")
_COUNTING = word_list("count counts counting")


def _is_told(words: Sequence[Word], at: int, before: str) -> bool:
    """Whether a bare number is a length: for six; four more to turn; I count to twelve."""
    if before in _GIVES:
        return length_at(words, at, (), _GIVES) is not None
    two_before = _word(words, at - 2, words[at].sentence)
    counted = before == "to" and two_before is not None and two_before.form in _COUNTING
    if counted or before in _COUNTING:
        return True
    after = at + 1
    if after < len(words) and words[after].form == "more":
        after += 1
    if after >= len(words) or not _same_clause(words, at, after):
        return False
    return words[after].form == "again" or (not before and words[after].form == "to")


def length_at(
    words: Sequence[Word], at: int, moves: Container[int], before: Container[str] = ()
) -> Length | None:
    """The length that begins at `at`; None where there is none. `moves` are places of moves.

    Words in `before` may stand before a bare number, whatever else they say elsewhere.
    """
    word = words[at]
    if word.number is None or word.form in _TIMES or word.denied:
        return None
    last, counts = _counted_aloud(words, at, word.number)
    noun = _noun(words, last)
    if noun is not None:
        return Length(at, noun, counts, with_noun=True) if _is_long(words, at, noun) else None
    if counts < 2 or not _stands_alone(words, at, last, moves, before):
        return None
    return Length(at, last, counts, with_noun=False)


def _counted_aloud(words: Sequence[Word], at: int, first: int) -> tuple[int, int]:
    """The last place and number of counting on: two, three, four. Five, six leads in to a move."""
    last, counts = at, first
    sentence = words[at].sentence
    while first <= _FROM and (after := _word(words, last + 1, sentence)):
        if after.number != counts + 1:
            break
        last, counts = last + 1, counts + 1
    return last, counts


def _noun(words: Sequence[Word], last: int) -> int | None:
    """The place of the word counts after the number: four counts, four slow counts."""
    for place in (last + 1, last + 2):
        word = _word(words, place, words[last].sentence)
        if word is None or not _same_clause(words, last, place):
            return None
        if word.form in _COUNTS:
            return place
        if word.form not in _SOFT:
            return None
    return None


def _is_long(words: Sequence[Word], at: int, noun: int) -> bool:
    """Whether so many counts are how long something is, and not when or how far apart."""
    after = _word(words, noun + 1, words[noun].sentence)
    if after and after.form in _APART and _same_clause(words, noun, noun + 1):
        return False
    before = _word(words, at - 1, words[at].sentence)
    if before is None:
        return True
    is_cue = before.form == "on" and words[noun].form in ("beat", "beats")
    return before.form not in ("every", "after", "another", "than") and not is_cue


def _stands_alone(
    words: Sequence[Word], at: int, last: int, moves: Container[int], fine: Container[str]
) -> bool:
    """Whether nothing stands beside a bare number that it could count, or be the name of."""
    before = _word(words, at - 1, words[at].sentence)
    known = before and before.form in _NOT_A_LENGTH and before.form not in fine
    if known and _same_clause(words, at - 1, at):
        return False
    after = _word(words, last + 1, words[last].sentence)
    if after is None or not _same_clause(words, last, last + 1):
        return True
    return after.form in _GOES_ON or last + 1 in moves


def _word(words: Sequence[Word], at: int, sentence: int) -> Word | None:
    """The word at the place, if it stands in that sentence."""
    if 0 <= at < len(words) and words[at].sentence == sentence:
        return words[at]
    return None


def _same_clause(words: Sequence[Word], first: int, second: int) -> bool:
    return words[first].clause == words[second].clause
