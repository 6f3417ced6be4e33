"""Ways on a chair and wheels of steps that dance no move: warm-ups, cool-downs.

The brakes are on wherever a wheelchair stays and its user leans or reaches: common practice, no
source.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from build_tools.model.unit import Unit
from build_tools.views.lesson.moves_in_steps import todays_moves
from tests.views.lesson.test_moves_in_steps import with_notes
from tests.views.lesson.test_sitting_or_wheels import published, ways_in, ways_of


@pytest.mark.parametrize(
    "notes",
    [
        "- **Lean**: Shift slowly. Seated: Sit well back. On wheels: Both brakes on.",
        "- **Come home**: Seated: Sit well back. On wheels: Both brakes on.",
        "- **Cool-down**: Seated: Sit well back. On wheels: Both brakes on.",
        "- **Step 7**, seated: Sit well back.\n- **Step 7**, on wheels: Both brakes on.",
        "Cool-down. Seated: Sit well back. On wheels: Both brakes on.",
        "In step 7, shift slowly. Seated: Sit well back. On wheels: Both brakes on.",
    ],
)
def test_a_cool_down_takes_its_own_ways(notes: str) -> None:
    """The bridge's lean home printed its way on wheels among the notes, or needed the teacher's."""
    unit = with_notes(published("rope-bridge"), 2, notes)
    (told,) = ways_in(unit, 2)[6].moves
    assert (told.chair, told.wheels) == ("Sit well back", "Both brakes on")
    assert todays_moves(unit, unit.lessons[1]).notes == ""


def test_nobody_is_told_to_push_who_stays() -> None:
    """The unit says: brakes on, and nobody leaves their spot."""
    unit = published("after-home-time")
    for lesson in unit.lessons:
        lines = [line for way in ways_in(unit, lesson.number) for line in way.lines]
        assert not [line for line in lines if "push" in line], lesson.number
    assert ways_of("after-home-time", 4)[0].lines == (
        "On a chair, the arms, back and head dance; lift the feet by turns for steps. On wheels "
        "the same, brakes on.",
    )


def test_a_cool_down_on_the_spot_is_not_as_the_walk_before() -> None:
    assert "push" in ways_of("marble-run", 1)[0].lines[0]
    assert ways_of("marble-run", 1)[5].lines == (
        "On a chair, the arms, back and head dance. On wheels the same, brakes on.",
    )


def test_who_turns_on_the_spot_has_no_brakes_on() -> None:
    turning = _warming_up(published("rope-bridge"), "Sway. Turn slowly each way.")
    (line,) = ways_in(turning, 3)[0].lines
    assert line.endswith("On wheels the same, on the spot; both hands on the wheels make a turn.")


def test_who_talks_does_not_dance() -> None:
    """ "Say which turn lost time": no chair has to do with it."""
    assert not ways_of("road-builders", 4)[6].any


def _warming_up(unit: Unit, task: str) -> Unit:
    lessons = list(unit.lessons)
    first, *others = lessons[2].steps
    first = replace(first, does="Wake up", task=task)
    lessons[2] = replace(lessons[2], steps=(first, *others))
    return replace(unit, lessons=tuple(lessons))
