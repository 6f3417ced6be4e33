"""What is said of teaching a unit fits with whether it has been taught.

Advisers trust a unit more that has met real classes. With whom it was taught, or what was changed
afterwards, beside `taught: false` is a claim that somebody forgot to make or to take back; so are
notes that call a unit new when it has been taught.

Bad:
    tried: {taught: false, with: Two Year 4 classes}
Good:
    tried: {taught: true, with: Two Year 4 classes}
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_NOT_YET = re.compile(
    r"\b(?:(?:not|not yet|never) (?:yet )?been (?:taught|tried)|untaught|untried)\b",
    re.IGNORECASE,
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where a unit that has not been taught says how it went, or the reverse."""
    tried = unit.tried
    said = [
        field
        for field, text in (
            ("with", tried.with_whom),
            ("where", tried.where),
            ("changed", tried.changed),
        )
        if text
    ]
    if said and not tried.taught:
        yield Finding(
            unit.file,
            ("tried", said[0]),
            f"`taught` is false, but `{said[0]}` tells of teaching it",
            f"write `taught: true`, or take `{said[0]}` out",
        )
    elif tried.taught and not tried.with_whom:
        yield Finding(
            unit.file,
            ("tried", "taught"),
            "`taught` is true, but `with` does not say with whom",
            "add `with`, such as two Year 4 classes, without names",
        )
    elif tried.taught and (said_so := _NOT_YET.search(unit.notes)):
        yield Finding(
            unit.file,
            ("tried", "taught"),
            f"`taught` is true, but the notes say `{said_so.group()}`",
            "bring the notes up to date, or write `taught: false`",
        )
