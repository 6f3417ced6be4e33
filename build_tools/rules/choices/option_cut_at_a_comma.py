"""What pupils choose from is cut into options where one option ends and another begins.

In a list in brackets each comma starts a new option. "[wide, like a puddle, round, like a drop]"
offers a class four things, and "like a puddle" is none of them.

Bad:
    from: [wide, like a puddle on the path, round, like a drop on a leaf]
Good:
    from: [wide as a puddle on the path, round as a drop on a leaf]
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from build_tools.model.same_words import same_words
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"

_GOES_ON = re.compile(r"(?:like|as if|as though|and|or|but|which|so that)\b")
"""Begins more of what was said before it; in small letters, as within a sentence."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first option of each choice that only goes on with the one before."""
    for name, choice in unit.dance.choices.items():
        n = _cut(choice.options, choice.if_not)
        if n is None:
            continue
        before, half = choice.options[n - 1 : n + 1]
        yield Finding(
            unit.file,
            ("choices", name, "from", n),
            f"`{half}` is read as an option of its own, one of {len(choice.options)}; does it go "
            f"on with `{before}`?",
            f"put a semicolon between options, such as: {before}, {half}; …",
        )


def _cut(options: Sequence[str], if_not: str) -> int | None:
    """Which option goes on with the one before it; None where none does."""
    way_out = same_words(if_not)
    for n, (before, option) in enumerate(pairwise(options), start=1):
        found = _GOES_ON.match(option)
        # where the first begins so too, it is how the options are said: like a stone, like a leaf
        goes_on = found is not None and not options[0].startswith(found.group())
        if goes_on or way_out == same_words(f"{before}, {option}"):
            return n
    return None
