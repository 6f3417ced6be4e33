"""What a lesson dances, in the plainest words: each move, and who dances what, when."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from build_tools.model.dance import Action, Dance, Passage, Section
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of, roots
from build_tools.movement.effort import EFFORT_ACTIONS
from build_tools.page_words.words import N_, _, of_schema
from build_tools.views.dance.parts_named import letters_in, motifs_in
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.dance.without_counts import is_counted
from build_tools.views.words.how_far import how_far_in_words
from build_tools.views.words.plain_words import (
    action_label,
    all_of,
    counts_in_words,
    danced_in_words,
    fit_in_words,
    listed,
    name_in_words,
    way_in_words,
)
from build_tools.views.words.punctuation import quoted, sentence
from build_tools.views.words.sections_called import called

_KINDS = {
    "travel": N_("travel"),
    "turn": N_("turn"),
    "jump": N_("jump"),
    "stillness": N_("hold still"),
    "transfer": N_("shift your weight"),
}
_FEEL = {
    "strong": N_("strong"),
    "light": N_("light"),
    "sudden": N_("sudden"),
    "sustained": N_("slow and smooth"),
    "direct": N_("straight"),
    "indirect": N_("winding"),
    "free": N_("free"),
    "bound": N_("held back"),
}


_EVERYONE = re.compile(r"everyone(?P<how>(?:[,:]? .+)?)")
"""Who dances, in the author's words, and how they do it."""
_SO_OFTEN = (
    N_("everyone dances {what}"),
    N_("everyone dances {what} twice"),
    N_("everyone dances {what} three times"),
    N_("everyone dances {what} four times"),
)


@dataclass(frozen=True, slots=True)
class MoveToday:
    """One move by the pupils' own word, and what the body does."""

    word: str
    does: str


@dataclass(frozen=True, slots=True)
class PartToday:
    """One section: its letter, over which counts who dances what, in order, and to what sound."""

    letter: str
    called: str
    """Its letter and its name."""
    danced: tuple[str, ...]
    sound: str


@dataclass(frozen=True, slots=True)
class Danced:
    """Moves, and the sections that have them."""

    moves: tuple[MoveToday, ...]
    parts: tuple[PartToday, ...]


def danced_today(unit: Unit, lesson: Lesson) -> tuple[Danced, Danced]:
    """What the lesson makes, and what else it dances or shows again, each move and section once.

    A changed motif is told by the motif that it comes from, and by the moves that it adds.
    """
    steps = lesson.steps
    made = [n for step in steps for n in (*step.makes, *step.develops)]
    again = [n for step in steps for n in (*step.joins, *step.dances, *step.shows)]
    new_moves, new_parts = _moves(unit.dance, made), _parts(unit.dance, made)
    return Danced(new_moves, new_parts), Danced(
        _without(_moves(unit.dance, again), {move.word for move in new_moves}),
        tuple(part for part in _parts(unit.dance, again) if part not in new_parts),
    )


def _without(moves: tuple[MoveToday, ...], words: set[str]) -> tuple[MoveToday, ...]:
    return tuple(move for move in moves if move.word not in words)


def _moves(dance: Dance, names: Sequence[str]) -> tuple[MoveToday, ...]:
    found: dict[str, MoveToday] = {}
    counted = is_counted(dance)
    for name in motifs_in(dance, names):
        for source in (*sorted(roots(dance, name)), name):
            for action in actions_of(dance, source):
                found.setdefault(action_label(action), move_in_words(action, counted))
    return tuple(found.values())


def _parts(dance: Dance, names: Sequence[str]) -> tuple[PartToday, ...]:
    return parts_of(dance, letters_in(dance, names))


def parts_of(
    dance: Dance, letters: Sequence[str], starts_told: Sequence[str] = ()
) -> tuple[PartToday, ...]:
    """Who dances what, when, in the sections of these letters; none where all is made up.

    Of sections in `starts_told` it is told elsewhere who starts on which count.
    """
    sections = [dance.sections[letter] for letter in letters]
    return tuple(
        _part(dance, section, section.letter in starts_told)
        for section in sections
        if section.danced
    )


def part_lines(part: PartToday) -> tuple[str, ...]:
    """What is danced on which counts, in order, and then its sound."""
    return (*part.danced, _("Sound: {what}", what=sentence(part.sound)))


def move_in_words(action: Action, counted: bool) -> MoveToday:
    """The move as a body does it: a jump, high, light and sudden."""
    parts = [
        counts_in_words(action.counts) if counted else "",
        all_of([_deed(kind, action) for kind in action.kinds]),
        _way(action),
        how_far_in_words(action),
        _between(action.level),
        _between(action.size),
        feel_in_words(action.dynamics),
    ]
    return MoveToday(action_label(action), ", ".join(part for part in parts if part))


def _deed(kind: str, action: Action) -> str:
    if kind == "gesture":
        if not action.body_part:
            return _("move on the spot")
        return _("move the {part}", part=action.body_part)
    return _(_KINDS[kind])


def _way(action: Action) -> str:
    line = _("on a {pathway} line", pathway=of_schema(action.pathway)) if action.pathway else ""
    return f"{way_in_words(action)} {line}".strip()


def _between(amount: str | None) -> str:
    """One level or size, or from one to another."""
    if amount and " to " in amount:
        return _("from {levels}", levels=of_schema(amount))
    return of_schema(amount) if amount else ""


def feel_in_words(dynamics: tuple[str, ...]) -> str:
    """How a move feels, in plain words: slow and smooth, winding."""
    words: list[str] = []
    for word in dynamics:
        effort = EFFORT_ACTIONS.get(word)
        each = (effort.weight, effort.time, effort.space) if effort else (word,)
        words += [_FEEL[quality] for quality in each]
    return ", ".join(map(_, dict.fromkeys(words)))


def _part(dance: Dance, section: Section, starts_told: bool) -> PartToday:
    danced = []
    for one in parts_over_counts(dance, section).passages:
        all_dance = _all_dance(one.passage)
        said = all_dance or _said(one.passage, dance.sides, starts_told)
        if section.counts is not None:
            first, last = figures(one.start + 1), figures(one.end)
            said = (
                _("Counts {first} to {last}: {what}", first=first, last=last, what=said)
                if all_dance
                else _("Counts {first} to {last}, {what}", first=first, last=last, what=said)
            )
        danced.append(said)
    return PartToday(section.letter, heading_of_part(section), tuple(danced), section.sound.what)


def heading_of_part(section: Section) -> str:
    """How it is called; of a changed return what its sign stands for is told too."""
    if section.returns is None or not section.name:
        return called(section)
    return _(
        "{letter}, {part} changed: {name}",
        letter=section.letter,
        part=section.returns,
        name=section.name,
    )


def _all_dance(passage: Passage) -> str:
    """A whole sentence where everyone dances one thing: everyone dances “sheep” twice."""
    found = _EVERYONE.fullmatch(passage.who or "")
    names = list(dict.fromkeys(passage.what))
    often = passage.times <= len(_SO_OFTEN) and not passage.swap and passage.fit == "unison"
    if found is None or len(names) > 1 or not often:
        return ""
    how = _SO_OFTEN[passage.times - 1]
    return _(how, what=quoted(name_in_words(names[0]))) + found["how"]


def _said(passage: Passage, sides: Mapping[str, str], starts_told: bool) -> str:
    """What is danced, who dances it in the author's words, and how the parts fit where they say
    too little.
    """
    if passage.who is None:
        return danced_in_words(passage, sides)
    what = listed(list(dict.fromkeys(name_in_words(name) for name in passage.what)))
    canon = passage.fit.startswith("canon") and not starts_told
    starts = f"; {fit_in_words(passage)}" if canon else ""
    return f"{what}: {passage.who}{starts}"
