"""Two developments are not the same change of the same motif.

Two names for one thing are a copy in which the change was forgotten, or the motif it is made from.
Pupils learn it twice and see no difference.

Bad:
    rewind: {of: warp, device: retrograde}
    pattern-back: {of: warp, device: retrograde}
Good:
    rewind: {of: warp, device: retrograde}
    pattern-back: {of: own-pattern, device: retrograde}
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from build_tools.model.dance import Development
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each development that an earlier one is but for its name."""
    seen: dict[Development, str] = {}
    for name, development in unit.dance.developments.items():
        first = seen.setdefault(replace(development, name=""), name)
        if first == name:
            continue
        yield Finding(
            unit.file,
            ("developments", name),
            f"`{name}` is made from `{development.of}` by {development.device}, and so is "
            f"`{first}`, with nothing that tells the two apart",
            f"look at `of` and at what it changes, or write `{first}` wherever `{name}` is danced",
        )
