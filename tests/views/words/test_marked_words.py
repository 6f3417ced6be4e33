"""Marks in a line: what is said, and where a screen begins a new line; paper reads it in one."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.words.marked_words import (
    after_lines,
    in_pieces,
    line_by_line,
    marked,
    row_by_row,
    with_words,
    without_words,
)

EIGHTS = (
    "“swing south lean slide slide clack clamp two”",
    "then “swing north lean slide slide clack clamp two”",
    "then “now ours take – carry”",
)
TEXT = st.text("abc ,“”", min_size=1)
ROWS = st.lists(TEXT, min_size=1, max_size=5) | st.just(list(EIGHTS))


def lines_on_screen(line: str) -> list[str]:
    """What a screen has, line by line."""
    found = [""]
    for piece in in_pieces(line):
        found[-1] += piece.lines[0]
        found += piece.lines[1:]
    return found


def test_several_things_said_are_a_line_each_and_two_are_one() -> None:
    """Two teachers stopped at a beat of five different eights that was one sentence."""
    five = marked(", saying " + line_by_line([*EIGHTS], ", "))
    told = after_lines(f"Tap five eights{five}.", "Then tap one.")
    first, second, third = EIGHTS
    assert lines_on_screen(told) == [
        "Tap five eights, saying ",
        f"{first}, ",
        f"{second}, ",
        f"{third}. ",
        "Then tap one.",
    ]
    assert without_words(told) == "Tap five eights. Then tap one."
    two = after_lines(line_by_line(EIGHTS[:2], ", "), "Then tap one.")
    assert lines_on_screen(two) == [f"{first}, {second} Then tap one."]
    short = line_by_line(["“a”", "then “b”", "then “c”"], ", ")
    assert lines_on_screen(short) == ["“a”, then “b”, then “c”"]


def test_rows_begin_a_line_where_any_of_them_is_told_in_lines() -> None:
    long = line_by_line([*EIGHTS], ", ")
    assert lines_on_screen(row_by_row([f"in A {long}", "in B “d”"], "; "))[-1] == "in B “d”"
    assert lines_on_screen(row_by_row(["in A “a”", "in B “d”"], "; ")) == ["; in A “a”; in B “d”"]


@given(ROWS, ROWS)
def test_a_screen_and_paper_have_the_same_words(said: list[str], others: list[str]) -> None:
    line = after_lines(f"Tap{marked(line_by_line(said, ', '))}", line_by_line(others, "; "))
    assert "".join(lines_on_screen(line)) == with_words(line)
    assert without_words(line) == f"Tap {'; '.join(others)}"
