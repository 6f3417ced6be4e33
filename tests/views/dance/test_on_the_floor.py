"""A unit's dance on the floor, and which of it is the unit's own words."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from build_tools.model.dance import Standing
from build_tools.model.unit import DrawnFor, Unit
from build_tools.paths.hall import Hall
from build_tools.views.dance.on_the_floor import (
    called,
    in_a_hall,
    on_the_floor,
    passage_at,
    placed,
    told,
)
from tests.support.sound_bank import every_unit, real_bank, real_unit


def with_starts(unit: Unit, change: Callable[[Standing], Standing]) -> Unit:
    """The unit with the starts of all its sections changed."""
    sections = {
        letter: replace(section, start=change(section.start))
        for letter, section in unit.dance.sections.items()
    }
    return replace(unit, dance=replace(unit.dance, sections=sections))


def test_a_unit_without_distances_is_on_no_floor() -> None:
    without = [u for u in every_unit() if not any(s.start.apart for s in u.dance.sections.values())]
    assert without
    assert {on_the_floor(unit) for unit in without} == {None}
    assert on_the_floor(with_starts(real_unit(), lambda start: replace(start, apart=None))) is None


def test_the_class_makes_whole_groups() -> None:
    for unit in real_bank().units:
        paths = on_the_floor(unit)
        assert paths is not None
        assert 24 <= paths.dancers <= 36
        sizes = {s.groups.size for s in unit.dance.sections.values() if s.groups}
        assert [size for size in sizes if paths.dancers % size] == []


def test_a_unit_is_judged_on_the_floor_that_it_is_drawn_for() -> None:
    unit = replace(real_unit(), space=replace(real_unit().space, drawn_for=DrawnFor(14, 9, 7)))
    paths = in_a_hall(unit)
    assert (paths.dancers, paths.hall) == (14, Hall(9.0, 7.0))
    whole = on_the_floor(unit)
    assert whole is not None
    assert whole.hall == paths.hall
    assert 8 <= whole.dancers <= 20
    assert in_a_hall(unit, 30, Hall()).dancers == 30


def test_what_is_told_is_counted_and_says_how_far_apart() -> None:
    paths = on_the_floor(real_unit())
    assert paths is not None
    for number, stretch, section in told(paths):
        assert paths.stretches[number] is stretch
        assert stretch.section is section
        assert stretch.counted
        assert section.start.apart is not None


def test_a_way_that_is_not_said_leaves_what_follows_untold() -> None:
    unit = real_unit()
    whole = on_the_floor(unit)
    assert whole is not None
    motifs = {
        name: replace(
            motif,
            actions=tuple(
                replace(one, direction=None, side=None, towards=None) for one in motif.actions
            ),
        )
        for name, motif in unit.dance.motifs.items()
    }
    open_ = on_the_floor(replace(unit, dance=replace(unit.dance, motifs=motifs)))
    assert open_ is not None
    assert len(list(told(open_))) < len(list(told(whole)))


def test_distances_that_fit_no_hall_are_told_no_more() -> None:
    unit = with_starts(real_unit(), lambda start: replace(start, groups_apart=Fraction(99)))
    paths = on_the_floor(unit)
    assert paths is not None
    assert list(told(paths)) == []


def test_who_comes_from_a_told_place_is_placed() -> None:
    paths = on_the_floor(real_unit())
    assert paths is not None
    known = {number for number, _, _ in told(paths)}
    order = [n for n, one in enumerate(paths.stretches) if one.section]
    for number in placed(paths):
        assert order[order.index(number) - 1] in known


def test_a_count_is_in_its_passage() -> None:
    section = real_unit().dance.sections["A"]
    counts = [float(n) + 0.5 for n in range(int(section.counts or 0))]
    found = [passage_at(real_unit().dance, section, count) for count in counts]
    assert found == sorted(found)
    assert set(found) == set(range(len(section.danced)))


def test_dancers_are_called_by_a_role_of_their_own_or_their_number() -> None:
    section = real_unit().dance.sections["B"]
    assert section.groups is not None
    group = tuple(range(8, 8 + section.groups.size))
    names = [called(section, group, dancer) for dancer in group]
    alone = {places[0]: role for role, places in section.groups.roles.items() if len(places) == 1}
    assert names == [alone.get(n, f"number {n}") for n in range(1, len(group) + 1)]
