"""Whether a task takes pupils over the floor. Cases from memory of warm-ups and cool-downs."""

from __future__ import annotations

import pytest

from build_tools.sentences.over_the_floor import over_the_floor, turns_round


@pytest.mark.parametrize(
    ("heading", "task", "place", "over"),
    [
        ("Find a space", "Walk to the drum, and stop.", "", True),
        ("Wake up", "Skip, then gallop.", "", True),
        ("Wake up", "Float about the hall.", "", True),
        ("Roll, and rest", "Set off with one push of the wheels.", "", True),
        ("Wake up", "Step and stop. Reach.", "", True),
        ("Wake up", "Run from wall to wall.", "", True),
        ("Wake up", "Jog lightly.", "On your own spot", False),
        ("Quick moves on the spot", "Walk for eight; lean, bounce.", "", False),
        ("Side by side", "Four steps on the spot, then four reaches. Four more steps.", "", False),
        ("Rest", "Roll the shoulders, then each wrist.", "", False),
        ("Let it run out", "Let a wave run from shoulder to fingers.", "", False),
        ("Rest", "Float to the floor, and breathe.", "", False),
        ("Go slack", "Stretch tall; go slack.", "", False),
        ("Rest", "Do not walk; sway where you are.", "", False),
    ],
)
def test_over_the_floor(heading: str, task: str, place: str, over: bool) -> None:
    assert over_the_floor(heading, task, place, dance_travels=True) is over


def test_steps_of_a_dance_that_leaves_no_spot_are_on_the_spot() -> None:
    assert not over_the_floor("Tick", "March, softer and softer.", "", dance_travels=False)
    assert over_the_floor("Tick", "March, softer and softer.", "", dance_travels=True)


def test_turning_round() -> None:
    assert turns_round("Turn slowly, once each way.")
    assert turns_round("Reach, turn and stop.")
    assert not turns_round("Take turns to send. Turn your head; turn off the light.")
