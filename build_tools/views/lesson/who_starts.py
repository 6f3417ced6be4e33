"""Who starts on which count where parts start in turn, each in its phrase: numbers 1 on 1, 2 on 3.

No count is told past its phrase's: "in the third eight, number 4 on 1, 3 on 3".
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import groupby
from typing import NamedTuple

from build_tools.model.dance import Dance, Passage
from build_tools.movement.canon_and_unison import part_spans
from build_tools.movement.counts import figures
from build_tools.movement.whole import lengths
from build_tools.page_words.speaking import kept_by_language
from build_tools.page_words.words import N_, _
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.words.marked_words import line_by_line
from build_tools.views.words.phrases_counted import nth_phrases
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import capital

_IN_TURN = frozenset({"canon", "canon in turn", "canon to one ending", "question and answer"})
"""Ways in which parts start one after another."""
_MOST_STARTS = 8
"""More than these are no help in a step: who dances what, and the page of the dance, tell them."""
_ALL = ""
"""Who starts where everybody does at once."""
_PARTS = (
    *(N_("the first"), N_("the second"), N_("the third"), N_("the fourth")),
    *(N_("the fifth"), N_("the sixth"), N_("the seventh"), N_("the eighth")),
)


class _Start(NamedTuple):
    """Who starts, in which phrase of the section, from 0, and before which count of it."""

    who: str
    phrase: int
    at: Fraction


@kept_by_language(maxsize=64)
def starts_in_words(dance: Dance, letter: str) -> str:
    """Number 1 on 1, 2 on 3; empty where all start at once or too many start one by one."""
    section = dance.sections[letter]
    if section.counts is None or all(one.fit not in _IN_TURN for one in section.danced):
        return ""
    found: list[_Start] = []
    for span in parts_over_counts(dance, section).passages:
        if span.passage.fit not in _IN_TURN:
            long = span.end - span.start >= dance.phrase / 2
            at = span.start
            # who starts an eight together again needs no telling, within one it does
            told = not found or (found[-1].who == _ALL and at % dance.phrase == 0)
            if not told and long and _is_together(span.passage):
                found.append(_Start(_ALL, int(at // dance.phrase), at % dance.phrase))
            continue
        starts = _starts(span.passage, span.start, dance)
        if len(starts) > _MOST_STARTS:
            return ""
        names = _names(span.passage, [part for part, _at in starts])
        found += (
            _Start(name, *(int(at // dance.phrase), at % dance.phrase))
            for name, (_part, at) in zip(names, starts, strict=True)
        )
    one_phrase = section.counts <= dance.phrase
    return _told(found, dance.phrase, one_phrase=one_phrase) if found else ""


def _is_together(passage: Passage) -> bool:
    """Whether all start at once, in what is long enough for somebody to wait for it."""
    return passage.fit == "unison" and not passage.roles


def _told(starts: Sequence[_Start], phrase: int, *, one_phrase: bool) -> str:
    """Phrase after phrase who starts in it; alone by its counts where there is only one phrase."""
    lines: list[tuple[str, list[int]]] = []
    for n, group in groupby(starts, key=lambda one: one.phrase):
        said = _counted(list(group))
        if lines and lines[-1][0] == said:
            lines[-1][1].append(n)
        else:
            lines.append((said, [n]))
    if one_phrase and len(lines) == 1:
        return f"{capital(lines[0][0])}."
    told = []
    for said, numbers in lines:
        last = said == _("all") and numbers == [starts[-1].phrase]
        where = nth_phrases(numbers, phrase)
        told.append(
            _("from {phrase} on: {who}", phrase=where, who=said)
            if last
            else _("{phrase}: {who}", phrase=where, who=said)
        )
    return line_by_line([f"{capital(line)}." for line in told], " ")


def _counted(starts: Sequence[_Start]) -> str:
    """Ones on 1 and twos on 5; numbers after the first without the word.

    Of who is alone in a phrase and starts it no count is told.
    """
    names = [_("all") if one.who == _ALL else one.who for one in starts]
    if len(starts) == 1 and starts[0].at == 0:
        return names[0]
    first = names[0].rpartition(" ")[0]
    numbered = first and all(one.rpartition(" ")[0] == first for one in names)
    if numbered and names[0].rpartition(" ")[2].isdigit():
        names[1:] = [one.rpartition(" ")[2] for one in names[1:]]
    return listed(
        [
            _("{who} on {count}", who=name, count=figures(one.at + 1))
            for name, one in zip(names, starts, strict=True)
        ]
    )


def _starts(passage: Passage, before: Fraction, dance: Dance) -> list[tuple[int, Fraction]]:
    """Each part, from 1, and the count before which it starts, in order.

    A question and its answer are a start each; in a canon what a part dances without a pause is
    one.
    """
    found: list[tuple[int, Fraction]] = []
    ends: dict[int, Fraction] = {}
    for span in sorted(part_spans(passage, lengths(dance)), key=lambda one: (one.start, one.part)):
        if passage.fit == "question and answer" or ends.get(span.part) != span.start:
            found.append((span.part, before + span.start))
        ends[span.part] = span.end
    return found


def _names(passage: Passage, parts: Sequence[int]) -> list[str]:
    names = [_role(passage, part) for part in parts]
    return [
        _("{who} again", who=one) if n and one == names[n - 1] else one
        for n, one in enumerate(names)
    ]


def _role(passage: Passage, part: int) -> str:
    if passage.roles:
        return passage.roles[part - 1]
    return _(_PARTS[part - 1])
