"""What the bank knows of the teacher's part in a step: the beat, who starts when, the signs.

It is worked out of the dance, so that no author types it and it stays right when the dance changes.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator, Mapping, Sequence
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.page_words.words import N_, _
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.lesson.beat_of_joins import practises_joins, run_of, run_sounds
from build_tools.views.lesson.beat_of_parts import (
    Stretch,
    danced_in_order,
    run_in_words,
    sound_in_words,
)
from build_tools.views.lesson.beat_of_step import made_in_step, tapped_in_step
from build_tools.views.lesson.beat_told import (
    beat_in_words,
    counted_in_words,
    each_phrase_in_words,
)
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.lesson.sound_of_section import sound_of_section
from build_tools.views.lesson.who_starts import starts_in_words
from build_tools.views.lesson.words_told_twice import without_words_given
from build_tools.views.words.marked_words import said_in, with_words, without_words
from build_tools.views.words.pace_said import pace_in_words
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import sentence
from build_tools.views.words.sections_called import in_short

_MOST_SIGNS = 3
"""More than these are no help in a step: who dances what, and the page of the dance, tell them."""
_BEAT, _SOUND, _STARTS = N_("Beat"), N_("Sound"), N_("Starts")
_HOW_FAST = N_("How fast")
_LONG = {_SOUND: 190}
_LONG_ELSE = 70
"""Letters of a line that is not told twice on a page; what sounds where nobody counts is wanted
where it is done, unless it is very long."""


class Told(NamedTuple):
    """One line of it: what it is about, and the words."""

    label: str
    words: str
    """A run of parts has a line for each; what is said is marked (`marked_words.py`)."""

    def on_paper(self, *, said: bool) -> str:
        """The words as paper has them, one after another, with or without what is said."""
        line = self.words.replace("\n", " ")
        return with_words(line) if said else without_words(line)


class _Beat(NamedTuple):
    """What beat the steps so far had."""

    tapped: tuple[str, str] = ("", "")
    """How the last one is tapped, as `tapped_in_step` has it, and what is said with it."""
    counts: Fraction = Fraction(0)
    several: bool = False
    """Whether any had several eights, so that what an eight is was told."""


def teachers_parts(unit: Unit, lesson: Lesson, *, in_full: bool) -> tuple[tuple[Told, ...], ...]:
    """For every step its beat or sound, who starts on which count, and the signs of its joins.

    `in_full`, where steps are looked at one by one, all of it is told. On a page a long line that
    an earlier step has as it is, is told as that one's; a plain beat that goes on is not told
    again, and neither is who starts when in what is only danced again.
    """
    every = _in_full(unit, lesson)
    if in_full:
        return tuple(tuple(_labelled(*one)) for one in zip(every, lesson.steps, strict=True))
    before: dict[Told, int] = {}
    known: set[str] = set()
    found, goes_on = [], _Beat()
    for number, (step, told) in enumerate(zip(lesson.steps, every, strict=True), start=1):
        tapped = (tapped_in_step(unit.dance, step), said_in(made_in_step(unit.dance, step)))
        shorter = [
            _known_left_out(unit.dance, step, one, before, known)
            for one in told
            if one.label != _BEAT or not _waits_for_the_last(unit, lesson, step)
        ]
        alike = goes_on if tapped[0] and tapped == goes_on.tapped else None
        page = _on_a_page(unit.dance, step, shorter, before, alike)
        found.append(tuple(_labelled(page, step)))
        for one in told:
            before.setdefault(one, number)
        if not _waits_for_the_last(unit, lesson, step):
            known |= _sounds_told(unit.dance, step)
        if step.counts:
            several = goes_on.several or step.counts > unit.dance.phrase
            goes_on = _Beat(tapped, step.counts, several)
    return tuple(found)


def _labelled(told: Iterable[Told], step: Step) -> Iterator[Told]:
    """The same with labels in the page's language, and no words of joins that the step has."""
    return (Told(_(one.label), without_words_given(one.words, step)) for one in told)


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
    run = run_of(dance, step)
    if not run or told in before or told.label not in (_BEAT, _SOUND):
        return told
    return Told(told.label, _ordered(dance, step, run, known))


def _sounds_told(dance: Dance, step: Step) -> set[str]:
    """What a step tells of parts and joins."""
    run = run_of(dance, step)
    section = section_of(dance, step)
    alone = {made_in_step(dance, step)} if step.counts and not run else set()
    if section is not None and section.counts is None:
        alone.add(sound_in_words(dance, section))
    return run_sounds(dance, step) | alone


@once_a_lesson
def _in_full(unit: Unit, lesson: Lesson) -> tuple[tuple[Told, ...], ...]:
    return tuple(tuple(_told(unit, lesson, step)) for step in lesson.steps)


def _on_a_page(
    dance: Dance,
    step: Step,
    told: Sequence[Told],
    before: Mapping[Told, int],
    goes_on: _Beat | None,
) -> Iterator[Told]:
    """What of a step's lines is told where the lines of earlier steps stand above.

    `goes_on` is the plain beat of the step before, where this step has the same.
    """
    for one in told:
        if one in before and len(one.words) > _LONG.get(one.label, _LONG_ELSE):
            yield Told(one.label, _("As in step {number}.", number=before[one]))
        elif one.label == _BEAT and goes_on:
            yield Told(_BEAT, _goes_on(dance, step, goes_on))
        elif one.label != _STARTS or step.phase != "recall" or step.makes:
            yield one


def _goes_on(dance: Dance, step: Step, before: _Beat) -> str:
    """The plain beat of the step before, for as many counts, or for more or fewer."""
    counted = counted_in_words(dance, step)
    if step.counts == before.counts:
        return sentence(_("{counts}, as before", counts=counted))
    if step.counts == dance.phrase or before.several:
        return sentence(_("{counts} now, same speed", counts=counted))
    return sentence(
        _("{counts} now{each}, same speed", counts=counted, each=each_phrase_in_words(dance, step))
    )


def _told(unit: Unit, lesson: Lesson, step: Step) -> Iterator[Told]:
    dance = unit.dance
    section = section_of(dance, step)
    first = step is next((one for one in lesson.steps if one.counts), None)
    run = run_of(dance, step)
    if run:
        yield Told(_BEAT, _ordered(dance, step, run))
        if first and dance.tempo:
            yield Told(_HOW_FAST, sentence(pace_in_words(dance.tempo, dance.phrase)))
    elif step.counts:
        yield Told(_BEAT, beat_in_words(dance, step, first=first))
    elif section is not None and section.counts is None and not _in_groups(section, step):
        yield Told(_SOUND, sound_of_section(dance, section))
    for letter in tells_starts(dance, step):
        yield Told(_STARTS, starts_in_words(dance, letter))
    if not run and (signs := _signs(dance, step)):
        yield Told(N_("Signs") if len(signs) > 1 else N_("Sign"), " ".join(signs))


def _ordered(dance: Dance, step: Step, run: Sequence[Stretch], known: Container[str] = ()) -> str:
    """A run of all parts where pupils chose their order, with the order in which it is told."""
    chosen = dance.order_choice is not None and danced_in_order(dance, step) == dance.form
    told = run_in_words(run, known, joins=practises_joins(dance, step))
    alike = run[0].which != dance.form[0]
    if not chosen or alike:
        return told
    order = _(
        "If your order is {letters}.",
        letters=listed([in_short(dance, letter) for letter in dance.form]),
    )
    return f"{order}\n{told}"


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


def _in_groups(section: Section, step: Step) -> bool:
    """Whether groups show what they do of a part that the class dances as one, each to its own.

    The part's sound is that of the class: those who watch one group turn have another.
    """
    of_all = section.groups is None or section.groups.size == 1
    return of_all and step.phase == "look and talk" and GROUP_SIZES.get(step.grouping, 1) > 1


def _signs(dance: Dance, step: Step) -> tuple[str, ...]:
    """The sign for each join that a step practises: from A to B, and what gives it."""
    found: dict[str, list[str]] = {}
    for before, after in pairwise(step.joins):
        join = transition_between(dance, before, after)
        if join is not None:
            pair = _(
                "{before} to {after}",
                before=in_short(dance, before),
                after=in_short(dance, after),
            )
            found.setdefault(sentence(join.cue), []).append(pair)
    if len(found) > _MOST_SIGNS:
        return ()
    return tuple(f"{listed(pairs)}: {cue}" for cue, pairs in found.items())
