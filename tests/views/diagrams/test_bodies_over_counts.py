"""Bodies over bars that stand on the floor: tall is high, every count has its number."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Action
from build_tools.views.dance.left_open import OPEN, drawn_actions
from build_tools.views.diagrams.bodies_over_counts import WIDTH, bodies_over_counts
from tests.support.drawn import seen_in
from tests.support.sound_bank import every_unit

BAR = re.compile(r"M([\d.]+) ([\d.]+)V([\d.]+)L([\d.]+) ([\d.]+)V([\d.]+)Z")
counts = st.sampled_from((Fraction(1, 2), Fraction(1), Fraction(2), Fraction(3), Fraction(4)))
moves = st.builds(
    Action,
    st.sampled_from(("travel", "turn", "jump", "gesture", "stillness", "transfer", OPEN)),
    counts,
    st.sampled_from((None, "go", "anemone opens")),
    level=st.sampled_from((None, "low", "middle", "high", "low to high", "high to low")),
)


def bars(svg: str) -> list[tuple[float, ...]]:
    """Each bar: left, floor, where it starts, right, where it ends, floor."""
    return [tuple(map(float, found)) for found in BAR.findall(svg)]


def numbered(svg: str) -> list[int]:
    """The counts under a row: figures that stand alone in one list of places, others each."""
    found = [*re.findall(r'<text x="[^"]*" y="[^"]*" font-size="38"[^>]*>(\d*)', svg)]
    return [int(one) for one in (*"".join(found), *re.findall(r"<tspan[^>]*>(\d+)<", svg))]


@given(st.lists(moves, min_size=1, max_size=14))
def test_every_move_has_its_bar_and_every_count_its_number(actions: list[Action]) -> None:
    rows = bodies_over_counts("Made", actions)
    spans = [span for row in rows for span in row.moves]
    starts = [sum((a.counts for a in actions[:n]), Fraction(0)) for n in range(len(actions))]
    assert spans == [(at, at + a.counts) for at, a in zip(starts, actions, strict=True)]
    numbers = []
    for row in rows:
        found = bars(row.figure.svg)
        assert len(found) == len(row.moves)
        assert len({bar[n] for bar in found for n in (1, 5)}) == 1, "all stand on the floor"
        assert all(-1 <= bar[0] < bar[3] <= WIDTH + 1 for bar in found)
        numbers += numbered(row.figure.svg)
    whole = -int(-spans[-1][1] // 1)
    assert sorted(set(numbers)) == list(range(1, whole + 1))


def test_a_bar_is_as_high_as_the_level_and_slopes_where_it_changes() -> None:
    actions = [
        Action("gesture", Fraction(2), "open", level="low to high"),
        Action("stillness", Fraction(2), "grip", level="high"),
        Action("transfer", Fraction(2), "sink", level="low"),
    ]
    (row,) = bodies_over_counts("Made", actions)
    opens, grips, sinks = bars(row.figure.svg)
    assert opens[2] > opens[4] == grips[2] == grips[4] < sinks[2]
    assert opens[2] == sinks[4]
    assert row.figure.svg.count('class="body"') == 3


def test_what_pupils_choose_has_no_body_and_no_word() -> None:
    (row,) = bodies_over_counts("Made", [Action(OPEN, Fraction(4))])
    assert 'class="body"' not in row.figure.svg
    assert "open" not in seen_in(row.figure.svg).words


@pytest.mark.parametrize("unit", every_unit()[:3], ids=lambda unit: str(unit.slug))
def test_bodies_of_published_moves_are_large_enough_to_be_read(unit: object) -> None:
    dance = getattr(unit, "dance", None)
    assert dance is not None
    for name in (*dance.motifs, *dance.developments):
        for row in bodies_over_counts(name, drawn_actions(dance, name)):
            for size in re.findall(r"class=\"body\"[^>]*scale\(([\d.]+)\)", row.figure.svg):
                assert float(size) >= 0.5
