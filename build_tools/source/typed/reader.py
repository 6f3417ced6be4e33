"""Fields read line by line, by the shape of the file.

A text is the rest of its line, whatever that holds, and the lines below it that are set in. A line
belongs to the innermost fields that know its name; how far it is set in decides only between
places that both could take it. Nothing here raises for what was typed.
"""

from __future__ import annotations

import re
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.shape import ANY, Shape
from build_tools.source.said_once.in_one_line import in_one_text, parts_of
from build_tools.source.scalars import MOST_DEPTH, MOST_ENTRIES
from build_tools.source.typed.cursor import Cursor, Open
from build_tools.source.typed.hyphens import Hyphens
from build_tools.source.typed.lines import Key, Line, bullet, key_of, like_a_name, plain_bullet
from build_tools.source.typed.plain_texts import TextReader
from build_tools.source.typed.short_values import ShortReader
from build_tools.source.typed.tabs import read_by_its_tabs
from build_tools.source.typed.what_was_read import Reading, shown


def read_typed(text: str, first_line: int, shape: Shape, *, yaml_reads: bool = False) -> Reading:
    """Read the fields in `text`, the first line of which is `first_line` of its file.

    Where `yaml_reads` the whole of it, a quotation mark that opens a text is sure to be closed.
    """

    def with_tabs_of(columns: int) -> Reading:
        reader = _Reader(text, first_line, columns, yaml_reads=yaml_reads)
        reader.read(shape)
        return reader.made

    return read_by_its_tabs(text, first_line, with_tabs_of)


class _Reader:
    def __init__(self, text: str, first_line: int, tab: int, *, yaml_reads: bool) -> None:
        self.made = Reading()
        self.made.places[()] = (first_line, 1)
        self.cursor = Cursor(text, first_line, self.made, tab)
        self.texts = TextReader(self.cursor, self.made, marks_close=yaml_reads)
        self.short = ShortReader(self.cursor, self.made)
        self.astray = False  # whether the hyphen of the part that is read stands astray

    def read(self, shape: Shape) -> None:
        line = self.cursor.peek()
        if line is not None and shape.takes == "list":
            self.made.data = self._list(shape.each or ANY, -1, (), "")
        elif line is not None:
            self.made.data = self._fields(shape, -1, ())
        while (line := self.cursor.peek()) is not None:
            self._not_read(line)
        self.cursor.keep_remarks(())

    # fields

    def _fields(self, shape: Shape, above: int, path: FieldPath) -> dict[str, Any]:
        """The fields that start at the next line, set in by more than `above`."""
        here = Open(shape, above, self.cursor.peek_indent(), astray=self.astray)
        self.astray = False
        self.cursor.open.append(here)
        while (line := self.cursor.peek()) is not None:
            if bullet(line) and not key_of(line.text, shape) and self._starts_a_list(line, here):
                break
            if self.cursor.starts_part(line, shape):
                break
            key = key_of(line.text, shape)
            if not self.cursor.belongs(line, key, here):
                break
            if key is None or not (key.known or like_a_name(key.typed)):
                self._not_read(line)
                continue
            self._entry(line, key, here, path)
        self.cursor.open.pop()
        return here.data

    def _starts_a_list(self, line: Line, here: Open) -> bool:
        return line.indent <= here.above or any(o.lists for o in self.cursor.open[:-1])

    def _entry(self, line: Line, key: Key, here: Open, path: FieldPath) -> None:
        """Read one field."""
        cursor, made = self.cursor, self.made
        inside = (*path, key.meant)
        inner = here.shape.fields.get(key.meant) or here.shape.each or ANY
        if key.meant in here.data:
            self._again(line, key, here, inside)
            cursor.take()
            # a place of its own, so that no remark in it takes that of another
            apart = (*path, f"\0{len(made.aside)}")
            made.aside.append({key.typed: self._value(inner, line, key, apart)})
            return
        if len(here.data) >= MOST_ENTRIES:
            made.fault("broken-yaml", line.number, line.indent + 1, *_TOO_MANY)
        cursor.keep_remarks(inside)
        made.places[inside] = (line.number, line.indent + 1)
        if key.typed != key.meant:
            made.guess(
                line.number, line.indent + 1, f"`{shown(key.typed)}` is read as `{key.meant}`"
            )
        if here.astray and here.first:
            here.indent, here.astray = line.indent, False  # its hyphen was told of
        elif line.indent != here.indent and not line.loose:
            made.guess(line.number, line.indent + 1,
                       f"`{key.meant}` is read as standing below `{here.first}`, though it is set "
                       "in otherwise")  # fmt: skip
        here.first = here.first or key.meant
        here.data[key.meant] = None
        cursor.take()
        here.data[key.meant] = self._value(inner, line, key, inside)

    def _again(self, line: Line, key: Key, here: Open, inside: FieldPath) -> None:
        first = self.made.places[inside][0]
        if here.restarted:
            return  # the hyphen that is missing above has been told
        if here.item and key.meant == here.first:
            here.restarted = True
            help_ = (
                "if a new part of the list starts here, write a hyphen and a space in front of "
                f"`{key.meant}`; if not, put what both say into one"
            )
        else:
            help_ = "put what both say into one of them"
        self.made.fault(
            "repeated-field", line.number, line.indent + 1,
            f"`{shown(key.meant)}` stands here a second time; the first is on line {first}", help_,
        )  # fmt: skip

    def _not_read(self, line: Line) -> None:
        """A line that fits nowhere: it is told of, and left where it is."""
        lacking = self.cursor.lacks_colon(line)
        self.cursor.take()
        key = key_of(line.text, ANY)
        message = f"the line “{shown(line.text)}” stands where the name of a field is wanted"
        help_ = (
            "if it goes on with the text above, set it in further than that; if it is a line of a "
            "list, start it with a hyphen and a space; if it is a remark of yours, with #"
        )
        if lacking:
            help_ = f"put a colon after `{lacking}`, if that is the field you mean; else set the "
            help_ += "line in further than the text above it"
        elif line.text[0] in "{[":
            help_ = "start the line with a hyphen and a space, if it is a line of the list above it"
        elif self.cursor.open[-1].shape.takes == "names" and (meant := _named_line(line.text)):
            help_ = f"write it as `{shown(meant)}`"
        elif key is not None:
            message = f"“{shown(key.typed)}” is too long for the name of a field"
        self.made.fault("broken-yaml", line.number, line.indent + 1, message, help_)

    # values

    def _value(self, shape: Shape, line: Line, key: Key, path: FieldPath) -> Any:
        rest = line.inside(key.column)
        if len(path) > MOST_DEPTH:
            self.made.fault("broken-yaml", line.number, line.indent + 1, *_TOO_DEEP)
            return rest.text
        marked = shape.takes == "any" and rest.text[:1] in ("|", ">", '"', "'")
        if shape.takes == "text" or marked:
            return self.texts.read(rest, line.indent, path)
        if in_one_text(shape, key.meant) and rest.text[:1] not in ("", "#", "[", "{", "("):
            words = self.texts.read(rest, line.indent, path)
            parts = parts_of(words or "", shape.each or ANY, key.meant)
            parts = parts or self.short.options(words or "", rest, path, key.meant)
            return words if parts is None else parts
        if rest.text and not rest.text.startswith("#"):
            return self.short.read(shape, rest, line.indent, path, key.meant)
        if rest.text:
            self.made.beside[path] = rest.text
        below = self.cursor.peek()
        if below is None:
            return None
        if shape.takes == "list" or (shape.takes == "any" and bullet(below)):
            starts = bullet(below, numbers=True) is not None
            if below.indent >= line.indent if starts else below.indent > line.indent:
                return self._list(shape.each or ANY, line.indent, path, key.meant)
            return None
        if below.indent <= line.indent and not (below.loose and shape.takes == "fields"):
            return None
        if shape.takes in ("fields", "names"):
            if bullet(below) and not key_of(below.text, shape):
                # a list where fields are wanted: the schema says so
                return self._list(ANY, line.indent, path, key.meant)
            found = self._fields(shape, line.indent, path)
            return found or None
        if shape.takes == "any" and key_of(below.text, ANY):
            return self._fields(ANY, line.indent, path)
        return self.short.below(shape, line.indent, path, key.meant)

    # lists

    def _list(self, each: Shape, above: int, path: FieldPath, name: str) -> list[Any]:
        """The lines of a list, each starting with a mark at `above` or further in."""
        held: list[Any] = []
        starts, hyphens = above, Hyphens(each, above, name)
        self.cursor.open.append(Open(each, above, above, lists=True))
        while (line := self.cursor.peek()) is not None:
            inner = bullet(line, numbers=each.takes != "fields")
            if inner is None or line.indent < above or self._of_another(inner, each):
                lines = (each.takes == "text" and not held) or _is_row(line, each)
                again = self._starts_again(line, each, held, starts)
                if held and isinstance(held[-1], str):
                    again = again or self.texts.starts_a_line(line, starts, held[-1])
                if inner is not None or not (lines or again) or line.indent <= above - again:
                    break
                inner = line
                self.made.guess(line.number, line.indent + 1, f"this is read as a line of `{name}`")
            elif not plain_bullet(line):
                self.made.guess(line.number, line.indent + 1, f"this is read as a line of `{name}`")
            if len(held) >= MOST_ENTRIES:
                self.made.fault("broken-yaml", line.number, line.indent + 1, *_TOO_MANY)
                break
            inside = (*path, len(held))
            self.cursor.keep_remarks(inside)
            self.made.places[inside] = (line.number, inner.indent + 1)
            if each.takes == "fields":
                line, self.astray = hyphens.as_the_others(line, self.cursor, self.made)
            starts = line.indent
            held.append(self._item(each, line, inner, inside, name))
        self.cursor.open.pop()
        return held

    def _starts_again(self, line: Line, each: Shape, held: list[Any], starts: int) -> bool:
        """Whether a line without its hyphen is the next part of a list of fields.

        It names the field that the part above it starts with, where the hyphens stand, and
        nothing further out knows that name.
        """
        if each.takes != "fields" or not held or not isinstance(held[-1], dict):
            return False
        key = key_of(line.text, each)
        first = next(iter(held[-1]), None)
        around = [o.shape.fields for o in self.cursor.open[:-1]]
        return (
            key is not None
            and key.meant == first
            and line.indent == starts
            and not any(key.meant in fields for fields in around)
        )

    def _of_another(self, inner: Line, each: Shape) -> bool:
        """Whether a line starts a part of a list further out, whose fields know its name."""
        if each.takes != "fields":
            return False
        key = key_of(inner.text, each)
        if key is None or key.known:
            return False
        outer = [o for o in self.cursor.open[:-1] if o.lists]
        return any((k := key_of(inner.text, o.shape)) and k.known for o in outer)

    def _item(self, each: Shape, line: Line, inner: Line, path: FieldPath, name: str) -> Any:
        self.cursor.take()
        if each.takes == "text":
            return self.texts.read(inner, line.indent, path)
        if not inner.text:
            below = self.cursor.peek()
            if below is None or below.indent <= line.indent:
                return None
            return self._fields(each, line.indent, path)
        key = key_of(inner.text, each)
        bracket = inner.text[0] in "[{"
        if key and not bracket and (each.takes == "fields" or (each.takes == "any")):
            self.cursor.put_back(inner)
            return self._item_fields(each, line.indent, path)
        return self.short.read(each, inner, line.indent, path, name)

    def _item_fields(self, each: Shape, above: int, path: FieldPath) -> dict[str, Any]:
        self.cursor.next_is_item = True
        return self._fields(each, above, path)


def _named_line(text: str) -> str:
    """A line of names and texts that has a hyphen before its name, or a dash for its colon."""
    bare = re.sub(r"^[-*•] +", "", text)
    if bare != text and ": " in bare:
        return bare
    found = re.fullmatch(r"(?:[-*•] +)?([^\W\d_][\w’' ]{0,39}?)\s+[-–—]\s+(.+)", text)
    return f"{found[1]}: {found[2]}" if found else ""


def _is_row(line: Line, each: Shape) -> bool:
    """Whether a line without its hyphen is a row of moves, or fields between braces."""
    if each.takes != "fields":
        return False
    row = "|" in line.text or "\t" in line.text
    return line.text.startswith("{") or ("travel" in each.fields and row)


_TOO_DEEP = (
    f"fields stand inside one another more than {MOST_DEPTH} deep here",
    "look for an unclosed bracket or for lines that are indented too far",
)
_TOO_MANY = (
    f"these are more than {MOST_ENTRIES} lines of one list, or fields",
    "check that this is the right file, and shorten the list",
)
