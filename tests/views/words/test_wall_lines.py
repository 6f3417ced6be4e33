"""A task cut for a wall: nothing added, nothing lost, ten words at most.

Source of ten words: common practice, no source.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.words.wall_lines import MOST_WORDS, wall_lines

WORDS = st.text(st.characters(codec="utf-8", exclude_categories=("Z", "C")), min_size=1, max_size=9)
TASKS = st.lists(
    st.one_of(WORDS, WORDS.map(lambda word: f"{word}."), WORDS.map(lambda word: f"{word},")),
    max_size=60,
).map(" ".join)


@given(TASKS)
def test_joined_the_lines_are_the_task_and_none_has_more_than_ten_words(task: str) -> None:
    lines = wall_lines(task)
    assert " ".join(lines) == " ".join(task.split())
    assert all(1 <= len(line.split()) <= MOST_WORDS for line in lines)
    assert MOST_WORDS == 10


@given(TASKS)
def test_a_task_of_ten_words_without_a_stop_inside_stays_whole(task: str) -> None:
    words = task.replace(".", "").split()[:MOST_WORDS]
    plain = " ".join(words)
    assert wall_lines(plain) == ((plain,) if words else ())


@pytest.mark.parametrize(
    ("task", "lines"),
    [
        ("Dance it with no talking.", ("Dance it with no talking.",)),
        (
            "Agree where you snap and how you hide. Practise side by side until you match.",
            ("Agree where you snap and how you hide.", "Practise side by side until you match."),
        ),
        (
            "Start three steps from your four. Dance the tide, drain, then the anemones.",
            ("Start three steps from your four.", "Dance the tide, drain, then the anemones."),
        ),
        (
            "Stretch tall on a breath in; go slack on a breath out. Four times.",
            ("Stretch tall on a breath in;", "go slack on a breath out. Four times."),
        ),
        (
            "Walk low and slow towards the far wall and sink there until the drum calls",
            ("Walk low and slow towards the far wall", "and sink there until the drum calls"),
        ),
    ],
)
def test_it_is_cut_where_a_reader_draws_breath(task: str, lines: tuple[str, ...]) -> None:
    assert wall_lines(task) == lines
