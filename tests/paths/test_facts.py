"""What is known of a dance in a hall: who leaves it, who is late, what is left between partners."""

from __future__ import annotations

import pytest

from build_tools.model.dance import Dance
from build_tools.paths.arriving import arrivals
from build_tools.paths.drift import drifts, one_wall
from build_tools.paths.hall import Hall
from build_tools.paths.leaving import among_the_watchers, leaving_the_hall
from build_tools.paths.partners import meetings
from build_tools.paths.whole import paths_of
from tests.paths.dances import Data, dance_of, loom, pool, section, standing


def going(steps: int, way: str = "front", **more: object) -> Dance:
    """A line in the middle that goes so many steps towards a side."""
    line = standing("line", way, apart=2)
    go: Data = {"travel": 8, "steps": steps, "direction": "forwards", **more}
    return dance_of("A", {"A": section(8, line, [{"what": ["go"], "as": "unison"}])}, {"go": [go]})


def test_who_goes_through_a_wall_is_told_with_side_count_and_metres() -> None:
    hall = Hall(12, 6)
    step = paths_of(going(8), 4, hall).body.step
    area = paths_of(going(8), 4, hall).area
    found = leaving_the_hall(paths_of(going(8), 4, hall))
    assert {one.side for one in found} == {"front"}
    assert [one.dancer for one in found] == [0, 1, 2, 3]
    assert all(one.count == 8 for one in found)
    assert found[0].metres == pytest.approx(8 * step - (area.front + area.back) / 2 - 3)
    assert leaving_the_hall(paths_of(going(2), 4, hall)) == ()


def test_who_dances_where_watchers_sit_is_told() -> None:
    hall = Hall(12, 6)
    assert [one.side for one in among_the_watchers(paths_of(going(6), 1, hall))] == ["front"]
    assert among_the_watchers(paths_of(going(6, "back"), 1, hall)) == ()
    assert among_the_watchers(paths_of(going(2), 1, hall)) == ()


def to_pairs(counts: int, kind: str = "move") -> Dance:
    """From a line over the hall into a cluster in its middle; a count is half a second."""
    line, heap = standing("line", apart=3), standing("cluster", "centre", apart=1)
    still = [{"what": ["wait"], "as": "unison"}]
    join = {"from": "A", "to": "B", "as": kind, **({"counts": counts} if counts else {})}
    return dance_of(
        "A B",
        {"A": section(4, line, still), "B": section(4, heap, still)},
        {"wait": [{"stillness": 4}]},
        transitions=[join],
    )


def test_how_many_are_late_and_by_how_much() -> None:
    paths = paths_of(to_pairs(4), 10)
    (join,) = arrivals(paths)
    speed = paths.body.walking
    assert (join.letter, join.by, join.seconds) == ("B", "move", 2)
    assert join.at_worst == join.far
    late = join.late(speed)
    assert late == tuple(n for n, far in enumerate(join.far) if far > 2 * speed + 0.5)
    assert 0 < len(late) < 10
    assert join.short_by(speed) == pytest.approx(max(join.far) / speed - 2)
    (slow,) = arrivals(paths_of(to_pairs(24), 10))
    assert slow.late(speed) == ()


def test_nobody_gets_anywhere_in_a_hold_or_a_cut() -> None:
    for kind, counts in (("hold", 8), ("cut", 0), ("straight on", 0)):
        paths = paths_of(to_pairs(counts, kind), 10)
        (join,) = arrivals(paths)
        assert join.seconds == 0
        assert len(join.late(paths.body.walking)) > 5
        section_b = paths.stretches[-1]
        assert section_b.start is not None
        here = [(one.x, one.y) for one in paths.everybody(section_b.begins)]
        assert here == [pytest.approx(place) for place in section_b.start.come_from]


def test_after_a_made_up_section_everybody_may_be_at_the_far_end() -> None:
    paths = paths_of(pool(), 12)
    home = arrivals(paths)[-1]
    assert home.letter == "A"
    reach = 30 * paths.body.walking
    assert all(
        far <= worst <= reach + far for far, worst in zip(home.far, home.at_worst, strict=True)
    )
    assert len(home.late(paths.body.walking, worst=True)) > len(home.late(paths.body.walking))


def test_steps_apart_against_steps_taken() -> None:
    """Six apart and three each leave nothing; two each leave two."""
    for each, left in ((3, 0), (2, 2)):
        facing = standing("pairs", "partner", within="face to face", apart=6)
        dance = dance_of(
            "A",
            {"A": section(4, facing, [{"what": ["go"], "as": "unison"}])},
            {"go": [{"travel": 4, "steps": each, "towards": "partner"}]},
        )
        (one,) = meetings(paths_of(dance, 2))
        assert (one.letter, one.dancers, one.count) == ("A", (0, 1), 4)
        assert one.apart == pytest.approx(6)
        assert one.taken == pytest.approx((each, each))
        assert one.left == pytest.approx(left, abs=1e-6)


def test_a_section_that_goes_one_way_drifts_and_one_that_comes_back_does_not() -> None:
    (found,) = drifts(paths_of(going(4, "left"), 6))
    assert found.side == "left"
    assert found.degrees == pytest.approx(270)
    assert found.metres == pytest.approx(4 * paths_of(going(4), 6).body.step) == found.so_far
    assert [one.metres for one in drifts(paths_of(pool(), 8)) if one.letter == "A"] == [0, 0]


def test_rows_that_face_one_wall_from_first_to_last_are_told() -> None:
    assert one_wall(paths_of(loom(), 12)) == "front"
    assert one_wall(paths_of(going(4, "left"), 4)) == "left"
    assert one_wall(paths_of(pool(), 12)) is None
