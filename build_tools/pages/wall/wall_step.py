"""One step of a lesson on the wall: its task in whole sentences, the moves as bodies, the count."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.pages.pieces.for_scripts import StepData, step_data
from build_tools.pages.pieces.heard_data import heard_data
from build_tools.pages.pieces.music import played_data
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.pages.wall.wall_phrase import WallRow, is_uncounted, wall_phrase
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.order_danced import order_danced
from build_tools.views.dance.step_sounding import step_sounding
from build_tools.views.dance.without_counts import is_counted, lengths_in_words
from build_tools.views.diagrams.bodies_over_counts import bodies_over_counts
from build_tools.views.diagrams.body_sprite import BodyDrawn
from build_tools.views.lesson.grouping_in_words import grouping_in_words
from build_tools.views.lesson.step_facts import StepFacts
from build_tools.views.lesson.teachers_part import section_of
from build_tools.views.words.plain_words import counts_in_words, minutes_in_words, name_in_words
from build_tools.views.words.punctuation import capital, kept_together
from build_tools.views.words.wall_lines import wall_lines

_MOST_STRIPS = 2
"""Motifs drawn for a step that dances a section; a step that makes or changes draws them all."""


@dataclass(frozen=True, slots=True)
class WallCount:
    """What the player counts in a step."""

    counts: str
    """How many counts, as a number for scripts."""
    words: str
    """How many counts, in words."""
    tempo: str
    """Beats a minute."""
    phrase: str
    """Counts in a phrase."""
    heard: str
    """Every stroke and word of it for scripts; empty where nothing sounds that is known."""


@dataclass(frozen=True, slots=True)
class WallStrip:
    """One row of moves, drawn large."""

    picture: Picture
    """The drawing, and the same in words."""
    moves: str
    """From which count to which each move lasts, for scripts; empty where no count fits them."""


@dataclass(frozen=True, slots=True)
class WallSection:
    """One section in the order of the dance."""

    letter: str
    """By which the form names it, such as B."""
    idea: str
    """What it is about, in a few words."""


@dataclass(frozen=True, slots=True)
class WallStep:
    """One step of the lesson on the wall."""

    data: StepData
    """What the wall tells its scripts of it."""
    does: str
    """What pupils do, in a few words."""
    minutes: str
    """How long it lasts, in words."""
    groups: str
    """How pupils are grouped, in words."""
    lines: tuple[str, ...]
    """The task in whole sentences, as many together as can be read at one look."""
    strips: tuple[WallStrip, ...]
    """What is danced, move by move, drawn large."""
    order: tuple[WallSection, ...]
    """The sections in their order, where the step dances more than one."""
    phrase: tuple[WallRow, ...]
    """All that is danced, row by row in words, where one drawing does not show it all."""
    plans: tuple[Picture, ...]
    """The floor, where pupils stand so for the first time in the lesson."""
    count: WallCount | None
    """The count; None where nothing is counted."""
    played: str | None
    """What of the recording is played for it, for scripts; None where nothing is."""


def wall_step(
    dance: Dance,
    facts: StepFacts,
    step: Step,
    plans: tuple[Picture, ...],
    bodies: list[BodyDrawn],
) -> WallStep:
    """The step; `bodies` takes those that its drawings point to."""
    danced = danced_in(dance, step)
    return WallStep(
        data=step_data(facts),
        does=step.does,
        minutes=kept_together(minutes_in_words(step.minutes)),
        groups=capital(grouping_in_words(step.grouping)),
        lines=wall_lines(step.task),
        strips=_strips(dance, danced, step, bodies),
        order=()
        if danced
        else tuple(WallSection(one.letter, one.idea) for one in order_danced(dance, step)),
        phrase=wall_phrase(dance, step),
        plans=plans,
        count=_count(dance, step),
        played=played_data(dance, step),
    )


def danced_in(dance: Dance, step: Step) -> tuple[str, ...]:
    """The motifs and developments that pupils need to see in a step.

    All that the step makes or changes, but for what is danced nowhere and is only on the way to
    another, in which one of its actions is another; else those of the one section, or the motifs,
    that it dances, two at most. Several sections at once draw none: `order_danced` tells their
    order.
    """
    made = [name for name in (*step.makes, *step.develops) if _is_moves(dance, name)]
    if made:
        danced = {what for s in dance.sections.values() for one in s.danced for what in one.what}
        changed = [dance.developments[name] for name in step.develops if name in dance.developments]
        on_the_way = {one.of for one in changed if one.device == "replacing an action"} - danced
        on_the_way &= set(step.develops)
        # a mirror that is changed again is nobody's: what it mirrors is seen, and what comes of it
        mirrored = {
            name
            for name in {one.of for one in changed} - danced
            if name in step.develops and dance.developments[name].device == "mirror"
        }
        shown = (
            one
            for name in dict.fromkeys(made)
            for one in ((dance.developments[name].of,) if name in mirrored else (name,))
        )
        return tuple(name for name in dict.fromkeys(shown) if name not in on_the_way)
    names = tuple(dict.fromkeys((*step.joins, *step.makes, *step.dances, *step.shows)))
    if len([name for name in names if name in dance.sections]) > 1 or "whole" in names:
        return ()
    return tuple(dict.fromkeys(_moves(dance, names)))[:_MOST_STRIPS]


def _moves(dance: Dance, names: tuple[str, ...]) -> Iterator[str]:
    for name in names:
        if _is_moves(dance, name):
            yield name
        elif name in dance.sections:
            for passage in dance.sections[name].danced:
                yield from (what for what in passage.what if _is_moves(dance, what))


def _is_moves(dance: Dance, name: str) -> bool:
    return name in dance.motifs or name in dance.developments


def _strips(
    dance: Dance, danced: tuple[str, ...], step: Step, bodies: list[BodyDrawn]
) -> tuple[WallStrip, ...]:
    """The moves of all that is danced, one after another; marked where the count goes through them.

    What the voice says and what is lit must be one: where the step counts anything else, or the
    same in another order, nothing is marked.
    """
    lengths = [sum((a.counts for a in drawn_actions(dance, n)), Fraction(0)) for n in danced]
    whole = sum(lengths, Fraction(0))
    fits = is_counted(dance) and step.counts == whole and _counted(dance, step) == danced
    counted = is_counted(dance) and not is_uncounted(section_of(dance, step))
    found, before = [], Fraction(0)
    for name, length in zip(danced, lengths, strict=True):
        actions = drawn_actions(dance, name)
        lasts = None if counted else lengths_in_words(actions)
        for row in bodies_over_counts(capital(name_in_words(name)), actions, lasts):
            spans = (f"{float(a + before):g}-{float(b + before):g}" for a, b in row.moves)
            told = " ".join(spans) if fits else ""
            found.append(WallStrip(picture(row.figure), told))
            bodies += row.bodies
        before += length
    return tuple(found)


def _counted(dance: Dance, step: Step) -> tuple[str, ...]:
    """What everybody dances at once through the counts of a step, in order; empty where nobody can
    say, since there are several parts, or people dance different things.
    """
    names = (*step.joins, *step.makes, *step.develops, *step.dances, *step.shows)
    sections = [dance.sections[name] for name in dict.fromkeys(names) if name in dance.sections]
    if not sections and "whole" not in names:
        return tuple(dict.fromkeys(name for name in names if _is_moves(dance, name)))
    if len(sections) != 1 or any(one.fit != "unison" for one in sections[0].danced):
        return ()
    return tuple(what for one in sections[0].danced for what in one.what * one.times)


def _count(dance: Dance, step: Step) -> WallCount | None:
    if step.counts is None or dance.tempo is None:
        return None
    return WallCount(
        counts=f"{float(step.counts):g}",
        words=counts_in_words(step.counts),
        tempo=str(dance.tempo),
        phrase=str(dance.phrase),
        heard=heard_data(step_sounding(dance, step)),
    )
