"""Kneeling, dropping to the floor and many jumps in a row come with a softer way or a limit.

A hall floor is hard. Knees, wrists and shins pay for what a drawing of the dance does not show:
the twentieth jump, or the whole class going down on its knees at once. The softer way stands in the
step that asks for it; for the jumps that a section adds up to, a lesson's `safety` may say it.

Bad:
    task: Jump thirty times like popping corn.
Good:
    task: Jump eight times like popping corn. Rest. A rise on the toes is as good.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from build_tools.model.dance import Passage
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.hard_work import (
    EASED_JUMPS,
    MANY_JUMPS,
    ON_KNEES,
    fewer,
    many_jumps,
    softer,
)
from build_tools.views.written.hazards import (
    Hazard,
    actions_by_name,
    hazards,
    of_step,
    written_actions,
)
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 8.26: avoid stress on knees; 7.27: impact, "
    "repetition and the floor's resilience"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")
MOST_JUMPS = 16
"""Jumps in one section that need no word about few, low or rest. Common practice, no source."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for knees, for jumps over and over in a step, and for jumps in a section."""
    yield from _first_in_each_lesson(
        unit,
        hazards(unit, ON_KNEES),
        softer,
        "no softer way",
        "offer one: slowly, on a mat, or standing",
    )
    yield from _first_in_each_lesson(
        unit,
        hazards(unit, MANY_JUMPS, many_jumps),
        fewer,
        "no rest and no limit",
        "set a limit or a rest: eight, then rest; or rise on the toes",
    )
    if any("jump" in action.kinds for action in written_actions(unit.dance)):
        yield from _sections(unit)


def _first_in_each_lesson(
    unit: Unit, found: Iterator[Hazard], eased: Callable[[str], bool], without: str, help_: str
) -> Iterator[Finding]:
    done: set[int] = set()
    for hazard in found:
        if hazard.lesson in done or any(eased(text) for text in of_step(unit, hazard)):
            continue
        done.add(hazard.lesson)
        yield Finding(
            hazard.file,
            hazard.path,
            f"step {hazard.step + 1} has {hazard.said}, and says {without}",
            help_,
        )


def _sections(unit: Unit) -> Iterator[Finding]:
    for letter, section in unit.dance.sections.items():
        jumps = sum(_jumps(unit, passage) for passage in section.danced)
        if jumps <= MOST_JUMPS or any(unit_text(unit).saying(EASED_JUMPS)):
            continue
        yield Finding(
            unit.file,
            ("sections", letter, "danced"),
            f"section {letter} has {jumps} jumps for each dancer, and no line about jumps says "
            "few, low or rest",
            "swap some for a rise on the toes, or say in a lesson's `safety` to jump low and rest",
        )


def _jumps(unit: Unit, passage: Passage) -> int:
    actions = actions_by_name(unit.dance)
    each = [sum("jump" in action.kinds for action in actions[name]) for name in passage.what]
    apart = passage.fit in ("side by side", "question and answer")
    return passage.times * (max(each) if apart else sum(each))
