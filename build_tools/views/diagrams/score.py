"""The whole dance laid out like lines of writing: a new line for each section, 32 counts wide."""

from __future__ import annotations

from fractions import Fraction

from build_tools.model.dance import Dance, Section, Transition
from build_tools.page_words.words import _
from build_tools.views.dance.dance_line import DanceLine, LinePart, dance_line
from build_tools.views.diagrams.blocks import block, letter_tag
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.hatch import hatches, letters_in_order
from build_tools.views.diagrams.ruler import HEIGHT, ruler
from build_tools.views.diagrams.svg import SMALL, TEXT, drawing, el, text, wrapped
from build_tools.views.words.plain_words import (
    counts_in_words,
    seconds_in_words,
    transition_in_words,
)
from build_tools.views.words.punctuation import stopped
from build_tools.views.words.sections_called import called

WIDTH = 360
ROW_COUNTS = 32
_LEFT = 6
_PER = (WIDTH - 2 * _LEFT) / ROW_COUNTS
_BLOCK = 30
_LINE = 18


def dance_score(dance: Dance, prefix: str) -> Figure:
    """The dance as a score for reading; ids in it start with `prefix`."""
    line = dance_line(dance)
    pieces, y = [hatches(prefix, dance.form, letters_in_order(dance.form))], 4.0
    for part in line.parts:
        drawn, height = _part(part, line.phrase, prefix, y)
        pieces.append(drawn)
        y += height
    title = _("The dance over its counts")
    svg = drawing(title, WIDTH, y, *pieces, kind="score")
    return Figure(title, svg, score_in_words(line))


def _part(part: LinePart, phrase: int, prefix: str, y: float) -> tuple[str, float]:
    if part.transition is not None:
        return _join(part.transition, phrase, y)
    assert part.section is not None
    if part.section.counts is None:
        return _uncounted(part.section, prefix, y)
    return _counted(part.section, part.section.counts, phrase, prefix, y)


def _counted(
    section: Section, counts: Fraction, phrase: int, prefix: str, y: float
) -> tuple[str, float]:
    pieces, top, left = [], y, counts
    while left > 0:
        here = min(left, Fraction(ROW_COUNTS))
        width = float(here) * _PER
        pieces.append(block(prefix, section.letter, _LEFT, top, width, _BLOCK, False))
        if left == counts:
            pieces.append(letter_tag(section.letter, _LEFT + 19, top + _BLOCK / 2, 20))
        pieces.append(
            ruler(_LEFT, top + _BLOCK + 3, int(here), _PER, phrase, start=int(counts - left))
        )
        top += _BLOCK + 3 + HEIGHT
        left -= here
    words, height = _lines(section.idea, top + 14, WIDTH - 2 * _LEFT, _LEFT)
    return el("g", *pieces, words), top + height - y + 14


def _uncounted(section: Section, prefix: str, y: float) -> tuple[str, float]:
    width = WIDTH - 2 * _LEFT - 8
    pieces = [
        block(prefix, section.letter, _LEFT + 4, y, width, _BLOCK, True),
        letter_tag(section.letter, _LEFT + 23, y + _BLOCK / 2, 20),
    ]
    length = seconds_in_words(section.seconds) if section.seconds else ""
    top = y + _BLOCK + 18
    lines = (
        (_("Not counted: {length}", length=length), "quiet"),
        (_("Ends on: {cue}", cue=section.ends_on), "quiet"),
        (section.idea, "ink"),
    )
    for words, kind in lines:
        drawn, height = _lines(words, top, WIDTH - 2 * _LEFT, _LEFT, kind)
        pieces.append(drawn)
        top += height
    return el("g", *pieces), top - y


def _join(transition: Transition, phrase: int, y: float) -> tuple[str, float]:
    counts = int(transition.counts or 0)
    long = min(counts, ROW_COUNTS)
    words = f"{transition_in_words(transition)}: {transition.how}"
    beside = _LEFT + long * _PER + 10 if long else _LEFT
    if beside > WIDTH / 2:
        drawn = ruler(_LEFT, y + 4, long, _PER, phrase, numbers=False)
        lines, height = _lines(words, y + 28, WIDTH - 2 * _LEFT, _LEFT, "quiet", SMALL)
        return el("g", drawn, lines), height + 28
    drawn = ruler(_LEFT, y + 4, long, _PER, phrase, numbers=False) if long else ""
    lines, height = _lines(words, y + 10, WIDTH - beside - _LEFT, beside, "quiet", SMALL)
    return el("g", drawn, lines), height + 14


def _lines(
    words: str, y: float, width: float, x: float, kind: str = "ink", size: int = TEXT
) -> tuple[str, float]:
    found = wrapped(words, width, size)
    drawn = "".join(text(w, x, y + n * _LINE, size, kind=kind) for n, w in enumerate(found))
    return drawn, len(found) * _LINE


def score_in_words(line: DanceLine) -> tuple[str, ...]:
    """The dance as lines: each section with its length, idea and ending cue, and each join."""
    found = []
    for part in line.parts:
        if part.section is not None:
            found.append(_section_in_words(part.section))
        elif part.transition is not None:
            t = part.transition
            join = transition_in_words(t)
            how, cue = stopped(t.how), stopped(t.cue)
            found.append(_("Then {join}: {how} Cue: {cue}", join=join, how=how, cue=cue))
    return tuple(found)


def _section_in_words(section: Section) -> str:
    idea = stopped(section.idea)
    if section.counts is not None:
        return f"{called(section)}, {counts_in_words(section.counts)}: {idea}"
    length = seconds_in_words(section.seconds) if section.seconds else _("not counted")
    return _(
        "{section}, not counted, {length}: {idea} Ends on: {cue}",
        section=called(section),
        length=length,
        idea=idea,
        cue=stopped(section.ends_on or ""),
    )
