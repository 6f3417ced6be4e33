"""Plain data as fields that an author will want to edit: blocks, with short maps on one line."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping, Sequence

_PLAIN = re.compile(r"[A-Za-z✎][^\n:#\"'{}\[\],&*]*[^\s:#\"'{}\[\],&*]|[A-Z]\Z")
_PLAIN_IN_BLOCK = re.compile(r"[A-Za-z✎](?:[^\n:#\"]|:(?! ))*[^\s:#\"]")
_TAKEN = {"true", "false", "null"}
_ONE_LINE = 96


class OneLine(dict[str, object]):
    """A map that is written on one line, such as an action."""


def fields(data: Mapping[str, object]) -> str:
    """The fields `data`, one after another, ending in a line break."""
    return "".join(f"{line}\n" for line in _map(data, ""))


def _map(data: Mapping[str, object], indent: str) -> list[str]:
    lines: list[str] = []
    for name, value in data.items():
        head = f"{indent}{_scalar(name)}:"
        lines += _under(head, value, indent)
    return lines


def _under(head: str, value: object, indent: str) -> list[str]:
    """A field's name or a list's hyphen in `head`, and its value after or below it."""
    short = f"{head} {_flow(value)}"
    if isinstance(value, OneLine) or not isinstance(value, Mapping | list | tuple) or not value:
        return [f"{head} {_flow(value)}" if value in ((), [], {}) else f"{head} {_line(value)}"]
    if isinstance(value, Mapping):
        return [head, *_map(value, f"{indent}  ")]
    if all(not isinstance(item, Mapping | list | tuple) for item in value) and _is_short(short):
        return [short]
    return [head, *_list(value, f"{indent}  ")]


def _list(items: Sequence[object], indent: str) -> list[str]:
    lines: list[str] = []
    for item in items:
        if isinstance(item, Mapping) and not isinstance(item, OneLine):
            first, *rest = _map(item, f"{indent}  ")
            lines += [f"{indent}- {first.strip()}", *rest]
        else:
            lines.append(f"{indent}- {_line(item)}")
    return lines


def _is_short(line: str) -> bool:
    return len(line) <= _ONE_LINE and " " not in line.partition("[")[2].replace(", ", ",")


def _line(value: object) -> str:
    return _flow(value) if isinstance(value, Mapping | list | tuple) else _scalar(value)


def _flow(value: object) -> str:
    if isinstance(value, Mapping):
        inside = ", ".join(f"{name}: {_flow(item)}" for name, item in value.items())
        return f"{{{inside}}}"
    if isinstance(value, list | tuple):
        return f"[{', '.join(_flow(item) for item in value)}]"
    return _scalar(value, _PLAIN)


def _scalar(value: object, plain: re.Pattern[str] = _PLAIN_IN_BLOCK) -> str:
    if isinstance(value, str):
        if plain.fullmatch(value) and value.lower() not in _TAKEN:
            return value
        if re.fullmatch(r"[A-Za-z]|[0-9]{4}-[0-9]{2}-[0-9]{2}|[0-9]+(\.[0-9]+){2}", value):
            return value
        return json.dumps(value, ensure_ascii=False)
    return json.dumps(value)
