"""A section that comes back is said to be the same or different when it does.

Coming back is a moment the watcher waits for. If nobody says how the section is the second time,
some pupils dance it as before and some as the end. It may be settled as a choice, or said where
the section, its joins, the ending or a whole run are written. Improvised sections, and
those of the teacher's motifs alone, are let be.

Bad:
    nothing else says how A comes back
    form: A B A
    sections: {A: {idea: The tide, …}}
Good:
    form: A B A
    sections: {A: {idea: The tide. The last time it comes home., …}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.returning import STEP_SAYS_HOW, says_how_it_returns
from build_tools.views.dance.when_made import steps_in_order

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section that comes back with no word on how."""
    dance = unit.dance
    for letter, section in dance.sections.items():
        places = [str(n) for n, one in enumerate(dance.form, start=1) if one == letter]
        if len(places) < 2 or _is_let_be(dance, section):
            continue
        if any(map(says_how_it_returns, _texts(unit, letter))):
            continue
        if any(
            _says_how(step) for _, _, step in steps_in_order(unit) if _dances_it_again(step, letter)
        ):
            continue
        yield Finding(
            unit.file,
            ("sections", letter, "idea"),
            f"section {letter} comes {len(places)} times ({' '.join(dance.form)}), and nowhere is "
            "it said whether it is the same or different when it comes back",
            f"say in the `idea` of section {letter} what is the same and what changes, or let "
            "pupils settle it in a choice",
        )


def _is_let_be(dance: Dance, section: Section) -> bool:
    """Whether a section is improvised, or danced as the teacher hands it on."""
    if section.kind == "improvised":
        return True
    motifs = {m for p in section.danced for name in p.what for m in roots(dance, name)}
    return bool(motifs) and all(dance.motifs[m].made_by == "teacher" for m in motifs)


def _texts(unit: Unit, letter: str) -> Iterator[str]:
    dance = unit.dance
    yield from (unit.summary, unit.notes, dance.sections[letter].idea)
    for passage in dance.sections[letter].danced:
        yield passage.who or ""
    for transition in dance.transitions:
        if transition.end in (letter, "any"):
            yield from (transition.how, transition.cue)
    for choice in dance.choices.values():
        yield choice.what
    for part in dance.ending:
        yield part.does


def _says_how(step: Step) -> bool:
    texts = (step.say, step.task, *(question.question for question in step.ask))
    return any(map(says_how_it_returns, texts)) or STEP_SAYS_HOW.in_any(texts)


def _dances_it_again(step: Step, letter: str) -> bool:
    """Whether a step dances the whole, or goes into the section from the one before it."""
    if "whole" in (*step.dances, *step.shows):
        return True
    return letter in step.joins[1:] or letter in step.dances[1:]
