"""Where the parts of a YAML text stand, and small edits that leave every other letter alone."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

import yaml


@dataclass(frozen=True, slots=True, order=True)
class TextEdit:
    """What stands from `start` to `end` becomes `new`."""

    start: int
    end: int
    new: str


def with_edits(text: str, edits: Iterable[TextEdit]) -> str:
    """The text with the edits, which do not overlap."""
    for edit in sorted(edits, reverse=True):
        text = text[: edit.start] + edit.new + text[edit.end :]
    return text


class Part:
    """A map, a list or a value of the text, with where it stands."""

    def __init__(self, text: str, node: Any) -> None:
        self._text, self._node = text, node

    @classmethod
    def whole(cls, text: str) -> Part:
        """The whole text, which is sound YAML."""
        return cls(text, yaml.compose(text, Loader=yaml.CSafeLoader))

    @property
    def value(self) -> str:
        """What a plain value says."""
        return str(self._node.value)

    @property
    def start(self) -> int:
        """Where it starts."""
        return int(self._node.start_mark.index)

    @property
    def end(self) -> int:
        """Where its last value, or its closing bracket, ends."""
        if not self._is_block() or not self._node.value:
            return int(self._node.end_mark.index)
        last = self._node.value[-1]
        return Part(self._text, last[1] if isinstance(last, tuple) else last).end

    def fields(self) -> Iterator[tuple[str, Part, Part]]:
        """Each field of a map: its name, where the name stands, and its value."""
        for key, value in self._node.value:
            yield str(key.value), Part(self._text, key), Part(self._text, value)

    def field(self, name: str) -> Part | None:
        """The value of a field of a map; None where it is not written."""
        return next((value for key, _, value in self.fields() if key == name), None)

    def text_of(self, name: str) -> str | None:
        """What a field of a map says; None where it is not written or is no plain value."""
        found = self.field(name)
        return None if found is None or not found.is_scalar() else found.value

    def items(self) -> list[Part]:
        """The items of a list."""
        return [Part(self._text, one) for one in self._node.value]

    def data(self) -> Any:
        """What it holds as plain lists, maps and words."""
        if isinstance(self._node, yaml.MappingNode):
            return {name: value.data() for name, _, value in self.fields()}
        if isinstance(self._node, yaml.SequenceNode):
            return [item.data() for item in self.items()]
        return self.value

    def is_scalar(self) -> bool:
        """Whether it is a single value."""
        return isinstance(self._node, yaml.ScalarNode)

    def put_behind(self, name: str, written: str) -> TextEdit:
        """A field put into a map behind the field `name`, which is a plain value in it."""
        after = self.field(name)
        if after is None:
            raise ValueError(f"no field {name}")
        if not self._is_block():
            return TextEdit(after.end, after.end, f", {written}")
        line = _line_end(self._text, after.end)
        return TextEdit(line, line, f"{self._newline()}{self._indent()}{written}")

    def put_before(self, name: str, written: str) -> TextEdit:
        """A field put into a map before the field `name`."""
        at = next(key.start for one, key, _ in self.fields() if one == name)
        between = f"{self._newline()}{self._indent()}" if self._is_block() else ", "
        return TextEdit(at, at, f"{written}{between}")

    def take_out(self, index: int) -> TextEdit:
        """An item, not the first, taken out of a list, with the lines that it stands on."""
        items = self.items()
        if not self._is_block():
            return TextEdit(items[index - 1].end, items[index].end, "")
        start = self._text.rfind("\n", 0, items[index].start) + 1
        end = self._text.find("\n", items[index].end) + 1
        return TextEdit(start, end or len(self._text), "")

    def holds_a_comment(self, edit: TextEdit) -> bool:
        """Whether there may be a comment in what an edit takes out."""
        return "#" in self._text[edit.start : edit.end]

    def _is_block(self) -> bool:
        return not self.is_scalar() and not self._node.flow_style

    def _indent(self) -> str:
        return " " * int(self._node.start_mark.column)

    def _newline(self) -> str:
        return "\r\n" if "\r\n" in self._text else "\n"


def _line_end(text: str, at: int) -> int:
    """Where the line that `at` is on ends, before its break."""
    end = text.find("\n", at)
    end = len(text) if end < 0 else end
    return end - 1 if end > at and text[end - 1] == "\r" else end
