"""A turn that is called slow has two seconds or more for each whole turn.

"One slow turn", and the spin has three counts, a second and a half: either it is not slow, or it is
half a turn. Young pupils who turn once round in less grow dizzy and fall out of it. It is reckoned
from the counts and the tempo.

Bad:
    drift: {actions: [{turn: 2, as: spin, turn_by: whole, dynamics: [sustained]}], …}
Good:
    drift: {actions: [{turn: 2, as: spin, turn_by: half, dynamics: [sustained]}], …}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Action, Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.movement.development import actions_of
from build_tools.movement.effort import qualities
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.when_made import inside, names_in, steps_in_order
from build_tools.views.words.plain_words import action_label, counts_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_LEAST_SECONDS = Fraction(2)
_PARTS = {"quarter": Fraction(1, 4), "half": Fraction(1, 2), "three quarters": Fraction(3, 4)}
_SLOW_TURN = Saying(
    """
    slow|slowly|unhurried|lazy|gentle ~2 turn|spin|twirl|whirl|rotation
    turn|spin|twirl|whirl ~3 slowly|slow|gently|lazily
    turn|spin|twirl|whirl ~3 , as|ever|so|nice|quite|very ~2 slowly|slow|gently
    go|goes|get|gets ~1 round ~1 slowly|gently
    go|goes|get|gets ~1 round , slowly|gently
    slow|unhurried|lazy ~~2 =spinning|=turning|=whirling
    """
)
_PART_OF_ONE = Saying("half|quarter ~1 turn|spin|twirl|way|round")
_FIELDS = ("say", "task", "look_for", "easier")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each turn that is called slow and is not."""
    dance = unit.dance
    if dance.tempo is None:
        return
    told: set[str] = set()
    for name in (*dance.motifs, *dance.developments):
        for n, action in enumerate(actions_of(dance, name)):
            each = _seconds_each(dance, action)
            label = action_label(action)
            if each is None or each >= _LEAST_SECONDS or label in told:
                continue
            found = _in_fields(unit, name, n, action) or _in_words(unit, name, action)
            if found is None:
                continue
            told.add(label)
            file, path, slow = found
            yield Finding(
                file,
                path,
                f"{slow}, but {label} in `{name}` has {counts_in_words(action.counts)}, and a "
                f"whole turn in {float(each):.1f} seconds is not slow: two seconds are the least",
                "give the turn more counts, or make it half a turn",
            )


def _seconds_each(dance: Dance, action: Action) -> Fraction | None:
    """Seconds for each whole turn; None where the action does not turn, or there and back."""
    if "turn" not in action.kinds or action.turn_by == "there and back" or dance.tempo is None:
        return None
    return seconds(action.counts, dance.tempo) / _PARTS.get(action.turn_by or "", Fraction(1))


def _in_fields(unit: Unit, name: str, n: int, action: Action) -> tuple[str, FieldPath, str] | None:
    """The action itself, where its feel is slow and it says that it goes all the way round."""
    if action.turn_by is None or "sustained" not in qualities(action.dynamics):
        return None
    motif = name in unit.dance.motifs
    path: FieldPath = ("motifs", name, "actions", n) if motif else ("developments", name)
    return unit.file, path, f"the turn is {' and '.join(action.dynamics)}"


def _in_words(unit: Unit, name: str, action: Action) -> tuple[str, FieldPath, str] | None:
    """The first step that dances it and calls the turn slow."""
    for place, lesson, step in steps_in_order(unit):
        for field in _FIELDS if name in inside(unit.dance, names_in(step)) else ():
            if said := _called_slow(step, field, action):
                return lesson.file, ("steps", place.step, field), f'`{field}` says "{said}"'
    return None


def _called_slow(step: Step, field: str, action: Action) -> str | None:
    text = getattr(step, field)
    if not text or (action.turn_by is None and _PART_OF_ONE.said(text)):
        return None
    said = _SLOW_TURN.said(text)
    return said.text if said else None
