"""A unit gives pupils something under each heading: actions, space, dynamics and with whom.

What, where, how and with whom are the four questions of dance. A unit that never changes level,
speed or partner leaves a quarter of dance untaught. With whom is not asked of the youngest. A dance
that only travels, as many of a tradition do, has enough if it travels in two ways.

Bad:
    in every motif: actions: [{gesture: 4}, {gesture: 4}]
Good:
    in a motif: actions: [{gesture: 4, level: low to high}, {travel: 4, dynamics: [sudden]}]
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from build_tools.model.dance import Action, Dance, Development
from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.words_about_dance import DYNAMICS, SPACE, WITH_WHOM
from build_tools.views.words.plain_words import how_many
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Curriculum for Wales, Expressive Arts: actions, space, dynamics and relationships; six body "
    "actions as taught in UK dance"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_YOUNGEST = 5
_SPEEDS = ("change of speed", "change of rhythm")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each of the four headings under which the unit has nothing."""
    dance = unit.dance
    actions = [a for motif in dance.motifs.values() for a in motif.actions]
    for d in dance.developments.values():
        actions += [a.action for a in d.added]
        actions += [d.replacement] if d.replacement else []
    place: FieldPath = ("motifs",)
    made_up = any(section.kind == "improvised" for section in dance.sections.values())
    kinds = {k for a in actions for k in a.kinds}
    if len(kinds) == 1 and not made_up and not _many_ways(actions):
        yield Finding(
            unit.file,
            place,
            f"the motifs use 1 kind of action of the 6 there are: {min(kinds)}",
            "give a motif a second kind, such as a turn, a jump or a shift of weight",
        )
    changed: list[Action | Development] = [*actions, *dance.developments.values()]
    for heading, there, word, such_as in (
        (
            "where pupils move (high or low, which way, along what line)",
            any(_in_space(one) for one in changed),
            SPACE,
            "`level: high to low` or `pathway: curved` to an action",
        ),
        (
            "how pupils move (strong or light, sudden or slow)",
            any(_in_dynamics(one) for one in changed),
            DYNAMICS,
            "`dynamics: [sudden]` to an action",
        ),
        (
            "with whom pupils move",
            _with_whom(unit, dance),
            WITH_WHOM,
            "a section in pairs, in canon or in a mirror",
        ),
    ):
        if there or word.said(_pupils_text(unit)):
            continue
        yield Finding(
            unit.file,
            place,
            f"nothing says {heading} in {how_many(len(dance.motifs), 'motif')}, "
            f"{how_many(len(dance.developments), 'development')} and "
            f"{how_many(len(dance.sections), 'section')}",
            f"add {such_as}",
        )


def _many_ways(actions: Sequence[Action]) -> bool:
    """Whether a dance of one kind of action travels, and in more ways than one."""
    ways = {(a.direction, a.pathway, a.side, a.level) for a in actions if "travel" in a.kinds}
    return len(ways) > 1


def _in_space(one: Action | Development) -> bool:
    said = one.level or one.direction or one.pathway or one.size or one.facing
    return bool(said) or (isinstance(one, Action) and "travel" in one.kinds)


def _in_dynamics(one: Action | Development) -> bool:
    quicker = isinstance(one, Development) and one.device in _SPEEDS
    return bool(one.dynamics) or quicker


def _with_whom(unit: Unit, dance: Dance) -> bool:
    span = ages(unit.years)
    if span is None or span[0] <= _YOUNGEST:
        return True
    return (
        any(p.fit != "unison" for s in dance.sections.values() for p in s.danced)
        or any(d.dancers or d.relationship for d in dance.developments.values())
        or any(
            standing.formation != "scattered"
            for s in dance.sections.values()
            for standing in (s.start, s.end)
        )
        or any(
            step.grouping not in ("alone", "half class", "whole class")
            for lesson in unit.lessons
            for step in lesson.steps
        )
    )


def _pupils_text(unit: Unit) -> str:
    """What the steps and the ending ask of pupils, and the rules they make things up by."""
    kinds = ("say", "task", "look_for", "rules", "harder", "easier", "does")
    return "\n".join(
        one.text
        for _, fields in unit_text(unit).documents
        for one in fields
        if one.kind in kinds and one.path[:1] in (("steps",), ("sections",), ("ending",))
    )
