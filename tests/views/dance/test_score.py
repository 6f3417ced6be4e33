"""The dance as a score: laid end to end, every count in its place.

Source: strict canon lasts L + (n - 1) d (counted by hand; the two-group example of Henkel, Bethel
University, choreographic forms, ends at count 40); seconds are counts x 60 / tempo (the definition
of a metronome mark).
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Action, Dance, Motif, Passage, Seconds, Transition
from build_tools.model.unit import SchoolYears
from build_tools.movement.whole import counts_in_order
from build_tools.views.dance.score import score
from build_tools.views.dance.tempo_for_age import tempo_for_age
from tests.support.sound_bank import every_unit, real_unit

DANCES = [unit.dance for unit in every_unit()]


def overlapped(dance: Dance) -> Dance:
    """The dance with every join an overlap of 4 counts."""
    join = Transition("any", "any", "overlap", Fraction(4), "while others finish", "the drum")
    return replace(dance, transitions=(join,))


@pytest.mark.parametrize("dance", DANCES)
def test_stretches_are_laid_end_to_end(dance: Dance) -> None:
    for one in (dance, overlapped(dance)):
        found = score(one)
        assert tuple(s.section.letter for s in found.stretches if s.section) == one.form
        for s, after in pairwise(found.stretches):
            assert after.before == s.before + (s.counts or 0)
        last = found.stretches[-1]
        assert last.before + (last.counts or 0) == found.counts == counts_in_order(one)


@pytest.mark.parametrize("dance", DANCES)
def test_nobody_does_two_things_at_once_and_nothing_runs_over(dance: Dance) -> None:
    for s in score(dance).stretches:
        assert bool(s.danced) == (s.counts is not None and bool(s.section and s.section.danced))
        for row in range(1, len(s.rows) + 1):
            mine = sorted((x.start, x.end) for x in s.danced if x.first <= row <= x.last)
            assert all(end <= start for (_, end), (start, _) in pairwise(mine))
            assert all(0 <= start < end <= (s.counts or 0) for start, end in mine)


@pytest.mark.parametrize("dance", DANCES)
def test_moves_fill_their_motif(dance: Dance) -> None:
    for motif in score(dance).motifs:
        assert motif.moves[0].start == 0
        assert motif.moves[-1].end == motif.counts
        assert all(a.end == b.start for a, b in pairwise(motif.moves))
        assert all(move.end - move.start == move.action.counts for move in motif.moves)
        if dance.tempo is not None:
            assert motif.seconds == motif.counts * 60 / dance.tempo


def test_the_rock_pools_score_by_hand() -> None:
    found = score(real_unit().dance)
    laid = [(s.section.letter if s.section else "-", int(s.before)) for s in found.stretches]
    # 32 + 8 + 32 + 8 + 32 + 8, a storm of no counts, 16, then 32
    assert laid == [
        ("A", 0), ("-", 32), ("B", 40), ("-", 72), ("C", 80), ("-", 112), ("D", 120), ("-", 120),
        ("A'", 136),
    ]  # fmt: skip
    assert found.counts == 168
    assert found.spans == Seconds(Fraction(20), Fraction(30))
    new = [s for s in found.stretches[2].danced if s.what == "anemone-opens"]
    # four parts, 4 counts apart, of 4 counts, after 8: 8 to 12, 12 to 16, 16 to 20, 20 to 24
    canon = [(s.first, int(s.start), int(s.end)) for s in new]
    assert canon == [(1, 8, 12), (2, 12, 16), (3, 16, 20), (4, 20, 24)]
    assert found.stretches[6].cue == "Three slow drum beats. All sink where they are."


@given(
    length=st.integers(1, 16),
    parts=st.integers(2, 6),
    after=st.integers(1, 8),
    tempo=st.integers(60, 180),
)
def test_a_canon_is_as_long_as_its_law_says(
    length: int, parts: int, after: int, tempo: int
) -> None:
    dance = real_unit().dance
    lasts = Fraction(length + (parts - 1) * after)
    action = Action("turn", Fraction(length))
    section = replace(
        dance.sections["A"],
        counts=lasts,
        danced=(Passage(("one",), "canon", 1, parts, Fraction(after)),),
    )
    made = replace(
        dance,
        form=("A",),
        tempo=tempo,
        sections={"A": section},
        motifs={"one": Motif("one", "pupils", "turning", (action,))},
        developments={},
    )
    (stretch,) = score(made).stretches
    assert len(stretch.rows) == parts
    assert max(span.end for span in stretch.danced) == lasts
    assert stretch.seconds == Seconds(lasts * 60 / tempo, lasts * 60 / tempo)


@pytest.mark.parametrize(
    ("slug", "plays"),
    [
        ("improvised-weather", False),
        ("silent-statues", False),
        ("reception-toys", True),
        ("round-live-drums", True),
    ],
)
def test_only_what_has_a_beat_can_be_played(slug: str, plays: bool) -> None:
    (unit,) = (unit for unit in every_unit() if unit.slug == slug)
    found = score(unit.dance)
    assert found.can_be_played == plays
    assert all(s.cue for s in found.stretches if s.counts is None)
    assert found.spans.least <= found.spans.most


def test_the_youngest_keep_a_narrower_range() -> None:
    unit = real_unit()
    reception = replace(unit, years=(SchoolYears("England", ("R", "1")),))
    found = {u: tempo_for_age(u) for u in (unit, reception)}
    assert [(c.slowest, c.fastest) for c in found.values() if c] == [(60, 180), (100, 160)]
    assert tempo_for_age(replace(unit, years=())) is None
