"""What is said while something sounds over phrases: “, saying “swing two lean …””, marked."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from build_tools.page_words.words import _
from build_tools.views.words import words_said
from build_tools.views.words.bars_heard import Bar, Made
from build_tools.views.words.deeds_of_sound import OwnWords
from build_tools.views.words.marked_words import marked


def said_over(bars: Sequence[Bar], phrase: int, own: OwnWords) -> str:
    """What is said over bars in which one thing sounds; empty where it is only counted."""
    return said_with([bar.made[0] for bar in bars], phrase, own)


def said_with(made: Sequence[Made], phrase: int, own: OwnWords) -> str:
    """What is said with one sound, bar after bar: after a colon where it is a voice alone."""
    first = made[0]
    bars = [words_said.Bar(one.words, _counts(one)) for one in made]
    told = words_said.words_in_order(bars, phrase, on_words=first.on_words, text=own.whole)
    if not told:
        return ""
    colon = first.sound == "voice" or first.on_words
    if colon:
        return marked(f": {told}")
    # a teacher read that those who knock hardly to be heard speak as they do
    return marked(
        _(", to the words {words}", words=told)
        if first.by_dancers
        else _(", saying {words}", words=told)
    )


def _counts(made: Made) -> tuple[Fraction, ...]:
    """The counts that it lasts, by their places in the bar."""
    return tuple(start + n for start, end in made.spans for n in range(-(-(end - start) // 1)))
