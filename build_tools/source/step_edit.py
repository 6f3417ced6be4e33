"""A step of a lesson added or taken away, so that its minutes still add up."""

from __future__ import annotations

from typing import Any

from build_tools.source.file_lines import SAYS_ELSE, EditRefused, lines_of, reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import blocks_of, mark_of, with_item
from build_tools.source.value_edit import with_value

_NEW = (
    "- phase: {phase}",
    "  does: A new step",
    "  minutes: {minutes}",
    "  grouping: {grouping}",
    "  task: Write here what pupils do.",
)


def with_step_after(file: str, raw: bytes, number: int, old: str) -> bytes | EditRefused:
    """A new step behind step `number`, from 0, whose mark is `old`: it has half of its minutes."""
    step = _step(file, raw, number, old)
    if isinstance(step, EditRefused):
        return step
    minutes = step["minutes"]
    if minutes < 2:
        return EditRefused("this step has one minute: give it more, then add a step behind it")
    given = minutes // 2
    fresh = _with_minutes(file, raw, number, step, minutes - given)
    if isinstance(fresh, EditRefused):
        return fresh
    doubled = with_item(file, fresh, ("steps", number), _mark(file, fresh, number), "again")
    if isinstance(doubled, EditRefused):
        return doubled
    return _replaced(file, doubled, number + 1, {**_in_full(file, raw, number), "minutes": given})


def without_step(file: str, raw: bytes, number: int, old: str) -> bytes | EditRefused:
    """The lesson without step `number`, whose mark is `old`: its minutes go to its neighbour."""
    step = _step(file, raw, number, old)
    if isinstance(step, EditRefused):
        return step
    other = number - 1 if number else 1
    mark = _mark(file, raw, other)
    neighbour = _step(file, raw, other, mark)
    if isinstance(neighbour, EditRefused):
        return EditRefused("it is the only step")
    fresh = with_value(
        file,
        raw,
        ("steps", other, "minutes"),
        neighbour["minutes"],
        neighbour["minutes"] + step["minutes"],
    )
    if isinstance(fresh, EditRefused):
        return fresh
    return with_item(file, fresh, ("steps", number), old, "away")


def _in_full(file: str, raw: bytes, number: int) -> dict[str, Any]:
    """A step with its kind and grouping, though it may not write them."""
    document = read_markdown(file, raw)
    assert isinstance(document, Document)
    step: dict[str, Any] = document.data["steps"][number]
    return step


def _with_minutes(
    file: str, raw: bytes, number: int, step: dict[str, Any], minutes: int
) -> bytes | EditRefused:
    fresh = with_value(file, raw, ("steps", number, "minutes"), step["minutes"], minutes)
    least = step.get("least")
    if isinstance(fresh, EditRefused) or not isinstance(least, int) or least <= minutes:
        return fresh
    return with_value(file, fresh, ("steps", number, "least"), least, minutes)


def _replaced(file: str, raw: bytes, number: int, like: dict[str, Any]) -> bytes:
    """The file with a plain new step in place of step `number`, a copy of the one before."""
    document = read_markdown(file, raw)
    assert isinstance(document, Document)
    made, whole = reading_of(document), lines_of(raw)
    blocks = blocks_of(made, whole.lines, ("steps",), len(made.data["steps"]))
    assert blocks is not None
    line = whole.lines[made.places["steps", number][0] - 1]
    indent = " " * (len(line) - len(line.lstrip()))
    start, ends = blocks[number]
    lines = [indent + one.format(**like) for one in _NEW]
    return whole.bytes_of([*whole.lines[:start], *lines, *whole.lines[ends:]])


def _step(file: str, raw: bytes, number: int, old: str) -> Any:
    document = read_markdown(file, raw)
    data = reading_of(document).data if isinstance(document, Document) else {}
    steps = data.get("steps") if isinstance(data, dict) else None
    if not isinstance(steps, list) or not 0 <= number < len(steps):
        return SAYS_ELSE
    step = steps[number]
    whole = isinstance(step, dict) and isinstance(step.get("minutes"), int)
    return step if whole and mark_of(step) == old else SAYS_ELSE


def _mark(file: str, raw: bytes, number: int) -> str:
    document = read_markdown(file, raw)
    data = reading_of(document).data if isinstance(document, Document) else {}
    steps = data.get("steps", []) if isinstance(data, dict) else []
    return mark_of(steps[number]) if 0 <= number < len(steps) else ""
