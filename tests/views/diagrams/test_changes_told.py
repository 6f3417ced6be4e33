"""What is new under the boxes of a strip is never cut, and is told once where moves share it."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Action
from build_tools.views.diagrams.changes_told import changes_told
from build_tools.views.diagrams.figure_strip import figure_strip, figure_strip_size
from build_tools.views.diagrams.svg import SMALL, text_width
from tests.support.drawn import seen_in

FEEL = "the same moves with another feel"
LABELS = ("", FEEL, "facing the front", "strong, sudden", "pupils choose: the order of the moves")
widths = st.lists(
    st.tuples(st.sampled_from((22.0, 44.0, 88.0, 130.0)), st.sampled_from(LABELS)),
    min_size=1, max_size=8,
)  # fmt: skip


@given(widths)
def test_a_label_is_whole_and_within_the_row_and_clear_of_the_next(
    boxes: list[tuple[float, str]],
) -> None:
    at, placed = 0.0, []
    for wide, words in boxes:
        placed.append((at, at + wide, words))
        at += wide
    told = changes_told(placed, (0.0, max(at, 300.0)))
    new = {words for _, _, words in placed if words}
    assert {" ".join(one.lines) for one in told} == new
    assert all("…" not in line for one in told for line in one.lines)
    edge = 0.0
    for one in told:
        assert one.middle - one.room / 2 >= edge - 0.01
        edge = max(one.middle + one.room / 2, one.over[-1][1])
    assert edge <= max(at, 300.0) + 0.01
    over = sorted(span for one in told for span in one.over)
    assert sum(right - left for left, right in over) == sum(
        right - left for left, right, words in placed if words
    )


def test_moves_apart_that_share_a_label_have_it_once() -> None:
    """Over the one count of the last move it said "the same moves with …"."""
    words = ("edge", "cast", "watch", "haul", "slack")
    counts = (2, 1, 1, 3, 1)
    actions = [
        Action("gesture", Fraction(long), word, level="middle")
        for word, long in zip(words, counts, strict=True)
    ]
    changes = (FEEL, FEEL, FEEL, "", FEEL)
    drawn = figure_strip("Answer", actions, True, changes).figure.svg
    said = seen_in(drawn).text()
    assert said.count("moves") == said.count("another") == 1
    assert "…" not in said
    assert figure_strip_size(actions, changes).rows == 1


def test_a_narrow_label_goes_on_below_neighbours_that_have_none() -> None:
    (one,) = changes_told([(0, 22, ""), (22, 44, FEEL), (44, 340, "")], (0, 340))
    assert len(one.lines) <= 4
    assert all(text_width(line, SMALL, bold=True) <= one.room + 0.01 for line in one.lines)
