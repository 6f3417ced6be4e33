"""Arms that clap do not fly open on the same count.

The sound says that each dancer claps on the burst, and on the burst the arms open wide: one or the
other. A clap overhead on the way, or a step on the count of the clap, can be danced.

Bad:
    heard: [{counts: 8, sound: claps, by: dancers, on: [1]}]
    burst: {actions: [{gesture: 8, as: burst, size: small to big, body_part: arms}], …}
Good:
    heard: [{counts: 8, sound: claps, by: dancers, on: [8]}]
    burst: {actions: [{gesture: 4, as: burst, size: small to big, body_part: arms}, {stillness: 4}], …}
"""  # noqa: E501 - an example stands on one line

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Action, Heard, Section
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.one_dancer import everyones_things, with_counts
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_DANCERS = Saying("dancer|pupil|everyone|everybody|all|class|each|they|partner|one|two")
_ARMS = Saying("=arms|=hands|=palms|=elbows")
_GOES_TOGETHER = Saying(
    """
    overhead
    above|over ~2 head|heads
    high up
    top of
    thigh|lap|leg|knee|floor|ground|hip|chest|tummy|belly|shoulder|heel
    arm|hand ~3 closed|shut|together
    clap first
    then ~2 @open
    before ~3 @open
    clap|pat|slap ~~6 and ~2 arm|hand ~1 @open
    """,
    {"open": "open spread grow widen unfold part"},
)
"""Said of a clap that arms can do on their way, or before they open."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each piece of sound that dancers clap while their arms open."""
    for section in unit.dance.sections.values():
        if section.counts is None or _GOES_TOGETHER.said(section.sound.what):
            continue
        if section.returns and "heard" not in section.changes:
            continue
        start = Fraction(0)
        for n, piece in enumerate(section.heard):
            if piece.sound == "claps" and _DANCERS.said(piece.by):
                clash = _clash(unit, section, start, piece)
                if clash is not None:
                    count, action = clash
                    yield Finding(
                        unit.file,
                        ("sections", section.letter, "heard", n),
                        f"dancers clap on count {figures(count)} of section {section.letter}, and "
                        f"on that count {action_label(action)} opens their "
                        f"{action.body_part}: arms cannot do both",
                        "clap on another count, clap overhead and then open, or let another sound",
                    )
                    break
            start += piece.counts or Fraction(0)


def _clash(
    unit: Unit, section: Section, start: Fraction, piece: Heard
) -> tuple[Fraction, Action] | None:
    """The first count of the piece on which arms that clap are to open, and the action."""
    length = piece.counts or Fraction(0)
    on = piece.on or tuple(Fraction(n) for n in range(1, int(length) + 1))
    for _, things in everyones_things(unit.dance, section):
        for thing in things:
            for action, before in with_counts(unit.dance, thing):
                opens = (
                    action.kind == "gesture"
                    and _ARMS.said(action.body_part)
                    and "clap" not in action_label(action)
                    and (action.size in ("small to big", "big") or action.level == "low to high")
                )
                for count in on if opens else ():
                    if before < start + count <= before + action.counts:
                        return start + count, action
    return None
