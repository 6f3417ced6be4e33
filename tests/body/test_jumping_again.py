"""Several small jumps in the counts of one action are as many jumps, standing and seated."""

from __future__ import annotations

from fractions import Fraction

import pytest

from build_tools.body.poses import Moved, moved, pose_at
from build_tools.model.dance import Action
from build_tools.views.diagrams.body_scenes import scene
from build_tools.views.diagrams.body_words import deed_in_words
from build_tools.views.words.plain_words import action_in_words


def pops(times: int) -> Action:
    """As the popping seed has them: a jump a count."""
    return Action(
        "jump", Fraction(3), "pop", direction="forwards", size="small", level="high", times=times
    )


def off_the_floor(done: Moved) -> int:
    """How often the feet leave the floor, looked at so often that no flight is missed."""
    up = [pose_at(done, n / 300).base == "air" for n in range(301)]
    return sum(now and not before for before, now in zip([False, *up], up, strict=False))


@pytest.mark.parametrize("times", [1, 2, 3, 5])
def test_it_leaves_the_floor_as_often_as_it_is_said_to(times: int) -> None:
    done = moved(pops(times))
    assert off_the_floor(done) == times
    assert pose_at(done, 1.0) == moved(pops(1)).end


@pytest.mark.parametrize("body", ["chair", "wheels"])
def test_who_sits_lifts_the_shoulders_as_often(body: str) -> None:
    done = moved(pops(3), None, body)
    lifts = [key.pose.trunk.shrug > done.end.trunk.shrug for key in done.keys.moments]
    assert sum(lifts) == 3
    assert deed_in_words(done) == "lift the shoulders and let them drop softly three times"


def test_words_and_picture_say_three() -> None:
    assert "jump forwards three times" in deed_in_words(moved(pops(3)))
    assert "3 times" in action_in_words(pops(3))
    strokes = {scene(moved(pops(times))).pieces[-1] for times in (1, 2, 3)}
    assert len(strokes) == 3, "each number of jumps has a stroke of its own"
