"""The sections of a dance, one by one, and what pupils decide."""

from __future__ import annotations

import re
from collections.abc import Container
from dataclasses import dataclass

from build_tools.model.dance import Dance, Section, Sound
from build_tools.model.unit import Unit
from build_tools.movement.letters import slug
from build_tools.movement.whole import transition_between
from build_tools.page_words.words import N_, _
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.dance.when_made import settled
from build_tools.views.diagrams.floor_plan import unit_floor_plan
from build_tools.views.diagrams.parts import parts_figure
from build_tools.views.words.changed_return import changed_in_words
from build_tools.views.words.choices_said import DECIDED_BY, options_in_words
from build_tools.views.words.doing import odd_group_in_words
from build_tools.views.words.plain_words import (
    counts_in_words,
    danced_in_words,
    listed,
    seconds_in_words,
    transition_in_words,
)
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.sections_called import called_by

_KINDS = {
    "recorded": N_("A recording"),
    "drum": N_("A drum"),
    "voice": N_("A voice"),
    "pupils live": N_("Pupils play or sing"),
    "silence": N_("Silence"),
}
_NO_DRUM = re.compile(
    r"(?:an?|the|some|one) (?:\w+ ){0,2}"
    r"(?:shaker|bell|bells|keys|rattle|tambourine|maracas?|tin|jar|triangle|book)\b",
    re.IGNORECASE,
)
"""What the words begin with where the thing that sounds is no drum."""


@dataclass(frozen=True, slots=True)
class SectionView:
    """One section of the dance."""

    letter: str
    """By which the form names it, such as B, or B again."""
    anchor: str
    """Its place on the page, such as section-b."""
    name: str
    """What stands beside its letter: the class's name for it, or what it is about."""
    idea: str | None
    """What it is about, where the name does not say it."""
    returns: str | None
    """Which section comes back in it, and what differs; None where it is no changed return."""
    length: str
    """Its counts, or its seconds and the cue it ends on."""
    danced: tuple[str, ...]
    """Who dances what, line by line."""
    rules: tuple[str, ...]
    """How an improvised section starts, and the rules pupils move within."""
    parts: Picture | None
    """Who dances what when, over the counts; None where it is not counted."""
    odd_group: tuple[str, ...]
    """What a group does that has one dancer over, or one missing, in this section alone."""
    floor: Picture | None
    """Where they stand at the start and at the end; None where it is told before."""
    sound: str | None
    """Its sound, where it differs from the dance's."""
    join: Labelled | None
    """How it leads into the next section: how long, then how and on what cue."""


@dataclass(frozen=True, slots=True)
class OddGroups:
    """What a group of another size does in more than one section."""

    where: str | None
    """In which parts; None where it is in all that are danced in groups."""
    does: str
    """What it does."""


@dataclass(frozen=True, slots=True)
class ChoiceView:
    """Something pupils decide."""

    what: str
    """What is decided."""
    options: str
    """What they choose from."""
    by: str
    """Who decides, and in which lesson."""
    if_not: str
    """What to do if it is not decided in time."""


def sound_in_words(sound: Sound) -> str:
    """Where the sound comes from, what is heard, and who follows whom."""
    what = sentence(sound.what)
    if not _is_other_thing(sound):
        what = f"{_(_KINDS[sound.kind])}: {what}"
    told = [what, sentence(sound.follows)]
    if sound.lasts:
        told.append(_("It lasts {seconds} seconds.", seconds=sound.lasts))
    if sound.looped:
        told.append(_("It is played round and round."))
    return " ".join(told)


def _is_other_thing(sound: Sound) -> bool:
    """Whether it is struck or shaken as a drum is, and is none: a bell, a shaker."""
    return sound.kind == "drum" and bool(_NO_DRUM.match(sound.what))


def section_views(unit: Unit) -> tuple[SectionView, ...]:
    """The sections in the order of the dance; one that comes again unchanged is named again."""
    form = unit.dance.form
    told_once = {one.does for one in groups_of_another_size(unit)}
    return tuple(
        _again(unit.dance, place) if letter in form[:place] else _section(unit, place, told_once)
        for place, letter in enumerate(form)
    )


def groups_of_another_size(unit: Unit) -> tuple[OddGroups, ...]:
    """What such groups do in more than one part of the dance, each said once."""
    sections = unit.dance.sections
    told = {letter: odd_group_in_words(unit, one) for letter, one in sections.items()}
    grouped = [letter for letter, lines in told.items() if lines]
    found = []
    for line in dict.fromkeys(line for lines in told.values() for line in lines):
        parts = [letter for letter in grouped if line in told[letter]]
        if len(parts) > 1:
            where = None if parts == grouped else _("Parts {parts}", parts=listed(parts))
            found.append(OddGroups(where, line))
    return tuple(found)


def _section(unit: Unit, place: int, told_once: Container[str]) -> SectionView:
    """The section there; what is `told_once` for the dance it does not tell again."""
    dance = unit.dance
    letter = dance.form[place]
    section = dance.sections[letter]
    start = (_("Start: {what}", what=section.improvised_from),) if section.improvised_from else ()
    counted = section.counts is not None and section.danced
    return SectionView(
        letter=letter,
        anchor=f"section-{slug(letter)}",
        name=_named(section),
        idea=section.idea if section.name else None,
        returns=changed_in_words(section),
        length=_length(section),
        danced=tuple(capital(danced_in_words(one, dance.sides)) for one in section.danced),
        rules=(*start, *section.improvised_rules),
        parts=picture(parts_figure(dance, section)) if counted else None,
        odd_group=tuple(x for x in odd_group_in_words(unit, section) if x not in told_once),
        floor=picture(unit_floor_plan(unit, section)),
        sound=sound_in_words(section.sound) if section.sound != dance.sound else None,
        join=_join(dance, place),
    )


def _again(dance: Dance, place: int) -> SectionView:
    """A section that was told: whoever follows the page may not miss it, nor the way out of it."""
    letter = dance.form[place]
    section = dance.sections[letter]
    return SectionView(
        letter=_("{letter} again", letter=letter),
        anchor=f"section-{slug(letter)}-again-{place + 1}",
        name=_named(section),
        idea=None,
        returns=_("As the first time."),
        length=_length(section),
        danced=(),
        rules=(),
        parts=None,
        odd_group=(),
        floor=None,
        sound=None,
        join=_join(dance, place),
    )


def _named(section: Section) -> str:
    return capital(section.name) if section.name else section.idea


def _length(section: Section) -> str:
    if section.counts is not None:
        return capital(counts_in_words(section.counts))
    length = seconds_in_words(section.seconds) if section.seconds else ""
    cue = sentence(section.ends_on or "")
    return _("Not counted, {length}. Ends on: {cue}", length=length, cue=cue)


def _join(dance: Dance, place: int) -> Labelled | None:
    letter = dance.form[place]
    if place + 1 == len(dance.form):
        return None
    after = dance.form[place + 1]
    t = transition_between(dance, letter, after)
    if t is None:
        return None
    how = _(
        "{join}. {how} Cue: {cue}",
        join=transition_in_words(t),
        how=sentence(t.how),
        cue=sentence(t.cue),
    )
    return Labelled(_("Then to {section}", section=called_by(dance, after)), how)


def choice_views(unit: Unit) -> tuple[ChoiceView, ...]:
    """What pupils decide, each with the lesson that settles it."""
    where = settled(unit)
    found = []
    for name, choice in unit.dance.choices.items():
        by = _(DECIDED_BY[choice.by])
        if where[name]:
            lesson = where[name][0].lesson
            told = _("Decided by {who}, settled in lesson {lesson}.", who=by, lesson=lesson)
        else:
            told = _("Decided by {who}.", who=by)
        found.append(
            ChoiceView(
                choice.what,
                options_in_words(choice),
                told,
                sentence(choice.if_not),
            )
        )
    return tuple(found)
