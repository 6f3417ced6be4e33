"""Dancers sink with control: nobody drops.

From high to low in half a second is a drop in all but name, and so is a sink that is strong or
sudden. Knees and backs pay for it, most of all straight after a jump. The seconds are reckoned from
the counts and the tempo, in every motif and development that is danced.

Bad:
    drop: {actions: [{jump: 2, level: high}, {transfer: 2, level: high to low, dynamics: [strong, sudden]}], …}
Good:
    drop: {actions: [{jump: 2, level: high}, {transfer: 4, level: high to low, dynamics: [light]}], …}
"""  # noqa: E501 - an example stands on one line

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Action, Dance
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.movement.development import actions_of
from build_tools.movement.effort import qualities
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.one_dancer import everyones_things
from build_tools.views.words.plain_words import action_label, counts_in_words, listed

GRADE: Grade = "question"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 7.27: impact and landing; the seconds are "
    "common practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_LEAST_SECONDS = Fraction(3, 4)
_USUAL_TEMPO = 120
_FORCE = ("strong", "sudden")
_TWICE = 2


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each sink that is forced, or over in half a second time after time."""
    dance = unit.dance
    told: set[tuple[str | None, str]] = set()
    for name in (*dance.motifs, *dance.developments):
        before: Action | None = None
        for n, action in enumerate(actions_of(dance, name)):
            key = (action.word, action.kind)
            if key not in told and (how := _how(dance, action, before)):
                told.add(key)
                yield Finding(
                    unit.file,
                    _path(dance, name, n),
                    f"`{name}`: {action_label(action)} goes from high to low {how}",
                    "give the sink more counts and let it be light or sustained, or go to middle",
                )
            before = action


def _how(dance: Dance, action: Action, before: Action | None) -> str | None:
    """How a sink drops; None where it does not."""
    if action.level != "high to low" or action.kind not in ("transfer", "travel", "turn"):
        return None
    lasts = seconds(action.counts, dance.tempo or _USUAL_TEMPO)
    time = f"in {counts_in_words(action.counts)}, {float(lasts):.1f} seconds"
    after = ""
    if before is not None and "jump" in before.kinds:
        after = f", right after the jump {action_label(before)}"
    force = [word for word in _FORCE if word in qualities(action.dynamics)]
    if force:
        return f"{time}, {listed(force)}{after}"
    if lasts >= _LEAST_SECONDS:
        return None
    times = _times(dance, action)
    if after or times >= _TWICE:
        return f"{time}{after}, {times} times in a run of the dance"
    return None


def _times(dance: Dance, action: Action) -> int:
    """How often the busiest dancer does the action in one run of the dance."""
    return sum(
        max(
            (
                sum(actions_of(dance, thing.what).count(action) for thing in things)
                for _, things in everyones_things(dance, dance.sections[letter])
            ),
            default=0,
        )
        for letter in dance.form
    )


def _path(dance: Dance, name: str, n: int) -> FieldPath:
    if name in dance.motifs:
        return ("motifs", name, "actions", n)
    development = dance.developments[name]
    return ("developments", name, "dynamics") if development.dynamics else ("developments", name)
