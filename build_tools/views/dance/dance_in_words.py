"""The dance in one line: its length and how its sections follow one another."""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.movement.counts import figures
from build_tools.movement.theme import form_in_words
from build_tools.movement.whole_length import whole_counts, whole_seconds
from build_tools.views.words.plain_words import counts_in_words, listed, seconds_in_words
from build_tools.views.words.punctuation import capital


def whole_dance_in_words(dance: Dance) -> str:
    """How long the dance is and how its sections follow one another."""
    counts, length = whole_counts(dance), whole_seconds(dance)
    order = f"{' '.join(dance.form)}: {form_in_words(dance)}."
    varies = counts.least != counts.most
    if dance.order_choice:
        order = f"Pupils choose the order of the sections{', and with it the counts' * varies}."
    long = []
    if counts.most:
        tempo = f" at {dance.tempo} beats a minute" if dance.tempo else ""
        least = f"{figures(counts.least)} to " if varies else ""
        long.append(f"{least}{counts_in_words(counts.most)}{tempo}")
    if any(section.counts is None for section in dance.sections.values()):
        long.append("what is not counted")
    total = f"; about {seconds_in_words(length)} in all" if length else ""
    return f"{order} {capital(listed(long))}{total}."
