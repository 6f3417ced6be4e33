"""Words as they are set: quote marks, numbers with their nouns."""

from __future__ import annotations

import pytest

from build_tools.views.words.punctuation import kept_together, quoted


@pytest.mark.parametrize(
    ("words", "shown"),
    [
        ("Two taps, stop.", "“Two taps, stop.”"),
        ('"Loom off" means stop.', "“‘Loom off’ means stop.”"),
        ('Say "ask", then "answer".', "“Say ‘ask’, then ‘answer’.”"),
        ("Call “home”.", "“Call ‘home’.”"),
        ("A hand's width.", "“A hand's width.”"),
    ],
)
def test_what_is_quoted_inside_what_is_said_has_single_marks(words: str, shown: str) -> None:
    assert quoted(words) == shown


def test_a_number_stays_with_what_it_counts() -> None:
    assert kept_together("6 lessons of 45 minutes") == "6\xa0lessons of 45\xa0minutes"
    assert kept_together("1 minute and 4 dancers") == "1\xa0minute and 4 dancers"
