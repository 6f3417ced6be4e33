"""How many strokes of a sort a text counts: two slow beats; the slow beats, five of them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from build_tools.sentences.forms import forms
from build_tools.sentences.plain import plain_words
from build_tools.sentences.reading import Word, read
from build_tools.sentences.word_lists import word_list

_STROKES = {
    form: what
    for what in ("tap", "beat", "clap", "knock", "stamp", "chime", "stroke")
    for form in (what, f"{what}s")
}
_LITTLE = word_list("more drum of them the a an and on of in to with all every each one as those")
_BEFORE = 4
"""Words before the stroke among which its number stands."""
_AFTER = 6
"""Words after it among which its number, or its sort, may follow."""
_EACH_OF = word_list("all every each as both")
_NO_SORT = forms("be") | word_list("slowly loudly softly")


@dataclass(frozen=True, slots=True)
class StrokesCounted:
    """So many strokes: `how` are words for their sort, slow; `what` is beat, tap or clap."""

    number: int
    how: tuple[str, ...]
    what: str
    said: str


def strokes_counted(text: str) -> Iterator[StrokesCounted]:
    """Each number of strokes that a text tells and means."""
    if plain_words(text).isdisjoint(_STROKES):
        return
    reading = read(text)
    for at, word in enumerate(reading.words):
        what = _STROKES.get(word.form)
        found = _number(reading.words, at) if what else None
        if what is None or found is None:
            continue
        number, how = found, _sort(reading.words, at)
        first, last = min(number, at), max(number, at)
        said = " ".join(reading.between(first, last).split())
        yield StrokesCounted(reading.words[number].number or 0, how, what, said)


def _number(words: Sequence[Word], stroke: int) -> int | None:
    """The place of the number of the stroke: before it, or after it where that one is denied."""
    denied = False
    for place in range(stroke - 1, max(-1, stroke - _BEFORE - 1), -1):
        word = words[place]
        if word.clause != words[stroke].clause:
            break
        if word.number is not None and word.form != "once":
            if not word.denied:
                return place
            denied = True
    for place in _places_after(words, stroke):
        word = words[place]
        if word.number is None or word.denied:
            continue
        after = words[place + 1] if place + 1 < len(words) else None
        of_them = after is not None and after.form == "of"
        alone = after is None or after.clause != word.clause
        next_of = words[place + 2].form if of_them and place + 2 < len(words) else ""
        each = words[place - 1].form in _EACH_OF
        if (next_of in ("them", "these") and not each) or (denied and alone):
            return place
    return None


def _sort(words: Sequence[Word], stroke: int) -> tuple[str, ...]:
    """The words for the sort: two slow beats; six beats, all of them slow; beats as slow."""
    found = []
    for place in range(stroke - 1, max(-1, stroke - _BEFORE), -1):
        word = words[place]
        if word.clause != words[stroke].clause or word.number is not None:
            break
        found.append(word.form)
    after = [words[place] for place in _places_after(words, stroke)]
    if after and after[0].form in _EACH_OF:
        found += [word.form for word in after if word.clause == after[0].clause]
    return tuple(one for one in found if one not in _LITTLE and one not in _NO_SORT)


def _places_after(words: Sequence[Word], stroke: int) -> Iterator[int]:
    for place in range(stroke + 1, min(stroke + 1 + _AFTER, len(words))):
        if words[place].sentence != words[stroke].sentence:
            return
        yield place
