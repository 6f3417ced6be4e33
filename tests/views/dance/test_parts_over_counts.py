"""Who dances what, when.

Source for canon: Henkel, Bethel University, choreographic forms: two groups, four phrases of 8,
the second group one phrase behind; the leader ends at count 32 and the follower at 40.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from build_tools.model.dance import Action, Dance, Motif, Passage
from build_tools.views.dance.parts_over_counts import RowSpan, parts_over_counts
from build_tools.views.diagrams.parts import parts_figure
from build_tools.views.words.doing import doing_in_words
from tests.support.drawn import Seen, seen_in
from tests.support.sound_bank import real_bank, real_unit


def canon(parts: int, after: int, long: int) -> Dance:
    """A dance of one section: a motif of `long` counts in canon."""
    dance = real_unit().dance
    motif = Motif("song", "pupils", "a song", (Action("travel", Fraction(long), "go"),))
    passage = Passage(("song",), "canon", parts=parts, after=Fraction(after))
    counts = Fraction(long + (parts - 1) * after)
    section = replace(dance.sections["A"], counts=counts, danced=(passage,))
    return replace(
        dance, form=("A",), sections={"A": section}, motifs={"song": motif}, developments={}
    )


def lefts(seen: Seen) -> list[float]:
    return [float(a["x"]) for n, a in seen.elements if n == "rect" and a.get("class") == "box"]


def test_the_follower_ends_at_count_40() -> None:
    dance = canon(2, 8, 32)
    found = parts_over_counts(dance, dance.sections["A"])
    assert [(s.first, int(s.start), int(s.end)) for s in found.spans] == [(1, 0, 32), (2, 8, 40)]
    assert found.counts == 40


def test_a_canon_is_seen_to_start_one_after_another() -> None:
    dance = canon(4, 4, 8)
    drawn = lefts(seen_in(parts_figure(dance, dance.sections["A"]).svg))
    steps = [b - a for a, b in pairwise(drawn)]
    assert len(drawn) == 4
    assert min(steps) > 20
    assert max(steps) - min(steps) < 0.05


def test_what_all_dance_together_covers_every_row() -> None:
    unit = real_unit()
    found = parts_over_counts(unit.dance, unit.dance.sections["B"])
    assert found.rows == 4
    assert found.spans[0] == RowSpan(found.spans[0].what, Fraction(0), Fraction(8), 1, 4)


def test_every_part_and_thing_is_said_in_words() -> None:
    for unit in real_bank().units:
        for section in unit.dance.sections.values():
            if section.counts is None or not section.danced:
                continue
            figure = parts_figure(unit.dance, section)
            text = " ".join(figure.words)
            for span in parts_over_counts(unit.dance, section).everything:
                assert doing_in_words(span) in text
            for passage in section.danced:
                assert passage.who is None or passage.who in text
            assert parts_over_counts(unit.dance, section).counts == section.counts
