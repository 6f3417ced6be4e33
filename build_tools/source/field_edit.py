"""A field put into a file, written anew or taken out, by its own lines: no other line changes.

A new field stands where the schema's order has it among those that are there, a new line of a list
at its end. What stands in brackets is written anew between its brackets alone.
"""

from __future__ import annotations

import copy
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.shape import ANY, Shape
from build_tools.source.file_lines import (
    IN_BRACKETS,
    SAYS_ELSE,
    EditRefused,
    Lines,
    as_wanted,
    at,
    lines_of,
    reading_of,
    shape_of_file,
    to_change,
)
from build_tools.source.item_edit import mark_of
from build_tools.source.text_edit import lines_with_text
from build_tools.source.typed.canonical import field_lines, in_brackets, list_lines
from build_tools.source.typed.flow import balanced
from build_tools.source.typed.what_was_read import Reading
from build_tools.source.value_edit import line_with_value

NOTHING: Any = object()
"""In place of a value: the field is taken out."""
_CANNOT = "that cannot be written there; change it in the file"


@dataclass(frozen=True, slots=True)
class _Edit:
    whole: Lines
    made: Reading
    wanted: Any
    shape: Shape

    def lines_at(self, path: FieldPath) -> tuple[int, int]:
        """The lines of the field at `path`, from 0, without the remarks above and below it."""
        start = self.made.places[path][0] - 1
        size = len(path)
        after = [p[0] - 1 for q, p in self.made.places.items() if q[:size] != path]
        end = min((n for n in after if n > start), default=_end_of_fields(self.whole.lines))
        while end > start + 1 and _is_remark(self.whole.lines[end - 1]):
            end -= 1
        return start, end


def mark_around(data: Any, path: FieldPath) -> str:
    """The mark of the part of a list that `path` lies in; "" where it lies in none."""
    inside = [n for n, step in enumerate(path) if isinstance(step, int)]
    return mark_of(at(data, path[: inside[-1] + 1])) if inside else ""


def with_field(file: str, raw: bytes, path: FieldPath, old: str, value: Any) -> bytes | EditRefused:
    """The bytes of the file with `value` at `path`: a field, a line of a list, or `NOTHING` there.

    `old` is the mark of what stands there; where nothing does, that of the part of a list around.
    """
    document = to_change(file, raw)
    if isinstance(document, EditRefused):
        return document
    made, shape = reading_of(document), shape_of_file(document)
    around = at(made.data, path[:-1])
    if not _has_place(around, path[-1], new=value is not NOTHING):
        return SAYS_ELSE
    stands = _stands(around, path[-1])
    mark = mark_of(around[path[-1]]) if stands else mark_around(made.data, path[:-1])
    if mark != old:
        return SAYS_ELSE
    wanted = copy.deepcopy(made.data)
    _put(at(wanted, path[:-1]), path[-1], value, _shape_at(shape, path[:-1]))
    edit = _Edit(lines_of(raw), made, wanted, shape)
    fresh = _written(edit, path, value, stands=stands)
    if isinstance(fresh, EditRefused):
        return fresh
    return as_wanted(file, edit.whole.bytes_of(fresh), wanted, _CANNOT)


def _written(
    edit: _Edit, path: FieldPath, value: Any, *, stands: bool
) -> Sequence[str] | EditRefused:
    lines = edit.whole.lines
    host = _in_brackets(edit, path if stands else path[:-1])
    if host is not None and (host != path or value is not NOTHING):
        return _anew(edit, host)
    if isinstance(path[-1], int) and (*path[:-1], 0) not in edit.made.places and host is None:
        return _set(edit, path[:-1], at(edit.wanted, path[:-1]))  # a list that stands in one line
    if value is NOTHING:
        start, end = edit.lines_at(path)
        return _without(lines, start, end, edit.made.places[path][1] - 1)
    if stands:
        return _set(edit, path, value)
    siblings = _siblings(edit, path[:-1])
    if not siblings:
        return IN_BRACKETS
    behind, before = _neighbours(edit, path, siblings)
    if behind is not None:
        start, end = edit.lines_at(behind)
    else:
        assert before is not None
        start = end = edit.made.places[before][0] - 1
    column = edit.made.places[behind or before or ()][1] - 1
    return [*lines[:end], *_new_lines(edit, path, value, lines[start], column), *lines[end:]]


def _set(edit: _Edit, path: FieldPath, value: Any) -> Sequence[str] | EditRefused:
    """The file with another value where one has lines of its own; its remark stays."""
    if isinstance(value, str) and path in edit.made.texts:
        return lines_with_text(edit.whole.lines, edit.made, path, value)
    start, end = edit.lines_at(path)
    lines = edit.whole.lines
    if end == start + 1 and not isinstance(value, dict | list):
        line = line_with_value(lines[start], path, value)
        return IN_BRACKETS if line is None else [*lines[:start], line, *lines[end:]]
    remarks = any(_is_remark(one) for one in lines[start:end])
    if remarks or path in edit.made.beside or isinstance(path[-1], int):
        return EditRefused(_CANNOT)
    column = edit.made.places[path][1] - 1
    made = field_lines(path[-1], value, _shape_at(edit.shape, path[:-1]), path[:-1])
    head, indent = lines[start][:column], " " * column
    fresh = [f"{indent if n else head}{line}" for n, line in enumerate(made)]
    return [*lines[:start], *fresh, *lines[end:]]


def _new_lines(edit: _Edit, path: FieldPath, value: Any, beside: str, column: int) -> list[str]:
    """A field, or a line of a list, set in as what stands `beside` it."""
    shape = _shape_at(edit.shape, path[:-1])
    name = path[-1]
    if isinstance(name, int):
        indent = beside[: len(beside) - len(beside.lstrip())]
        made = list_lines(value, shape)
    else:
        indent = " " * column
        made = field_lines(name, value, shape, path[:-1])
    return [f"{indent}{line}" if line else "" for line in made]


def _neighbours(
    edit: _Edit, path: FieldPath, siblings: Sequence[FieldPath]
) -> tuple[FieldPath | None, FieldPath | None]:
    """The field that the new one stands behind; or where it is the first, the one before which."""
    order = list(at(edit.wanted, path[:-1]))
    if isinstance(path[-1], int):
        return siblings[-1], None
    number = order.index(path[-1])
    if number:
        return (*path[:-1], order[number - 1]), None
    first = siblings[0]
    line, column = edit.made.places[first]
    at_hyphen = edit.whole.lines[line - 1][: column - 1].strip()
    return (first, None) if at_hyphen else (None, first)


def _siblings(edit: _Edit, around: FieldPath) -> list[FieldPath]:
    held = at(edit.made.data, around)
    names = range(len(held)) if isinstance(held, list) else held
    paths = [(*around, name) for name in names]
    return paths if all(path in edit.made.places for path in paths) else []


def _without(lines: Sequence[str], start: int, end: int, column: int) -> Sequence[str]:
    """The lines without those; a hyphen in front of the field goes to the one behind it."""
    head = lines[start][:column]
    if not head.strip() or end >= len(lines):
        return [*lines[:start], *lines[end:]]
    following = lines[end]
    if not following.strip() or len(following) - len(following.lstrip()) < len(head):
        return [*lines[:start], *lines[end:]]
    return [*lines[:start], f"{head}{following.lstrip()}", *lines[end + 1 :]]


def _in_brackets(edit: _Edit, path: FieldPath) -> FieldPath | None:
    """The outermost field around `path`, or itself, whose value stands in brackets."""
    for size in range(1, len(path) + 1):
        here = path[:size]
        if here in edit.made.places and _value_in_brackets(edit, here) is not None:
            return here
    return None


def _value_in_brackets(edit: _Edit, path: FieldPath) -> tuple[int, int] | None:
    """The line and the letter at which the value at `path` opens a bracket."""
    line, column = edit.made.places[path]
    text = edit.whole.lines[line - 1]
    start = column - 1
    if isinstance(path[-1], str):
        colon = text.find(":", start)
        if colon < 0:
            return None
        start = colon + 1
    while start < len(text) and text[start] == " ":
        start += 1
    opens = text[start : start + 1] in ("[", "{")
    return (
        (line - 1, start) if opens and isinstance(at(edit.made.data, path), dict | list) else None
    )


def _anew(edit: _Edit, path: FieldPath) -> Sequence[str] | EditRefused:
    """The file with the value at `path`, which stands in brackets, written anew."""
    found = _value_in_brackets(edit, path)
    assert found is not None
    number, letter = found
    lines = edit.whole.lines
    size = len(path)
    if any(len(q) > size and q[:size] == path for q in (*edit.made.before, *edit.made.beside)):
        return IN_BRACKETS
    remark = edit.made.beside.get(path, "")
    text, end = lines[number][letter:], number + 1
    tail = text[text.rindex(remark) - 2 :] if remark and remark in text else ""
    while not balanced(text.removesuffix(tail)) and end < len(lines):
        text += f"\n{lines[end]}"
        end += 1
    if end > number + 1 and (remark or "#" in text):
        return IN_BRACKETS
    value = at(edit.wanted, path)
    head = lines[number][:letter].rstrip()
    empty_before = not at(edit.made.data, path)
    if empty_before and not tail and isinstance(path[-1], str):
        column = edit.made.places[path][1] - 1
        if not head[:column].strip():
            made = field_lines(path[-1], value, _shape_at(edit.shape, path[:-1]), path[:-1])
            fresh = [f"{' ' * column}{line}" for line in made]
            return [*lines[:number], *fresh, *lines[end:]]
    if value is None:
        return EditRefused(_CANNOT)
    fresh_line = f"{head} {in_brackets(value)}{tail.rstrip() and '  ' + tail.strip()}"
    return [*lines[:number], fresh_line, *lines[end:]]


def _has_place(around: Any, name: str | int, *, new: bool) -> bool:
    if isinstance(around, dict):
        return isinstance(name, str) and (new or name in around)
    if isinstance(around, list) and isinstance(name, int):
        return 0 <= name < len(around) + new
    return False


def _stands(around: Any, name: Any) -> bool:
    return name in around if isinstance(around, dict) else name < len(around)


def _put(around: Any, name: Any, value: Any, shape: Shape) -> None:
    """Change plain data: a new field goes where the schema's order has it."""
    if value is NOTHING:
        del around[name]
    elif isinstance(around, list):
        around[name : name + 1] = [value]
    elif name in around:
        around[name] = value
    else:
        held = list(around.items())
        held.insert(_where(list(around), name, list(shape.fields)), (name, value))
        around.clear()
        around.update(held)


def _where(there: Sequence[str], name: str, order: Sequence[str]) -> int:
    """Behind the last of those that come before it in the schema; a name of its own at the end."""
    if name not in order:
        return len(there)
    earlier = order[: order.index(name)]
    return max((n + 1 for n, one in enumerate(there) if one in earlier), default=0)


def _shape_at(shape: Shape, path: FieldPath) -> Shape:
    for step in path:
        shape = (shape.fields.get(step) if isinstance(step, str) else None) or shape.each or ANY
    return shape


def _end_of_fields(lines: Sequence[str]) -> int:
    return next((n for n, one in enumerate(lines) if n and one.rstrip() == "---"), len(lines))


def _is_remark(line: str) -> bool:
    return not line.strip() or line.lstrip().startswith("#")
