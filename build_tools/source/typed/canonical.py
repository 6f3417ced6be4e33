"""Fields in the one form in which every reader of YAML finds the same: blocks, no braces.

A text stands bare where every reader would take it for that very text, else in quotation marks, of
the kind that it does not hold; a long one, or one with both kinds, is folded below a greater-than
sign. Short lists of names, words and numbers stand
in brackets, moves in rows. Remarks stay above, or at the end of, the field that they were at.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from typing import Any

import yaml

from build_tools.problem import FieldPath
from build_tools.shapes.shape import ANY, Shape
from build_tools.source.said_once.in_one_line import line_at
from build_tools.source.typed.folding import can_fold, folded
from build_tools.source.typed.quotes import needs_marks
from build_tools.source.typed.rows import aligned, rows_of, spread
from build_tools.source.typed.what_was_read import Reading

LONG, WIDTH = 160, 100
"""A text of more letters than the first is folded to lines of about the second."""
_NUMBER = re.compile(
    r"[-+]?(0o?[0-7_]+|0x[0-9a-fA-F_]+|0b[01_]+|(\.[0-9_]+|[0-9][0-9_,]*(\.[0-9_]*)?)([eE][-+]?[0-9]+)?"
    r"|\.inf|\.nan|[0-9][0-9_]*(:[0-5]?[0-9])+(\.[0-9_]*)?)\Z",
    re.IGNORECASE,
)
"""What YAML 1.1 or 1.2 takes for a number (YAML 1.2.2, 10.3.2; YAML 1.1 types int and float)."""
_YES_OR_NO = {"y", "n", "yes", "no", "on", "off", "true", "false", "null", "~", "none", "=", "<<"}


def canonical(made: Reading, shape: Shape) -> str:
    """The fields of `made` as they are written, ending in a line break."""
    writer = _Writer(made)
    lines = list(writer.fields(made.data or {}, shape, (), 0))
    lines += writer.above((), 0)
    while lines and not lines[-1]:
        lines.pop()
    return "".join(f"{line}\n" for line in lines)


def field_lines(name: str, value: Any, shape: Shape, path: FieldPath) -> list[str]:
    """The lines of the field `name` in the fields at `path`, of `shape`, as from the margin."""
    held: Any = {name: value}
    for step in reversed(path):
        held = {step: held}
    return list(_Writer(Reading(data=held)).fields({name: value}, shape, path, 0))


def list_lines(value: Any, shape: Shape) -> list[str]:
    """One more line of a list of `shape`, as from the margin."""
    return list(_Writer(Reading()).lines([value], shape, (), 0))


def moves_as_rows(actions: Any) -> Any:
    """The moves of a motif as rows under their columns; as they are where that cannot be."""
    rows = rows_of(actions)
    return actions if rows is None else aligned(rows)


def in_brackets(value: Any) -> str:
    """A value as it is written between brackets."""
    return _flow(value)


class _Writer:
    def __init__(self, made: Reading) -> None:
        self.made = made
        found = spread(made.data)
        self.moves: Mapping[str, Any] = {}
        self.headed = found.headed
        if not found.troubles and isinstance(found.data, dict):
            motifs = found.data.get("motifs")
            self.moves = motifs if isinstance(motifs, dict) else {}

    def fields(
        self, data: Mapping[str, Any], shape: Shape, path: FieldPath, depth: int
    ) -> Iterator[str]:
        """Each field, and what stands in it."""
        for name, value in data.items():
            inner = shape.fields.get(name) or shape.each or ANY
            here = (*path, name)
            if value is not None and self._is_moves(here):
                value = self._rows(here, value)
            yield from self.above(here, depth)
            yield from self._entry(f"{'  ' * depth}{_key(name)}:", value, inner, here, depth)

    def _entry(
        self, head: str, value: Any, shape: Shape, path: FieldPath, depth: int
    ) -> Iterator[str]:
        beside = self.made.beside.get(path, "")
        tail = f"  {beside}" if beside else ""
        if value is None:
            yield f"{head}{tail}"
        elif isinstance(value, Mapping) and value:
            yield f"{head}{tail}"
            yield from self.fields(value, shape, path, depth + 1)
        elif isinstance(value, list) and (line := line_at(path, value, shape)) is not None:
            yield from self._above_inner(path, head)
            if isinstance(line, str):
                yield from text_lines(head, line, tail, depth + 1, fold=False)
            else:
                yield f"{head} {line}{tail}"
        elif isinstance(value, list) and value and not _is_short(value, head, shape):
            yield f"{head}{tail}"
            yield from self.lines(value, shape, path, depth + 1)
        elif isinstance(value, list | Mapping):
            yield from self._above_inner(path, head)
            yield f"{head} {_flow(value)}{tail}"
        else:
            yield from _scalar(head, value, tail, depth + 1)

    def lines(
        self, items: Sequence[Any], shape: Shape, path: FieldPath, depth: int
    ) -> Iterator[str]:
        each = shape.each or ANY
        for number, item in enumerate(items):
            here = (*path, number)
            yield from self.above(here, depth)
            mark = f"{'  ' * depth}-"
            if isinstance(item, Mapping) and item:
                inner = list(self.fields(item, each, here, depth + 1))
                first = next(n for n, line in enumerate(inner) if line.strip()[:1] not in ("", "#"))
                # remarks above the first field of a part stand above its hyphen
                yield from (line.removeprefix("  ") for line in inner[:first])
                yield f"{mark} {inner[first].lstrip()}"
                yield from inner[first + 1 :]
            elif isinstance(item, list) and item and not _is_short(item, mark, each):
                yield f"{mark} {_flow(item)}"
            else:
                yield from self._entry(mark, item, each, here, depth)

    def above(self, path: FieldPath, depth: int) -> Iterator[str]:
        """The remarks and empty lines above a field; never two empty lines together."""
        empty = False
        for remark in self.made.before.get(path, ()):
            if remark:
                yield f"{'  ' * depth}{remark}"
            elif not empty:
                yield ""
            empty = not remark

    def _above_inner(self, path: FieldPath, head: str) -> Iterator[str]:
        """Remarks inside of what is written on one line."""
        indent = " " * (len(head) - len(head.lstrip()))
        for inner in self._inside(path):
            yield f"{indent}{inner}"

    def _inside(self, path: FieldPath) -> Iterator[str]:
        size = len(path)
        for places in (self.made.before, {p: [r] for p, r in self.made.beside.items()}):
            for place, remarks in places.items():
                if len(place) > size and place[:size] == path:
                    yield from (remark for remark in remarks if remark)

    def _is_moves(self, path: FieldPath) -> bool:
        return len(path) == 3 and path[0] == "motifs" and path[2] == "actions"

    def _rows(self, path: FieldPath, value: Any) -> Any:
        """The moves of a motif as rows, with their columns; as they are where that cannot be."""
        motif = self.moves.get(str(path[1]))
        rows = rows_of(motif["actions"]) if isinstance(motif, Mapping) else None
        if rows is None or not isinstance(value, list):
            return value
        self._move_remarks(path, headed=path[1] in self.headed)
        return aligned(rows)

    def _move_remarks(self, path: FieldPath, *, headed: bool) -> None:
        """Remarks within a move stand above its row; the row of columns comes first."""
        shift = 0 if headed else 1
        size = len(path)
        before: dict[FieldPath, list[str]] = {}
        beside: dict[FieldPath, str] = {}
        for place, remarks in list(self.made.before.items()):
            if place[:size] == path and len(place) > size:
                moved = (
                    *path,
                    int(place[size]) + (shift if len(place) > size + 1 or place[size] else 0),
                )
                before.setdefault(moved, []).extend(remarks)
                del self.made.before[place]
        for place, remark in list(self.made.beside.items()):
            if place[:size] == path and len(place) > size:
                moved = (*path, int(place[size]) + shift)
                if len(place) == size + 1:
                    beside[moved] = remark
                else:
                    before.setdefault(moved, []).append(remark)
                del self.made.beside[place]
        self.made.before |= before
        self.made.beside |= beside


def _is_short(items: Sequence[Any], head: str, shape: Shape) -> bool:
    """Whether a list stands in brackets: single words, names and numbers that fit on a line."""
    if any(isinstance(item, Mapping | list) for item in items):
        return False
    each = (shape.each or ANY).takes
    if each == "fields" and any("|" in str(item) for item in items):
        return False  # rows of moves
    if each == "text" and any(" " in str(item) or "\n" in str(item) for item in items):
        return False
    if each == "any" and any(not isinstance(item, int) for item in items):
        return False
    return len(head) + len(_flow(items)) < WIDTH or each in ("number", "text")


def _flow(value: Any) -> str:
    if isinstance(value, Mapping):
        inside = ", ".join(f"{_key(name)}: {_flow(one)}" for name, one in value.items())
        return f"{{{inside}}}"
    if isinstance(value, list):
        return f"[{', '.join(_flow(one) for one in value)}]"
    if isinstance(value, str):
        return value if _is_plain(value, flow=True) else _marked(value)
    return json.dumps(value)


def text_lines(head: str, text: str, tail: str, depth: int, *, fold: bool) -> list[str]:
    """The lines of a field, its name and colon in `head`, that holds `text`.

    `depth` is that of the lines below it, if it is folded or has lines of its own; where `fold` is
    false, a long text stays on its line.
    """
    if not fold and "\n" not in text:
        return [
            f"{head} {text if not tail and _is_plain(text, flow=False) else _marked(text)}{tail}"
        ]
    return list(_scalar(head, text, tail, depth))


def _scalar(head: str, value: Any, tail: str, depth: int) -> Iterator[str]:
    if not isinstance(value, str):
        yield f"{head} {json.dumps(value)}{tail}"
        return
    indent = "  " * depth
    in_marks = '"' in value and "'" in value and not _is_plain(value, flow=False)
    if (len(value) > LONG or in_marks) and can_fold(value) and not tail:
        yield f"{head} >-"
        yield from (f"{indent}{line}" for line in folded(value, WIDTH - len(indent)))
    elif "\n" in value and _can_stand(value) and not tail:
        yield f"{head} {'|' if value.endswith(chr(10)) else '|-'}"
        yield from (
            f"{indent}{line}" if line else "" for line in value.removesuffix("\n").split("\n")
        )
    else:
        plain = not tail and _is_plain(value, flow=False)
        yield f"{head} {value if plain else _marked(value)}{tail}"


def _can_stand(text: str) -> bool:
    lines = text.split("\n")
    odd = any(line != line.rstrip() or "\t" in line for line in lines)
    return bool(lines[0]) and not lines[0].startswith(" ") and not odd and not text.endswith("\n\n")


def _marked(text: str) -> str:
    """A text in marks: single ones round what holds double ones, so that none is escaped."""
    if '"' in text and "'" not in text and "\\" not in text and text.isprintable():
        return f"'{text}'"
    return json.dumps(text, ensure_ascii=False)


@cache
def _key(name: str) -> str:
    sound = (
        re.fullmatch(r"[A-Za-z][\w'-]*(?: [\w'-]+)*", name) and name.casefold() not in _YES_OR_NO
    )
    return name if sound else _marked(name)


_SURELY_PLAIN = re.compile(r"[^\W\d_][\w ,.;!?'’()/–—-]*")
"""Begins with a letter and holds nothing that YAML gives a meaning to: most of what is written.
Asking two readers of each line takes three thousandths of a second."""


def _is_plain(text: str, *, flow: bool) -> bool:
    """Whether every reader of YAML takes the bare `text` for that very text."""
    if text.casefold() in _YES_OR_NO or _NUMBER.match(text) or text != text.strip():
        return False
    if flow and re.search(r"[,\[\]{}\"'#:]", text):
        return False
    if not text.isprintable():
        return False
    if _SURELY_PLAIN.fullmatch(text):
        return True
    if needs_marks(text):
        return False
    try:
        return bool(yaml.safe_load(f"- {text}\n") == [text])
    except (yaml.YAMLError, ValueError):
        return False
