"""One word of a list, number, yes or row of a file changed, and nothing else on its line."""

from __future__ import annotations

import copy
import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.shape import ANY, Shape
from build_tools.source.file_lines import (
    IN_BRACKETS,
    SAYS_ELSE,
    EditRefused,
    as_wanted,
    at,
    lines_of,
    reading_of,
    shape_of_file,
    to_change,
)
from build_tools.source.front_matter import Document, read_markdown

Value = str | int | float | bool
_FIELD = re.compile(r"(\s*(?:- +)?[\w-]+\s*:\s+)(\S.*?)(\s+#.*)?\Z")
_ITEM = re.compile(r"(\s*- +)(\S.*?)(\s+#.*)?\Z")


@dataclass(frozen=True, slots=True)
class ShortValue:
    """A value that can be changed: where it is, what it is, and what may stand there.

    `choices` are the words of a list; a number and a row have none.
    """

    path: FieldPath
    value: Value
    choices: tuple[Value, ...]


def values_in(file: str, raw: bytes) -> list[ShortValue]:
    """Each value of the file that `with_value` can change; none if it is unreadable."""
    document = read_markdown(file, raw)
    if not isinstance(document, Document):
        return []
    made = reading_of(document)
    lines = lines_of(raw).lines
    found = _values(made.data, shape_of_file(document), ())
    # a format is changed by `upgrade`, and a lesson's number is in its file's name
    found = (one for one in found if one.path not in (("format",), ("lesson",)))
    return [
        one
        for one in found
        if one.path in made.places and _parts(lines[made.places[one.path][0] - 1], one.path)
    ]


def with_value(
    file: str, raw: bytes, path: FieldPath, old: Value, new: Value
) -> bytes | EditRefused:
    """The bytes of the file with `new` at `path`, where `old` stands now."""
    document = to_change(file, raw)
    if isinstance(document, EditRefused):
        return document
    made = reading_of(document)
    found = {one.path: one for one in _values(made.data, shape_of_file(document), ())}
    known = found.get(path)
    if known is None or known.value != old or type(known.value) is not type(old):
        return SAYS_ELSE
    if known.choices and new not in known.choices:
        return EditRefused("that is none of the words that may stand there")
    whole = lines_of(raw)
    number = made.places[path][0] - 1 if path in made.places else -1
    line = line_with_value(whole.lines[number], path, new) if number >= 0 else None
    if line is None:
        return IN_BRACKETS
    lines = list(whole.lines)
    lines[number] = line
    wanted = copy.deepcopy(made.data)
    at(wanted, path[:-1])[path[-1]] = new
    refused = "that cannot be written there; change it in the file"
    return as_wanted(file, whole.bytes_of(lines), wanted, refused)


def line_with_value(line: str, path: FieldPath, new: Value) -> str | None:
    """The line of the field at `path` with another value; None where it cannot be told apart."""
    parts = _parts(line, path)
    return None if parts is None else f"{parts[1]}{_written(new)}{parts[3] or ''}"


def _values(data: Any, shape: Shape, path: FieldPath) -> Iterator[ShortValue]:
    if isinstance(data, dict):
        for name, value in data.items():
            inner = shape.fields.get(name) or shape.each or ANY
            yield from _values(value, inner, (*path, name))
    elif isinstance(data, list):
        for number, value in enumerate(data):
            yield from _values(value, shape.each or ANY, (*path, number))
    elif shape.takes == "word" and data in shape.words:
        yield ShortValue(path, data, shape.words)
    elif shape.takes == "yes or no" and isinstance(data, bool):
        yield ShortValue(path, data, (True, False))
    elif _is_number(data, shape) or _is_row(data, shape):
        yield ShortValue(path, data, ())


def _is_number(data: Any, shape: Shape) -> bool:
    return shape.takes == "number" and isinstance(data, int | float)


def _is_row(data: Any, shape: Shape) -> bool:
    """Whether it is a row of moves, which is written as one line."""
    return shape.takes == "fields" and isinstance(data, str) and "|" in data


def _parts(line: str, path: FieldPath) -> re.Match[str] | None:
    """A line's head, value and remark; None where the value stands elsewhere or between others."""
    if isinstance(path[-1], int):
        found = _ITEM.match(line)
    else:
        found = _FIELD.match(line)
        found = found if found and re.search(rf"\b{path[-1]}\s*:\s+\Z", found[1]) else None
    return None if found is None or found[2][0] in "[{&*!" else found


def _written(value: Value) -> str:
    return ("true" if value else "false") if isinstance(value, bool) else str(value)
