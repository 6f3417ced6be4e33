"""The dance in one line: its length and how its sections follow one another."""

from __future__ import annotations

from fractions import Fraction

from build_tools.model.dance import Dance, Section
from build_tools.movement.counts import figures
from build_tools.movement.forms import returns_to_start
from build_tools.movement.letters import is_changed
from build_tools.movement.theme import form_in_words
from build_tools.movement.whole_length import whole_counts, whole_seconds
from build_tools.views.words.plain_words import counts_in_words, listed, seconds_in_words
from build_tools.views.words.punctuation import capital, quoted
from build_tools.views.words.sections_called import in_a_sentence

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")


def dance_told(dance: Dance) -> str:
    """How long the dance is and how it goes, in whole sentences without letters."""
    length = whole_seconds(dance)
    lines = []
    if length:
        lines.append(f"It lasts about {_roughly((length.least + length.most) / 2)}.")
    if dance.order_choice:
        lines.append("Your class decides in which order the parts come.")
    elif returns_to_start(dance.form):
        changed = is_changed(dance.form[-1])
        again = "changed." if changed else "as it was, so it ends as it began."
        lines.append(f"The first part comes back at the end, {again}")
    free = [section for section in dance.sections.values() if section.counts is None]
    if free and len(free) < len(dance.sections):
        lines.append(f"Nobody counts in {listed([_quoted_part(one) for one in free])}.")
    return " ".join(lines)


def _quoted_part(section: Section) -> str:
    """A part by its letter, with its name as a name: part B, “through the gap”."""
    if not section.name:
        return in_a_sentence(section)
    return f"part {section.letter}, {quoted(section.name)}"


def _roughly(seconds: Fraction) -> str:
    """To ten seconds below a minute, else to a quarter of a minute, as people say it."""
    quarters = round(seconds / 15)
    if quarters < 4:
        return f"{round(seconds / 10) * 10} seconds"
    whole, part = divmod(quarters, 4)
    more = ("", "a quarter", "a half", "three quarters")[part]
    if whole == 1:
        return f"a minute and {more}" if more else "a minute"
    number = _NUMBERS[whole] if whole < len(_NUMBERS) else str(whole)
    return f"{number} and {more} minutes" if more else f"{number} minutes"


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
