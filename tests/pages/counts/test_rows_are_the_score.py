"""The rows of the counts page, read back from its HTML, are the score and nothing else."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from html import unescape

import pytest

from build_tools.building.templates import html_of
from build_tools.model.dance import Groups, Passage
from build_tools.model.unit import Unit
from build_tools.pages.counts.counts import counts_page
from build_tools.views.dance.parts_over_counts import who_in_words
from build_tools.views.dance.score import score
from build_tools.views.words.doing import doing_in_words
from tests.support.sound_bank import every_unit, real_bank, real_unit

_ROW = re.compile(
    r'<tr data-from="([^"]+)" data-to="([^"]+)">.*?<td data-who>(.*?)</td>'
    r".*?<span data-what>(.*?)</span>"
)


def swapping() -> Unit:
    """A unit whose last section has roles that swap, an answer that is watched and a canon."""
    unit = real_unit()
    dance = unit.dance
    names = list(dance.motifs)[:2]
    fit = Passage(
        tuple(names), "question and answer", roles=("odds", "evens"), swap=True, others="watch"
    )
    canon = Passage((names[0],), "canon", parts=4, after=Fraction(2))
    groups = Groups(4, {"odds": (1, 3), "evens": (2, 4)})
    letter = dance.form[-1]
    made = replace(dance.sections[letter], danced=(fit, canon), groups=groups)
    return replace(unit, dance=replace(dance, sections={**dance.sections, letter: made}))


def rows_in(html: str) -> Iterator[tuple[float, float, str, str]]:
    for start, end, who, what in _ROW.findall(html):
        yield float(start), float(end), unescape(who), unescape(what)


@pytest.mark.parametrize("unit", [*every_unit(), swapping()], ids=lambda unit: unit.slug)
def test_rows_read_back_are_the_score(unit: Unit) -> None:
    html = html_of(counts_page(real_bank(), unit))
    expected = [
        (
            float(span.start),
            float(span.end),
            who_in_words(span, stretch.rows),
            doing_in_words(span),
        )
        for stretch in score(unit.dance).stretches
        for span in stretch.everything
    ]
    assert list(rows_in(html)) == expected
