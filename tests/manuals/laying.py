"""The `Bad:` and `Good:` of each rule's manual, laid into the published units.

The words are read from the manual itself, field by field: `grouping: fours, into: Turn to the
nearest person.` is a grouping and an `into`. `places.yml` says where each field goes in each unit.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator, Mapping
from copy import deepcopy
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import yaml

from build_tools.model.build import build_unit
from build_tools.model.unit import Unit
from build_tools.rules.rule import Rule
from build_tools.schema_check.check import check_document
from build_tools.source.document import Document
from build_tools.source.folder import UnitFolder, read_unit_folder

ROOT = Path(__file__).resolve().parents[2]
CONTENT = ROOT / "content"
UNITS = tuple(sorted(path.name for path in (CONTENT / "units").iterdir()))
PLACES = Path(__file__).parent / "places.yml"
OPEN = "…"
"""Where a manual leaves words out, there is nothing to lay in."""

Laid = tuple[tuple[str, str, Any], ...]
"""Edits: the file, the place in it, and what is put there."""

_BLOCKS = re.compile(r"\nBad:\n(?P<bad>.*?)\nGood:\n(?P<good>.*?)\s*$", re.DOTALL)
_FIELD = re.compile(r"(?:(?<=^)|(?<=[\s{]))`?(?P<field>[a-z_]+)`?:(?=\s)", re.MULTILINE)
_JOINT = re.compile(r"[\s,;.]*(?:\band\b)?,?(?:\s*\bin(?: a step| the)?)?[\s,;]*$")
_LESSON = re.compile(r"[\s.;,]*\b[Ll]esson (\d)(?: of \d)?[,:]?\s*$")
_WHOLE = "whole"
"""The field under which a manual's map without a name stands: {from: A, to: B, as: cut}."""


def fields_of(rule: Rule, which: str) -> dict[str, Any]:
    """What one block of the manual, bad or good, writes for each field that it names.

    A field named a second time is `say 2`.
    """
    found = _BLOCKS.search(rule.manual)
    assert found is not None, rule.name
    block = textwrap.dedent(found[which]).strip()
    if block.startswith("{"):
        return {_WHOLE: _read(block)}
    whole = _read(block)
    if isinstance(whole, dict) and all(map(_NAME.fullmatch, whole)):
        return whole
    fields: dict[str, Any] = {}
    for name, value in _fields(block):
        fields[f"{name} 2" if name in fields else name] = value
    return fields


def lessons_of(rule: Rule, which: str) -> dict[str, int]:
    """The lesson in which a block of the manual has a field, where it says so."""
    found = _BLOCKS.search(rule.manual)
    assert found is not None, rule.name
    block = textwrap.dedent(found[which]).strip()
    numbers: dict[str, int] = {}
    for name in _named(block):
        field = f"{name['field']} 2" if name["field"] in numbers else name["field"]
        if lesson := _LESSON.search(block[: name.start()]):
            numbers[field] = int(lesson[1])
    return numbers


_NAME = re.compile("[a-z_]+")


def _named(block: str) -> Iterator[re.Match[str]]:
    """The fields named in a block, but not those inside a map or a list."""
    for name in _FIELD.finditer(block):
        before = block[: name.start()]
        if all(before.count(left) == before.count(right) for left, right in ("{}", "[]")):
            yield name


def _fields(block: str) -> Iterator[tuple[str, Any]]:
    names = list(_named(block))
    for number, name in enumerate(names):
        end = names[number + 1].start() if number + 1 < len(names) else len(block)
        text = _LESSON.sub("", block[name.end() : end].strip())
        value = _read(text)
        if isinstance(value, str) and number + 1 < len(names):
            stop = "." if text.endswith(".") else ""
            value = _read(_JOINT.sub("", text) + stop)
        yield name["field"], value


def _read(text: str) -> Any:
    try:
        return _plain(yaml.load(text, Loader=yaml.BaseLoader))
    except yaml.YAMLError:
        return text


def _plain(value: Any) -> Any:
    """Numbers, true and false as the bank's own reader has them."""
    if isinstance(value, dict):
        return {key: _plain(held) for key, held in value.items()}
    if isinstance(value, list):
        return [_plain(held) for held in value]
    if isinstance(value, str) and value.isdecimal():
        return int(value)
    return {"true": True, "false": False}.get(value, value)


def is_whole(value: Any) -> bool:
    """Whether nothing of a value is left out that the unit could not fill in."""
    if isinstance(value, dict):
        return all(held == OPEN or is_whole(held) for key, held in value.items() if key != OPEN)
    return OPEN not in yaml.safe_dump(value, allow_unicode=True)


@cache
def places() -> Mapping[str, Mapping[str, Any]]:
    """By rule and unit: the place of each field, `file path`; or why it makes no sense there."""
    read: Mapping[str, Mapping[str, Any]] = yaml.safe_load(PLACES.read_text(encoding="utf-8"))
    return read


def edits(rule: Rule, which: str, where: Mapping[str, str]) -> Laid:
    """The manual's fields, each at its place; one that this example lacks is taken out there."""
    fields = fields_of(rule, which)
    return tuple((*_parted(place), fields.get(field, TAKEN_OUT)) for field, place in where.items())


def _parted(place: str) -> tuple[str, str]:
    file, _, path = place.partition(" ")
    return file, path


TAKEN_OUT = object()


@cache
def _folder(slug: str) -> UnitFolder:
    return read_unit_folder(CONTENT, slug)


def laid(slug: str, changes: Laid) -> Unit | None:
    """The unit with the edits in it; None where it is then out of shape."""
    folder = _folder(slug)
    assert folder.unit is not None
    try:
        own = _changed(folder.unit, changes)
        lessons = [_changed(lesson, changes) for lesson in folder.lessons]
    except (KeyError, IndexError, TypeError):
        return None
    problems = [
        *check_document(own, "unit"),
        *(p for d in lessons for p in check_document(d, "lesson")),
    ]
    return None if problems else build_unit(slug, own, lessons, folder.media)


def _changed(document: Document, changes: Laid) -> Document:
    own = [change for change in changes if document.file.endswith(f"/{change[0]}")]
    if not own:
        return document
    data, body = deepcopy(document.data), document.body
    for _, place, value in own:
        if place == "notes":
            body = "" if value is TAKEN_OUT else f"{value}\n"
            continue
        *holders, last = (int(part) if part.isdecimal() else part for part in place.split("/"))
        holder = data
        for part in holders:
            holder = holder.setdefault(part, {}) if isinstance(holder, dict) else holder[part]
        if value is not TAKEN_OUT:
            holder[last] = _filled(value, holder, last)
        elif isinstance(holder, dict):
            holder.pop(last, None)
    return replace(document, data=data, body=body)


def _filled(value: Any, holder: Any, last: str | int) -> Any:
    """A value; what a manual leaves open in a map, or does not name, is what stands there."""
    if not isinstance(value, dict):
        return deepcopy(value)
    there = isinstance(last, int) or last in holder
    kept = holder[last] if there and isinstance(holder[last], dict) else {}
    own = {key: held for key, held in value.items() if OPEN not in (key, held)}
    return {**kept, **own} if OPEN in value or OPEN in value.values() or len(own) == 1 else own


def found(rule: Rule, unit: Unit) -> frozenset[tuple[str, str]]:
    """What the rule says of the unit: the document and the message."""
    assert rule.check is not None
    return frozenset((f.file, f.message) for f in rule.check(unit))


@cache
def found_before(rule: Rule, slug: str) -> frozenset[tuple[str, str]]:
    """What the rule says of the unit as it is published."""
    unit = laid(slug, ())
    assert unit is not None
    return found(rule, unit)


def fires(rule: Rule, slug: str, changes: Laid) -> bool | None:
    """Whether the rule says something new of the unit; None where it is out of shape."""
    unit = laid(slug, changes)
    return None if unit is None else bool(found(rule, unit) - found_before(rule, slug))
