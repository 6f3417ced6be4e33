"""What the bank knows of the teacher's part in a step: the beat, who starts when, the signs.

It is worked out of the dance, so that no author types it and it stays right when the dance changes.
"""

from __future__ import annotations

import re
from collections.abc import Container, Iterator, Mapping, Sequence
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.movement.whole import transition_between
from build_tools.page_words.speaking import kept_by_language
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.dance.step_sounding import parts_named, sounding_over
from build_tools.views.dance.timeline import Sounding, joined_sounding, section_sounding
from build_tools.views.lesson.beat_of_parts import (
    danced_in_order,
    made_over,
    parts_in_a_run,
    run_in_words,
    sound_in_words,
)
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.lesson.one_thing_at_a_time import one_thing_at_a_time
from build_tools.views.lesson.who_starts import starts_in_words
from build_tools.views.words.pace_said import pace_in_words
from build_tools.views.words.phrases_counted import counts_in_phrases
from build_tools.views.words.plain_words import length_in_words, listed, seconds_in_words
from build_tools.views.words.punctuation import capital, sentence

_PLAIN = re.compile(r"Tap (?!on \d)(?:[\w ]+|(?:softly )?on each count for [\w ]+)\.")
"""All that is sounded is the beat."""
_MOST_SIGNS = 3
"""More than these are no help in a step: who dances what, and the page of the dance, tell them."""
_PRACTISED = frozenset({"beat", "soft beat", "voice", "recording"})
"""Sounds to which moves are practised before they are put together."""
_NO_MUSIC = re.compile(
    r"\b(?:with no|no|without(?: the| any)?) (?:music|tune|recording|sound)\b", re.IGNORECASE
)
_BEAT, _SOUND, _STARTS = "Beat", "Sound", "Starts"
_LONG = 70
"""Letters of a line that is not told twice on a page."""


class Told(NamedTuple):
    """One line of it: what it is about, and the words."""

    label: str
    words: str


def teachers_parts(unit: Unit, lesson: Lesson, *, in_full: bool) -> tuple[tuple[Told, ...], ...]:
    """For every step its beat or sound, who starts on which count, and the signs of its joins.

    `in_full`, where steps are looked at one by one, all of it is told. On a page a long line that
    an earlier step has as it is, is told as that one's; a plain beat that goes on is not told
    again, and neither is who starts when in what is only danced again.
    """
    every = _in_full(unit, lesson)
    if in_full:
        return every
    before: dict[Told, int] = {}
    known: set[str] = set()
    found, goes_on = [], ""
    for number, (step, told) in enumerate(zip(lesson.steps, every, strict=True), start=1):
        tapped = _tapped(unit.dance, step)
        shorter = [
            _known_left_out(unit.dance, step, one, before, known)
            for one in told
            if one.label != _BEAT or not _waits_for_the_last(unit, lesson, step)
        ]
        found.append(tuple(_on_a_page(unit.dance, step, shorter, before, tapped == goes_on)))
        for one in told:
            before.setdefault(one, number)
        if not _waits_for_the_last(unit, lesson, step):
            known |= _sounds_told(unit.dance, step)
        goes_on = tapped if step.counts else goes_on
    return tuple(found)


def _waits_for_the_last(unit: Unit, lesson: Lesson, step: Step) -> bool:
    """Whether a page leaves the run of the whole dance to the card and to the last lesson.

    It is long, and two sides of paper hold a lesson.
    """
    named = (*step.dances, *step.shows)
    return lesson is not unit.lessons[-1] and WHOLE in named


def _known_left_out(
    dance: Dance, step: Step, told: Told, before: Mapping[Told, int], known: Container[str]
) -> Told:
    """A run with no part in it that stands above; a run that stands there as it is stays."""
    run = parts_in_a_run(dance, danced_in_order(dance, step))
    if not run or told in before or told.label not in (_BEAT, _SOUND):
        return told
    return Told(told.label, _ordered(dance, step, run_in_words(run, known)))


def _sounds_told(dance: Dance, step: Step) -> set[str]:
    """What a step tells of parts and joins."""
    run = parts_in_a_run(dance, danced_in_order(dance, step))
    section = section_of(dance, step)
    alone = {_made(dance, step)} if step.counts and not run else set()
    if section is not None and section.counts is None:
        alone.add(sound_in_words(dance, section))
    return {one.told for one in run} | alone


@once_a_lesson
def _in_full(unit: Unit, lesson: Lesson) -> tuple[tuple[Told, ...], ...]:
    return tuple(tuple(_told(unit, lesson, step)) for step in lesson.steps)


def _on_a_page(
    dance: Dance, step: Step, told: Sequence[Told], before: Mapping[Told, int], goes_on: bool
) -> Iterator[Told]:
    """What of a step's lines is told where the lines of earlier steps stand above."""
    for one in told:
        if one in before and len(one.words) > _LONG:
            yield Told(one.label, f"As in step {before[one]}.")
        elif one.label == _BEAT and goes_on and _tapped(dance, step):
            yield Told(_BEAT, sentence(f"{_counted(dance, step)}, as before"))
        elif one.label != _STARTS or step.phase != "recall" or step.makes:
            yield one


def _told(unit: Unit, lesson: Lesson, step: Step) -> Iterator[Told]:
    dance = unit.dance
    section = section_of(dance, step)
    first = step is next((one for one in lesson.steps if one.counts), None)
    run = parts_in_a_run(dance, danced_in_order(dance, step))
    if run:
        yield Told(_BEAT, _ordered(dance, step, run_in_words(run)))
        if first and dance.tempo:
            yield Told("How fast", sentence(capital(pace_in_words(dance.tempo))))
    elif step.counts:
        yield Told(_BEAT, _beat(dance, step, first=first))
    elif section is not None and section.counts is None:
        yield Told(_SOUND, _sound(dance, section))
    for letter in tells_starts(dance, step):
        yield Told(_STARTS, starts_in_words(dance, letter))
    if not run and (signs := _signs(dance, step)):
        yield Told("Signs" if len(signs) > 1 else "Sign", " ".join(signs))


def _ordered(dance: Dance, step: Step, run: str) -> str:
    """A run of all parts where pupils chose their order, with the order in which it is told."""
    chosen = dance.order_choice is not None and danced_in_order(dance, step) == dance.form
    if not chosen or run.startswith("Each"):
        return run
    return f"If your order is {listed(dance.form)}. {run}"


def tells_starts(dance: Dance, step: Step) -> tuple[str, ...]:
    """The letter of the section of which a step tells who starts when; none where it does not."""
    section = section_of(dance, step)
    if section is None or step.counts not in (None, section.counts):
        return ()
    danced = bool(step.makes or step.dances)
    return (section.letter,) if danced and starts_in_words(dance, section.letter) else ()


def section_of(dance: Dance, step: Step) -> Section | None:
    """The one section that a step makes, dances or shows; None where it is another number."""
    names = dict.fromkeys((*step.joins, *step.makes, *step.dances, *step.shows))
    letters = [name for name in names if name in dance.sections]
    return dance.sections[letters[0]] if len(letters) == 1 and WHOLE not in names else None


class _Danced(NamedTuple):
    """What the sound of a step is worked out of; it is the same in many steps."""

    joins: tuple[str, ...]
    names: tuple[str, ...]
    develops: tuple[str, ...]
    counts: Fraction
    music: bool
    """Whether its own words do not say that it goes without the music."""


def _danced(step: Step) -> _Danced:
    music = not any(_NO_MUSIC.search(said) for said in (step.say, step.task, step.you) if said)
    return _Danced(step.joins, parts_named(step), step.develops, step.counts or Fraction(0), music)


@lru_cache(maxsize=128)
def _heard(dance: Dance, danced: _Danced) -> Sounding:
    """What sounds over the counts of a step, as far as that is sure.

    Sections that are joined sound as they do in the dance, if the step counts all of them and
    their joins; so does the whole. What is only practised is told if it is to a beat or a voice,
    and several parts only where all of them have the same sound.
    """
    if danced.joins:
        return joined_sounding(dance, danced.joins, danced.counts)
    heard = sounding_over(dance, danced.names, danced.develops, danced.counts)
    sure = heard.said or all(one.sound in _PRACTISED for one in heard.pieces)
    sections = [dance.sections[letter] for letter in letters_in(dance, danced.names)]
    if len(sections) > 1:
        joined = _joined(dance, danced)
        if joined.known:
            return joined
        sure = len({p.sound for one in sections for p in section_sounding(dance, one).pieces}) == 1
    if not danced.music and _is_played(heard):
        sure = False
    return heard if sure else Sounding((), known=False, said=False)


def _joined(dance: Dance, danced: _Danced) -> Sounding:
    """What sounds over sections that are danced one after another, or the whole."""
    named = [name for name in danced.names if name in dance.sections]
    order = dance.form if WHOLE in danced.names else tuple(dict.fromkeys(named))
    return joined_sounding(dance, order, danced.counts)


def _made(dance: Dance, step: Step) -> str:
    """What is sounded on the counts of a step; empty where nothing is counted, or nobody knows."""
    return _sounded(dance, _danced(step), step.you or "") if step.counts else ""


@kept_by_language(maxsize=128)
def _sounded(dance: Dance, danced: _Danced, you: str) -> str:
    letters = [name for name in danced.names if name in dance.sections]
    section = dance.sections[letters[0]] if len(letters) == 1 else None
    pieces = _heard(dance, danced).pieces
    return one_thing_at_a_time(made_over(dance, section, pieces), pieces, you)


def _tapped(dance: Dance, step: Step) -> str:
    """How a plain beat is tapped in a step: loudly or softly; empty where it is no plain one."""
    made = _made(dance, step)
    if not _PLAIN.fullmatch(made):
        return ""
    return "softly" if "soft" in made else "plainly"


def _counted(dance: Dance, step: Step) -> str:
    return capital(counts_in_phrases(step.counts or Fraction(0), dance.phrase))


def _beat(dance: Dance, step: Step, *, first: bool) -> str:
    """What is sounded, or how many counts; in the first such step how long, and how fast."""
    made, counted = _made(dance, step), _counted(dance, step)
    if not first or not dance.tempo:
        return made or (sentence(counted) if counted else "")
    long = length_in_words(seconds(step.counts or Fraction(0), dance.tempo))
    pace = (
        ""
        if _is_played(_heard(dance, _danced(step)))
        else _with_pace(made, pace_in_words(dance.tempo))
    )
    lead = "" if made else f"{counted}, " * bool(counted)
    return f"{capital(f'{lead}about {long}')}. {pace or made}".rstrip()


def _is_played(heard: Sounding) -> bool:
    return any(one.sound == "recording" for one in heard.pieces)


def _with_pace(made: str, pace: str) -> str:
    """What is sounded with how fast: tap each, twice a second."""
    if _PLAIN.fullmatch(made):
        return f"{made[:-1]}, {pace}."
    return f"{made} The beat is {pace}.".lstrip()


def _sound(dance: Dance, section: Section) -> str:
    """What is sounded where nobody counts, how long it lasts, and on what it ends."""
    long = f"{capital(seconds_in_words(section.seconds))}." if section.seconds else ""
    ends = f"Ends on: {sentence(section.ends_on)}" if section.ends_on else ""
    return " ".join(part for part in (long, sound_in_words(dance, section), ends) if part)


def _signs(dance: Dance, step: Step) -> tuple[str, ...]:
    """The sign for each join that a step practises: from A to B, and what gives it."""
    found: dict[str, list[str]] = {}
    for before, after in pairwise(step.joins):
        join = transition_between(dance, before, after)
        if join is not None:
            found.setdefault(sentence(join.cue), []).append(f"{before} to {after}")
    if len(found) > _MOST_SIGNS:
        return ()
    return tuple(f"{listed(pairs)}: {cue}" for cue, pairs in found.items())
