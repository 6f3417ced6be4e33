"""What the moves page says of what the whole dance has nowhere. Common practice, no source."""

from __future__ import annotations

from build_tools.views.dance.not_danced import not_danced
from tests.support.sound_bank import whole_bank


def test_what_is_only_made_on_the_way_says_what_is_made_from_it() -> None:
    dances = {unit.slug: unit.dance for unit in whole_bank().units}
    assert not_danced(dances["rock-pool"], "mirror-crab") == (
        "Not danced as it is: crab answer is made from it."
    )
    assert not_danced(dances["magnets"], "swing-round") == (
        "Not danced as it is: pull south and pull north are made from it."
    )
    assert not_danced(dances["rock-pool"], "wave-in") is None


def test_whatever_is_not_danced_is_said_and_nothing_else() -> None:
    for unit in whole_bank().units:
        danced = {
            name for one in unit.dance.sections.values() for p in one.danced for name in p.what
        }
        for name in (*unit.dance.motifs, *unit.dance.developments):
            assert (not_danced(unit.dance, name) is None) == (name in danced)
