"""One field of a unit's text set or put in, with every other letter left as its author wrote it."""

from __future__ import annotations

import json
import re

_FIELDS = re.compile(r"\A---\r?\n(.*?)^---[ \t]*$", re.DOTALL | re.MULTILINE)

_BELONGS = re.compile(r"(?:[ \t]+\S.*|- .*|[ \t]*)(?:\n|\Z)")


def with_field(text: str, name: str, value: str | None, after: str = "") -> str:
    """The text of a unit.md with the top field `name` as the lines `value`; None takes it out.

    Where the field is not there yet, it is put behind the field `after`. Raises ValueError for a
    text without fields, and for an `after` that is not there.
    """
    found = _FIELDS.search(text)
    if found is None:
        raise ValueError("no fields between lines of three hyphens")
    start, end = found.span(1)
    fields = text[start:end]
    written = "" if value is None else f"{name}:{_apart(value)}{value}\n"
    span = _span(fields, name)
    if span is None and value is not None:
        place = _span(fields, after)
        if place is None:
            raise ValueError(f"no field {after}")
        span = (place[1], place[1])
    if span is not None:
        fields = fields[: span[0]] + written + fields[span[1] :]
    return text[:start] + fields + text[end:]


def quoted(words: str) -> str:
    """Words as a field writes them, whatever letters are in them: JSON is YAML too."""
    return json.dumps(words, ensure_ascii=False)


def _span(fields: str, name: str) -> tuple[int, int] | None:
    """Where a top field and the lines that belong to it are; empty lines behind them do not."""
    found = re.search(rf"^{re.escape(name)}:.*\n", fields, re.MULTILINE)
    if found is None:
        return None
    end = after = found.end()
    while (line := _BELONGS.match(fields, after)) is not None and line.end() > after:
        after = line.end()
        if line.group().strip():
            end = after
    return found.start(), end


def _apart(value: str) -> str:
    return "" if value.startswith("\n") else " "
