"""The parts that `who` names one by one are as many as the passage has.

Dancers 1, 2, 3 and 4 in a canon of three parts: somebody in each group has no part, or the canon
was cut short in one place only.

Bad:
    {as: canon, parts: 3, after: 4, who: "dancers 1, 2, 3 and 4, one after another", …}
Good:
    {as: canon, parts: 4, after: 4, who: "dancers 1, 2, 3 and 4, one after another", …}
"""

from __future__ import annotations

from collections.abc import Iterator

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
