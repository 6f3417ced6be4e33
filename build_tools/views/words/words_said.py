"""The words that are said over phrases, in the order said: “trot trot trot stop” twice, then …

What comes again is told shortly, so that a teacher can read it out with a drum in the hand.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import groupby
from typing import NamedTuple

from build_tools.movement.counts import figures
from build_tools.movement.sounding import Word
from build_tools.page_words.words import N_, _
from build_tools.sentences.numbers import number_of
from build_tools.views.words.deeds_of_sound import are_counts
from build_tools.views.words.marked_words import line_by_line
from build_tools.views.words.phrases_counted import number_word, phrases_in_words
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import quoted

_SILENT = "–"
"""Stands for a count on which nothing is said."""
_TIMES = {2: N_("{words} twice"), 3: N_("{words} three times"), 4: N_("{words} four times")}
_LEAST_TAIL, _MOST_NEW = 3, 3
"""Words that two lines end with alike, from which on the second ends in dots, if no more than so
many words before them are new."""


class Bar(NamedTuple):
    """The words of one phrase, or of somebody's turn in it, and its counts in order.

    Places count from the start of the phrase; `counts` are those that its sound lasts.
    """

    words: tuple[Word, ...]
    counts: tuple[Fraction, ...]


def words_in_order(
    bars: Sequence[Bar], phrase: int, *, on_words: bool = False, text: Sequence[str] = ()
) -> str:
    """The words of phrases that lie end to end; empty where nothing but the counts is said.

    `on_words` is whether a beat falls on each of them, so that gaps are not told. `text` has words
    that stand whole elsewhere, of which each syllable is a word here.
    """
    if not any(bar.words for bar in bars) or all(_only_counts(bar) for bar in bars):
        return ""
    every = [word.says for bar in bars for word in bar.words]
    full = all([one.at for one in bar.words] == list(bar.counts) for bar in bars)
    filler = _filler(every) if full and len(every) > phrase else ""
    if text:
        return quoted(" ".join(put_together(every, text)))
    if filler:
        told = _in_lines(_cut(every[::2], phrase), phrase)
        return _("{words}, with “{filler}” after each word", words=told, filler=filler)
    if on_words:
        return _in_lines(_cut(every, phrase), phrase)
    return _in_lines([_line(bar) for bar in bars], phrase)


def put_together(syllables: Sequence[str], known: Sequence[str]) -> list[str]:
    """Words of which each syllable has a beat, as they are written: "part ner" is partner.

    `known` are words of what else is said of the same, in which they stand whole.
    """
    found: list[str] = []
    for one in syllables:
        if found and one.casefold() not in known and f"{found[-1]}{one}".casefold() in known:
            found[-1] += one
        else:
            found.append(one)
    return found


def _only_counts(bar: Bar) -> bool:
    """Whether it is counted from one on, or says nothing."""
    numbers = [number_of(word.says.casefold()) for word in bar.words]
    return numbers == list(range(1, len(numbers) + 1))


def _filler(words: Sequence[str]) -> str:
    """The word that stands after each other word, where there is one: and."""
    between = {word.casefold() for word in words[1::2]}
    others = {word.casefold() for word in words[::2]}
    alike = len(words) % 2 == 0 and len(between) == 1 and not between & others
    return words[1] if alike and not are_counts(words[1:2]) else ""


def _cut(words: Sequence[str], phrase: int) -> list[tuple[str, ...] | str]:
    return [tuple(words[n : n + phrase]) for n in range(0, len(words), phrase)]


def _line(bar: Bar) -> tuple[str, ...] | str:
    """The words of a phrase in a row, few of them with their counts; counting in figures."""
    if not bar.words:
        return ()
    if len(bar.words) >= len(bar.counts) and are_counts([word.says for word in bar.words]):
        return _counted(bar)
    at = {word.at: word.says for word in bar.words}
    row = tuple(at.get(count, _SILENT) for count in bar.counts)
    if len(row) < len(at) or any(place not in bar.counts for place in at):
        return tuple(at.values())
    spoken = row[: 1 + max(n for n, word in enumerate(row) if word != _SILENT)]
    if (len(spoken) > 1 and _SILENT not in spoken) or 2 * len(at) > len(row):
        return spoken
    places: dict[str, list[str]] = {}
    for word in bar.words:
        places.setdefault(word.says, []).append(figures(word.at + 1))
    return listed(
        [
            _("{words} on {counts}", words=quoted(word), counts=listed(on))
            for word, on in places.items()
        ]
    )


def _counted(bar: Bar) -> str:
    """Numbers as figures: 1 to 8, or “1 2 3 4, 2 2 3 4”."""
    if _only_counts(bar):
        return _("{start} to {end}", start="1", end=str(len(bar.words)))
    said = ""
    for word in bar.words:
        between = ", " if word.loud else " "
        said += f"{between if said else ''}{number_of(word.says.casefold())}"
    return quoted(said)


def _in_lines(lines: Sequence[tuple[str, ...] | str], phrase: int) -> str:
    """Lines in order, those that come again counted."""
    half = len(lines) // 2
    if half > 1 and lines[:half] == lines[half:] and len(set(lines)) > 1:
        return _("{words}, then all of it again", words=_in_lines(lines[:half], phrase))
    told: list[str] = []
    before: tuple[str, ...] = ()
    runs = [(line, len(list(alike))) for line, alike in groupby(lines)]
    for n, (line, many) in enumerate(runs):
        if not line:
            last = n == len(runs) - 1
            said = phrases_in_words(many, phrase)
            told.append(_("nothing") if last else _("nothing for {phrases}", phrases=said))
            continue
        told.append(_often(line if isinstance(line, str) else _after(before, line), many))
        before = line if isinstance(line, tuple) else ()
    return line_by_line([*told[:1], *(_("then {what}", what=one) for one in told[1:])], ", ")


def _often(said: str, many: int) -> str:
    if many in _TIMES:
        return _(_TIMES[many], words=said)
    if many > 1:
        return _("{words} {number} times", words=said, number=number_word(many))
    return said


def _after(before: tuple[str, ...], line: tuple[str, ...]) -> str:
    """A line by what is new in it, where the one before it is much the same."""
    alike = 0
    for one, other in zip(reversed(before), reversed(line), strict=False):
        if one != other:
            break
        alike += 1
    new = len(line) - alike
    if len(line) == len(before) and alike >= _LEAST_TAIL and 0 < new <= _MOST_NEW:
        return quoted(f"{' '.join(line[:new])} …")
    if exchanged := _exchanged(before, line):
        old, now = exchanged
        return _("the same with {new} for {old}", new=quoted(now), old=quoted(old))
    return quoted(" ".join(line))


def _exchanged(before: tuple[str, ...], line: tuple[str, ...]) -> tuple[str, str] | None:
    """The one word that another has taken the place of, all through the line."""
    if len(before) != len(line):
        return None
    changed = set(_changed(before, line))
    if len(changed) != 1:
        return None
    ((old, new),) = changed
    return None if old in line or new in before or _SILENT in (old, new) else (old, new)


def _changed(before: Sequence[str], line: Sequence[str]) -> Iterator[tuple[str, str]]:
    return ((a, b) for a, b in zip(before, line, strict=True) if a != b)
