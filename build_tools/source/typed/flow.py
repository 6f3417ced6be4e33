"""A list or fields between brackets, read by its shape: a comma may stand in a text of fields.

A list of texts with a semicolon between two of them is parted by semicolons, as it is without
brackets; what stands in brackets within a text belongs together.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from build_tools.shapes.shape import ANY, Shape
from build_tools.source.scalars import MOST_DEPTH
from build_tools.source.typed.lines import key_of, plain_name
from build_tools.source.typed.quotes import quoted_end, unquoted
from build_tools.source.typed.values import meant

_OPEN = {"[": "]", "{": "}", "(": ")"}
_SPACE = re.compile(r"\s*")
_FLOW_KEY = re.compile(
    r"""\s*("[^"\n]{1,80}"|'[^'\n]{1,80}'|[^:,\[\]{}"'\n]{1,60}?)\s*:(?=[\s\[{"']|$)"""
)
_TIGHT_KEY = re.compile(r"\s*([A-Za-z][\w -]{0,39}):(?=[^\s,\]}])")

MOST_LETTERS = 20_000
MOST_VALUES = 1_000
"""Of one pair of brackets: far more than any that is meant, so that no file takes long."""
Changed = Callable[[str, Any, int], None]
"""Told of each value that is read otherwise than it was typed: both, and where."""
Placed = Callable[[tuple[str | int, ...], int], None]


@dataclass(frozen=True, slots=True)
class Flow:
    """What was read: the value, where it ends in the text, and whether its bracket was closed."""

    value: Any
    end: int
    closed: bool


class _Deep(Exception):  # noqa: N818 - it ends the reading and never leaves this module
    pass


def read_flow(text: str, shape: Shape, name: str, changed: Changed, placed: Placed) -> Flow | None:
    """The value that starts `text` with a bracket; None where it is none of that shape."""
    if len(text) > MOST_LETTERS:
        return None
    reader = _Reader(text, changed, placed)
    try:
        value = reader.value(shape, name, (), 0)
    except _Deep:
        return None
    return Flow(value, reader.at, reader.closed)


def balanced(text: str) -> bool:
    """Whether every bracket of `text` outside quotation marks is closed."""
    depth, at = 0, 0
    while at < len(text):
        sign = text[at]
        if sign in "\"'" and (not at or text[at - 1] in " \n,[{:("):
            end = quoted_end(text, at)
            if end:
                at = end
                continue
        depth += (sign in "[{(") - (sign in "]})")
        at += 1
    return depth <= 0


class _Reader:
    def __init__(self, text: str, changed: Changed, placed: Placed) -> None:
        self.text, self.at, self.closed, self.values = text, 0, True, 0
        self.changed, self.placed = changed, placed

    def value(
        self, shape: Shape, name: str, path: tuple[str | int, ...], depth: int, until: str = ""
    ) -> Any:
        self.values += 1
        if depth > MOST_DEPTH or self.values > MOST_VALUES:
            raise _Deep
        self._space()
        opened = self.text[self.at : self.at + 1]
        lists = shape.takes in ("list", "any") or not depth
        if opened and opened in "[(" and lists and (opened == "[" or shape.takes == "list"):
            return self._list(shape.each or ANY, name, path, depth, _OPEN[opened])
        if opened == "{" and shape.takes in ("fields", "names", "any"):
            return self._fields(shape, name, path, depth)
        return self._scalar(shape, name, until)

    def _list(
        self, each: Shape, name: str, path: tuple[str | int, ...], depth: int, closer: str
    ) -> list[Any]:
        self.at += 1
        held: list[Any] = []
        between = ";" if each.takes == "text" and self._semicolons(closer) else ","
        while self._more(closer):
            self.placed((*path, len(held)), self.at)
            one = _FLOW_KEY.match(self.text, self.at)
            if one and each.takes in ("fields", "any") and self.text[self.at] not in "\"'{":
                held.append({})  # [a: b] is a list of one set of fields
                self._entry(held[-1], each, name, (*path, len(held) - 1), depth, f",{closer}")
            else:
                before = self.at
                ends = f"{between}{closer}"
                held.append(self.value(each, name, (*path, len(held)), depth + 1, ends))
                if self.at == before:
                    self.at += 1  # a bracket where none belongs
            self._comma(between)
        return held

    def _fields(
        self, shape: Shape, name: str, path: tuple[str | int, ...], depth: int
    ) -> dict[str, Any]:
        self.at += 1
        held: dict[str, Any] = {}
        while self._more("}"):
            before = self.at
            self._entry(held, shape, name, path, depth, ",}")
            self._comma()
            if self.at == before:
                self.at += 1
        return held

    def _entry(
        self,
        held: dict[str, Any],
        shape: Shape,
        name: str,
        path: tuple[str | int, ...],
        depth: int,
        until: str,
    ) -> None:
        found = _FLOW_KEY.match(self.text, self.at)
        tight = _TIGHT_KEY.match(self.text, self.at) if found is None else None
        if tight and plain_name(tight.group(1)) in {plain_name(name) for name in shape.fields}:
            found = tight
        if found is None:
            start = self.at
            self._scalar(Shape("text"), name, until)
            held[self.text[start : self.at].strip()] = None
            return
        key = key_of(f"{found.group(1).strip()}: ", shape)
        field = key.meant if key else found.group(1).strip()
        typed = key.typed if key else field
        inner = shape.fields.get(field) or shape.each or ANY
        if key and typed != field:
            self.changed(typed, field, self.at)
        if field in held:
            raise _Deep
        self.placed((*path, field), self.at)
        self.at = found.end()
        held[field] = self._field_value(inner, shape, field, (*path, field), depth, until)

    def _field_value(
        self,
        inner: Shape,
        around: Shape,
        field: str,
        path: tuple[str | int, ...],
        depth: int,
        until: str,
    ) -> Any:
        """The value of a field; a comma that no field follows belongs to a text."""
        start = self.at
        value = self.value(inner, field, path, depth + 1, until)
        if inner.takes != "text" or not isinstance(value, str):
            return value
        while self.text[self.at : self.at + 1] == ",":
            following = _FLOW_KEY.match(self.text, self.at + 1)
            closes = not self.text[self.at + 1 :].strip(" \n}")
            if closes or (following and key_of(f"{following.group(1).strip()}: ", around)):
                known = following and key_of(f"{following.group(1).strip()}: ", around)
                if closes or (known and (known.known or around.takes == "names")):
                    break
            self.at += 1
            self._scalar(Shape("text"), field, until)
            value = " ".join(self.text[start : self.at].split())
            self.changed("", value, start)
        return value

    def _scalar(self, shape: Shape, name: str, until: str) -> Any:
        start = self.at
        sign = self.text[start : start + 1]
        if sign in ('"', "'") and (end := quoted_end(self.text, start)):
            after = _SPACE.match(self.text, end).end()  # type: ignore[union-attr]
            if after >= len(self.text) or self.text[after] in f"{until}]}}":
                self.at = after
                words = unquoted(self.text[start:end])
                if words is not None:
                    return self._meant(words, shape, name, start, quoted=True)
        self.at = self._end_of_words(start, until)
        words = " ".join(self.text[start : self.at].split())
        return self._meant(words, shape, name, start, quoted=False)

    def _end_of_words(self, start: int, until: str) -> int:
        depth, at = 0, start
        while at < len(self.text):
            sign = self.text[at]
            if not depth and (sign in until or (sign in "]}" and until)):
                break
            depth += (sign in "[{(") - (sign in "]})" and depth > 0)
            at += 1
        else:
            # a bracket inside the words is never closed: they end at the first sign that may
            if depth and until:
                ends = [e for e in (self.text.find(s, start) for s in until) if e >= 0]
                return min(ends, default=at)
        return at

    def _meant(self, words: str, shape: Shape, name: str, at: int, *, quoted: bool) -> Any:
        value = meant(words, shape, name, quoted=quoted)
        if (isinstance(value, str) and value != words) or _made(words, value):
            self.changed(words, value, at)
        return value

    def _more(self, closer: str) -> bool:
        self._space()
        if self.at >= len(self.text):
            self.closed = False
            return False
        if self.text[self.at] in "]})" and self.text[self.at] == closer:
            self.at += 1
            return False
        return True

    def _comma(self, sign: str = ",") -> None:
        self._space()
        if self.text[self.at : self.at + 1] == sign:
            self.at += 1

    def _semicolons(self, closer: str) -> bool:
        """Whether a semicolon stands between two texts of the list that was just opened.

        Where one begins with a quotation mark, somebody parts them as YAML does, by commas.
        """
        at, found = self.at, ","
        while found == ",":
            at = _SPACE.match(self.text, at).end()  # type: ignore[union-attr]
            if self.text[at : at + 1] in ('"', "'"):
                return False
            at = self._end_of_words(at, f",;{closer}")
            found, at = self.text[at : at + 1], at + 1
        return found == ";"

    def _space(self) -> None:
        self.at = _SPACE.match(self.text, self.at).end()  # type: ignore[union-attr]


def _made(words: str, value: Any) -> bool:
    """Whether a number or a yes was made of other words than it has."""
    if isinstance(value, bool) or value is None:
        return isinstance(value, bool) and words not in ("true", "false")
    return isinstance(value, int) and str(value) != words.lstrip("+")
