"""The page of counts: what its HTML says, for every unit there is, is the score's own.

Common practice, no source: a teacher reads counts from 1, so counts 1 to 8 end where 9 begins.
"""

from __future__ import annotations

from fractions import Fraction

import pytest

from build_tools.model.unit import Unit
from build_tools.pages.counts.counts import CountsView, counts_page
from build_tools.views.dance.score import score
from tests.support.drawn import Seen, page_seen
from tests.support.sound_bank import every_unit, real_bank, real_unit

UNITS = every_unit()


def view_of(unit: Unit) -> CountsView:
    context = counts_page(real_bank(), unit).context
    assert isinstance(context, CountsView)
    return context


def shown(unit: Unit) -> Seen:
    page = counts_page(real_bank(), unit)
    return page_seen(page)


@pytest.mark.parametrize("unit", UNITS, ids=[unit.slug for unit in UNITS])
def test_what_scripts_read_is_the_score(unit: Unit) -> None:
    found, view = score(unit.dance), view_of(unit)
    assert len(view.stretches) == len(found.stretches)
    for read, s in zip(view.stretches, found.stretches, strict=True):
        assert (read.counts is None) == (s.counts is None)
        if s.counts is None:
            assert s.seconds is not None
            assert (read.least, read.most) == (str(s.seconds.least), str(s.seconds.most))
        else:
            assert read.counts is not None
            assert Fraction(read.counts) == s.counts
        assert [(Fraction(r.start), Fraction(r.end)) for r in read.rows] == [
            (span.start, span.end) for span in s.everything
        ]
    assert [Fraction(m.counts or 0) for m in view.motifs] == [m.counts for m in found.motifs]


@pytest.mark.parametrize("unit", UNITS, ids=[unit.slug for unit in UNITS])
def test_there_is_a_player_where_there_is_a_beat_and_only_there(unit: Unit) -> None:
    view, seen = view_of(unit), shown(unit)
    parts = seen.values("section", "data-part")
    if unit.dance.tempo is None:
        assert view.playing is None
        assert parts == []
        assert view.frame.script is None
        assert "no beat to count" in view.beat
    else:
        assert view.playing is not None
        assert set(parts) == {"counts", "counts-tap", "counts-save"}
        chosen = seen.values("option", "value")
        assert set(chosen) <= set(seen.ids())
        assert len(chosen) == 1 + len(view.choices)


@pytest.mark.parametrize("unit", UNITS, ids=[unit.slug for unit in UNITS])
def test_cues_and_rules_of_what_is_not_counted_are_there_to_read(unit: Unit) -> None:
    text = shown(unit).text()
    for section in unit.dance.sections.values():
        if section.counts is None:
            for words in (section.ends_on, section.improvised_from, *section.improvised_rules):
                assert words is None or " ".join(words.split()) in text


def test_the_rock_pools_rows_by_hand() -> None:
    (wave,) = (m for m in view_of(real_unit()).motifs if m.name == "wave")
    # four moves of two counts each
    read = [(row.counts, row.what) for row in wave.rows]
    assert read == [("1 to 2", "rock"), ("3 to 4", "rush"), ("5 to 6", "break"), ("7 to 8", "sink")]
    assert wave.rows[1].more.startswith("2 counts, travel sideways to the left")
    (anemone,) = (m for m in view_of(real_unit()).motifs if m.name == "anemone")
    # 4, 1, 1, 2
    assert [row.counts for row in anemone.rows] == ["1 to 4", "5", "6", "7 to 8"]


def test_a_section_is_chosen_once_however_often_it_comes() -> None:
    words = [choice.words for choice in view_of(real_unit()).choices]
    assert len(words) == len(set(words))
    assert words[:2] == ["Section A: tide goes out", "Section B: anemones"]
