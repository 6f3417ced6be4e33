"""Who dances what, when: one row a part over the counts of a section."""

from __future__ import annotations

from build_tools.model.dance import Dance, Section
from build_tools.movement.counts import figures
from build_tools.page_words.words import _
from build_tools.views.dance.parts_over_counts import (
    PartsOverCounts,
    RowSpan,
    parts_over_counts,
    who_in_words,
)
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.ruler import HEIGHT, ruler
from build_tools.views.diagrams.svg import SMALL, drawing, el, num, text, text_width, wrapped
from build_tools.views.words.doing import doing_in_words, job_in_a_word
from build_tools.views.words.plain_words import danced_in_words, name_in_words
from build_tools.views.words.sections_called import title_of

WIDTH = 360
_RIGHT = 6
_ROW = 38
_MOST_COUNTS = 32
"""Counts on one line of the picture; a longer section goes on below."""


def parts_figure(dance: Dance, section: Section) -> Figure:
    """The rows of a counted section over its counts."""
    found = parts_over_counts(dance, section)
    left = 6 if found.rows == 1 else 50
    counts = -int(-found.counts // 1)
    per = (WIDTH - left - _RIGHT) / min(counts, _MOST_COUNTS)
    height = found.rows * _ROW + 8 + HEIGHT
    pieces, y = [], 2.0
    for start in range(0, counts, _MOST_COUNTS):
        here = min(_MOST_COUNTS, counts - start)
        pieces.append(_system(found, start, here, left, per, y, dance.phrase))
        y += height
    title = title_of(section, _("who dances what, when"))
    return Figure(title, drawing(title, WIDTH, y, *pieces, kind="parts"), _words(section, found))


def _system(
    found: PartsOverCounts, start: int, counts: int, left: float, per: float, y: float, phrase: int
) -> str:
    pieces = [
        text(found.names[n - 1], 0, y + (n - 0.5) * _ROW + 4, SMALL, kind="quiet", squeeze=left - 4)
        for n in range(1, found.rows + 1)
        if found.rows > 1
    ]
    for span in found.everything:
        first, last = max(float(span.start), start), min(float(span.end), start + counts)
        if first < last:
            x = left + (first - start) * per
            pieces.append(_span(span, x, (last - first) * per, y))
    pieces.append(ruler(left, y + found.rows * _ROW + 3, counts, per, phrase, start=start))
    return el("g", *pieces)


def _span(span: RowSpan, x: float, width: float, y: float) -> str:
    top = y + (span.first - 1) * _ROW
    height = (span.last - span.first + 1) * _ROW - 4
    if span.job:
        words = text(
            job_in_a_word(span), x + width / 2, top + height / 2 + 5, SMALL, "middle",
            kind="quiet", squeeze=width - 5,
        )  # fmt: skip
        return el("g", words)
    # what pupils decide is a blank with its name beside its counts
    box = el(
        "rect",
        x=x + 1,
        y=top,
        width=width - 2,
        height=height,
        rx=2,
        class_="open-box" if span.is_open else "box",
        fill="none" if span.is_open else "currentColor",
        fill_opacity=0 if span.is_open else 0.1,
        stroke="currentColor",
        stroke_width=1.5,
        **({"stroke_dasharray": "5 3"} if span.is_open else {}),
    )
    return el("g", box, _span_words(name_in_words(span.what), x, top, width, height))


def _span_words(words: str, x: float, top: float, width: float, height: float) -> str:
    lines = wrapped(words, width - 4, SMALL, 2)
    too_wide = any(text_width(w, SMALL) > width - 5 for w in lines)
    middle_x, middle_y = x + width / 2, top + height / 2
    if too_wide and text_width(words, SMALL) <= height - 6:
        turned = text(words, 0, 5, SMALL, "middle")
        return el("g", turned, transform=f"translate({num(middle_x)} {num(middle_y)}) rotate(-90)")
    first = middle_y + 5 - (len(lines) - 1) * 7.5
    return "".join(
        text(w, middle_x, first + n * 15, SMALL, "middle", squeeze=width - 5)
        for n, w in enumerate(lines)
    )


def _words(section: Section, found: PartsOverCounts) -> tuple[str, ...]:
    passages = [danced_in_words(passage) for passage in section.danced]
    spans = [
        _(
            "{who}, counts {first} to {last}: {what}",
            who=who_in_words(span, found.names),
            first=figures(span.start + 1),
            last=figures(span.end),
            what=doing_in_words(span),
        )
        for span in found.everything
    ]
    return (*passages, *spans)
