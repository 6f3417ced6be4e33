"""One file read: plain data, notes, and where every field stands."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any

from build_tools.problem import Fault, FieldPath, Grade, Problem
from build_tools.shapes.schemas import Kind, quick_validator
from build_tools.shapes.shape import Shape, shape_of
from build_tools.source.front_matter_split import split
from build_tools.source.prose import faults_in_body, faults_in_fields, starred_in
from build_tools.source.said_once.in_full import in_full
from build_tools.source.text import read_text
from build_tools.source.typed.reader import read_typed
from build_tools.source.typed.rows import Spread, spread
from build_tools.source.typed.what_was_read import READ_AS, Guess, Reading, shown
from build_tools.source.yaml_quickly import ODD, read_quickly
from build_tools.source.yaml_reader import Places, read_yaml


@dataclass(frozen=True, slots=True)
class Document:
    """A file's plain data and notes. `file` is relative to the content folder, with `/`.

    The fields start on `first_line`, the notes below them on `body_line`. `kind` is that of a file
    that was read by its schema, since YAML alone reads it otherwise or does not fit it.
    """

    file: str
    data: Any
    body: str
    yaml_text: str
    first_line: int
    body_line: int = 0
    kind: Kind | None = None
    guesses: tuple[Guess, ...] = ()
    """What was read as what it plainly is, though it was typed otherwise."""
    fitting: Any = None
    """The very data that was seen to fit its schema, if any was."""
    headed: frozenset[str] = frozenset()
    """The motifs whose first line names the columns of their rows, and is no move."""

    def locate(self, path: FieldPath) -> tuple[int, int]:
        """Line and column, from 1, of the field at `path`, or of the nearest field around it.

        `("notes", n)` is the nth line of the notes, from 0.
        """
        if self.body_line and path[:1] == (NOTES,):
            return self.body_line + int(path[1]), 1
        if path[:1] == ("motifs",) and len(path) > 3 and path[1] in self.headed:
            path = (*path[:3], int(path[3]) + 1, *path[4:])
        places = _places(self.yaml_text, self.first_line, self.kind)
        while path and path not in places:
            path = path[:-1]
        return places[path]

    def problem(
        self, rule: str, grade: Grade, path: FieldPath, message: str, help_: str
    ) -> Problem:
        """A problem of this file at the field at `path`."""
        line, column = self.locate(path)
        return Problem(self.file, line, column, rule, grade, message, help_)

    def read_as(self) -> list[Problem]:
        """A note for each thing that was read as what it plainly is, and for stars in a field."""
        read = [
            Problem(self.file, g.line, g.column, READ_AS, "note", g.message, _NOTHING_TO_MEND)
            for g in self.guesses
        ]
        starred = starred_in(self.data) if "*" in self.yaml_text else ()
        return read + [
            self.problem(
                READ_AS,
                "note",
                path,
                f"the stars round “{shown(words)}” {_AS_THEY_ARE}",
                _WITHOUT_STARS,
            )
            for path, words in starred
        ]


_NOTHING_TO_MEND = "nothing, if that is what you mean; `tidy` writes it so"
_AS_THEY_ARE = "are read as they are typed, and printed"
_WITHOUT_STARS = "write the words without stars; they make letters slope in the notes alone"
NOTES = "notes"
"""What stands below the fields; no field has this name."""


@lru_cache(maxsize=16)
def _places(yaml_text: str, first_line: int, kind: Kind | None) -> Places:
    """Places are found again when a problem needs them, so that a large bank stays small."""
    if kind is not None:
        return read_typed(yaml_text, first_line, shape_of(kind)).places
    result = read_yaml(yaml_text, first_line)
    return {(): (first_line, 1)} if isinstance(result, Fault) else result[1]


def read_again(document: Document, shape: Shape) -> Reading:
    """What was read of the fields line by line, with remarks and places, however it was read."""
    text, first = document.yaml_text, document.first_line
    return read_typed(text, first, shape, yaml_reads=document.kind is None)


def read_markdown(file: str, raw: bytes) -> Document | list[Problem]:
    """Read a Markdown file with fields at its top."""
    return _markdown(file, raw, _read_fields)


def read_strictly(file: str, raw: bytes) -> Document | list[Problem]:
    """Read a Markdown file as any program does, by YAML alone: so strangers' files are read.

    What this bank would read otherwise if it lay here is a problem: nobody looked at that.
    """
    return _markdown(file, raw, _read_as_yaml)


def _markdown(file: str, raw: bytes, fields: _FieldReader) -> Document | list[Problem]:
    text = read_text(raw)
    if isinstance(text, Fault):
        return [text.at(file)]
    halves = split(text)
    if isinstance(halves, Fault):
        return [halves.at(file)]
    read = fields(halves.fields, halves.first_line, file)
    body_faults = list(faults_in_body(halves.body, halves.body_line))
    if read.faults:
        return [fault.at(file) for fault in (*read.faults, *body_faults)]
    document = Document(
        file, read.data, halves.body, halves.fields, halves.first_line, halves.body_line,
        read.kind, read.guesses, read.fitting, read.headed,
    )  # fmt: skip
    return _without_html(document, [fault.at(file) for fault in body_faults])


def read_data(file: str, raw: bytes) -> Document | list[Problem]:
    """Read a file that is YAML throughout."""
    text = read_text(raw)
    if isinstance(text, Fault):
        return [text.at(file)]
    read = _read_fields(text, 1, file)
    if read.faults:
        return [fault.at(file) for fault in read.faults]
    document = Document(file, read.data, "", text, 1, 0, read.kind, read.guesses, read.fitting)
    return _without_html(document, [])


_KINDS: dict[str, Kind] = {
    "unit.md": "unit",
    "safety.md": "safety",
    "bank.yml": "bank",
    "topics.yml": "topics",
    "words.yml": "words",
    "near.yml": "near",
    "pictures.yml": "pictures",
    "taken-in.yml": "taken-in",
}
_LESSON = re.compile(r"lesson-[0-9]+\.md\Z")


def kind_of_file(file: str) -> Kind | None:
    """Which schema a file is for, by its name; None where the name is none of a bank's."""
    name = file.rpartition("/")[2]
    return "lesson" if _LESSON.match(name) else _KINDS.get(name)


@dataclass(frozen=True, slots=True)
class _Read:
    """Fields as they were read: plainly, or by the schema of `kind`."""

    data: Any
    faults: tuple[Fault, ...] = ()
    kind: Kind | None = None
    guesses: tuple[Guess, ...] = ()
    fitting: Any = None
    headed: frozenset[str] = frozenset()


_FieldReader = Callable[[str, int, str], _Read]


def _read_as_yaml(yaml_text: str, first_line: int, file: str) -> _Read:
    """What YAML says, or why nobody should rely on that."""
    kind = kind_of_file(file)
    result = read_yaml(yaml_text, first_line)
    if isinstance(result, Fault):
        return _Read(None, (result,))
    if kind is None:
        return _Read(result[0])
    plain = _meant(result[0], kind, file, yaml_text)
    fits = not plain.troubles and quick_validator(kind).is_valid(plain.data)
    if fits and _read_fields(yaml_text, first_line, file).kind is not None:
        return _Read(None, (Fault("broken-yaml", first_line, 1, _TWO_WAYS, _PACK_ANEW),))
    return _Read(plain.data, headed=plain.headed)


_TWO_WAYS = "other programs read other words in these fields than this bank does"
_PACK_ANEW = "ask whoever sent it to run `tidy` and to pack it again"


def _read_fields(yaml_text: str, first_line: int, file: str) -> _Read:
    """The plain data, or what prevents it.

    A file that YAML reads and that fits its schema means what YAML says. Only three things are
    looked at again: a number sign in a text, since YAML takes what follows for a remark; a list
    line that stands a space too far in, since YAML takes it for more of the line above; and a list
    in brackets with semicolons or brackets in its texts, since YAML parts these at every comma.
    """
    kind, quick = kind_of_file(file), read_quickly(yaml_text)
    if kind is None:
        if quick is not ODD:
            return _Read(quick)
        result = read_yaml(yaml_text, first_line)
        return _Read(None, (result,)) if isinstance(result, Fault) else _Read(result[0])
    plain = _meant(quick, kind, file, yaml_text)
    fits = quick is not ODD and not plain.troubles and quick_validator(kind).is_valid(plain.data)
    brackets = _BRACKETS.search(yaml_text) is not None
    joined = brackets or _JOINED.search(yaml_text) is not None
    if fits and not joined and not ("#" in yaml_text and _HASH.search(yaml_text)):
        return _Read(plain.data, fitting=plain.data, headed=plain.headed)
    made = read_typed(yaml_text, first_line, shape_of(kind))
    typed = _meant(made.data, kind, file, yaml_text)
    alike = joined or same_but_for_hashes(plain.data, typed.data)
    if fits and (made.faults or not alike or (brackets and typed.data == plain.data)):
        return _Read(plain.data, fitting=plain.data, headed=plain.headed)
    if quick is not ODD and made.faults and not plain.troubles:
        return _Read(plain.data, headed=plain.headed)  # the schema says what is out of place
    for trouble in typed.troubles:
        made.fault("broken-yaml", *made.places[trouble.path], trouble.message, trouble.help)
    faults = tuple(sorted(made.faults, key=lambda f: (f.line, f.column)))
    fitting = typed.data if not faults and quick_validator(kind).is_valid(typed.data) else None
    if fits and joined and fitting is None:
        return _Read(plain.data, fitting=plain.data, headed=plain.headed)
    return _Read(typed.data, faults, kind, tuple(made.guesses), fitting, typed.headed)


def _meant(data: Any, kind: Kind, file: str, yaml_text: str) -> Spread:
    """The data with its rows of moves as fields, and with all that follows from what is said."""
    rows = kind == "unit" and (" | " in yaml_text or "\t" in yaml_text)
    found = spread(data) if rows else Spread(data, frozenset(), ())
    return replace(found, data=in_full(found.data, kind, file))


_JOINED = re.compile(r"^( *)- .*[^\s:|>]\n\1 +- ", re.MULTILINE)
_BRACKETS = re.compile(r""":\s+\[(?!\s*["'])(?:[^\]|{,]|,(?!\s*["']))*[;(]""")
"""A list in brackets, no text of it in quotation marks, with a sign that holds texts together."""
_HASH = re.compile(r"(?:^|[ \t])#", re.MULTILINE)


def same_but_for_hashes(one: Any, other: Any) -> bool:
    """Whether two readings differ only in texts that one ends where a number sign stands."""
    if isinstance(one, dict) and isinstance(other, dict):
        return list(one) == list(other) and all(same_but_for_hashes(one[n], other[n]) for n in one)
    if isinstance(one, list) and isinstance(other, list):
        pairs = zip(one, other, strict=False)
        return len(one) == len(other) and all(same_but_for_hashes(a, b) for a, b in pairs)
    if isinstance(one, str) and isinstance(other, str) and "#" in other:
        return other.startswith(one)
    return type(one) is type(other) and bool(one == other)


def _without_html(document: Document, problems: list[Problem]) -> Document | list[Problem]:
    # a tag needs its bracket: written as itself, or by its code in double quotation marks
    suspect = "<" in document.yaml_text or _BY_CODE.search(document.yaml_text)
    for path, rule, message, help_ in faults_in_fields(document.data) if suspect else ():
        problems.append(document.problem(rule, "error", path, message, help_))
    return sorted(problems) or document


_BY_CODE = re.compile(r"\\[xuU]")

Reader = Callable[[str, bytes], Document | list[Problem]]
