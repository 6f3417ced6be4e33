"""The sections of the page on the dance in full, in the order of the dance."""

from __future__ import annotations

from itertools import pairwise

import pytest

from build_tools.movement.whole import transition_between
from build_tools.pages.dance_in_full.part_views import groups_of_another_size, section_views
from build_tools.views.words.doing import odd_group_in_words
from tests.support.sound_bank import whole_bank
from tests.views.lesson.test_sitting_or_wheels import published


def test_a_part_that_comes_again_is_named_where_it_comes() -> None:
    """An adviser of the ring dance: whoever goes by the page drops the second A."""
    told = [one.letter for one in section_views(published("gathering-peascods"))]
    assert told == ["A", "B", "C", "A again", "B'", "C'"]
    again = section_views(published("gathering-peascods"))[3]
    assert (again.name, again.length, again.returns) == (
        "All the ring",
        "24 counts",
        "As the first time.",
    )
    assert again.join is not None
    assert again.join.label == "Then to B': twos inside first"


def test_every_join_of_a_dance_is_told_once_where_it_is_danced() -> None:
    for unit in whole_bank().units:
        form = unit.dance.form
        views = section_views(unit)
        joined = [one.join is not None for one in views]
        wanted = [
            transition_between(unit.dance, one, after) is not None for one, after in pairwise(form)
        ]
        assert joined == [*wanted, False], unit.slug
        assert len({one.anchor for one in views}) == len(form)


@pytest.mark.parametrize("slug", ["marble-run", "gathering-peascods"])
def test_what_all_parts_say_of_groups_stands_once(slug: str) -> None:
    unit = published(slug)
    assert not any(one.odd_group for one in section_views(unit))
    told = groups_of_another_size(unit)
    assert [one.where for one in told] == [None, None], "of every part that is danced in groups"
    assert [" ".join(one.does.split()[:2]) for one in told] == ["In a", "In a"]


def test_no_word_on_groups_is_lost_and_none_stands_twice() -> None:
    for unit in whole_bank().units:
        said = [line for one in section_views(unit) for line in one.odd_group]
        said += [one.does for one in groups_of_another_size(unit)]
        sections = unit.dance.sections.values()
        wanted = {line for one in sections for line in odd_group_in_words(unit, one)}
        assert sorted(said) == sorted(wanted), unit.slug


def test_where_a_five_stands_is_no_move_called_stand() -> None:
    """The road's own words were left out, and another dancer named to copy than they name."""
    unit = published("road-builders")
    said = {line for one in unit.dance.sections.values() for line in odd_group_in_words(unit, one)}
    assert "In a five, 5 stands behind 4 and does as 4 does." in said
    assert not any(line.startswith("A group of 5") for line in said)
