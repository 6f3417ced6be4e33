"""A file in the one canonical form: valid YAML that any reader agrees with, and nothing lost."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from build_tools.problem import FieldPath, Problem
from build_tools.shapes.shape import shape_of
from build_tools.source.front_matter import (
    Document,
    kind_of_file,
    read_again,
    read_data,
    read_markdown,
)
from build_tools.source.lines_run_together import lines_run_together
from build_tools.source.said_once.shortened import shortened
from build_tools.source.typed.canonical import canonical
from build_tools.source.typed.reader import read_typed
from build_tools.source.typed.what_was_read import Reading


@dataclass(frozen=True, slots=True)
class Tidied:
    """The text of a file in canonical form, and what in it was read otherwise than YAML has it."""

    text: str
    read_as: tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class NotTidied:
    """Why a file stays as it is: its problems, or a reason in words."""

    reason: str
    problems: tuple[Problem, ...] = ()


def tidied(file: str, raw: bytes) -> Tidied | NotTidied:
    """The file named `file` in canonical form; its notes below the fields are left as they are.

    The new text is read again before it is given: same data, same remarks, same notes.
    """
    reader = read_data if file.endswith(".yml") else read_markdown
    before, kind = reader(file, raw), kind_of_file(file)
    if not isinstance(before, Document):
        return NotTidied("there is something to mend first", tuple(before))
    if kind is None:
        return NotTidied("it is none of a bank's files")
    if not isinstance(before.data, dict):
        return NotTidied("there are no fields in it")
    if asked := lines_run_together(before):
        return NotTidied("there is something to ask first", tuple(asked))
    shape = shape_of(kind)
    made = read_again(before, shape)
    if made.faults:
        told = tuple(fault.at(file) for fault in made.faults)
        return NotTidied("there is something to mend first", told)
    remarks = _remarks(made)
    made.data = shortened(made.data, kind, file, _with_remarks(made))
    fields = canonical(made, shape)
    text = fields if file.endswith(".yml") else f"---\n{fields}---\n{before.body}"
    after = reader(file, text.encode())
    again = read_typed(fields, 1, shape, yaml_reads=True)
    same = (
        isinstance(after, Document)
        and after.data == before.data
        and after.body == before.body
        and not after.guesses
        and not again.faults
        and _remarks(again) == remarks
    )
    if not same:
        return NotTidied("it could not be written anew with everything in it")
    return Tidied(text, tuple(before.read_as()))


def as_every_program_reads_it(file: str, raw: bytes) -> bytes:
    """The bytes of a file as they are, or in canonical form where YAML alone reads it otherwise."""
    read = read_markdown(file, raw)
    if not isinstance(read, Document) or read.kind is None:
        return raw
    made = tidied(file, raw)
    return made.text.encode("utf-8") if isinstance(made, Tidied) else raw


def _with_remarks(made: Reading) -> frozenset[FieldPath]:
    """The fields that a remark is about, which stay for its sake."""
    return frozenset([*(path for path, texts in made.before.items() if any(texts)), *made.beside])


def _remarks(made: Reading) -> Counter[str]:
    above = (text for texts in made.before.values() for text in texts if text)
    return Counter([*above, *made.beside.values()])
