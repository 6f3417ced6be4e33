"""The beat of parts, one by one and in a run: A, four eights; the sign; B, four soft eights."""

from __future__ import annotations

import re
from collections.abc import Container, Iterable, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Step
from build_tools.movement.counts import figures
from build_tools.movement.sounding import Piece
from build_tools.movement.whole import transition_between
from build_tools.page_words.speaking import kept_by_language
from build_tools.page_words.words import _
from build_tools.views.dance.moves_begun import moves_begun
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.dance.timeline import join_sounding, section_sounding
from build_tools.views.lesson.beat_by_moves import beat_by_moves
from build_tools.views.words.bars_heard import bars_heard, does_throughout
from build_tools.views.words.beat_in_phrases import made_in_words
from build_tools.views.words.deeds_of_sound import OwnWords, are_counts
from build_tools.views.words.marked_words import marked, row_by_row, said_in, without_words
from build_tools.views.words.plain_words import listed, seconds_in_words
from build_tools.views.words.punctuation import capital, sentence
from build_tools.views.words.said_over import said_over
from build_tools.views.words.sections_called import in_short
from build_tools.views.words.sounds_to_make import made_in_seconds
from build_tools.views.words.words_of_text import words_of_text

_FEWEST_IN_A_RUN = 2
_KEPT = 64
"""Runs, parts and joins that are kept: many steps dance the same, and more than a dance has."""
_LONG = 24
"""Letters of what is told once on a page."""


def made_over(dance: Dance, section: Section | None, pieces: Sequence[Piece]) -> str:
    """What is sounded on counts of a section, or of no one section, told phrase by phrase."""
    if section is None:
        return made_in_words(pieces, dance.phrase, own_words(dance, None))
    whole = bool(pieces) and pieces[-1].end == section.counts
    if whole and (lengths := _off_the_phrases(dance, section, pieces)):
        own = own_words(dance, section)
        starts = [one.start for one in parts_over_counts(dance, section).passages]
        bars = bars_heard(pieces, dance.phrase, own, starts)
        told = _(
            "{does} for {lengths} counts in turn",
            does=does_throughout(pieces, own),
            lengths=listed(lengths),
        )
        return f"{capital(told)}{said_over(bars, dance.phrase, own)}."
    own = own_words(dance, section)
    if whole and (by_moves := beat_by_moves(dance, section, pieces, own)):
        return by_moves
    begun = moves_begun(dance, section) if whole else {}
    return made_in_words(pieces, dance.phrase, own, begun)


def _off_the_phrases(dance: Dance, section: Section, pieces: Sequence[Piece]) -> list[str]:
    """How many counts each passage has, where one sound goes on through passages of other lengths.

    "Say the words for five eights" is no help where the words begin anew after 28 counts.
    """
    sounds = {(one.sound, one.by) for one in pieces}
    if len(sounds) != 1 or pieces[0].sound not in ("voice", "silence"):
        return []
    passages = parts_over_counts(dance, section).passages
    if len(passages) < _FEWEST_IN_A_RUN or all(one.start % dance.phrase == 0 for one in passages):
        return []
    return [figures(one.end - one.start) for one in passages]


def own_words(dance: Dance, section: Section | None) -> OwnWords:
    """What the unit says of the sound, and its words for moves."""
    return OwnWords((section or dance).sound.what, _words_of_moves(dance))


@lru_cache(maxsize=16)
def _words_of_moves(dance: Dance) -> frozenset[str]:
    actions = (action for motif in dance.motifs.values() for action in motif.actions)
    return frozenset(one.word.casefold() for one in actions if one.word)


def sound_in_words(dance: Dance, section: Section) -> str:
    """What is sounded where nobody counts, and how long."""
    heard = section_sounding(dance, section)
    varies = section.seconds is not None and section.seconds.least != section.seconds.most
    if not heard.said:
        return ""
    sound = section.sound
    return made_in_seconds(heard.pieces, about=varies, what=sound.what, follows=sound.follows)


def danced_in_order(dance: Dance, step: Step) -> tuple[str, ...]:
    """The letters of the parts that a step dances one after another; none where it dances one."""
    named = (*step.makes, *step.dances, *step.shows)
    if WHOLE in named:
        return dance.form
    letters = tuple(dict.fromkeys(name for name in named if name in dance.sections))
    if len(letters) < _FEWEST_IN_A_RUN:
        return ()
    return step.joins if set(letters) <= set(step.joins) else letters


class Stretch(NamedTuple):
    """A part or a join of a run: which it is, and what is sounded there or its sign."""

    which: str
    told: str
    is_join: bool = False
    """Whether it is the join to one part, told of that part alone."""


@kept_by_language(maxsize=_KEPT)
def parts_in_a_run(
    dance: Dance, letters: tuple[str, ...], apart: tuple[tuple[str, str], ...] = ()
) -> tuple[Stretch, ...]:
    """Several parts danced one after another: what each sounds like, and the sign of each join.

    No join is told between neighbours that are danced `apart`, with a rest between. None where
    music plays all through, and where nothing is counted: the signs are told then by themselves.
    """
    counted = any(dance.sections[letter].counts is not None for letter in letters)
    if not counted or all(_is_music(dance, letter) for letter in letters):
        return ()
    parts = [_part(dance, letter) for letter in letters]
    joins = ["" if each in apart else _join(dance, *each) for each in pairwise(letters)]
    alike = {without_words(part) for part in parts}
    if len(alike) == 1 and len(set(joins)) == 1 and joins[0]:
        words = {x: said_in(one) for x, one in zip(letters, parts, strict=True) if said_in(one)}
        rows = [_("in {part}{words}", part=in_short(dance, x), words=words[x]) for x in words]
        each = f"{alike.pop().removesuffix('.')}{marked(row_by_row(rows, '; '))}."
        return (Stretch(_("Each part"), each), Stretch(_("At each join"), joins[0]))
    told = [Stretch(in_short(dance, letters[0]), parts[0])]
    for letter, join, part in zip(letters[1:], joins, parts[1:], strict=True):
        if join:
            told.append(_to(dance, letter, join))
        told.append(Stretch(in_short(dance, letter), part))
    return tuple(told)


def joins_alone(dance: Dance, pairs: Iterable[tuple[str, str]]) -> tuple[Stretch, ...]:
    """Joins that are walked by themselves: what is sounded in each, and its sign."""
    joins = [(after, _join(dance, before, after)) for before, after in pairs]
    return tuple(_to(dance, letter, join) for letter, join in joins if join)


def _to(dance: Dance, letter: str, join: str) -> Stretch:
    return Stretch(_("To {part}", part=in_short(dance, letter)), join, is_join=True)


def run_in_words(
    stretches: Sequence[Stretch], known: Container[str] = (), *, joins: bool = False
) -> str:
    """A run, a line for each part and join; what is `known` from above is not told again.

    Its joins are named even so where the step is for them: `joins`. What an earlier line of it
    tells is told as that one's.
    """
    told: list[str] = []
    before: dict[str, str] = {}
    for one in stretches:
        long = len(one.told) > _LONG
        old = one.told in known and long
        if old and one.is_join and not joins:
            continue
        if old:
            said = _("as before.")
        elif long and one.told in before:
            said = _("as {which}.", which=before[one.told])
        else:
            said = one.told
        before.setdefault(one.told, _inside(one))
        told.append(f"{one.which}: {said}")
    return "\n".join(told)


def _inside(stretch: Stretch) -> str:
    """A part or join as it is named in a line of another: A, to B."""
    which = stretch.which
    return f"{which[:1].lower()}{which[1:]}" if stretch.is_join else which


def _is_music(dance: Dance, letter: str) -> bool:
    pieces = section_sounding(dance, dance.sections[letter]).pieces
    return bool(pieces) and all(one.sound == "recording" for one in pieces)


@kept_by_language(maxsize=_KEPT)
def _join(dance: Dance, before: str, after: str) -> str:
    """The sign of a join and what is sounded in it; empty where the dance never joins the two."""
    join = transition_between(dance, before, after)
    if join is None or (before, after) not in pairwise(dance.form):
        return ""
    sections = (dance.sections[before], dance.sections[after])
    heard = join_sounding(dance, sections[0], join, sections[1])
    places = (place.place for one in sections for place in (one.start, one.end))
    text = " ".join((join.how, join.cue, *places, *(one.idea for one in sections)))
    own = own_words(dance, None)._replace(whole=tuple(words_of_text(text)))
    made = made_in_words(heard.pieces, dance.phrase, own)
    said = [word.says for piece in heard.pieces for word in piece.words]
    # of counts the first and the last are enough: "whispers one to eight"
    asked = (said[0], said[-1]) if said and are_counts(said) else said
    if said and all(
        re.search(rf"\b{re.escape(word)}\b", join.cue, re.IGNORECASE) for word in asked
    ):
        # the sign has them: "say the words" beside it asked for others
        voice = all(piece.sound == "voice" for piece in heard.pieces)
        made = "" if voice else without_words(made)
    return f"{sentence(join.cue)} {made}".rstrip()


@kept_by_language(maxsize=_KEPT)
def _part(dance: Dance, letter: str) -> str:
    section = dance.sections[letter]
    heard = section_sounding(dance, section)
    if section.counts is not None:
        made = made_over(dance, section, heard.pieces) if heard.known else ""
    else:
        made = sound_in_words(dance, section)
        if not made and section.seconds is not None:
            made = sentence(seconds_in_words(section.seconds))
    return made or sentence(section.name or section.idea)
