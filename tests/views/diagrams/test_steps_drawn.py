"""Steps are drawn so that they can be counted: humps, or a number where a way bends."""

from __future__ import annotations

import itertools
import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.body.moves import move_of
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_figure import figure_of
from build_tools.views.diagrams.body_ways import MOST_HUMPS, humps
from tests.body.strategies import FEELS, bodies

counts = st.integers(1, 16)
HUMP = re.compile(r"q-?[\d.]+[ -][\d.]+(?: |(?=-))(-?[\d.]+) 0(?:m(-?[\d.]+) 0)?")


def told(drawn: str) -> list[int]:
    return [int(one) for one in re.findall(r"<text[^>]*>(\d+)</text>", drawn)]


@given(
    counts,
    st.sampled_from((None, "straight", "curved", "zigzag")),
    st.sampled_from(("forwards", "backwards", "sideways")),
    st.lists(st.sampled_from(FEELS), max_size=2, unique=True),
)
def test_as_many_humps_as_steps_or_their_number(
    count: int, pathway: str | None, direction: str, feel: list[str]
) -> None:
    action = Action(
        "travel", Fraction(8), direction=direction, side="left", pathway=pathway,
        dynamics=tuple(feel), steps=Fraction(count),
    )  # fmt: skip
    drawn = figure_of(action)
    found = drawn.count("q")
    bends = pathway in ("curved", "zigzag") or "indirect" in move_of(action).feel
    if bends or count > MOST_HUMPS:
        assert (found, told(drawn)) == (0, [count] if count > 1 else [])
    else:
        assert (found, told(drawn)) == (count, [])


@given(st.integers(2, MOST_HUMPS), st.booleans(), st.sampled_from((*FEELS, "")))
def test_humps_are_apart_and_clear_of_the_head(count: int, left: bool, feel: str) -> None:
    ends = (10.0, 10.0 + 24 * count)
    d = re.search(r' d="([^"]*)"', humps(ends[::-1] if left else ends, count, 9, {feel}))
    assert d
    first = re.match(r"M(-?[\d.]+)", d[1])
    assert first
    at, spans = float(first[1]), []
    for wide, gap in HUMP.findall(d[1]):
        spans.append(sorted((at, at + float(wide))))
        at += float(wide) + float(gap or 0)
    spans.sort()
    assert len(spans) == count
    width = {"strong": 6.0, "light": 1.5}.get(feel, 3.5)
    for (_, end), (start, _) in itertools.pairwise(spans):
        assert start - end > width + 1
    last = spans[0][0] - ends[0] if left else ends[1] - spans[-1][1]
    assert last > 9 + width / 2


@given(counts, bodies)
def test_who_sits_is_told_no_steps_that_the_words_do_not_tell(count: int, body: str) -> None:
    drawn = figure_of(Action("travel", Fraction(8), steps=Fraction(count)), None, body)
    if body != "standing":
        assert not told(drawn)
        assert "q" not in drawn.split("<g", 1)[1]


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_curve_lies_on_the_floor_and_is_no_hop(side: str) -> None:
    """Its middle is the lowest of it: nearer than its ends, seen from a little above."""
    action = Action("travel", Fraction(4), direction="sideways", side=side, pathway="curved")
    drawn = re.search(r'<path d="M[\d.]+[ -]([\d.]+)l([^M]+)M[^"]*" class="way"', figure_of(action))
    assert drawn
    downs = [float(one) for one in re.findall(r"-?[\d.]+", drawn[2])][1::2]
    assert sum(downs[:6]) > 8
    assert sum(downs[6:]) < -8
