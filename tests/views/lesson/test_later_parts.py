"""What an author says of a part before a class has made it. Common practice, no source."""

from __future__ import annotations

import pytest

from build_tools.views.lesson.groups_told import left_over_in_words
from build_tools.views.lesson.later_parts import said_by_now
from tests.views.lesson.test_sitting_or_wheels import published


@pytest.mark.parametrize(
    ("number", "text", "said"),
    [
        (1, "Go at the back. In A', push out.", "Go at the back."),
        (1, "Sink, facing the front; in A', your partner.", "Sink, facing the front."),
        (4, "Sink, facing the front; in A', your partner.", None),
        (1, "In a three, the knock begins with a silence.", ""),
        (2, "In a three, the knock begins with a silence.", None),
        (2, "They go with the first knock, and in track and marble the third is track.",
         "They go with the first knock."),
        (3, "They go with the first knock, and in track and marble the third is track.", None),
        (1, "Give one knock on the drum, and put the marble in its track.", None),
    ],
)  # fmt: skip
def test_what_is_said_of_a_part_waits_for_its_lesson(
    number: int, text: str, said: str | None
) -> None:
    assert said_by_now(published("marble-run"), number, text) == (text if said is None else said)


def test_who_is_left_over_hears_of_no_part_that_is_not_made_yet() -> None:
    unit = published("marble-run")
    told = [left_over_in_words(unit, unit.lessons[0], n) for n in range(len(unit.lessons[0].steps))]
    assert not [said for said in told if said and ("knock" in said or "track" in said)]
    told = [left_over_in_words(unit, unit.lessons[3], n) for n in range(len(unit.lessons[3].steps))]
    assert [said for said in told if said and "track and marble" in said]
