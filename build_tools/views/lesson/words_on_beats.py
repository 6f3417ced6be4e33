"""Who says which words on the beats of a part, in the step of a lesson that first dances it.

What a voice alone says, and the sound that it is, the teacher's part of the step tells already
(`teachers_part.py`); here are the words that are said while something else beats.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from build_tools.model.dance import Dance, Heard, Section
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.sounding import Piece
from build_tools.page_words.words import N_, _
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.dance.parts_over_counts import parts_over_counts
from build_tools.views.dance.timeline import section_sounding
from build_tools.views.lesson.beat_by_moves import moves_in
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.words.deeds_of_sound import are_counts
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import quoted
from build_tools.views.words.sections_called import in_short

_SAID = {
    None: N_("say on the beats {words}"),
    "teacher": N_("say on the beats {words}"),
    "class": N_("the class says on the beats {words}"),
    "player": N_("a player says on the beats {words}"),
    "dancers": N_("dancers say on the beats {words}"),
}
_NOTHING = "-"


@once_a_lesson
def words_on_beats(unit: Unit, lesson: Lesson) -> tuple[tuple[str, ...], ...]:
    """For every step the words on the beats of each part that it is the first to dance today."""
    told: set[str] = set()
    found = []
    for step in lesson.steps:
        names = (*step.makes, *step.joins, *step.dances, *step.shows)
        letters = unit.dance.form if WHOLE in names else names
        fresh = [x for x in dict.fromkeys(letters) if x in unit.dance.sections and x not in told]
        told |= set(fresh)
        sections = [unit.dance.sections[letter] for letter in fresh]
        lines = [
            _("{part}: {said}.", part=_part(unit.dance, one), said=said)
            for one in sections
            if (said := "; ".join(_said(one)))
        ]
        found.append(tuple(lines))
    return tuple(found)


def _part(dance: Dance, section: Section) -> str:
    """The part, and which of its moves the words on beats are for, where a voice says others."""
    part, pieces = in_short(dance, section.letter), section_sounding(dance, section).pieces
    said = [n for n, one in enumerate(pieces) if one.words and one.sound != "voice"]
    counted = all(are_counts([word.says for word in one.words]) for one in pieces if _voice(one))
    if counted or not said:
        return part
    score = parts_over_counts(dance, section)
    moves = moves_in(score.spans, score.rows, pieces[said[0] : said[-1] + 1])
    return _("{part}, {moves} only", part=part, moves=listed(moves)) if moves else part


def _voice(piece: Piece) -> bool:
    return bool(piece.words) and piece.sound == "voice"


def _said(section: Section) -> Iterator[str]:
    """Who says what, in order; what is said again is told once."""
    spoken = [one for one in section.heard if one.says and one.sound != "voice"]
    for by, pieces in groupby(spoken, key=lambda one: one.by):
        lines = list(dict.fromkeys(filter(None, map(_words, _only(pieces)))))
        if lines:
            yield _(_SAID[by], words=", ".join(quoted(line) for line in lines))


def _only(pieces: Iterator[Heard]) -> Sequence[Heard]:
    return [one for one in pieces if not are_counts([w for w in one.says if w != _NOTHING])]


def _words(piece: Heard) -> str:
    return " ".join("–" if word == _NOTHING else word for word in piece.says).strip(" –")
