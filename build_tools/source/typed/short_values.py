"""Values that stand on one line: words, numbers, and lists with or without their brackets."""

from __future__ import annotations

import re
from typing import Any

from build_tools.problem import Fault, FieldPath
from build_tools.shapes.shape import ANY, Shape
from build_tools.source.said_once.in_one_line import plainly
from build_tools.source.typed.cursor import Cursor
from build_tools.source.typed.flow import balanced, read_flow
from build_tools.source.typed.lines import Line
from build_tools.source.typed.quotes import quoted_end, unquoted
from build_tools.source.typed.said_plainly import OPTIONS, options_said
from build_tools.source.typed.values import as_written, meant
from build_tools.source.typed.what_was_read import Reading, shown
from build_tools.source.yaml_reader import read_yaml

MOST_FLOW_LINES = 60
_REMARK = re.compile(r"(?:^|\s)#.*\Z", re.DOTALL)
_BETWEEN = re.compile(r"\s*[,;/&+]\s*|\s+and\s+|\s*\band\b\s*(?=[A-Z0-9])")
_SPAN = re.compile(
    r"(?:years? ?|y)?(\d{1,2})\s*(?:-|–|—|to)\s*(?:year ?|y)?(\d{1,2})\Z", re.IGNORECASE
)
_NATION = re.compile(r"(England|Wales|Scotland|Northern Ireland)\b[\s:,]*(.+)\Z", re.IGNORECASE)
_MOST_SPAN = 10


class ShortReader:
    """Reads what stands in a place for anything but text or fields of its own."""

    def __init__(self, cursor: Cursor, made: Reading) -> None:
        self.cursor, self.made = cursor, made

    def read(self, shape: Shape, rest: Line, above: int, path: FieldPath, name: str) -> Any:
        """The value that starts with `rest`; further lines are set in by more than `above`."""
        if rest.text[0] in "[{" or (rest.text[0] == "(" and shape.takes == "list"):
            found = self._flow(shape, rest, above, path, name)
            if found is not None:
                return found[0]
        if shape.takes == "any":
            return self._as_yaml(rest, above, path)
        words, quoted = self._words(rest, path)
        if shape.takes in ("list", "fields", "names"):
            return self._listed(shape, words, rest, path, name)
        return self._meant(words, shape, rest, path, name, quoted=quoted)

    def below(self, shape: Shape, above: int, path: FieldPath, name: str) -> Any:
        """The value that stands on the line below its field, set in by more than `above`."""
        line = self.cursor.peek()
        assert line is not None
        self.cursor.take()
        return self.read(shape, line, above, path, name)

    def options(self, words: str, rest: Line, path: FieldPath, name: str) -> list[str] | None:
        """What pupils choose from, typed with commas; None for any other list."""
        found = options_said(words) if name == OPTIONS else None
        if found:
            said = f"“{shown(words)}” is read as {len(found)} options: {'; '.join(found)}"
            self.made.guess(rest.number, rest.indent + 1, said, path)
        return found

    def _words(self, rest: Line, path: FieldPath) -> tuple[str, bool]:
        text = rest.text
        if text[0] in "\"'" and (end := quoted_end(text, 0)):
            after = text[end:].strip()
            words = unquoted(text[:end])
            if words is not None and (not after or after.startswith("#")):
                if after:
                    self.made.beside[path] = after
                return words, True
        if remark := _REMARK.search(text):
            self.made.beside[path] = remark.group().strip()
            text = text[: remark.start()].rstrip()
        return text, False

    def _meant(
        self, words: str, shape: Shape, rest: Line, path: FieldPath, name: str, *, quoted: bool
    ) -> Any:
        value = meant(words, shape, name, quoted=quoted)
        written = as_written(words, quoted=quoted)
        if value != written or type(value) is not type(written):
            self._note(words, value, rest, path)
        return value

    def _note(self, words: str, value: Any, rest: Line, path: FieldPath) -> None:
        if said := read_as(words, value):
            self.made.guess(rest.number, rest.indent + 1, said, path)

    def _listed(self, shape: Shape, words: str, rest: Line, path: FieldPath, name: str) -> Any:
        """A list without brackets; what could be words of one text stays as it is."""
        each = shape.each or ANY
        if shape.takes != "list" or each.takes in ("list", "names", "any"):
            return as_written(words, quoted=False)
        if each.takes == "fields":
            return self._years(each, words, rest, path) or as_written(words, quoted=False)
        in_one = plainly(words, each, name)
        if in_one is not None:
            return in_one
        if each.takes == "text":
            if "," in words or ";" in words:
                return words
            self._note(words, [words], rest, path)
            return [words]
        parts = self._parts(words, each, name)
        self._note(words, parts, rest, path)
        return parts

    def _parts(self, words: str, each: Shape, name: str) -> list[Any]:
        if each.takes == "number" and (span := _SPAN.match(words)):
            first, last = map(int, span.groups())
            if first <= last < first + _MOST_SPAN:
                return list(range(first, last + 1))
        if each.takes == "word" and (one := meant(words, each, name)) in each.words:
            return [one]
        bare = re.sub(r"^(?:years?|y)\s+(?=\d)", "", words, flags=re.IGNORECASE)
        return [meant(part, each, name) for part in _BETWEEN.split(bare.strip("()")) if part]

    def _years(self, each: Shape, words: str, rest: Line, path: FieldPath) -> list[Any] | None:
        """School years with their nation in words, such as England 5 and 6."""
        numbers = each.fields.get("years")
        found = _NATION.match(words)
        if numbers is None or numbers.each is None or found is None:
            return None
        nation = meant(found.group(1), each.fields["nation"], "nation")
        value = [{"nation": nation, "years": self._parts(found.group(2), numbers.each, "years")}]
        self._note(words, words, rest, path)
        return value

    def _flow(
        self, shape: Shape, rest: Line, above: int, path: FieldPath, name: str
    ) -> tuple[Any] | None:
        """A value in brackets, over as many lines as they need; None where it is none."""
        lines, starts = [rest], [0]
        text = rest.text
        at = self.cursor.at
        while not balanced(text) and len(lines) < MOST_FLOW_LINES:
            if at >= len(self.cursor.lines):
                break
            line = self.cursor.lines[at]
            if line.text and line.indent <= above and line.text[0] not in "]})":
                break
            at += 1
            starts.append(len(text) + 1)
            lines.append(line)
            text += "\n" + ("" if line.text.startswith("#") else line.text)
        if not balanced(text):
            lines, starts, text, at = [rest], [0], rest.text, self.cursor.at
        return self._read_flow(shape, text, lines, starts, at, path, name)

    def _read_flow(
        self,
        shape: Shape,
        text: str,
        lines: list[Line],
        starts: list[int],
        end: int,
        path: FieldPath,
        name: str,
    ) -> tuple[Any] | None:
        found_places: dict[FieldPath, tuple[int, int]] = {}
        guesses: list[tuple[int, int, str]] = []

        def where(at: int) -> tuple[int, int]:
            number = max(n for n, start in enumerate(starts) if start <= at)
            return lines[number].number, lines[number].indent + at - starts[number] + 1

        def changed(words: str, value: Any, at: int) -> None:
            if said := read_as(words, value):
                guesses.append((*where(at), said))

        def placed(inner: FieldPath, at: int) -> None:
            found_places[(*path, *inner)] = where(at)

        found = read_flow(text, shape, name, changed, placed)
        if found is None:
            return None
        after = text[found.end :].strip()
        if after and not after.startswith("#"):
            return None
        if after:
            self.made.beside[path] = after
        self.made.places |= found_places
        remarks = [line.text for line in lines[1:] if line.text.startswith("#")]
        if remarks:
            self.made.before.setdefault(path, []).extend(remarks)
        for guess in guesses:
            self.made.guess(*guess, path)
        if not found.closed:
            line = rest_line = lines[0]
            self.made.guess(
                line.number, rest_line.indent + 1, "the bracket is read as closed here", path
            )
        if text[0] == "(":
            self._note(text, found.value, lines[0], path)
        self.cursor.at = end
        return (found.value,)

    def _as_yaml(self, rest: Line, above: int, path: FieldPath) -> Any:
        """What YAML makes of a value of which nothing is known; its words where it reads none."""
        found = read_yaml(rest.text)
        if isinstance(found, Fault):
            return rest.text
        value = found[0]
        marked = quoted_end(rest.text, 0) if rest.text[0] in "\"'" else 0
        if remark := _REMARK.search(rest.text, marked or 0):
            self.made.beside[path] = remark.group().strip()
        further = self.cursor.peek()
        while further is not None and further.indent > above and isinstance(value, str):
            self.cursor.take()
            value += f" {further.text}"
            further = self.cursor.peek()
        return value


def read_as(words: str, value: Any) -> str:
    """How something was read, in words; nothing where to the eye it is what was typed."""
    if isinstance(value, list):
        value = ", ".join(str(one) for one in value)
    said = {True: "yes", False: "no"}.get(value, value) if isinstance(value, bool) else value
    if not words:
        return f"this is read as one text: “{shown(str(said))}”"
    if " ".join(words.split()) == str(said):
        return ""
    return f"“{shown(words)}” is read as {shown(str(said))}"
