"""A task on a wall: nothing added, nothing lost, broken only where a sentence ends."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.words.wall_lines import TOGETHER, wall_lines

WORDS = st.text(st.characters(codec="utf-8", exclude_categories=("Z", "C")), min_size=1, max_size=9)
TASKS = st.lists(
    st.one_of(WORDS, WORDS.map(lambda word: f"{word}."), WORDS.map(lambda word: f"{word},")),
    max_size=60,
).map(" ".join)


@given(TASKS)
def test_joined_the_screens_are_the_task_and_each_ends_with_a_sentence(task: str) -> None:
    screens = wall_lines(task)
    assert " ".join(screens) == " ".join(task.split())
    for screen in screens[:-1]:
        assert screen.rstrip("\"'”’)").endswith((".", "?", "!"))


@given(TASKS)
def test_only_a_single_sentence_is_longer_than_is_read_at_one_look(task: str) -> None:
    for screen in wall_lines(task):
        words = screen.split()
        ends = [word for word in words[:-1] if word.rstrip("\"'”’)").endswith((".", "?", "!"))]
        assert len(words) <= TOGETHER or not ends


@pytest.mark.parametrize(
    ("task", "screens"),
    [
        ("Dance it with no talking.", ("Dance it with no talking.",)),
        (
            "Agree where you snap and how you hide. Practise side by side until you match.",
            ("Agree where you snap and how you hide.", "Practise side by side until you match."),
        ),
        (
            "Stretch tall on a breath in; go slack on a breath out. Four times.",
            ("Stretch tall on a breath in; go slack on a breath out.", "Four times."),
        ),
        ("Shut. Wait for the crumb.", ("Shut. Wait for the crumb.",)),
        (
            "Walk low and slow towards the far wall and sink there until the drum calls",
            ("Walk low and slow towards the far wall and sink there until the drum calls",),
        ),
    ],
)
def test_it_is_broken_only_at_a_full_stop(task: str, screens: tuple[str, ...]) -> None:
    assert wall_lines(task) == screens
