"""Before 8, a leg that leads or opens at high level is offered sitting down as well.

To rise, turn and flick on one leg in a second each is a task for Year 5. A six or seven year old
hops, falls or puts the foot down, and the dance is lost. Sitting, or with the leg low, everybody
can. Where pupils choose the part of the body, the option itself says so.

Bad:
    years: [{nation: England, years: [1]}]
    part: {what: The part of the body that opens, from: [one hand, one foot], …}
Good:
    years: [{nation: England, years: [1]}]
    part: {what: The part of the body that opens, from: [one hand, "one foot, sitting down"], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Action, Dance
from build_tools.model.lesson import Step
from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.actions_written import actions_written
from build_tools.views.dance.when_made import names_in
from build_tools.views.words.plain_words import action_label
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "standing on one leg with a steady trunk comes late in childhood: common practice, no source"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "year-unknown-in-nation")
_FROM = 8
"""Years from which a class may be asked for it standing."""
_LEG = Saying("foot|leg|knee|toe|toes|heel|ankle|thigh")
_SEATED = Saying(
    """
    sit|seated|sitting|lie|lying|kneel|floor|chair|bench
    hold|holding|hand ~3 wall|bar|partner|chair
    low|tap|stamp|point
    toe|toes|foot ~2 floor|ground
    foot ~3 down|flat|floor|ground
    hand|arm|elbow|shoulder ~1 in place
    hand|arm|elbow|shoulder ~1 instead
    """
)
"""Ways in which nobody balances with a leg up."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each leg that opens high, standing, in a class before 8."""
    known = ages(unit.years)
    if known is None or known[0] >= _FROM:
        return
    dance = unit.dance
    for path, action in actions_written(dance):
        part = action.body_part or ""
        if not _high(action) or not _LEG.said(part) or _SEATED.said(part):
            continue
        if _offered_seated(unit, action):
            continue
        yield Finding(
            unit.file,
            path,
            f"{action_label(action)} is danced with the {part} at high level, standing on one leg, "
            f"and the youngest of the class are {known[0]}; no step offers it sitting down",
            "say in a step's `easier`: sitting down, or with the foot low",
        )
    for name, choice in dance.choices.items():
        if not _chooses_a_high_part(dance, name):
            continue
        for n, option in enumerate(choice.options):
            if _LEG.said(option) and not _SEATED.said(option):
                yield Finding(
                    unit.file,
                    ("choices", name, "from", n),
                    f"`{option}` may be chosen for what is danced at high level, standing on one "
                    f"leg, and the youngest of the class are {known[0]}",
                    f"write `{option}, sitting down`, or leave the option out",
                )


def _high(action: Action) -> bool:
    return action.kind in ("gesture", "turn") and "high" in (action.level or "")


def _offered_seated(unit: Unit, action: Action) -> bool:
    """Whether a step that names the action, or teaches nothing else, offers it sitting down."""
    word = action_label(action).casefold()
    if any(_SEATED.said(step.easier) and _only(unit.dance, step, action) for step in _steps(unit)):
        return True
    return any(
        word in one.text.casefold() and _SEATED.said(one.text)
        for _, fields in unit_text(unit).documents[1:]
        for one in fields
        if one.kind in ("easier", "task", "say")
    )


def _steps(unit: Unit) -> Iterator[Step]:
    return (step for lesson in unit.lessons for step in lesson.steps)


def _only(dance: Dance, step: Step, action: Action) -> bool:
    """Whether a step makes or learns the motif of the action alone, and `easier` names no other."""
    motif = next((m for m in dance.motifs.values() if action in m.actions), None)
    if motif is None or set(names_in(step)) != {motif.name}:
        return False
    said = (step.easier or "").casefold()
    return not any(
        label in said
        for other in motif.actions
        if (label := action_label(other).casefold()) and other is not action
    )


def _chooses_a_high_part(dance: Dance, choice: str) -> bool:
    """Whether a change of body part hangs on the choice and is danced at high level."""
    return any(
        development.device == "change of body part"
        and development.choice == choice
        and any(
            _high(action) and (not development.only or n in development.only)
            for n, action in enumerate(actions_of(dance, name), start=1)
        )
        for name, development in dance.developments.items()
    )
