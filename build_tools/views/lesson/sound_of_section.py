"""What a step sounds where nobody counts: for how long, what, and on what it ends."""

from __future__ import annotations

from build_tools.model.dance import Dance, Heard, Section
from build_tools.movement.sounding import STRUCK, places
from build_tools.page_words.words import _
from build_tools.sentences.numbers import number_of
from build_tools.views.dance.timeline import section_sounding
from build_tools.views.lesson.beat_of_parts import sound_in_words
from build_tools.views.words.plain_words import seconds_in_words
from build_tools.views.words.punctuation import sentence
from build_tools.views.words.words_of_text import words_of_text


def sound_of_section(dance: Dance, section: Section) -> str:
    """What is sounded where nobody counts, how long it lasts, and on what it ends.

    Of one sound the length is told with it. A step may play it three times: it is of each go.
    """
    several = len(section_sounding(dance, section).pieces) != 1
    all_of_it = section.seconds if several else None
    long = _("Each go lasts {long}.", long=seconds_in_words(all_of_it)) if all_of_it else ""
    return " ".join(part for part in (long, sound_in_words(dance, section), _end(section)) if part)


def _end(section: Section) -> str:
    """On what it ends; where those are the last strokes, nobody is to sound them once more."""
    if not section.ends_on:
        return ""
    what = sentence(section.ends_on)
    if section.heard and _counts_its_strokes(section.ends_on, section.heard[-1]):
        return _("That is the end: {what}", what=what)
    return _("At the very end: {what}", what=what)


def _counts_its_strokes(end: str, last: Heard) -> bool:
    """Whether the first sentence of the end tells as many strokes as the last sound has."""
    if last.sound not in STRUCK:
        return False
    many = len(places(last))
    return any(number_of(word) == many for word in words_of_text(end.partition(".")[0]))
