"""Kneeling, dropping to the floor and many jumps in a row come with a softer way or a limit.

A hall floor is hard. Knees, wrists and shins pay for what a drawing of the dance does not show:
the twentieth jump, or the whole class going down on its knees at once.

Bad:
    task: Jump thirty times like popping corn.
Good:
    task: Jump eight times like popping corn. Rest. A rise on the toes is as good.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Passage
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.wording_safety import AGAIN, FEWER, ON_KNEES, SOFTER
from build_tools.sentences.wordings import Wording
from build_tools.views.written.hazards import actions_by_name, beside, first_hazard, written_actions
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
SOURCE = (
    "afPE, Safe Practice in Physical Education, 2016, 8.26: avoid stress on knees; 7.27: impact, "
    "repetition and the floor's resilience"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")
MOST_JUMPS = 16
"""Jumps in one section that need no word about few, low or rest. Common practice, no source."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for knees, for jumps over and over in a step, and for jumps in a section."""
    yield from _asked(
        unit, ON_KNEES, SOFTER, "no softer way", "offer one: slowly, on a mat, or standing"
    )
    yield from _asked(
        unit,
        AGAIN,
        FEWER,
        "no rest and no limit",
        "set a limit or a rest: eight, then rest; or rise on the toes",
    )
    if any("jump" in action.kinds for action in written_actions(unit.dance)):
        yield from _sections(unit)


def _asked(
    unit: Unit, what: Wording, eased: Wording, without: str, help_: str
) -> Iterator[Finding]:
    hazard = first_hazard(unit, what)
    if hazard is None or eased.in_any(beside(unit, hazard)):
        return
    yield Finding(
        hazard.file,
        hazard.path,
        f"step {hazard.step + 1} has {hazard.said}, and says {without}",
        help_,
    )


def _sections(unit: Unit) -> Iterator[Finding]:
    for letter, section in unit.dance.sections.items():
        jumps = sum(_jumps(unit, passage) for passage in section.danced)
        if jumps <= MOST_JUMPS or _jumps_eased(unit):
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


def _jumps_eased(unit: Unit) -> bool:
    lines = (lower for texts in unit_text(unit).lowers for lower in texts)
    return any(FEWER.in_it(lower) for lower in lines if "jump" in lower or "hop" in lower)
