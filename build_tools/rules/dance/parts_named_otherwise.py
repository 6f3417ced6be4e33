"""The parts that `who` names one by one are as many as the passage has, in the same order.

Dancers 1, 2, 3 and 4 in a canon of three parts: somebody in each group has no part, or the canon
was cut short in one place only. "Ones ask and twos answer", and twos are the first of `roles`: both
of a pair wait, or both begin.

Bad:
    {as: canon, parts: 3, after: 4, who: "dancers 1, 2, 3 and 4, one after another", …}
Good:
    {as: canon, parts: 4, after: 4, who: "dancers 1, 2, 3 and 4, one after another", …}
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.dance import Passage
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.dancers_named import dancers_named

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each passage whose parts are not those that its words count."""
    for letter, section in unit.dance.sections.items():
        for n, passage in enumerate(section.danced):
            if (first := _another_first(passage)) is not None:
                yield Finding(
                    unit.file,
                    ("sections", letter, "danced", n, "roles"),
                    f"`roles` begins with {passage.roles[0]}, but `who` begins with {first}: "
                    f"`{passage.who}`",
                    "write the roles in the order in which they begin, or mend `who`",
                )
            named = dancers_named(passage.who or "")
            if named is None or passage.parts is None or named == passage.parts:
                continue
            yield Finding(
                unit.file,
                ("sections", letter, "danced", n, "parts"),
                f"section {letter} has {passage.parts} parts here, but `who` names {named}: "
                f"`{passage.who}`",
                f"write `parts: {named}`, or name {passage.parts} in `who`",
            )


def _another_first(passage: Passage) -> str | None:
    """The role that the words have begin, where the score has another begin."""
    if passage.fit == "side by side" or not passage.who or len(passage.roles) <= 1:
        return None
    said = passage.who.lower()
    at = {role: re.search(rf"\b{re.escape(role.lower())}\b", said) for role in passage.roles}
    if not all(at.values()) or _BEFORE.search(said):
        return None
    first = min(at, key=lambda role: found.start() if (found := at[role]) else 0)
    return first if first != passage.roles[0] else None


_BEFORE = re.compile(r"\b(?:after|before|behind|followed by|once)\b")
"""Who is named first may begin last: twos answer after ones."""
