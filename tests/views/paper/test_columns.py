"""Paragraphs in columns, tried against every way to break them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.paper.columns import FEWEST_LINES, Piece, in_two_columns, left_over

PIECES = st.lists(
    st.builds(
        Piece,
        st.integers(1, 9),
        st.sampled_from((10.0, 12.0)),
        st.sampled_from((0.0, 1.0, 6.0)),
        st.booleans(),
    ),
    max_size=7,
)


def whole(pieces: list[Piece]) -> float:
    return sum(piece.high for piece in pieces)


def breaks(pieces: list[Piece]) -> Iterator[tuple[list[Piece], list[Piece]]]:
    """Every way to part the pieces into what stands before and what after."""
    for place in range(len(pieces) + 1):
        yield pieces[:place], pieces[place:]
        if place == len(pieces) or pieces[place].together:
            continue
        piece = pieces[place]
        for count in range(1, piece.lines):
            if count >= FEWEST_LINES and piece.lines - count >= FEWEST_LINES:
                first = replace(piece, lines=count)
                rest = replace(piece, lines=piece.lines - count, above=0.0)
                yield [*pieces[:place], first], [rest, *pieces[place + 1 :]]


@given(PIECES)
def test_no_way_to_break_makes_two_columns_lower(pieces: list[Piece]) -> None:
    lowest = min(max(whole(first), whole(second)) for first, second in breaks(pieces))
    assert abs(in_two_columns(pieces) - lowest) <= max((p.above for p in pieces), default=0.0)
    assert in_two_columns(pieces) >= whole(pieces) / 2 - 1e-9


@given(PIECES, st.floats(5, 200), st.integers(1, 2))
def test_what_is_left_over_is_the_end_and_could_not_stand_higher(
    pieces: list[Piece], high: float, columns: int
) -> None:
    left = left_over(pieces, columns, high)
    lines = sum(piece.lines for piece in pieces)
    assert sum(piece.lines for piece in left) <= lines
    assert [p.lines for p in left[1:]] == [p.lines for p in pieces[len(pieces) - len(left) + 1 :]]
    if whole(pieces) <= high:
        assert left == []
    if columns == 1:
        fitting = [second for first, second in breaks(pieces) if whole(first) <= high + 1e-6]
        assert sum(p.lines for p in left) == min(sum(p.lines for p in rest) for rest in fitting)


@given(PIECES, st.floats(5, 200))
def test_a_higher_column_leaves_no_more_over(pieces: list[Piece], high: float) -> None:
    lower = sum(piece.lines for piece in left_over(pieces, 1, high))
    assert sum(piece.lines for piece in left_over(pieces, 1, high + 10)) <= lower


def test_a_paragraph_that_stays_together_is_not_broken() -> None:
    kept = Piece(8, 10.0, together=True)
    assert left_over([kept], 1, 50.0) == [kept]
    assert left_over([replace(kept, together=False)], 1, 50.0) == [Piece(3, 10.0)]
    assert left_over([Piece(3, 10.0)], 1, 20.0) == [Piece(3, 10.0)]
