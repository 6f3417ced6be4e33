"""A text read into sentences and words, each word with what the words before it make of it.

In "Never hold hands", the holding is ruled out; in "as if you held hands" it is not meant; in "a
hold" it is a thing and no deed. Rules ask such questions through `sayings.Saying`.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache, partial
from typing import NamedTuple

from build_tools.sentences.numbers import NUMBER_WORDS, TENS, is_number_together, number_of
from build_tools.sentences.plain import JOINED, plain_letters
from build_tools.sentences.word_lists import word_list

_TOKEN = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)*'?|\d+(?:[.,]\d+)*|[.!?…;:,()\n–—/]")
_SENTENCE_END = frozenset(".!?…\n")
_CLAUSE_END = _SENTENCE_END | frozenset(";:()–—")
_MARKS = _CLAUSE_END | frozenset(",/")
_TAILS = ("'s", "'ll", "'re", "'ve", "'d", "'m", "'")
_FIRST_OF_TWO = frozenset((*(first for first, _ in JOINED), *TENS))

NEGATORS = word_list(
    "no not never cannot nobody none nothing neither nor without avoid avoids avoiding forbidden "
    "nowhere hardly refuse"
)
_NOT_AFTER = word_list(
    "more longer fewer less later just only matter too quite doubt higher wonder"
)
"""After no or not, these set a limit or say nothing: "no more than four", "not only"."""
_ENDS_NO = word_list("but until unless except although though because so then")
"""Words with which what is ruled out ends."""
_ENDS_UNREAL = word_list("but then until unless")
_IN_PLACE = word_list("rather instead place")
_GOES_ON = word_list("stop stops stopping stopped pause pausing cease rest resting slow")
"""Never stop spinning: the stopping is ruled out, and the spinning is meant."""
_SOME = word_list("those anyone people pupils dancers who")
"""Those not dancing: what they do is meant."""
_UNREAL = word_list(
    "imagine imagines imagining imagined picture pretend pretends pretending suppose mime miming "
    "as-if seem seems imaginary invisible pretended make-believe unseen pantomime magic"
)
_OF_ONE_THING = word_list("imaginary invisible pretended imagined pretend unseen magic")
"""These take the reality of the next things only."""
_WHO_LIKES = word_list("you they we i would who d pupils dancers partners anyone everyone may")
_DETERMINERS = word_list(
    "a an the this that these those your my our their his her its each every another any some no "
    "one first second third last next same own of whose such big little small"
)
_QUALITIES = word_list(
    "loud quiet soft gentle sharp hard quick slow fast long short single double sudden low high "
    "light heavy strong steady clear new good great wide tiny huge red green raised more full half"
)
"""Words that may stand between an article and its thing."""
_TELLING = (
    NEGATORS | _ENDS_NO | _IN_PLACE | _UNREAL | _DETERMINERS | _QUALITIES | NUMBER_WORDS | {"like"}
)
"""Words of letters alone that say something of those after them; no other does."""


class Word(NamedTuple):
    """One word: `form` in small letters, without the 's of an owner; `start` and `end` in the text.

    `sentence` and `clause` are numbered from 0 through the text. `denied`: it stands after a not
    or a never. `unreal`: it is only likened or imagined. `as_thing`: an article or owner stands
    before it. `number`: what a figure or a number word says.
    """

    form: str
    start: int
    end: int
    sentence: int
    clause: int
    denied: bool
    unreal: bool
    as_thing: bool
    owner: bool
    number: int | None


# a quarter of what a word costs is its making, and this is the shortest way
_word: Callable[[tuple[object, ...]], Word] = partial(tuple.__new__, Word)


@dataclass(frozen=True)
class Reading:
    """A text that has been read."""

    text: str
    words: tuple[Word, ...]

    @cached_property
    def places(self) -> Mapping[str, Sequence[int]]:
        """Where each form stands among the words."""
        found: dict[str, list[int]] = defaultdict(list)
        for at, word in enumerate(self.words):
            found[word.form].append(at)
        return found

    @cached_property
    def forms(self) -> frozenset[str]:
        """Every form that stands in it."""
        return frozenset(self.places)

    @cached_property
    def sentences(self) -> tuple[str, ...]:
        """The sentences as they are written, without the marks at their ends."""
        last = self.words[-1].sentence if self.words else -1
        return tuple(self._sentence(number) for number in range(last + 1))

    def sentence_of(self, place: int) -> str:
        """The sentence in which the word at `place` stands."""
        return self.sentences[self.words[place].sentence]

    def _sentence(self, number: int) -> str:
        own = [word for word in self.words if word.sentence == number]
        return self.text[own[0].start : own[-1].end]

    def between(self, first: int, last: int) -> str:
        """The text from the word `first` to the word `last`, as it is written."""
        return self.text[self.words[first].start : self.words[last].end]


@lru_cache(maxsize=1024)
def read(text: str) -> Reading:
    """Read a text. Asked for again soon, it is not read again."""
    tokens = _tokens(text)
    return Reading(text, tuple(_words(tokens)))


_Token = tuple[str, int, int, bool]
"""A word or a mark: its form, where it starts and ends, and whether it owns what follows."""


def _tokens(text: str) -> list[_Token]:
    found: list[_Token] = []
    previous = ""
    for match in _TOKEN.finditer(plain_letters(text)):
        form = match.group()
        owner = False
        if "'" in form:
            tail = next((tail for tail in _TAILS if form.endswith(tail)), "")
            form, owner = form[: len(form) - len(tail)], tail in ("'s", "'")
        if previous in _FIRST_OF_TWO and (together := _together(previous, form)):
            form = together
            found[-1] = (form, found[-1][1], match.end(), owner)
        else:
            found.append((form, *match.span(), owner))
        previous = form
    return found


def _together(first: str, second: str) -> str | None:
    """The one word that two stand for, if they do: each other, thirty two."""
    if is_number_together(first, second):
        return f"{first}-{second}"
    return JOINED.get((first, second))


def _words(tokens: Sequence[_Token]) -> list[Word]:
    # one long loop: every text that is read at all goes through it, word by word
    words: list[Word] = []
    sentence = clause = 0
    denied = unreal = ended = only_next = before_a_thing = False
    real_in = -1
    last = len(tokens) - 1
    previous = ""
    for at, (form, start, end, owner) in enumerate(tokens):
        as_thing = before_a_thing
        if form in _MARKS:
            before_a_thing = False
            if form in _SENTENCE_END:
                ended = True
                denied = unreal = False
            elif form in _CLAUSE_END:
                denied = unreal = False
            elif form == ",":
                denied = denied and _list_goes_on(tokens, at)
                unreal = unreal and real_in < 0 and _list_goes_on(tokens, at)
            clause += 1
            real_in = -1 if not unreal else real_in
            previous = form
            continue
        if ended:
            # a text may begin with a mark: … and wait
            sentence += bool(words)
            ended = False
        # most words are of no list, and nothing is asked of them
        telling = form in _TELLING or not form.isalpha()
        number = number_of(form) if telling else None
        before_a_thing = owner
        if telling:
            before_a_thing = _before_a_thing(form, owner, number, as_thing, at)
            if form in _ENDS_NO:
                denied = False
                if form in _ENDS_UNREAL:
                    unreal = False
        row = (form, start, end, sentence, clause, denied, unreal, as_thing, owner, number)
        words.append(_word(row))
        if unreal and real_in > 0:
            real_in -= 1
            unreal = real_in > 0
        if telling:
            after = tokens[at + 1][0] if at < last else ""
            if _denies(form, previous, after):
                denied, only_next = True, after in _GOES_ON or previous in _SOME
            elif only_next:
                denied = only_next = False
            elif form in _IN_PLACE and after in ("than", "of"):
                denied = form != "place" or previous == "in"
            if form in _UNREAL and not (form == "picture" and as_thing):
                unreal, real_in = True, 4 if form in _OF_ONE_THING else -1
            elif form == "like" and previous not in _WHO_LIKES and not as_thing:
                unreal, real_in = True, -1
        elif only_next:
            denied = only_next = False
        previous = form
    return words


def _before_a_thing(form: str, owner: bool, number: int | None, before: bool, at: int) -> bool:
    """Whether what follows is a thing: the run, your turn, a partner's lift, one loud tap."""
    if at and form in _QUALITIES:
        return before
    if owner or form in _DETERMINERS:
        return True
    return number is not None and number > 1 and form != "once"


def _denies(form: str, previous: str, after: str) -> bool:
    if form.endswith("n't"):
        return after not in _NOT_AFTER
    if form not in NEGATORS:
        return False
    if after in _NOT_AFTER and form in ("no", "not", "never"):
        return False
    return previous not in ("or", "why", "if")


def _list_goes_on(tokens: Sequence[_Token], comma: int) -> bool:
    """Whether a comma stands in a list that ends with "or": no kneeling, crawling or rolling."""
    run = 0
    for form, *_ in tokens[comma + 1 : comma + 9]:
        if form in ("or", "nor"):
            return True
        if form == ",":
            run = 0
        elif form in _CLAUSE_END:
            return False
        else:
            run += 1
        if run > 3:
            return False
    return False
