"""Whom or what dancers face in words is what they face in the score.

"Face to face with your partner", and the fields turn everybody to the front: the plan, the dance
from above and half the class look one way, and the other half waits for a question that it cannot
see. It is asked of the place where a section starts and ends, and of where a step says to stand.

Bad:
    start: {facing: front, place: "Face to face with your partner", …}
Good:
    start: {facing: partner, place: "Face to face with your partner", …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.facing_said import facing_in, turns_in

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_ELSEWHERE = frozenset({"front", "back", "left", "right", "outwards"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each place whose words face another way than the score."""
    for letter, section in unit.dance.sections.items():
        for field, standing in (("start", section.start), ("end", section.end)):
            if section.returns and field not in section.changes:
                continue
            said = _otherwise(standing.place, {standing.facing})
            if said is not None:
                yield Finding(
                    unit.file,
                    ("sections", letter, field, "facing"),
                    f"`place` says `{said}`, but `facing` is {standing.facing}",
                    "write in `facing` where pupils are told to look, or mend `place`",
                )
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            faces = _faces(unit.dance, step)
            said = _otherwise(step.place or "", faces)
            if faces and said is not None and not _turns(step):
                yield Finding(
                    lesson.file,
                    ("steps", n, "place"),
                    f"`place` says `{said}`, but what step {n + 1} dances starts facing "
                    f"{' and '.join(sorted(faces))}",
                    "say where the dance has them look, or mend `facing` in the unit",
                )


def _otherwise(place: str, faces: set[str]) -> str | None:
    """What a place says, if it faces where none of `faces` is."""
    said = facing_in(place)
    if said is None:
        return None
    wrong = faces <= _ELSEWHERE if said.partner else faces == {"partner"}
    return said.said if faces and wrong else None


def _faces(dance: Dance, step: Step) -> set[str]:
    """Where the sections of a step start facing; empty where it names none, or moves alone."""
    letters = (*step.makes, *step.joins, *step.dances, *step.shows)
    sections: list[Section] = [dance.sections[one] for one in letters if one in dance.sections]
    return {one.start.facing for one in sections} if len(sections) == len(letters) else set()


def _turns(step: Step) -> bool:
    return any(turns_in(text) for text in (step.facing, step.into) if text)
