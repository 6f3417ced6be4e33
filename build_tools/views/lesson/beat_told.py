"""The beat of a step that dances one thing: what is tapped, how long it lasts, how fast it is."""

from __future__ import annotations

from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.counts import seconds
from build_tools.page_words.words import _
from build_tools.views.lesson.beat_of_step import is_played, made_in_step, tapped_in_step
from build_tools.views.words.marked_words import marked, said_in, without_words
from build_tools.views.words.pace_said import pace_in_words
from build_tools.views.words.phrases_counted import counts_in_phrases, number_word
from build_tools.views.words.plain_words import length_in_words
from build_tools.views.words.punctuation import capital, sentence


def beat_in_words(dance: Dance, step: Step, *, first: bool) -> str:
    """What is sounded, or how many counts; in the first such step how long, and how fast."""
    made, counted = made_in_step(dance, step), counted_in_words(dance, step)
    if not first or not dance.tempo:
        return made or (sentence(counted) if counted else "")
    long = length_in_words(seconds(step.counts or Fraction(0), dance.tempo))
    timed = step.counts == dance.phrase
    pace = pace_in_words(dance.tempo, dance.phrase, timed=timed)
    if tapped_in_step(dance, step):
        return _tapped(made, dance, step, long, pace)
    lasts = (
        _("{counts} last about {long}.", counts=counted, long=long)
        if counted
        else _("All of it lasts about {long}.", long=long)
    )
    said = (lasts, made, "" if is_played(dance, step) else _beat_is(pace))
    return " ".join(part for part in said if part)


def counted_in_words(dance: Dance, step: Step) -> str:
    """Its counts in phrases; one phrase by its beats, which need no word of the trade."""
    if step.counts == dance.phrase:
        return capital(_("{number} beats", number=number_word(dance.phrase)))
    return capital(counts_in_phrases(step.counts or Fraction(0), dance.phrase))


def each_phrase_in_words(dance: Dance, step: Step) -> str:
    """What an eight is, where a teacher first has several; nothing where a few beats are over."""
    if (step.counts or Fraction(0)) % dance.phrase:
        return ""
    return _(", {number} beats each", number=number_word(dance.phrase))


def _tapped(made: str, dance: Dance, step: Step, long: str, pace: str) -> str:
    """A plain beat: how many, how long it takes and how fast: tap eight beats, about 4 seconds."""
    beat, words = without_words(made).removesuffix("."), marked(said_in(made))
    if step.counts == dance.phrase:
        told = _("{beat}, about {long}, {pace}", beat=beat, long=long, pace=pace)
    else:
        each = each_phrase_in_words(dance, step)
        told = _("{beat}{each}, about {long}, {pace}", beat=beat, each=each, long=long, pace=pace)
    return f"{told}{words}."


def _beat_is(pace: str) -> str:
    return _("The beat is {pace}.", pace=pace)
