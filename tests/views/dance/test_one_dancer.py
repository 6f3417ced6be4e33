"""What one dancer dances through a section, thing after thing."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from build_tools.movement.roles import part_places
from build_tools.movement.whole import section_spans
from build_tools.paths.group_sizes import groups_of
from build_tools.views.dance.one_dancer import everyones_things, things_of, with_counts
from tests.support.sound_bank import every_unit, real_unit


def test_nobody_dances_two_things_at_once() -> None:
    for unit in every_unit():
        for section in unit.dance.sections.values():
            for _, things in everyones_things(unit.dance, section):
                for before, after in pairwise(things):
                    assert before.end <= after.start


def test_together_they_dance_all_of_the_section() -> None:
    for unit in every_unit():
        for section in unit.dance.sections.values():
            if any(part_places(groups_of(section), p) is None for p in section.danced):
                continue
            spans = {(s.what, s.start, s.end) for s in section_spans(unit.dance, section)}
            found = {
                (thing.what, thing.start, thing.end)
                for place in range(1, groups_of(section).size + 1)
                for thing in things_of(unit.dance, section, place)
            }
            assert found == spans


def test_actions_of_a_thing_follow_from_its_start_to_its_end() -> None:
    for unit in every_unit():
        for section in unit.dance.sections.values():
            for _, things in everyones_things(unit.dance, section):
                for thing in things:
                    now = thing.start
                    for action, start in with_counts(unit.dance, thing):
                        assert start == now
                        now += action.counts
                    assert now >= thing.end


def test_of_more_things_than_parts_nobody_dances_the_last() -> None:
    dance = real_unit().dance
    letter, section = next(iter(dance.sections.items()))
    things = tuple(dance.motifs)[:3]
    beside = replace(section.danced[0], fit="side by side", what=things, parts=2, roles=())
    changed = replace(section, danced=(beside,))
    dance = replace(dance, sections={**dance.sections, letter: changed})
    danced = {t.what for _, some in everyones_things(dance, changed) for t in some}
    assert len(things) == 3
    assert danced == set(things[:2])
