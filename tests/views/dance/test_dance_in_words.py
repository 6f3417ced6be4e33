"""The dance in one line."""

from __future__ import annotations

from build_tools.views.dance.dance_in_words import whole_dance_in_words
from tests.support.sound_bank import real_bank, real_unit


def test_a_dance_in_a_fixed_order() -> None:
    assert whole_dance_in_words(real_unit().dance) == (
        "A B C D A': a chain that comes back to the start; A comes back changed. 168 counts at 108 "
        "beats a minute and what is not counted; about 1 minute 53 seconds to 2 minutes 3 seconds "
        "in all."
    )


def test_a_dance_in_the_pupils_order_says_from_which_length_to_which() -> None:
    """152 counts, and 160 where the break is not cut into: it begins with it."""
    (unit,) = (unit for unit in real_bank().units if unit.dance.order_choice)
    assert whole_dance_in_words(unit.dance) == (
        "Pupils choose the order of the sections, and with it the counts. 152 to 160 counts at "
        "112 beats a minute and what is not counted; about 1 minute 41 seconds to 2 minutes 1 "
        "second in all."
    )
