"""A canon says how many parts it has and when each starts; an answer says what answers.

"In canon" alone cannot be danced: in how many groups, and how many counts apart? Question and
answer, and parts side by side, need something for each part to dance.

Bad:
    {as: canon, …}
Good:
    {as: canon, parts: 4, after: 4, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Passage
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS, left_unsaid
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = (
    "Ontario Arts Curriculum, 2010, glossary: in a canon the same phrase starts at different times"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each passage that leaves out what its kind needs."""
    for letter, section in unit.dance.sections.items():
        for n, passage in enumerate(section.danced):
            if why := left_unsaid(passage):
                yield Finding(
                    unit.file,
                    ("sections", letter, "danced", n),
                    f"in section {letter}, {why}",
                    _help(passage),
                )


def _help(passage: Passage) -> str:
    if passage.fit not in CANONS:
        return f"name what each part dances, such as `what: [{passage.what[0]}, …]`"
    needed = [] if passage.parts else ["`parts: 4`"]
    if passage.after is None and passage.fit in ("canon", "canon to one ending"):
        needed.append("`after: 4`")
    return f"add {' and '.join(needed)}, with your own number"
