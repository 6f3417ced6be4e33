"""Texts as they were typed: the rest of the line, and the lines below that are set in."""

from __future__ import annotations

import re

from build_tools.problem import Fault, FieldPath
from build_tools.shapes.shape import ANY
from build_tools.source.scalars import plain_letters
from build_tools.source.typed.cursor import Cursor
from build_tools.source.typed.lines import Line, bullet, key_of
from build_tools.source.typed.quotes import (
    needs_marks,
    quoted_end,
    stray_mark,
    unquoted,
    within_curly,
)
from build_tools.source.typed.what_was_read import Reading
from build_tools.source.yaml_reader import read_yaml

_BLOCK = re.compile(r"[|>](?:[-+]?[1-9]?|[1-9][-+])(?:\s+#.*)?\Z")
MOST_QUOTED_LINES = 60
_REMARK = re.compile(r"\s+#")
_MARKS_NOT_SHOWN = (
    "the quotation marks round this text are not shown; where pupils say it, write “ and ” round it"
)


class TextReader:
    """Reads what stands in a place for text."""

    def __init__(self, cursor: Cursor, made: Reading, *, marks_close: bool) -> None:
        self.cursor, self.made, self.marks_close = cursor, made, marks_close

    def read(self, rest: Line, above: int, path: FieldPath) -> str | None:
        """The text that starts with `rest`; its further lines are set in by more than `above`."""
        text = self._read(rest, above, path)
        ends = self.cursor.lines[self.cursor.at - 1].number
        self.made.texts[path] = (rest.number, rest.indent, ends)
        return text

    def _read(self, rest: Line, above: int, path: FieldPath) -> str | None:
        if _BLOCK.match(rest.text) and (block := self._block(rest, above, path)) is not None:
            return block
        if rest.text[:1] in ('"', "'") and (quoted := self._quoted(rest, above, path)) is not None:
            return quoted
        parts = [rest.text] if rest.text else []
        while (line := self._further(above, started=bool(parts))) is not None:
            if parts and self.starts_a_line(line, above, parts[-1]):
                break
            if line.indent <= above:
                self._told(line, "this line is read as the end of the text above it", path)
            empty = self._skip_empty()
            self.cursor.take()
            parts.append("\n" * empty + line.text if parts else line.text)
        if not parts:
            return None
        text = parts[0]
        for part in parts[1:]:
            text += part if part.startswith("\n") else f" {part}"
        return plain_letters(self._without_marks(text, rest, path))

    def starts_a_line(self, line: Line, starts: int, before: str) -> bool:
        """Whether a line is the next text of a list, whose hyphens stand at `starts`.

        The text before it is a whole sentence, and it starts another just below the hyphens.
        """
        held = self.cursor.open[-1]
        return (
            held.lists
            and held.shape.takes == "text"
            and line.indent == starts
            and before.rstrip("\"'”’)")[-1:] in (".", "!", "?")
            and line.text[:1].isupper()
        )

    def _without_marks(self, text: str, rest: Line, path: FieldPath) -> str:
        """The text without marks that stand round it as a whole, or open it and never close."""
        inner = within_curly(text)
        if inner is not None and needs_marks(inner):
            self._told(rest, "the curly marks round this text are read as quotation marks", path)
            return inner
        stray = stray_mark(text)
        if stray is not None:
            self._told(rest, "this text is read without the quotation mark that never closes", path)
            return stray
        return text

    def _told(self, rest: Line, message: str, path: FieldPath) -> None:
        self.made.guess(rest.number, rest.indent + 1, message, path)

    def _skip_empty(self) -> int:
        """Go past the empty lines before a further line of a text; how many."""
        before = self.cursor.at
        while not self.cursor.lines[self.cursor.at].text:
            self.cursor.at += 1
        return self.cursor.at - before

    def _further(self, above: int, *, started: bool) -> Line | None:
        """The next line that goes on with a text, past empty ones; None where none does."""
        at = self.cursor.at
        lines = self.cursor.lines
        while at < len(lines) and not lines[at].text:
            at += 1
        if at >= len(lines):
            return None
        line = lines[at]
        if line.text.startswith("#"):
            return None
        if line.indent <= above:
            return line if started and at == self.cursor.at and self._runs_on(line) else None
        inner = bullet(line)
        listed = inner is not None and any(o.lists for o in self.cursor.open[-1:])
        if listed or (inner is not None and (not started or self._starts_part(inner))):
            return None
        return None if self.cursor.starts_field(line, above) else line

    def _runs_on(self, line: Line) -> bool:
        """Whether a line that is not set in can only be the end of the text above it."""
        starts_as_words = line.text[0].isalpha() or line.text[0] in "“‘"
        if not starts_as_words or bullet(line) or key_of(line.text, ANY):
            return False
        around = self.cursor.open
        known = any((k := key_of(line.text, o.shape)) and k.known for o in around if not o.lists)
        return not known and not self.cursor.lacks_colon(line)

    def _starts_part(self, inner: Line) -> bool:
        around = [o for o in self.cursor.open if o.lists and o.shape.takes == "fields"]
        return any((k := key_of(inner.text, o.shape)) is not None and k.known for o in around)

    def _block(self, rest: Line, above: int, path: FieldPath) -> str | None:
        """A text below a bar or a greater-than sign, as YAML has it."""
        lines, end = self.cursor.lines, self.cursor.at
        while end < len(lines) and (not lines[end].text or lines[end].indent > above):
            end += 1
        taken = lines[self.cursor.at : end]
        if not any(line.text for line in taken):
            return None
        body = "\n".join(_with_spaces(line, above) for line in taken)
        found = read_yaml(f"a: {rest.text}\n{body}\n")
        if isinstance(found, Fault) or not isinstance(found[0], dict):
            return None
        while taken and not taken[-1].text:
            taken.pop()
            end -= 1
        self.cursor.at = end
        if remark := _REMARK.search(rest.text):
            self.made.beside[path] = rest.text[remark.start() :].strip()
        return str(found[0]["a"])

    def _quoted(self, rest: Line, above: int, path: FieldPath) -> str | None:
        """A text in quotation marks, which may go on below, set in or not (YAML 1.2.2, 7.3.1)."""
        text, at = rest.text, self.cursor.at
        while not (end := quoted_end(text, 0)):
            lines = self.cursor.lines
            over = at >= len(lines) or at - self.cursor.at > MOST_QUOTED_LINES
            if over or not self._within_marks(lines[at], above):
                return None
            text += f"\n {lines[at].text}" if lines[at].text else "\n"
            at += 1
        after = text[end:]
        if after.strip() and not _REMARK.match(after):
            return None
        words = unquoted(text[:end])
        if words is None:
            self._unreadable(text[:end], rest)
            return None
        if after.strip():
            self.made.beside[path] = after.strip()
        self.cursor.at = at
        plain = words == " ".join(words.split()) and not after.strip()
        # a line of a list is what somebody says; a field's value in marks is a habit of writing
        if words and plain and isinstance(path[-1], int) and not needs_marks(words):
            self._told(rest, _MARKS_NOT_SHOWN, path)
        return words

    def _within_marks(self, line: Line, above: int) -> bool:
        """Whether a line may be more of a text whose quotation mark is still open."""
        if not line.text or line.indent > above or self.marks_close:
            return True
        return self._runs_on(line)

    def _unreadable(self, text: str, rest: Line) -> None:
        found = read_yaml(text, rest.number)
        if isinstance(found, Fault) and found.rule == "hidden-character":
            self.made.faults.append(found)


def _with_spaces(line: Line, above: int) -> str:
    """A line as it was typed, its indent in spaces, inside of a field at the margin."""
    if not line.text:
        return ""
    tail = line.raw.lstrip()
    return " " * (line.indent - max(above, 0)) + tail
