"""The lines of a text one after another, and the fields and lists that are still open."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.shape import Shape
from build_tools.source.typed.lines import TAB, Key, Line, bullet, key_of, lines_of
from build_tools.source.typed.what_was_read import Reading


@dataclass(slots=True)
class Open:
    """Fields, or a list, being read: set in by `indent`, inside of what is set in by `above`."""

    shape: Shape
    above: int
    indent: int
    lists: bool = False
    item: bool = False
    first: str = ""
    astray: bool = False
    """Whether the hyphen in front of it was told to be set in otherwise, so that it does not tell
    how far in its fields are."""
    restarted: bool = False
    """Whether its first field came again: most likely a hyphen is missing there."""
    data: dict[str, Any] = field(default_factory=dict)

    def wants(self, key: Key) -> bool:
        """Whether it knows the field of this very name and has none yet."""
        return not self.lists and key.typed in self.shape.fields and key.typed not in self.data


class Cursor:
    """Reads line by line; remarks and empty lines are kept for the field that follows them."""

    def __init__(self, text: str, first_line: int, made: Reading, tab: int = TAB) -> None:
        self.lines = lines_of(text, first_line, tab)
        self.made = made
        self.at = 0
        self.open: list[Open] = []
        self.next_is_item = False
        self._remarks: list[str] = []

    def peek(self) -> Line | None:
        """The next line that is neither empty nor a remark."""
        while self.at < len(self.lines):
            line = self.lines[self.at]
            if line.text and not line.text.startswith("#"):
                return line
            self._remarks.append(line.text)
            self.at += 1
        return None

    def peek_indent(self) -> int:
        """How far the next line is set in."""
        line = self.peek()
        return line.indent if line else 0

    def take(self) -> None:
        """Go on to the line after the one that was looked at."""
        self.at += 1

    def put_back(self, line: Line) -> None:
        """Have `line`, the rest of the one that was taken, read as a line of its own."""
        self.at -= 1
        self.lines[self.at] = line

    def keep_remarks(self, path: FieldPath) -> None:
        """The remarks and empty lines since the last field stand above the field at `path`."""
        if self._remarks:
            self.made.before.setdefault(path, []).extend(self._remarks)
            self._remarks = []

    def starts_part(self, line: Line, shape: Shape) -> bool:
        """Whether a line with a hyphen starts a part of a list that is open, and is no field."""
        inner = bullet(line)
        own = key_of(line.text, shape)
        if inner is None or (own and own.known):
            return False
        lists = [held for held in self.open if held.lists and held.shape.takes == "fields"]
        return any((key := key_of(inner.text, o.shape)) and key.known for o in lists)

    def belongs(self, line: Line, key: Key | None, here: Open) -> bool:
        """Whether a line is one of the fields `here`, by its name first and by its indent next."""
        if self.next_is_item:
            here.item, self.next_is_item = True, False
        if line.indent <= here.above:
            # set in too little: it is taken where only these fields know its name
            return key is not None and here.wants(key) and not self._wanted_around(key)
        if key is not None and here.wants(key):
            return line.indent <= here.indent or not self._nearer(line, key)
        if line.indent == here.indent:
            return True
        return not (key and self._nearer(line, key))

    def _wanted_around(self, key: Key) -> bool:
        return any(key.typed in o.shape.fields and not o.lists for o in self.open[:-1])

    def _nearer(self, line: Line, key: Key) -> bool:
        """Whether fields around these want it and are set in nearly as it is."""
        return any(o.wants(key) and abs(o.indent - line.indent) <= 1 for o in self.open[:-1])

    def lacks_colon(self, line: Line) -> str:
        """The field whose name starts a line with no colon after it, if open fields want it."""
        words = line.text.split()
        for held in reversed(self.open):
            for name in ("_".join(words[:n]) for n in (3, 2, 1)):
                if not held.lists and name in held.shape.fields and name not in held.data:
                    return name
        return ""

    def starts_field(self, line: Line, indent: int) -> bool:
        """Whether a line below a text, set in further than its field, is a field of its own."""
        one_too_far = line.indent == indent + 1
        for held in reversed(self.open):
            if held.lists:
                continue
            key = key_of(line.text, held.shape)
            if key is None or not key.known or key.meant in held.data:
                continue
            if held.shape.takes != "fields":
                continue
            if key.typed == key.meant or one_too_far:
                return True
        return False
