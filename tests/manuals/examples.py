"""The `Bad:` and `Good:` of a rule's manual, read field by field from the words themselves.

`grouping: fours, into: Turn to the nearest person.` is a grouping and an `into`.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator
from typing import Any, Final

import yaml

from build_tools.rules.rule import Rule

OPEN: Final = "…"
"""Where a manual leaves words out: what stands in the unit is kept there."""

_BLOCKS = re.compile(r"\nBad:\n(?P<bad>.*?)\nGood:\n(?P<good>.*?)\s*$", re.DOTALL)
_NAME = re.compile(r"[a-z_]+(?:-[a-z]+)*|[A-Z]'?")
_FIELD = re.compile(r"(?:(?<=^)|(?<=[\s{]))`?(?P<field>[a-z_]+(?:-[a-z]+)*)`?:(?=\s)", re.MULTILINE)
_JOINT = re.compile(
    r"[\s,;.]*(?:\b(?:and|beside)\b)?,?(?:\s*\bthen\b)?(?:\s*\bin(?: a step| the)?)?[\s,;]*$"
)
_LESSON = re.compile(
    r"[\s.;,]*(?:\b[Ll]esson (\d)(?: of \d)?(?:, step \d)?[,:]?|\bstep \d:|\n[^\n:{}\[\]]+:)\s*$"
)
"""What may stand before a field: lesson 2, step 3; or, from the start of a line, any words."""
_WHOLE: Final = "whole"
"""The field under which a manual's map without a name stands: {from: A, to: B, as: cut}."""


def fields_of(rule: Rule, which: str) -> dict[str, Any]:
    """What one block of the manual, bad or good, writes for each field that it names.

    A field named a second time is `say 2`.
    """
    block = _block(rule, which)
    if block.startswith("{"):
        return {_WHOLE: _read(block)}
    whole = _read(block)
    if isinstance(whole, dict) and all(map(_NAME.fullmatch, whole)) and _each_once(block, whole):
        return whole
    fields: dict[str, Any] = {}
    for name, value in _fields(block):
        fields[_numbered(name, fields)] = value
    return fields


def lessons_of(rule: Rule, which: str) -> dict[str, int]:
    """The lesson in which a block of the manual has a field: the last that was named before it."""
    block = _block(rule, which)
    numbers: dict[str, int] = {}
    fields: dict[str, None] = {}
    number = 0
    for name in _named(block):
        field = _numbered(name["field"], fields)
        fields[field] = None
        lesson = _LESSON.search(block[: name.start()])
        if lesson and lesson[1]:
            number = int(lesson[1])
        if number:
            numbers[field] = number
    return numbers


def is_whole(value: Any) -> bool:
    """Whether nothing of a value is left out that the unit could not fill in."""
    if isinstance(value, dict):
        return all(held == OPEN or is_whole(held) for key, held in value.items() if key != OPEN)
    if isinstance(value, list):
        return all(held == OPEN or is_whole(held) for held in value)
    return not isinstance(value, str) or OPEN not in value


def _block(rule: Rule, which: str) -> str:
    found = _BLOCKS.search(rule.manual)
    assert found is not None, rule.name
    return textwrap.dedent(found[which]).strip()


def _each_once(block: str, whole: dict[str, Any]) -> bool:
    """Whether a block read as one map has a field a line, and none of a name twice."""
    starts = [line.partition(":")[0] for line in block.split("\n") if not line.startswith(" ")]
    return starts == list(whole) and (len(starts) > 1 or len(list(_named(block))) < 2)


def _numbered(field: str, before: dict[str, Any]) -> str:
    number = 2
    name = field
    while name in before:
        name = f"{field} {number}"
        number += 1
    return name


def _named(block: str) -> Iterator[re.Match[str]]:
    """The fields named in a block, but not those inside a map or a list.

    What is followed by a field at once, such as `boats` in `in boats: title: Paper boats`, is none.
    """
    for name in _FIELD.finditer(block):
        before = block[: name.start()]
        if _FIELD.match(block, name.end() + 1) and "\n" not in block[name.end() : name.end() + 1]:
            continue
        if all(before.count(left) == before.count(right) for left, right in ("{}", "[]")):
            yield name


def _fields(block: str) -> Iterator[tuple[str, Any]]:
    names = list(_named(block))
    for number, name in enumerate(names):
        end = names[number + 1].start() if number + 1 < len(names) else len(block)
        text = _LESSON.sub("", textwrap.dedent(block[name.end() : end]).strip())
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
