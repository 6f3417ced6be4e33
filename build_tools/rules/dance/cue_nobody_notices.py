"""Every change has a cue that all pupils can see, hear or count.

"When they are ready" happens inside a pupil. Thirty pupils who each feel it at another moment do
not change together, and the teacher cannot help. A drum, a nod or the last dancer standing still
can be noticed by all. From one silent section into another, somebody has to give the sign.

Bad:
    cue: When they feel ready
Good:
    cue: When the last dancer is still
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Transition
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.cues import TIME_IS_UP, nobody_notices

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each cue that pupils can neither see, hear nor count."""
    dance = unit.dance
    cues: list[tuple[FieldPath, str, str, bool]] = [
        (
            ("transitions", n, "cue"),
            t.cue,
            f"the change from {t.start} to {t.end}",
            _in_silence(dance, t),
        )
        for n, t in enumerate(dance.transitions)
    ]
    cues += [
        (("sections", letter, section.kind, "ends_on"), section.ends_on, f"section {letter}", False)
        for letter, section in dance.sections.items()
        if section.ends_on
    ]
    for path, cue, what, silent in cues:
        said = " ".join(cue.split())
        where = "starts" if path[0] == "transitions" else "ends"
        if silent and TIME_IS_UP.said(cue):
            why = "and both sections are silent, so nobody can see or hear when that is"
        elif nobody_notices(cue):
            why = "which not everyone can see, hear or count"
        else:
            continue
        yield Finding(
            unit.file,
            path,
            f"{what} {where} on `{said}`, {why}",
            "name what everyone sees or hears, such as: the last dancer is still, or one drum beat",
        )


def _in_silence(dance: Dance, transition: Transition) -> bool:
    both = [dance.sections.get(end) for end in (transition.start, transition.end)]
    return all(section is not None and section.sound.kind == "silence" for section in both)
