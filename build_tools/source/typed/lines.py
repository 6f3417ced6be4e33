"""One line as it was typed: its indent, whether it is a line of a list, and its field's name."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import lru_cache

from build_tools.shapes.shape import Shape

TAB = 2
"""Columns of a tab: as many as a hyphen and its space, so that tabs count as levels."""
_BULLET = re.compile(r"(?:[-•·‣▪◦●○–—➢→✓✔∙⁃]|\*)\s+")
_BARE_BULLET = re.compile(r"(?:[•·‣▪◦●○–—➢✓✔∙⁃]|-(?![-\s\d])|\*(?=\w)(?!.*\*))(?=\S)")
_LONE_BULLET = re.compile(r"[-•·‣▪◦●○–—➢∙⁃*]$")
_NUMBERED = re.compile(r"\d{1,2}[.)]\s+(?=\S)")
_QUOTED_KEY = re.compile(r"""(?:"([^"\n]{1,80})"|'((?:[^'\n]|''){1,80})')\s*:(?:\s+|$)""")
_MARKED_KEY = re.compile(r"([*_`“”]{1,2})([^:*_`“”]{1,60}?)\s*(?::\1|\1\s*[:：])(?:\s+|$)")
_KEY = re.compile(r"([^:\s][^:：]{0,79}?)\s*(?::(?=\s|$)|：)\s*")
_TIGHT_KEY = re.compile(r"([A-Za-z][\w -]{0,39}):(?=\S)")
_LIKE_A_NAME = re.compile(r"[^\W\d_][\w'’-]*(?: [\w'’-]+){0,2}\Z")


@dataclass(frozen=True, slots=True)
class Line:
    """A line of `text` without its indent, in columns; `loose` where a tab is part of that."""

    number: int
    indent: int
    loose: bool
    text: str
    raw: str

    def inside(self, skipped: int) -> Line:
        """What stands after `skipped` letters of the line, as a line of its own."""
        rest = self.text[skipped:]
        return replace(self, indent=self.indent + skipped, text=rest.strip())


@dataclass(frozen=True, slots=True)
class Key:
    """A field's name at the start of a line, as it is `meant` and as it was typed."""

    meant: str
    typed: str
    rest: str
    column: int
    """How many letters of the line stand before `rest`."""
    known: bool


def lines_of(text: str, first_line: int, tab: int = TAB) -> list[Line]:
    """Each line of `text`, the first of them `first_line` in its file; a tab has `tab` columns."""
    return [_line(raw, n, tab) for n, raw in enumerate(text.split("\n"), start=first_line)]


def _line(raw: str, number: int, tab: int) -> Line:
    bare = raw.lstrip()
    margin = raw[: len(raw) - len(bare)]
    indent = 0
    for sign in margin:
        indent = (indent // tab + 1) * tab if sign == "\t" else indent + 1
    return Line(number, indent, "\t" in margin, bare.rstrip(), raw)


def bullet(line: Line, *, numbers: bool = False) -> Line | None:
    """What stands after the mark of a list line; None where it is none."""
    found = _BULLET.match(line.text) or _BARE_BULLET.match(line.text)
    found = found or _LONE_BULLET.match(line.text)
    if found is None and numbers:
        found = _NUMBERED.match(line.text)
    return line.inside(found.end()) if found else None


def plain_bullet(line: Line) -> bool:
    """Whether a list line starts as YAML has it."""
    return line.text == "-" or line.text.startswith("- ")


def key_of(text: str, shape: Shape) -> Key | None:
    """The field's name that `text` starts with, read by what `shape` knows."""
    if quoted := _QUOTED_KEY.match(text):
        name = quoted.group(1) or (quoted.group(2) or "").replace("''", "'")
        return _key(name, quoted.end(), text, shape)
    if marked := _MARKED_KEY.match(text):
        found = _key(marked.group(2), marked.end(), text, shape)
        return found if found.known else None
    if plain := _KEY.match(text):
        found = _key(plain.group(1), plain.end(), text, shape)
        if found.known or shape.takes == "names" or "：" not in plain.group():
            return found
    if tight := _TIGHT_KEY.match(text):
        found = _key(tight.group(1), tight.end(), text, shape)
        return found if found.known and shape.takes == "fields" else None
    return None


def _key(name: str, column: int, text: str, shape: Shape) -> Key:
    meant, known = _resolved(name, shape)
    return Key(meant, name, text[column:], column, known)


def _resolved(name: str, shape: Shape) -> tuple[str, bool]:
    if shape.takes == "fields":
        if name in shape.fields:
            return name, True
        plain = plain_name(name)
        for field in shape.fields:
            if plain_name(field) == plain:
                return field, True
        return name, False
    if shape.takes == "names":
        marked = name.replace("’", "'").replace("′", "'") if len(name) <= 2 else name
        if re.search(shape.pattern, marked):
            return marked, True
        hyphened = re.sub(r"[\s_-]+", "-", name.strip().lower())
        if re.search(shape.pattern, hyphened) and "-" in shape.pattern:
            return hyphened, True
    return name, False


@lru_cache(maxsize=1024)
def plain_name(name: str) -> str:
    """A name in small letters, with spaces for what parts its words."""
    return " ".join(re.split(r"[\s_-]+", name.strip().casefold()))


def like_a_name(text: str) -> bool:
    """Whether `text` could be meant as the name of a field: a word, or two or three."""
    return bool(_LIKE_A_NAME.match(text))
