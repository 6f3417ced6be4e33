"""Something that was made is put aside: it is not in the dance."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from build_tools.sentences.phrases import Words
from build_tools.sentences.reading import Reading, Word, read
from build_tools.sentences.sayings import Saying

_LISTS = {
    "it": "it them this that these those one two",
    "where": "dance final show finished performance sharing piece order whole ending assembly",
}

LEFT_OUT = Saying(
    """
    leave|miss ~5 out !of|into
    leave|cut|take|keep|drop ~5 out of ~2 @where
    be cut|dropped|retired|scrapped
    be ~2 warm-up|game|sketch|exercise|experiment|trial
    warm up game|exercise
    everything|all|everyone ~4 but the
    left out
    v:drop the|that|this|your|our|it|them
    drop|fall|go ~1 out !of
    set|put|lay|leave ~4 aside|by|away|behind
    let ~4 go
    goodbye|farewell|retire|discard|scrap|abandon|lose|bin|delete|shelve|park|reject|ditch
    v:cut ~6 from ~2 @where
    except|apart|without|minus|excluding|bar ~2 the
    do ~1 without the|it|them
    just|only ~2 try|practice|warm-up|fun|exercise|start
    for ~1 try|practice|warming|fun|trying
    warm up only
    as ~3 warm|practice|exercise|starter
    another|later|next day|dance|time|unit|year
    notebook|bin|shelf|cupboard|ideas
    it|its ~1 done|served ~2 work|job|purpose
    stop here|there
    end|ends with ~2 today
    """,
    _LISTS,
)
"""It is left out of the dance."""

_NOT_IN = Saying(
    """
    no ~2 place|part|room|home ~3 @where
    not|n't ~4 in|part|belong|use|need|perform|keep|make|go|include|take|come ~4 @where
    not|n't ~3 perform|keep|need|include|use|show
    not this time|year
    not|n't ~1 one ~2 of =them|=those|=these
    stay|stays|remain|remains ~2 memory|idea|sketch|game
    no longer|more
    """,
    _LISTS,
)
"""It is not in the dance."""

_ONLY_TOLD_OF = ("it", "them", "this", "that", "these", "motif")
_BESIDE = 6
"""So many words away from what is said to be left out its name may stand."""
_PARTICLES = ("out", "aside", "away", "behind", "by", "go")
_ENDS = ("and", "then", "but", "or")


def left_out(text: str | None, called: str, named_by_step: bool) -> bool:
    """Whether the text says that what is called so is left out of the dance.

    `named_by_step`: the step names it in its fields, so that the text may speak of it only.
    """
    if not text:
        return False
    reading = read(text)
    name = [frozenset((word, f"{word}s")) for word in called.lower().split()]
    spoken_of = named_by_step or _holds({word.form for word in reading.words}, name)
    for said in (*LEFT_OUT.all_in(text), *_NOT_IN.all_in(text, meant=False)):
        near = {word.form for word in _near(reading, said.words)}
        if _holds(near, name) or (spoken_of and near.intersection(_ONLY_TOLD_OF)):
            return True
    return False


def _holds(forms: set[str], name: list[frozenset[str]]) -> bool:
    """Whether every word of the name is among the forms."""
    return not any(forms.isdisjoint(word) for word in name)


def _near(reading: Reading, places: Words) -> Iterator[Word]:
    """The words of a match and those beside it, as far as the same part of the sentence goes."""
    first, last = places[0], places[-1]
    if last - first > 1 and reading.words[last].form in _PARTICLES:
        yield from reading.words[first + 1 : last]  # what is left out stands between: leave it out
        return
    yield from reading.words[first : last + 1]
    yield from _as_far(reversed(reading.words[:first]), reading.words[first].clause)
    yield from _as_far(iter(reading.words[last + 1 :]), reading.words[last].clause)


def _as_far(words: Iterator[Word], clause: int) -> Iterator[Word]:
    for word in islice(words, _BESIDE):
        if word.form in _ENDS or word.clause != clause:
            return
        yield word
