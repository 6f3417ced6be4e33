"""Which step of a lesson its notes mean."""

from __future__ import annotations

import pytest

from build_tools.views.lesson.step_named import step_headed, step_named
from tests.support.sound_bank import real_unit


@pytest.mark.parametrize(
    ("said", "number"),
    [
        ("Step 2", 2),
        ("In step 3, lean a little.", 3),
        ("Warm-up", 1),
        ("In the warm-up, lean a little.", 1),
        ("Cool-down", 8),
        ("The cool-down is slow.", 8),
        ("Step 99", None),
        ("As in step 2", None),
        ("Make", None),
        ("Leave the cool-down out.", None),
    ],
)
def test_a_step_is_named_by_number_or_kind(said: str, number: int | None) -> None:
    steps = real_unit().lessons[0].steps
    assert step_named(steps, said) == (None if number is None else number - 1)


def test_a_step_of_any_kind_is_named_by_words_of_its_heading() -> None:
    """Headings of rock-pool, lesson 1: Walk, side-step …; Slow water, slow breath."""
    steps = real_unit().lessons[0].steps
    assert step_headed(steps, "Slow water") == 7
    assert step_headed(steps, "Side-step") == 0
    assert step_headed(steps, "slow breath.") == 7
    assert step_headed(steps, "Pond") is None
    assert step_headed(steps, "") is None
