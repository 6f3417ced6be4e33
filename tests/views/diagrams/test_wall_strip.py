"""The strip of a motif in few words, very large: over several screens where it is long."""

from __future__ import annotations

from fractions import Fraction

from build_tools.model.dance import Action
from build_tools.views.diagrams.wall_strip import wall_strips


def test_a_long_motif_goes_over_several_screens_each_with_every_move_once() -> None:
    actions = [Action("travel", Fraction(2), f"word{n}") for n in range(20)]
    screens = wall_strips("Long", actions)
    assert len(screens) > 1
    words = [line for screen in screens for line in screen.words]
    assert [line.partition(":")[0] for line in words] == [f"word{n}" for n in range(20)]
    assert screens[0].title == "Long, counts 1 to 16"
    for screen in screens:
        for line in screen.words:
            assert f">{line.partition(':')[0]}<" in screen.svg


def test_where_nobody_counts_there_are_no_numbers() -> None:
    actions = [Action("travel", Fraction(1), "go"), Action("stillness", Fraction(2), "stop")]
    (screen,) = wall_strips("Free", actions, ("short", "twice as long as a short one"))
    assert ">1<" not in screen.svg
    assert screen.words[1].startswith("stop: twice as long as a short one")
