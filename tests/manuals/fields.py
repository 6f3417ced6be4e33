"""Places in a document's fields, as `places/` writes them, and what is put there or taken out.

steps/2/task           the task of the third step
steps/phase=make/task  that of the first step whose phase is make
steps/makes=A/task     that of the first step with A in its makes
steps/*/dances/A       every A that steps dance
transitions/+          one more transition, after those that are there
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from copy import deepcopy
from typing import Any

from tests.manuals.examples import OPEN

Key = str | int


class NotLaid(AssertionError):  # noqa: N818 - it is about a place, not about the code
    """An example cannot be laid in there: the unit has no such place, or is out of shape then."""


def put(data: Any, place: str, value: Any) -> None:
    """Write a value at the places; what it leaves open is filled from what stands there.

    A map with one key changes that key alone. A new thing with something left open is filled from
    its first neighbour.
    """
    for holder, key in list(_found(data, place)):
        if isinstance(holder, list) and key == len(holder):
            holder.append(_filled(value, holder[0] if holder else None))
            continue
        there = holder[key] if isinstance(holder, list) or key in holder else None
        if isinstance(value, dict) and len(value) == 1 and isinstance(there, dict):
            value = {**value, OPEN: ""}
        neighbour = next(iter(holder.values()), None) if isinstance(holder, dict) else None
        holder[key] = _filled(value, there if there is not None else neighbour)


def take_out(data: Any, place: str) -> None:
    """Take out what stands at the places, if anything does."""
    try:
        found = list(_found(data, place))
    except NotLaid:
        return
    for holder, key in reversed(found):
        if isinstance(holder, list) or key in holder:
            del holder[key]


def without_empty_lists(value: Any) -> Any:
    """A value without its fields that are lists of nothing."""
    if isinstance(value, list):
        return [without_empty_lists(item) for item in value]
    if isinstance(value, dict):
        return {key: without_empty_lists(held) for key, held in value.items() if held != []}
    return value


def called(value: Any, names: Mapping[str, str]) -> Any:
    """A value in which things have the names that a unit gives them, such as wave for gust."""
    if isinstance(value, dict):
        return {called(key, names): called(held, names) for key, held in value.items()}
    if isinstance(value, list):
        return [called(held, names) for held in value]
    if not isinstance(value, str) or not names:
        return value
    either = "|".join(map(re.escape, sorted(names, key=len, reverse=True)))
    return re.sub(rf"(?<![\w-])(?:{either})(?![\w-])", lambda found: names[found[0]], value)


def _found(data: Any, place: str) -> Iterator[tuple[Any, Any]]:
    """What holds each field that a place names, and its key there."""
    *parts, last = place.split("/")
    holders = [data]
    for number, part in enumerate(parts):
        inside = []
        for holder in holders:
            for key in _keys(holder, part):
                if isinstance(holder, dict) and key not in holder:
                    if "*" in place or number + 1 < len(parts):
                        continue
                    holder[key] = {}
                inside.append(holder[key])
        holders = inside
    found = [(holder, key) for holder in holders for key in _keys(holder, last)]
    if not found and "*" not in place:
        raise NotLaid(f"it has no {place}")
    yield from found


def _keys(holder: Any, part: str) -> Iterator[Key]:
    """The keys in a map or a list for which one part of a place stands."""
    if isinstance(holder, dict):
        yield from list(holder) if part == "*" else [part]
        return
    if not isinstance(holder, list):
        return
    if part == "+":
        yield len(holder)
    elif part == "*":
        yield from range(len(holder))
    elif part.isdecimal():
        yield from [int(part)] if int(part) < len(holder) else []
    elif "=" in part:
        field, _, wanted = part.partition("=")
        yield from [n for n, item in enumerate(holder) if _has(item, field, wanted)][:1]
    else:
        yield from [n for n, item in enumerate(holder) if item == part]


def _has(item: Any, field: str, wanted: str) -> bool:
    held = item.get(field)
    return wanted in held if isinstance(held, list) else str(held) == wanted


def _filled(value: Any, there: Any) -> Any:
    """A value; what a manual leaves open in it is what stands there."""
    if value == OPEN:
        return deepcopy(there)
    if isinstance(value, list):
        return list(_filled_list(value, there if isinstance(there, list) else []))
    if not isinstance(value, dict):
        return value
    kept = deepcopy(there) if isinstance(there, dict) else {}
    neighbour = next((held for held in kept.values() if isinstance(held, dict)), None)
    own = {
        key: _filled(held, kept.get(key, neighbour)) for key, held in value.items() if key != OPEN
    }
    return {**kept, **own} if OPEN in value or OPEN in value.values() else own


def _filled_list(value: list[Any], there: list[Any]) -> Iterator[Any]:
    for item in value:
        if item == OPEN:
            yield from deepcopy(there)
        else:
            yield _filled(item, there[0] if there else None)
