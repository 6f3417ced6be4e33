"""A Markdown file to its fields and its notes."""

from __future__ import annotations

import re
from dataclasses import dataclass

from build_tools.problem import Fault

_FENCE = re.compile(r"-{3,}|—-?|–-?-?|-[–—]|[–—]{2,3}")
"""A line of hyphens, and what word processors make of three of them."""
_DASHES = ("-", "–", "—")


@dataclass(frozen=True, slots=True)
class Split:
    """The two halves of a file, and the lines on which they start."""

    fields: str
    body: str
    body_line: int
    first_line: int = 2


def split(text: str) -> Split | Fault:
    """Part the fields, between two lines of three hyphens, from the notes below them."""
    lines = text.split("\n")
    opens = next((n for n, line in enumerate(lines) if line.strip()), 0)
    if not is_fence(lines[opens]):
        return Fault(
            "no-fields",
            1,
            1,
            "the file does not start with a line of three hyphens",
            "put `---` on the first line, then the fields, then `---` again, then any notes",
        )
    for at in range(opens + 1, len(lines)):
        if is_fence(lines[at]):
            body = "\n".join(lines[at + 1 :])
            fields = "\n".join(lines[opens + 1 : at]) + "\n"
            return Split(fields, body, min(at + 2, len(lines)), opens + 2)
    return Fault(
        "no-fields",
        1,
        1,
        "the fields at the top are never closed with a second line of three hyphens",
        "put a line `---` after the last field",
    )


def is_fence(line: str) -> bool:
    """Whether a line parts the fields from what stands around them."""
    # nearly every line starts otherwise, and this is asked of each
    return line[:1] in _DASHES and _FENCE.fullmatch(line.rstrip()) is not None
