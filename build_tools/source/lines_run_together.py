"""Lines of a list of which one has lost its hyphen, so that it is read as more of the line above.

YAML reads such a line on, and so does this bank: a long text may go on below. But a line that ends
early, with room for the next word, was ended on purpose; where the one below it begins with a
capital letter, its author is asked.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.problem import Problem
from build_tools.shapes.shape import shape_of
from build_tools.source.front_matter import Document, kind_of_file, read_again
from build_tools.source.typed.what_was_read import shown

RULE = "hyphen-missing"
ROOM = 72
"""A line that is shorter with the next word than this was not broken for want of room."""
_MAY_BE = re.compile(r"^ *- .*\n +[A-Z“‘0-9]", re.MULTILINE)
_GOES_ON = re.compile(r"(?:[,:;–—-]|\b(?:and|or|the|a|an|of|to|in|for|with))\Z", re.IGNORECASE)


def lines_run_together(document: Document) -> list[Problem]:
    """A question for each line of a list that seems to be two whose second hyphen is missing."""
    kind = kind_of_file(document.file)
    if kind is None or not _MAY_BE.search(document.yaml_text):
        return []
    lines = document.yaml_text.split("\n")
    read = read_again(document, shape_of(kind))
    return [
        Problem(
            document.file, number, len(line) - len(line.lstrip()) + 1, RULE, "question",
            f"“{shown(line)}” is read as more of the line above it: “{shown(before + ' ' + line)}”",
            "start it with a hyphen and a space, right below the hyphen above, if it is a line of "
            "its own; if it does go on, write both in one line",
        )
        for path, (first, column, last) in read.texts.items()
        if isinstance(path[-1], int)
        for number, before, line in _further(lines, document.first_line, first, column, last)
    ]  # fmt: skip


def _further(
    lines: list[str], first_line: int, first: int, column: int, last: int
) -> Iterator[tuple[int, str, str]]:
    """Each line that goes on with a text though it need not: its number, the one before, itself."""
    starts = lines[first - first_line][column:]
    if starts[:1] in ("", ">", "|", '"', "'"):
        return
    for number in range(first + 1, last + 1):
        above, line = lines[number - 1 - first_line], lines[number - first_line]
        word = line.split()[0] if line.strip() else ""
        early = len(above.rstrip()) + 1 + len(word) < ROOM
        if word[:1].isupper() and early and not _GOES_ON.search(above.rstrip()):
            yield number, (starts if number == first + 1 else above).strip(), line.strip()
