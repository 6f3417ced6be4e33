"""The steps that a table of a file tells: one a table, or one a row under columns with names."""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.drafting.from_document.labels import (
    PHASE_WORDS,
    SECTIONS,
    STEP_LABELS,
    key,
    label_of,
)
from build_tools.drafting.from_document.leftover import Leftover, put
from build_tools.drafting.from_document.step_values import (
    MOST_MINUTES,
    Fields,
    put_head,
    put_question,
    put_value,
)
from build_tools.drafting.plan import still
from build_tools.word_files.blocks import Cell, Table

_HEAD = re.compile(r"step\s+(\d{1,3})", re.IGNORECASE)
_NUMBER = re.compile(r"(\d{1,3})\s*[.)]\s*(?=\S)")
_ORDER = ("phase", "does", "minutes", "least", "grouping", "into", "say", "task", "you", "place",
          "facing", "ask", "look_for", "easier", "harder", "counts")  # fmt: skip
_USUAL: Fields = {"phase": "explore", "minutes": 5, "grouping": "whole class"}
"""What stands in a field that cannot stay empty, until the author says otherwise."""
_ASKED_FOR = {"phase": "which kind of step it is", "minutes": "how many minutes it lasts",
              "grouping": "how pupils are grouped"}  # fmt: skip


def is_step(table: Table) -> bool:
    """Whether the table tells a step: a label of it is one of a step's."""
    return _columns(table) or any(
        _HEAD.fullmatch(text_of(row[0])) or _named(row) for row in table.rows if row
    )


def steps_in(table: Table, heading: str, number: int, left: Leftover) -> Iterator[Fields]:
    """What the table says, step by step; `heading` is what stood over it, `number` the first's."""
    if not _columns(table):
        fields: Fields = {}
        _heading(fields, heading, number, left)
        for n, row in enumerate(table.rows):
            _row(fields, row, n, number, left)
        yield fields
        return
    names, *rows = table.rows
    left.labels |= {text_of(cell) for cell in names if key(text_of(cell)) in STEP_LABELS}
    rows = [row for row in rows if any(text_of(cell) for cell in row)]
    if not rows:
        left.keep(f"step {number}, a table with nothing in it", " · ".join(map(text_of, names)))
    for n, row in enumerate(rows):
        fields = {}
        if n == 0:
            _heading(fields, heading, number, left)
        for at, cell in enumerate(row):
            label = text_of(names[at]) if at < len(names) else ""
            _cell(fields, label, cell, number + n, left)
        if n == 0:
            _unnamed(names, number, left)
        yield fields


def finished(fields: Fields, number: int, so_far: int, left: Leftover) -> Fields:
    """The step with every field that it has to have; what is not said is an open place.

    `so_far` are the minutes of the steps before: a time that begins there is from when to when.
    """
    span = fields.pop("span", None)
    if isinstance(span, tuple):
        first, last = span
        long = last - first if first == so_far else last
        if first == so_far and fields.get("minutes") == long:
            left.said_anyway.add("From when to when each step goes, as its minutes say.")
        elif "minutes" not in fields and 1 <= long <= MOST_MINUTES:
            fields["minutes"] = long
            if first != so_far and first >= 1:
                fields["least"] = first
        else:
            left.keep(f"step {number}, its minutes", f"{first} to {last}")
    found = dict(fields)
    if "phase" not in found and (guessed := _phase_named(str(found.get("does", "")))):
        found["phase"] = guessed
    for name, usual in _USUAL.items():
        if name not in found:
            found[name] = usual
            left.still(f"Step {number}: say {_ASKED_FOR[name]}; {usual} is written until then.")
    found.setdefault("does", still(f"what pupils do in step {number}, in a few words"))
    found.setdefault("task", still(f"what pupils do in step {number}"))
    return {name: found[name] for name in _ORDER if name in found}


def missing_step(number: int, left: Leftover) -> Fields:
    """A step that the file does not have, and a lesson needs."""
    left.still(f"Step {number} is not in the word-processor file; a lesson has three or more.")
    return finished({}, number, 0, Leftover())


def unread_table(table: Table) -> Iterator[str]:
    """A table row by row, for what is no step."""
    for row in table.rows:
        yield " · ".join(text for cell in row if (text := text_of(cell)))


def text_of(cell: Cell) -> str:
    """The words of a cell."""
    return " ".join(one.text for one in cell)


def _columns(table: Table) -> bool:
    """Whether the first row names what stands below each of its cells."""
    known = sum(key(text_of(cell)) in STEP_LABELS for cell in table.rows[0]) if table.rows else 0
    return known > 1 and len(table.rows) > 1 and known >= sum(map(_named, table.rows))


def _named(row: tuple[Cell, ...]) -> bool:
    """Whether the row begins with a label of a step's, or is a cell of labelled lines."""
    if len(row) > 1:
        return key(text_of(row[0])) in STEP_LABELS
    return any(key(label_of(one.text)[0]) in STEP_LABELS for one in row[0])


def _heading(fields: Fields, heading: str, number: int, left: Leftover) -> None:
    if not heading:
        return
    match = _NUMBER.match(heading)
    if match and int(match[1]) != number:
        left.keep(f"step {number}, the number over it", heading)
    does = heading[match.end() :] if match else heading
    put(fields, "does", does, f"step {number}, its heading", left, most=60, least=3)


def _row(fields: Fields, row: tuple[Cell, ...], n: int, number: int, left: Leftover) -> None:
    first = text_of(row[0])
    head = _HEAD.fullmatch(first)
    rest = tuple(one for cell in row[1:] for one in cell)
    if head and n == 0 and len(row) > 1:
        left.labels.add("Step")
        if int(head[1]) != number:
            left.keep(f"step {number}, the number it had", first)
        put_head(fields, text_of(rest), f"step {number}, its first row", left)
    elif len(row) > 1:
        _cell(fields, first, rest, number, left)
    else:
        for one in row[0]:
            label, text = label_of(one.text)
            if key(label) in STEP_LABELS:
                left.labels.add(label)
                put_value(fields, STEP_LABELS[key(label)], text, _at(number, label), left)
            else:
                left.keep(f"step {number}", one.text)


def _cell(fields: Fields, label: str, cell: Cell, number: int, left: Leftover) -> None:
    name = STEP_LABELS.get(key(label))
    text = text_of(cell)
    if SECTIONS.get(key(label)) == "notes":
        left.labels.add(label)
        left.notes += cell
        return
    if name is None:
        for one in cell:
            left.keep(_at(number, label), one.text)
        if not cell:
            left.keep(f"step {number}", label)
        return
    left.labels.add(label)
    if name == "ask":
        for one in cell:
            put_question(fields, "ask", one.text, _at(number, label), left)
    elif text:
        put_value(fields, name, text, _at(number, label), left)


def _unnamed(names: tuple[Cell, ...], number: int, left: Leftover) -> None:
    """Keep the names of columns that are no field's, also where nothing stands below them."""
    for cell in names:
        text = text_of(cell)
        if text and key(text) not in STEP_LABELS:
            left.keep(f"step {number}, the name of a column", text)


def _at(number: int, label: str) -> str:
    return f"step {number}, {label}" if label else f"step {number}"


def _phase_named(does: str) -> str | None:
    plain = key(does).replace("warm up", "warm-up").replace("cool down", "cool-down")
    for phase in ("warm-up", "cool-down"):
        if plain.startswith(phase):
            return phase
    return PHASE_WORDS.get(plain)
