"""What sounds over the counts of one step, as far as that is sure; whether it is a plain beat."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.page_words.speaking import kept_by_language, speaking
from build_tools.page_words.tables import ENGLISH
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.dance.step_sounding import parts_named, sounding_over
from build_tools.views.dance.timeline import Sounding, joined_sounding, section_sounding
from build_tools.views.lesson.beat_of_parts import made_over
from build_tools.views.lesson.beat_of_phrase import as_in_its_part
from build_tools.views.lesson.one_thing_at_a_time import one_thing_at_a_time
from build_tools.views.lesson.with_music import without_music
from build_tools.views.words.marked_words import without_words

_PLAIN = re.compile(r"(?:Tap|Pat) (?!on \d)(?:[\w ]+|(?:softly )?on each count for [\w ]+)\.")
"""All that is sounded is the beat."""
_PRACTISED = frozenset({"beat", "soft beat", "voice", "recording"})
"""Sounds to which moves are practised before they are put together."""


class _Danced(NamedTuple):
    """What the sound of a step is worked out of; it is the same in many steps."""

    joins: tuple[str, ...]
    names: tuple[str, ...]
    develops: tuple[str, ...]
    counts: Fraction
    music: bool
    """Whether its own words do not say that it goes without the music."""


def _danced(step: Step) -> _Danced:
    counts, music = step.counts or Fraction(0), not without_music(step)
    return _Danced(step.joins, parts_named(step), step.develops, counts, music)


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
    heard = as_in_its_part(dance, danced.names, heard)
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


def made_in_step(dance: Dance, step: Step) -> str:
    """What is sounded on the counts of a step; empty where nothing is counted, or nobody knows."""
    return _sounded(dance, _danced(step), step.you or "") if step.counts else ""


@kept_by_language(maxsize=128)
def _sounded(dance: Dance, danced: _Danced, you: str) -> str:
    letters = [name for name in danced.names if name in dance.sections]
    section = dance.sections[letters[0]] if len(letters) == 1 else None
    pieces = _heard(dance, danced).pieces
    return one_thing_at_a_time(made_over(dance, section, pieces), pieces, you)


def tapped_in_step(dance: Dance, step: Step) -> str:
    """How a plain beat is tapped in a step: loudly or softly; empty where it is no plain one."""
    # judged by its English words, whatever language the page speaks
    with speaking(ENGLISH):
        made = without_words(made_in_step(dance, step))
    if not _PLAIN.fullmatch(made):
        return ""
    return "softly" if "soft" in made else "plainly"


def is_played(dance: Dance, step: Step) -> bool:
    """Whether music plays over the counts of a step."""
    return _is_played(_heard(dance, _danced(step)))


def _is_played(heard: Sounding) -> bool:
    return any(one.sound == "recording" for one in heard.pieces)
