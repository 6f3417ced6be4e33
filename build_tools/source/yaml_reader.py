"""One YAML text to plain data, with the line and column of every field.

Written over the parser's events so that what authors wrote is left alone (`3:45`, `no`, `012`
and dates stay text) and so that depth, repeated fields, anchors and aliases are seen at once.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import yaml

from build_tools.problem import Fault, FieldPath
from build_tools.source.scalars import (
    MOST_DEPTH,
    MOST_DIGITS,
    MOST_ENTRIES,
    NOT_A_NUMBER,
    WORDS,
    number,
    plain_letters,
)
from build_tools.source.text import HIDDEN, hidden_character
from build_tools.source.yaml_parser_complaints import parser_fault

MOST_SHOWN = 40

_BUILT_IN = "tag:yaml.org,2002:"

_NODES = frozenset(
    {yaml.ScalarEvent, yaml.MappingStartEvent, yaml.SequenceStartEvent, yaml.AliasEvent}
)
_ENDS = frozenset({yaml.MappingEndEvent, yaml.SequenceEndEvent})

Places = dict[FieldPath, tuple[int, int]]


class _Stop(Exception):  # noqa: N818 - it stops the reading
    """Ends the reading of this text at its first fault; never leaves this module."""

    def __init__(self, fault: Fault) -> None:
        self.fault = fault


@dataclass(slots=True)
class _Open:
    """A list or a map that is still being read."""

    value: dict[str, Any] | list[Any]
    path: FieldPath
    key: str | None = None
    lines: dict[str, int] = field(default_factory=dict)


def read_yaml(text: str, first_line: int = 1) -> tuple[Any, Places] | Fault:
    """Read one document.

    `first_line` is the line of the file on which `text` starts. Places give, for every field of
    a map, where its name stands, and for every item of a list, where the item starts.
    """
    try:
        return _read(text, first_line)
    except _Stop as stop:
        return stop.fault
    except yaml.YAMLError as error:
        return parser_fault(error, text, first_line)


def _read(text: str, first_line: int) -> tuple[Any, Places]:
    places: Places = {(): (first_line, 1)}
    root: list[Any] = []
    stack: list[_Open] = [_Open(root, ())]
    documents = 0
    event: Any
    # one pass over some hundred events a file, and some million in a large bank: it is kept flat
    for event in yaml.parse(text, Loader=yaml.CLoader):
        kind = type(event)
        if kind in _ENDS:
            stack.pop()
        elif kind in _NODES:
            mark = event.start_mark
            line, column = mark.line + first_line, mark.column + 1
            if event.anchor is not None or getattr(event, "tag", None) is not None:
                _refuse_marks(event, line, column)
            _take(event, stack, places, line, column)
        elif kind is yaml.DocumentStartEvent:
            documents += 1
            if documents > 1:
                mark = event.start_mark
                place = (mark.line + first_line, mark.column + 1)
                raise _Stop(_fault("broken-yaml", *place, *_SECOND_DOCUMENT))
    return (root[0] if root else None), places


def _take(event: yaml.NodeEvent, stack: list[_Open], places: Places, line: int, col: int) -> None:
    """Put one value, or one field's name, where it belongs."""
    top = stack[-1]
    held, key = top.value, top.key
    in_map = type(held) is dict
    if len(held) >= MOST_ENTRIES and key is None:
        raise _Stop(_fault("broken-yaml", line, col, *_TOO_MANY))
    if in_map and key is None:
        top.key = _field_name(event, top, line, col)
        places[(*top.path, top.key)] = (line, col)
        return
    value: Any
    scalar = isinstance(event, yaml.ScalarEvent)
    if isinstance(event, yaml.ScalarEvent):
        value = _scalar(event, line, col)
    elif len(stack) > MOST_DEPTH:
        raise _Stop(_fault("broken-yaml", line, col, *_TOO_DEEP))
    else:
        value = {} if type(event) is yaml.MappingStartEvent else []
    path: FieldPath
    if isinstance(held, dict):
        path = (*top.path, key or "")
        held[key or ""] = value
        top.key = None
    else:
        path = (*top.path, len(held)) if len(stack) > 1 else ()
        if path:
            places[path] = (line, col)
        held.append(value)
    if not scalar:
        stack.append(_Open(value, path))


def _field_name(event: yaml.NodeEvent, top: _Open, line: int, column: int) -> str:
    if not isinstance(event, yaml.ScalarEvent):
        raise _Stop(_fault("broken-yaml", line, column, *_ODD_FIELD_NAME))
    name = plain_letters(str(event.value))
    _refuse_hidden(event, line, column)
    if name in top.lines:
        shown = _short(name)
        raise _Stop(
            _fault(
                "repeated-field",
                line,
                column,
                f"`{shown}` stands here a second time; the first is on line {top.lines[name]}",
                "keep one of the two",
            )
        )
    top.lines[name] = line
    return name


def _scalar(event: yaml.ScalarEvent, line: int, column: int) -> str | int | float | bool | None:
    text = str(event.value)
    if event.style:
        _refuse_hidden(event, line, column)
        return plain_letters(text)
    if text in WORDS:
        return WORDS[text]
    if NOT_A_NUMBER.match(text):
        raise _Stop(
            _fault(
                "odd-number",
                line,
                column,
                f"`{text}` is not a number that can be used",
                "write a number in figures, or put quotation marks around it if it is a word",
            )
        )
    value = number(text)
    if value is None:
        raise _Stop(
            _fault(
                "odd-number",
                line,
                column,
                f"the number {text[:20]}… has more than {MOST_DIGITS} figures",
                "write the number that was meant, or put quotation marks around it if it is text",
            )
        )
    return plain_letters(value) if isinstance(value, str) else value


def _refuse_hidden(event: yaml.ScalarEvent, line: int, column: int) -> None:
    """Text in double quotation marks can hold characters by their codes; no other can."""
    if event.style == '"' and (hidden := HIDDEN.search(event.value)):
        raise _Stop(hidden_character(hidden.group(), line, column))


def _refuse_marks(event: yaml.NodeEvent, line: int, column: int) -> None:
    if event.anchor is not None:
        what = "*" if isinstance(event, yaml.AliasEvent) else "&"
        shown = _short(what + event.anchor)
        raise _Stop(
            _fault(
                "anchor-used",
                line,
                column,
                f"`{shown}` is a link between places in the file, which is not read",
                f'write the words out in both places, or put quotation marks around "{what}"',
            )
        )
    tag = getattr(event, "tag", None)
    if tag is not None:
        shown = _short(tag.replace(_BUILT_IN, "!!"))
        raise _Stop(
            _fault(
                "broken-yaml",
                line,
                column,
                f"`{shown}` at the start of a value is a sign for programs",
                "delete it, or put quotation marks around the whole value",
            )
        )


def _short(text: str) -> str:
    text = " ".join(text.split())
    return text if len(text) <= MOST_SHOWN else text[: MOST_SHOWN - 1] + "…"


def _fault(rule: str, line: int, column: int, message: str, help_: str) -> Fault:
    return Fault(rule, line, column, message, help_)


_SECOND_DOCUMENT = (
    "a second set of fields starts here",
    "keep one set of fields in a file; delete the line of three hyphens",
)
_TOO_DEEP = (
    f"fields stand inside one another more than {MOST_DEPTH} deep here",
    "look for an unclosed bracket or for lines that are indented too far",
)
_TOO_MANY = (
    f"this is more than {MOST_ENTRIES} lines of one list, or fields of one map",
    "check that this is the right file, and shorten the list",
)
_ODD_FIELD_NAME = (
    "a list or a map stands where the name of a field belongs",
    "write the field as `name: value`, and put quotation marks around brackets in text",
)
