"""What a step tells of the parts that it makes: who dances what, the rules of what is made up, how
pupils get from part to part, and how the dance ends.

A rule, a way from part to part and the ending are told where pupils first meet them, and not where
the step's own words have them.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.page_words.words import _
from build_tools.views.dance.moves_today import heading_of_part, part_lines, parts_of
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.dance.when_made import steps_in_order
from build_tools.views.lesson.move_meanings import part_heading
from build_tools.views.lesson.teachers_part import tells_starts
from build_tools.views.lesson.told_in_step import told
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.sections_called import in_short
from build_tools.views.words.words_of_text import words_of_text

_MOSTLY = 0.8
"""Of the words of a line that the step's own words have, from which on it is told there."""


@dataclass(frozen=True, slots=True)
class PartLines:
    """A part, a way between two or the ending: what it is called, and its lines."""

    heading: str
    lines: tuple[str, ...]


def parts_made(unit: Unit, lesson: Lesson, index: int, letters: Sequence[str]) -> list[PartLines]:
    """What the step at `index` tells of the parts that it makes, `letters`, and joins."""
    dance, step = unit.dance, lesson.steps[index]
    starts = tells_starts(dance, step)
    found = []
    for letter in letters:
        section = dance.sections[letter]
        rules = tuple(_rules(section, step)) if section.kind == "improvised" else ()
        danced = tuple(
            line for part in parts_of(dance, [letter], starts) for line in part_lines(part)
        )
        if not danced and rules and not _said(section.sound.what, step):
            danced = (_("Sound: {what}", what=sentence(section.sound.what)),)
        if rules or danced:
            heading = part_heading(heading_of_part(section))
            found.append(PartLines(heading, (*rules, *danced)))
    found += _ways(unit, step)
    if step is _first_ending(unit):
        ends = (f"{capital(one.who)}: {sentence(one.does)}" for one in dance.ending)
        if lines := tuple(line for line in ends if not _said(line, step)):
            found.append(PartLines(_("How it ends"), lines))
    return found


def parts_again(dance: Dance, letters: Sequence[str]) -> list[PartLines]:
    """Who dances what in parts of earlier lessons."""
    parts = parts_of(dance, letters)
    return [PartLines(part_heading(part.called), part_lines(part)) for part in parts]


def _rules(section: Section, step: Step) -> Iterator[str]:
    """How an improvised part starts, and the rules pupils move within."""
    start = section.improvised_from
    if start and not _said(start, step):
        yield _("Start: {what}", what=sentence(start))
    yield from (sentence(rule) for rule in section.improvised_rules if not _said(rule, step))


def _ways(unit: Unit, step: Step) -> Iterator[PartLines]:
    """How pupils get from part to part, in the first step that practises it."""
    for before, after in dict.fromkeys(pairwise(step.joins)):
        join = transition_between(unit.dance, before, after)
        first = next(
            s for _p, _l, s in steps_in_order(unit) if (before, after) in pairwise(s.joins)
        )
        if join is None or first is not step or _said(join.how, step):
            continue
        heading = _(
            "{before} to {after}",
            before=in_short(unit.dance, before),
            after=in_short(unit.dance, after),
        )
        yield PartLines(capital(heading), (sentence(join.how),))


def _first_ending(unit: Unit) -> Step | None:
    """The first step in which the dance ends: it makes a last part that is danced once, else it
    dances the whole.
    """
    form = unit.dance.form
    for _place, _lesson, step in steps_in_order(unit):
        alone = form.count(form[-1]) == 1 and form[-1] in step.makes
        if alone or WHOLE in (*step.dances, *step.shows) or step.joins[-2:] == form[-2:]:
            return step
    return None


def _said(line: str, step: Step) -> bool:
    """Whether the step's own words have what the line says."""
    own, given = words_of_text(line), set(words_of_text(" ".join(told(step))))
    return sum(word in given for word in own) >= _MOSTLY * len(own)
