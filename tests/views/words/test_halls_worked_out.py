"""What is said of halls where some of the ways are open."""

from __future__ import annotations

from build_tools.views.words.halls_worked_out import halls_from_in_words
from tests.support.sound_bank import whole_bank


def test_of_a_part_whose_ways_are_open_no_hall_is_worked_out() -> None:
    """An adviser: in a part that is improvised nobody knows where leaders go."""
    for unit in whole_bank().units:
        said = halls_from_in_words(unit.dance)
        ways_open = [s.letter for s in unit.dance.sections.values() if s.kind == "improvised"]
        assert ("ways are open" in said) == bool(ways_open), unit.slug
        assert all(letter in said for letter in ways_open)
    gap = next(unit for unit in whole_bank().units if unit.slug == "through-the-gap")
    assert "but not in part B, where the ways are open: " in halls_from_in_words(gap.dance)
