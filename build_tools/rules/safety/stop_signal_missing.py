"""A stop signal is taught before the class first travels fast, and named again later.

A teacher who cannot stop thirty running pupils at once has no way to keep them safe. A signal
taught once and never named again is forgotten by the third week. What stands under `change` or
`if` is for some pupils or some days, and teaches the class no signal.

Bad:
    say: Rush like water through the gaps.
Good:
    say: Two quick taps mean stop. Then rush like water through the gaps.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.signals import STOP_SIGNAL
from build_tools.sentences.travel import TRAVEL, fast_travel
from build_tools.views.dance.when_made import inside
from build_tools.views.written.hazards import (
    Hazard,
    actions_by_name,
    for_all,
    named_in,
    told_before,
)
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where no signal comes before fast travel, or none is named again."""
    first = _first_fast(unit, 0)
    if first is None:
        return
    if not STOP_SIGNAL.in_any(told_before(unit, first)):
        yield Finding(
            first.file,
            first.path,
            f"step {first.step + 1} has the first fast travelling of the unit ({first.said}), but "
            "nothing up to there teaches a stop signal",
            "teach one in the warm-up, such as: two quick taps mean stop, low and still",
        )
        return
    said = unit_text(unit).saying(STOP_SIGNAL, at=for_all)
    naming = sorted({found.document - 1 for found in said if found.document})
    later = _first_fast(unit, naming[0] + 1) if len(naming) == 1 else None
    if later:
        yield Finding(
            later.file,
            later.path,
            f"step {later.step + 1} travels fast ({later.said}), but the stop signal is named in "
            f"lesson {unit.lessons[naming[0]].number} and never again",
            "name it in this lesson's warm-up, such as: two taps, stop",
        )


def _first_fast(unit: Unit, start: int) -> Hazard | None:
    """The first step that travels fast, in the lessons from the one with the index `start`."""
    for number, lesson in enumerate(unit.lessons[start:], start):
        for index, step in enumerate(lesson.steps):
            if found := _fast(unit, step):
                field, said = found
                path: FieldPath = ("steps", index, field) if field else ("steps", index)
                return Hazard(lesson.file, path, number, index, said)
    return None


def _fast(unit: Unit, step: Step) -> tuple[str, str] | None:
    """The field whose words travel fast, empty for what is danced, and how to point to it."""
    written = {field: getattr(step, field) or "" for field in ("say", "task", "does")}
    for field, text in written.items():
        if said := fast_travel(text):
            return field, f'the words "{said.text}"'
    if step.intensity != "vigorous":
        return None
    for field, text in written.items():
        if said := TRAVEL.said(text):
            return field, f'vigorous, with the words "{said.text}"'
    actions = actions_by_name(unit.dance)
    for name in sorted(inside(unit.dance, named_in(step))):
        if any("travel" in action.kinds for action in actions.get(name, ())):
            return "", f"vigorous, and `{name}` travels"
    return None
