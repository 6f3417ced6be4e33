"""A Markdown file to its fields and its notes."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.problem import Fault

_FENCE = "---"


@dataclass(frozen=True, slots=True)
class Split:
    """The two halves of a file: the fields start on line 2, the notes on line `body_line`."""

    fields: str
    body: str
    body_line: int


def split(text: str) -> Split | Fault:
    """Part the fields, between two lines of three hyphens, from the notes below them."""
    lines = text.split("\n")
    if lines[0].rstrip() != _FENCE:
        return Fault(
            "no-fields",
            1,
            1,
            "the file does not start with a line of three hyphens",
            "put `---` on the first line, then the fields, then `---` again, then any notes",
        )
    for number, line in enumerate(lines[1:], start=2):
        if line.rstrip() == _FENCE:
            body = "\n".join(lines[number:])
            fields = "\n".join(lines[1 : number - 1]) + "\n"
            return Split(fields, body, min(number + 1, len(lines)))
    return Fault(
        "no-fields",
        1,
        1,
        "the fields at the top are never closed with a second line of three hyphens",
        "put a line `---` after the last field",
    )
