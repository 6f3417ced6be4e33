"""The YAML parser's complaints in a teacher's words."""

from __future__ import annotations

import yaml

from build_tools.problem import Fault

_WORDING: tuple[tuple[str, str, str], ...] = (
    (
        "mapping values are not allowed",
        "a second colon on this line is read as the start of another field",
        "put quotation marks around the text after the first colon",
    ),
    (
        "could not find expected ':'",
        "a line here has no colon after the name of its field",
        "write it as `name: value`, or indent it under the line it belongs to",
    ),
    (
        "expected ',' or",
        "a list or map in brackets is not closed, or lacks a comma",
        "close the bracket, or put the missing comma between two items",
    ),
    (
        "while scanning a quoted scalar",
        "a quotation mark is opened here and never closed",
        "close it at the end of the text",
    ),
    (
        "found character that cannot start any token",
        "this line starts with a character that cannot start a value (a tab, @, % or backtick)",
        "indent with spaces, and put quotation marks around text that starts with such a sign",
    ),
    (
        "found a tab character",
        "this line is indented with a tab",
        "indent with spaces",
    ),
    (
        "did not find expected alphabetic or numeric character",
        "a `*` or `&` starts this value, which is read as a link between places in the file",
        "put quotation marks around the whole value",
    ),
    (
        "while scanning a simple key",
        "a line here has no colon after the name of its field",
        "write it as `name: value`, or indent it under the line it belongs to",
    ),
    (
        "exceeded maximum nesting depth",
        "fields stand inside one another far too deep here",
        "look for an unclosed bracket or for lines that are indented too far",
    ),
)
_STARTED = (
    "while scanning a quoted scalar",
    "while scanning a simple key",
    "while parsing a flow",
)
"""Here the author looks for where it started, often lines above where the reading stopped."""
_OTHERWISE = (
    "this line does not fit the lines above it",
    "check that fields of one kind start in the same column, and that each has a colon",
)


def parser_fault(error: yaml.YAMLError, text: str, first_line: int) -> Fault:
    """The parser's `error` as a fault at a line that exists in the file.

    `first_line` is the line of the file on which `text` starts.
    """
    said = str(error)
    mark = getattr(error, "problem_mark", None) or getattr(error, "context_mark", None)
    if any(part in said for part in _STARTED) and getattr(error, "context_mark", None):
        mark = error.context_mark  # type: ignore[attr-defined]
    lines = text.removesuffix("\n").split("\n")
    line = min(mark.line if mark else 0, max(len(lines) - 1, 0))
    column = min(mark.column if mark else 0, len(lines[line]))
    for part, message, help_ in _WORDING:
        if part in said:
            return Fault("broken-yaml", first_line + line, column + 1, message, help_)
    return Fault("broken-yaml", first_line + line, column + 1, *_OTHERWISE)
