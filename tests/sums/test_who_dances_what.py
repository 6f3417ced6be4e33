"""Who dances what at every count, read back from all that tells it: they agree with the score.

The dance from above (the page's own data and where its dancers move), the player's spoken line (the
rows of the page of counts), and the notes (MIDI, read by mido) are asked count by count.
"""

from __future__ import annotations

import json
import re
import unicodedata
from collections.abc import Iterator
from fractions import Fraction
from html import unescape

import pytest

from build_tools.building.templates import html_of
from build_tools.model.unit import Unit
from build_tools.movement.roles import rows_of
from build_tools.pages.counts.counts import counts_page
from build_tools.pages.dance_from_above.dance_from_above import dance_page
from build_tools.paths.for_pages import roles_in
from build_tools.views.dance.on_the_floor import in_a_hall
from build_tools.views.dance.parts_over_counts import who_in_words
from build_tools.views.dance.score import ScoreStretch, score
from build_tools.views.words.doing import doing_in_words
from build_tools.views.words.plain_words import name_in_words
from tests.sums.scores import page_score, saved_notes
from tests.support.sound_bank import real_bank

UNITS = real_bank().units
_ROW = re.compile(
    r'<tr data-from="([^"]+)" data-to="([^"]+)">.*?<td data-who>(.*?)</td>'
    r".*?<span data-what>(.*?)</span>"
)
_DANCE = re.compile(r"data-dance='([^']*)'")


def counted(unit: Unit) -> Iterator[tuple[int, ScoreStretch]]:
    """The counted sections of the score, by their number among its stretches."""
    for n, one in enumerate(score(unit.dance).stretches):
        if one.section is not None and one.counts:
            yield n, one


def by_the_score(one: ScoreStretch, count: int) -> set[tuple[str, str]]:
    """Who does what in the count that begins then."""
    return {
        (who_in_words(span, one.rows), doing_in_words(span))
        for span in one.everything
        if span.start <= count < span.end
    }


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: str(unit.slug))
def test_the_spoken_line_says_what_the_score_says_at_every_count(unit: Unit) -> None:
    html = html_of(counts_page(real_bank(), unit))
    told = [_ROW.findall(stretch) for stretch in html.split("data-stretch")[1:]]
    for n, one in counted(unit):
        for count in range(int(one.counts or 0)):
            said = {
                (unescape(who), unescape(what))
                for start, end, who, what in told[n]
                if float(start) <= count < float(end)
            }
            assert said == by_the_score(one, count), f"count {count + 1} of {one.section}"


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: str(unit.slug))
def test_the_dance_from_above_tells_and_moves_who_dances_then(unit: Unit) -> None:
    found = _DANCE.search(html_of(dance_page(real_bank(), unit)))
    assert found
    data = json.loads(unescape(found.group(1)))
    paths = in_a_hall(unit)
    for n, one in counted(unit):
        part, stretch = data["parts"][n], paths.stretches[n]
        assert part["rows"] == list(one.rows)
        for count in range(int(one.counts or 0)):
            shown = {
                (first, last, data["sets"][number]["name"])
                for start, end, first, last, number in part["danced"]
                if start <= count < end
            }
            assert shown == {
                (span.first - 1, span.last - 1, name_in_words(span.what))
                for span in one.danced
                if span.start <= count < span.end
            }
        section = stretch.section
        assert section is not None
        if [name for name, _ in rows_of(section)] != list(one.rows):
            continue
        for dancer, row in enumerate(roles_in(stretch)):
            spans = [s for s in one.danced if row < 0 or s.first - 1 <= row <= s.last - 1]
            for leg in paths.legs[dancer]:
                if not stretch.begins <= leg.start < stretch.ends:
                    continue
                middle = (leg.start + leg.end) / 2 - stretch.begins
                assert any(span.start <= middle <= span.end for span in spans), (
                    f"dancer {dancer} moves at count {middle} of {section.letter}"
                )


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: str(unit.slug))
def test_the_notes_name_each_section_when_it_begins_and_last_as_long(unit: Unit) -> None:
    """A marker a stretch, a count a quarter note; mido reads it."""
    file = saved_notes(unit.slug)
    now, marks = 0, []
    for message in file.tracks[0]:
        now += message.time
        if message.type == "marker":
            marks.append((Fraction(now, file.ticks_per_beat), message.text))
    marks.append((Fraction(now, file.ticks_per_beat), ""))
    at = 0
    for told, one in zip(page_score(unit)["stretches"], score(unit.dance).stretches, strict=True):
        if one.section is None:
            continue
        while marks[at][1] != _plain(told["name"]):
            at += 1
        if one.counts:
            assert marks[at + 1][0] - marks[at][0] == one.counts
        at += 1


def _plain(words: str) -> str:
    """Letters as the format has them."""
    bare = re.sub("[\u0300-\u036f]", "", unicodedata.normalize("NFD", words))
    return re.sub(r"[^ -~]", "-", bare)
