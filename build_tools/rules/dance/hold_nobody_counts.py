"""A silent hold of more than four counts is counted out, by eye or by ear.

Eight counts of stillness without a drum are the best moment of a dance, if all come out of it
together. In silence everybody counts at another speed. Fingers shown one by one, a nod, a breath
that all take or a counting voice keep the class together.

Bad:
    transitions: [{from: A, to: B, as: hold, counts: 8, how: Stay still, cue: The drum stops, heard: [{counts: 8, sound: silence}]}]
Good:
    transitions: [{from: A, to: B, as: hold, counts: 8, how: Stay still, cue: The teacher shows eight fingers, heard: [{counts: 8, sound: silence}]}]
"""  # noqa: E501 - an example stands on one line

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Transition
from build_tools.model.unit import Unit
from build_tools.movement.whole import transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.cues import SIGN
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.joins import may_follow
from build_tools.views.dance.timeline import join_sounding
from build_tools.views.words.plain_words import counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "transition-missing")
_MOST = 4
"""Counts that a class keeps by itself."""
_KEPT_BY = Saying(
    """
    count|counts|counted|counting ~4 aloud|eight|four|softly|out
    teacher|leader|everyone|everybody|all|class ~2 count|counts|breathe|breathes|nod|nods|show|shows
    breath|breaths
    finger|fingers
    nod|nods
    teacher|leader ~3 mouth|step|steps|take|takes
    teacher|leader|pupil|scarf|flag ~3 sink|drop|drops|fall|lower|lowers|touch|raise|raises|lift
    scarf|flag ~4 sink|drop|drops|fall|lower|lowers|touch|raise|raises|lift
    """
)
"""How a class keeps together with no beat."""
_ENDS_ON = Saying(
    """
    until|till|before ~3 teacher|leader|pupil|drum|bell|triangle|clap|tap|flag|scarf|hand|voice|i
    """
)
"""What ends it for all; it may stand in a sentence with a not: don't move before the flag falls."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each silent hold that nobody counts out."""
    dance = unit.dance
    for n, join in enumerate(dance.transitions):
        if join.kind != "hold" or join.counts is None or join.counts <= _MOST:
            continue
        if not _silent(dance, join):
            continue
        texts = (join.how, join.cue)
        if SIGN.in_any(texts) or _KEPT_BY.in_any(texts):
            continue
        if any(_ENDS_ON.mentioned(text) for text in texts):
            continue
        yield Finding(
            unit.file,
            ("transitions", n, "cue"),
            f"everybody holds still for {counts_in_words(join.counts)} of silence from "
            f"{join.start} to {join.end}, more than {_MOST}, and neither `how` nor `cue` says who "
            "counts them",
            "let the teacher show the counts with fingers, or breathe them together",
        )


def _silent(dance: Dance, join: Transition) -> bool:
    """Whether nothing sounds in it, wherever it comes."""
    soundings = [
        join_sounding(dance, dance.sections[first], join, dance.sections[second])
        for first, second in may_follow(dance)
        if transition_between(dance, first, second) is join
    ]
    return bool(soundings) and all(
        one.known and {piece.sound for piece in one.pieces} == {"silence"} for one in soundings
    )
