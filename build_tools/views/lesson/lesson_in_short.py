"""A lesson in seven lines at most: its steps, some neighbours on one line where there are more.

Seven is how many lines a teacher takes in at a glance on the morning; common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson, Step
from build_tools.views.lesson.timings import step_times

MOST_LINES = 7
_PRACTISED = frozenset({"make", "develop", "join"})
"""What a step of rehearsing right after it belongs with."""


@dataclass(frozen=True, slots=True)
class LineInShort:
    """One line: from which minute to which, and the numbers of its steps, from 1."""

    start: int
    end: int
    steps: tuple[int, ...]


def lesson_in_short(lesson: Lesson, most: int = MOST_LINES) -> tuple[LineInShort, ...]:
    """The lesson's steps on `most` lines at most, in order; each step is on one line.

    The line that would hold the fewest steps is joined first; then steps that go on with the same
    thing; then the one of the fewest minutes; then the earlier.
    """
    groups: list[tuple[int, ...]] = [(index,) for index in range(len(lesson.steps))]
    while len(groups) > max(most, 1):
        at = min(range(len(groups) - 1), key=lambda place: _cost(lesson, groups, place))
        groups[at : at + 2] = [groups[at] + groups[at + 1]]
    times = step_times(lesson)
    return tuple(
        LineInShort(
            times[group[0]].start, times[group[-1]].end, tuple(index + 1 for index in group)
        )
        for group in groups
    )


def _cost(lesson: Lesson, groups: list[tuple[int, ...]], place: int) -> tuple[int, bool, int, int]:
    before, after = groups[place], groups[place + 1]
    minutes = sum(lesson.steps[index].minutes for index in (*before, *after))
    goes_on = _goes_on(lesson.steps[before[-1]], lesson.steps[after[0]])
    return len(before) + len(after), not goes_on, minutes, place


def _goes_on(before: Step, after: Step) -> bool:
    """Whether the next step goes on with what the one before began."""
    return before.phase == after.phase or (before.phase in _PRACTISED and after.phase == "rehearse")
