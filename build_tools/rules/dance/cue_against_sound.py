"""A cue that says a sound stops or starts is true of what is heard there.

"The drum stops" is the clearest cue there is, as long as the drum does stop. If it beats on through
the change, or a shaker that starts is never shaken, thirty pupils wait for something that never
comes, and the saved sound teaches them to.

Bad:
    A: {counts: 32, heard: [{counts: 32, sound: beat}], …}
    transitions: [{from: A, to: B, as: move, counts: 8, cue: The drum stops,
        heard: [{counts: 8, sound: beat}], …}, …]
Good:
    A: {counts: 32, heard: [{counts: 32, sound: beat}], …}
    transitions: [{from: A, to: B, as: move, counts: 8, cue: The drum stops,
        heard: [{counts: 8, sound: silence}], …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Section, Transition
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.sounding import DRUMMED, Piece
from build_tools.movement.whole import transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sounds_that_change import (
    sounds_that_are_heard,
    sounds_that_start,
    sounds_that_stop,
)
from build_tools.views.dance.joins import Pair, may_follow
from build_tools.views.dance.timeline import Sounding, join_sounding, section_sounding

GRADE: Grade = "question"
READS = "en"
NEEDS = ("unknown-name", "heard-does-not-fill")
SOURCE = "common practice, no source"

_HEARD_AS = {
    "drum": DRUMMED,
    "roll": frozenset({"roll"}),
    "shaker": frozenset({"shaker"}),
    "bell": frozenset({"bell"}),
    "claps": frozenset({"claps"}),
    "music": frozenset({"recording"}),
    "voice": frozenset({"voice"}),
}
"""Each sound of a cue, and the pieces that it is heard in."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each cue of a join that what is heard there does not bear out."""
    dance = unit.dance
    pairs: dict[int, list[Pair]] = {}
    for first, second in may_follow(dance):
        join = transition_between(dance, first, second)
        if join is not None:
            pairs.setdefault(dance.transitions.index(join), []).append((first, second))
    for n, found in sorted(pairs.items()):
        join = dance.transitions[n]
        why = next((why for pair in found for why in _against(dance, join, pair)), None)
        if why is not None:
            yield Finding(
                unit.file,
                ("transitions", n, "cue"),
                f"the cue from {join.start} to {join.end} is `{' '.join(join.cue.split())}`, {why}",
                "write under `heard` of this transition, or of the sections, what really sounds; "
                "or choose a cue that happens",
            )


def _against(dance: Dance, join: Transition, pair: Pair) -> Iterator[str]:
    first, second = (dance.sections[letter] for letter in pair)
    stopped, started = sounds_that_stop(join.cue), sounds_that_start(join.cue)
    heard = sounds_that_are_heard(join.cue)
    if not stopped and not started and not heard:
        return
    before = section_sounding(dance, first)
    after = section_sounding(dance, second)
    between = join_sounding(dance, first, join, second)
    then = between if between.pieces or not between.known else after
    for sound in stopped:
        if then.pieces and then.pieces[0].sound in _HEARD_AS[sound]:
            where = "the change" if then is between else f"section {second.letter}"
            yield f"but in {where} {_for(then.pieces[0], None if then is between else second)}"
    for sound in started:
        known = between.known and after.known
        if known and not _has(between, sound) and not _has(after, sound):
            yield f"but {_heard(between if between.pieces else after)} after it"
    for sound in heard:
        known = before.known and between.known and after.known
        if known and not any(_has(one, sound) for one in (before, between, after)):
            yield f"but {_heard(between if between.pieces else after)} after it"


def _has(sounding: Sounding, sound: str) -> bool:
    return any(
        piece.sound in _HEARD_AS[sound] or (sound == "voice" and piece.words)
        for piece in sounding.pieces
    )


def _for(piece: Piece, section: Section | None) -> str:
    """A piece with its length, in a join or in `section`."""
    measure = "counts" if section is None or section.counts is not None else "seconds"
    return f"{piece.sound} is heard for {figures(piece.length)} {measure}"


def _heard(sounding: Sounding) -> str:
    names = tuple(dict.fromkeys(piece.sound for piece in sounding.pieces))
    return f"only {' and '.join(names)} is heard" if names else "nothing is heard"
