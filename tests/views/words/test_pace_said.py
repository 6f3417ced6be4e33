"""How fast a beat is, as a teacher can find it."""

from __future__ import annotations

import pytest

from build_tools.views.words.pace_said import pace_in_words


@pytest.mark.parametrize(
    ("tempo", "said"),
    [
        (120, "twice a second"),
        (60, "once a second"),
        (108, "a little slower than twice a second"),
        (64, "a little faster than once a second"),
        (75, "an easy walk: eight taps in about 6 1/2 seconds (hear it: Counts for the hall)"),
        (100, "a brisk walk: eight taps in about 5 seconds (hear it: Counts for the hall)"),
        (240, "eight taps in about 2 seconds (hear it: Counts for the hall)"),
        (None, ""),
    ],
)
def test_the_pace_is_one_that_a_clock_shows_or_the_page_plays(tempo: int | None, said: str) -> None:
    """Beside an easy number of taps a second; else by its number."""
    assert pace_in_words(tempo) == said
