"""What the bank knows of the teacher's part in a step: the beat, who starts when, the signs.

It is worked out of the dance, so that no author types it and it stays right when the dance changes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

from build_tools.model.dance import Dance, Passage, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import part_spans
from build_tools.movement.counts import figures, seconds
from build_tools.movement.whole import lengths, transition_between
from build_tools.page_words.speaking import kept_by_language
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.dance.step_sounding import parts_named, sounding_over
from build_tools.views.dance.timeline import Sounding, joined_sounding, section_sounding
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.words.plain_words import (
    counts_in_words,
    length_in_words,
    listed,
    seconds_in_words,
)
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.sounds_to_make import made_in_seconds, made_in_words

_EASY_PACES = {
    30: "once every two seconds",
    60: "once a second",
    120: "twice a second",
    180: "three times a second",
}
"""Beats a minute that a teacher can find by a clock. Common practice, no source."""
_EACH = re.compile(r"[^.]* each(?: softly)?\.")
"""All that is sounded is the beat."""
_SAME_PACE, _NEAR_PACE = 0.02, 0.12
_IN_TURN = frozenset({"canon", "canon in turn", "canon to one ending", "question and answer"})
"""Ways in which parts start one after another."""
_MOST_STARTS, _MOST_SIGNS = 8, 3
"""More than these are no help in a step: who dances what, and the page of the dance, tell them."""
_PRACTISED = frozenset({"beat", "soft beat", "voice", "recording"})
"""Sounds to which moves are practised before they are put together."""
_NO_MUSIC = re.compile(
    r"\b(?:with no|no|without(?: the| any)?) (?:music|tune|recording|sound)\b", re.IGNORECASE
)
_BEAT, _STARTS = "Beat", "Starts"
_LONG = 70
"""Letters of a line that is not told twice on a page."""
_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth")


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
    found, goes_on = [], ""
    for number, (step, told) in enumerate(zip(lesson.steps, every, strict=True), start=1):
        made = _made(unit.dance, _danced(step))
        found.append(tuple(_on_a_page(unit.dance, step, told, before, made == goes_on)))
        for one in told:
            before.setdefault(one, number)
        goes_on = made if step.counts else goes_on
    return tuple(found)


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
        elif one.label == _BEAT and goes_on and _EACH.fullmatch(_made(dance, _danced(step))):
            yield Told(_BEAT, f"{counts_in_words(step.counts or Fraction(0))}.")
        elif one.label != _STARTS or step.phase != "recall" or step.makes:
            yield one


def _told(unit: Unit, lesson: Lesson, step: Step) -> Iterator[Told]:
    dance = unit.dance
    section = section_of(dance, step)
    if step.counts:
        first = step is next(one for one in lesson.steps if one.counts)
        yield Told(_BEAT, _beat(dance, step, first=first))
    elif section is not None and section.counts is None:
        yield Told("Sound", _sound(section, section_sounding(dance, section)))
    for letter in tells_starts(dance, step):
        yield Told(_STARTS, starts_in_words(dance, letter))
    if signs := _signs(dance, step):
        yield Told("Signs" if len(signs) > 1 else "Sign", " ".join(signs))


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


@kept_by_language(maxsize=128)
def _made(dance: Dance, danced: _Danced) -> str:
    """What is sounded on the counts of a step; empty where nothing is counted, or nobody knows."""
    return made_in_words(_heard(dance, danced).pieces, dance.phrase) if danced.counts else ""


def _beat(dance: Dance, step: Step, *, first: bool) -> str:
    """How many counts, what is sounded on them, and in the first such step how fast."""
    counts, made = step.counts or Fraction(0), _made(dance, _danced(step))
    if not first or not dance.tempo:
        return f"{counts_in_words(counts)}. {made}".rstrip()
    long = length_in_words(seconds(counts, dance.tempo))
    pace = (
        ""
        if _is_played(_heard(dance, _danced(step)))
        else _with_pace(made, pace_in_words(dance.tempo))
    )
    return f"{counts_in_words(counts)}, about {long}. {pace or made}".rstrip()


def _is_played(heard: Sounding) -> bool:
    return any(one.sound == "recording" for one in heard.pieces)


def _with_pace(made: str, pace: str) -> str:
    """What is sounded with how fast: tap each, twice a second."""
    if _EACH.fullmatch(made):
        return f"{made[:-1]}, {pace}."
    return f"{made} The beat is {pace}.".lstrip()


def pace_in_words(tempo: int | None) -> str:
    """How fast the beat is: by a clock that shows seconds where that is easy, else by its number.

    Where no easy pace is near, nobody finds the beat by a clock, and the page of the counts plays
    it.
    """
    if not tempo:
        return ""
    near = min(_EASY_PACES, key=lambda easy: abs(tempo / easy - 1))
    off = tempo / near - 1
    if abs(off) <= _SAME_PACE:
        return _EASY_PACES[near]
    if abs(off) <= _NEAR_PACE:
        return f"a little {'faster' if off > 0 else 'slower'} than {_EASY_PACES[near]}"
    return f"{tempo} a minute (Counts for the hall plays it)"


def _sound(section: Section, heard: Sounding) -> str:
    """What is sounded where nobody counts, how long it lasts, and on what it ends."""
    long = f"{capital(seconds_in_words(section.seconds))}." if section.seconds else ""
    varies = section.seconds is not None and section.seconds.least != section.seconds.most
    what = section.sound.what
    made = made_in_seconds(heard.pieces, about=varies, what=what) if heard.said else ""
    ends = f"Ends on: {sentence(section.ends_on)}" if section.ends_on else ""
    return " ".join(part for part in (long, made, ends) if part)


@kept_by_language(maxsize=64)
def starts_in_words(dance: Dance, letter: str) -> str:
    """Who starts on which count where parts start in turn: Number 1 on 1, 2 on 3; ones on 9."""
    section = dance.sections[letter]
    if section.counts is None or all(one.fit not in _IN_TURN for one in section.danced):
        return ""
    found = []
    for span in parts_over_counts(dance, section).passages:
        if span.passage.fit in _IN_TURN:
            starts = _starts(span.passage, span.start, dance)
            if len(starts) > _MOST_STARTS:
                return ""
            found.append(_named(span.passage, starts))
    return f"{capital('; '.join(found))}." if found else ""


def _starts(passage: Passage, before: Fraction, dance: Dance) -> list[tuple[int, Fraction]]:
    """Each part, from 1, and the count before which it starts, in order.

    A question and its answer are a start each; in a canon what a part dances without a pause is
    one.
    """
    found: list[tuple[int, Fraction]] = []
    ends: dict[int, Fraction] = {}
    for span in sorted(part_spans(passage, lengths(dance)), key=lambda one: (one.start, one.part)):
        if passage.fit == "question and answer" or ends.get(span.part) != span.start:
            found.append((span.part, before + span.start))
        ends[span.part] = span.end
    return found


def _named(passage: Passage, starts: Sequence[tuple[int, Fraction]]) -> str:
    names = [_role(passage, part) for part, _ in starts]
    first = names[0].rpartition(" ")[0]
    numbered = first and all(one.rpartition(" ")[0] == first for one in names)
    if numbered and names[0].rpartition(" ")[2].isdigit():
        names[1:] = [one.rpartition(" ")[2] for one in names[1:]]
    names = [f"{one} again" if n and one == names[n - 1] else one for n, one in enumerate(names)]
    return listed([f"{n} on {figures(at + 1)}" for n, (_, at) in zip(names, starts, strict=True)])


def _role(passage: Passage, part: int) -> str:
    if passage.roles:
        return passage.roles[part - 1]
    return f"the {_ORDINALS[part - 1]}"


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
