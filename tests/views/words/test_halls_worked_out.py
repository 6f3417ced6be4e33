"""What is said of halls where some of the ways are open."""

from __future__ import annotations

from dataclasses import replace

from build_tools.views.words.halls_worked_out import halls_from_in_words
from tests.support.sound_bank import whole_bank

BETWEEN = (
    "The halls are worked out from where everybody stands as each part starts and ends; the ways "
    "between are open."
)


def test_of_a_part_whose_ways_are_open_no_hall_is_worked_out() -> None:
    """An adviser: in a part that is improvised nobody knows where leaders go."""
    for unit in whole_bank().units:
        said = halls_from_in_words(unit.dance)
        ways_open = [s for s in unit.dance.sections.values() if s.kind == "improvised"]
        if said.startswith(BETWEEN):
            assert set(unit.dance.form) <= {one.letter for one in ways_open}, unit.slug
        elif "ways are open" in said:
            assert all(one.letter in said for one in ways_open)
        else:
            rules = [one.improvised_rules for one in ways_open]
            assert all("on your spot" in " ".join(each) for each in rules), unit.slug
    gap = next(unit for unit in whole_bank().units if unit.slug == "through-the-gap")
    assert "but not in part B, where the ways are open: " in halls_from_in_words(gap.dance)


def test_where_nobody_travels_halls_are_worked_out_from_where_they_stand() -> None:
    """An adviser: "nobody goes anywhere in C", nor may they go for a shorter time."""
    home = next(unit for unit in whole_bank().units if unit.slug == "after-home-time").dance
    assert halls_from_in_words(home) == (
        "The halls are worked out from where everybody stands in this dance."
    )
    roaming = replace(home.sections["C"], improvised_rules=("Go anywhere; end on your spot.",))
    said = halls_from_in_words(replace(home, sections={**home.sections, "C": roaming}))
    assert "but not in part C, where the ways are open" in said
    steps = replace(home.motifs["room"].actions[0], kind="travel", direction="forwards")
    motif = replace(home.motifs["room"], actions=(steps, *home.motifs["room"].actions[1:]))
    moving = replace(home, motifs={**home.motifs, "room": motif})
    assert halls_from_in_words(moving).endswith("from where everybody goes in this dance.")


def test_where_all_ways_are_open_the_halls_are_not_worked_out_from_nothing() -> None:
    """An adviser: parts A, B and A' are the whole dance, and a hall was refused for part B."""
    sky = next(unit for unit in whole_bank().units if unit.slug == "starlings").dance
    assert halls_from_in_words(sky) == (
        f"{BETWEEN} In a small hall let one team go at a time, or go for a shorter time."
    )
