"""One file read: plain data, notes, and where every field stands."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from build_tools.problem import Fault, FieldPath, Grade, Problem
from build_tools.source.front_matter import split
from build_tools.source.prose import faults_in_body, faults_in_fields
from build_tools.source.text import read_text
from build_tools.source.yaml_quickly import ODD, read_quickly
from build_tools.source.yaml_reader import Places, read_yaml


@dataclass(frozen=True, slots=True)
class Document:
    """A file's plain data and notes. `file` is relative to the content folder, with `/`.

    The fields start on `first_line`, the notes below them on `body_line`.
    """

    file: str
    data: Any
    body: str
    yaml_text: str
    first_line: int
    body_line: int = 0

    def locate(self, path: FieldPath) -> tuple[int, int]:
        """Line and column, from 1, of the field at `path`, or of the nearest field around it.

        `("notes", n)` is the nth line of the notes, from 0.
        """
        if self.body_line and path[:1] == (NOTES,):
            return self.body_line + int(path[1]), 1
        places = _places(self.yaml_text, self.first_line)
        while path and path not in places:
            path = path[:-1]
        return places[path]

    def problem(
        self, rule: str, grade: Grade, path: FieldPath, message: str, help_: str
    ) -> Problem:
        """A problem of this file at the field at `path`."""
        line, column = self.locate(path)
        return Problem(self.file, line, column, rule, grade, message, help_)


NOTES = "notes"
"""What stands below the fields; no field has this name."""


@lru_cache(maxsize=16)
def _places(yaml_text: str, first_line: int) -> Places:
    """Places are found again when a problem needs them, so that a large bank stays small."""
    result = read_yaml(yaml_text, first_line)
    return {(): (first_line, 1)} if isinstance(result, Fault) else result[1]


def read_markdown(file: str, raw: bytes) -> Document | list[Problem]:
    """Read a Markdown file with fields at its top."""
    text = read_text(raw)
    if isinstance(text, Fault):
        return [text.at(file)]
    halves = split(text)
    if isinstance(halves, Fault):
        return [halves.at(file)]
    data = _read_fields(halves.fields, 2)
    body_faults = list(faults_in_body(halves.body, halves.body_line))
    if isinstance(data, Fault):
        return [fault.at(file) for fault in (data, *body_faults)]
    document = Document(file, data, halves.body, halves.fields, 2, halves.body_line)
    return _without_html(document, [fault.at(file) for fault in body_faults])


def read_data(file: str, raw: bytes) -> Document | list[Problem]:
    """Read a file that is YAML throughout."""
    text = read_text(raw)
    if isinstance(text, Fault):
        return [text.at(file)]
    data = _read_fields(text, 1)
    if isinstance(data, Fault):
        return [data.at(file)]
    return _without_html(Document(file, data, "", text, 1), [])


def _read_fields(yaml_text: str, first_line: int) -> Any:
    """The plain data, or the Fault that prevents it."""
    data = read_quickly(yaml_text)
    if data is not ODD:
        return data
    result = read_yaml(yaml_text, first_line)
    return result if isinstance(result, Fault) else result[0]


def _without_html(document: Document, problems: list[Problem]) -> Document | list[Problem]:
    # a tag needs its bracket: written as itself, or by its code in double quotation marks
    suspect = "<" in document.yaml_text or _BY_CODE.search(document.yaml_text)
    for path, rule, message, help_ in faults_in_fields(document.data) if suspect else ():
        problems.append(document.problem(rule, "error", path, message, help_))
    return sorted(problems) or document


_BY_CODE = re.compile(r"\\[xuU]")

Reader = Callable[[str, bytes], Document | list[Problem]]
