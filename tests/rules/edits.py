"""Changes to plain data, each held to what stands there before it."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Final

from build_tools.problem import FieldPath

NONE: Final = "none"
"""In a case: nothing stands there, or nothing is put there."""
MORE: Final = "…"
"""In a case: the text, list or map goes on."""
_MOST_SHOWN = 120


class CaseMistake(AssertionError):  # noqa: N818 - it is about a case, not about the code
    """A case is written wrongly or has gone stale; no fault of any rule."""


@dataclass(frozen=True, slots=True)
class Edit:
    """One change: at the field `at`, written as in a case, `before` becomes `after`.

    With `insert` the new item goes before the item of the list that stands at `at`.
    """

    at: str
    before: Any
    after: Any
    insert: bool = False


def edited(data: Any, edits: Sequence[Edit]) -> Any:
    """A copy of `data` with `edits` in it; every `at` is a place in `data` as it is given."""
    return _changed(data, [(path_in(data, edit.at), edit) for edit in edits])


def path_in(data: Any, at: str) -> FieldPath:
    """The path that `at` writes: names and, in lists, places from 0, with `/` between them."""
    path: FieldPath = ()
    for part in at.split("/") if at else ():
        in_list = isinstance(data, list)
        if in_list and not part.isdigit():
            raise CaseMistake(f"at: {at}: `{part}` is no place in a list; write a number from 0")
        path += (int(part) if in_list else part,)
        data = _inside(data, path[-1])
    return path


def is_there(data: Any, path: FieldPath) -> bool:
    """Whether `data` has a field at `path`."""
    for part in path:
        data = _inside(data, part)
    return data is not _ABSENT


_ABSENT: Final = object()


def _inside(data: Any, part: str | int) -> Any:
    if isinstance(data, list):
        return data[part] if isinstance(part, int) and part < len(data) else _ABSENT
    return data.get(part, _ABSENT) if isinstance(data, dict) else _ABSENT


def _changed(data: Any, edits: Sequence[tuple[FieldPath, Edit]]) -> Any:
    """`edits` come with what is left of their path."""
    if not edits:
        return data
    inside: dict[str | int, list[tuple[FieldPath, Edit]]] = {}
    for path, edit in edits:
        inside.setdefault(path[0], []).append((path[1:], edit))
    if isinstance(data, dict):
        new = {name: _item(data, name, inside.get(name, [])) for name in [*data, *inside]}
        return {str(name): items[0] for name, items in new.items() if items}
    if isinstance(data, list):
        if beyond := [n for n in inside if isinstance(n, int) and n > len(data)]:
            raise _no_such(inside[beyond[0]][0][1], f"the list has {len(data)} items")
        return [item for n in range(len(data) + 1) for item in _item(data, n, inside.get(n, []))]
    raise _no_such(edits[0][1], f"{_shown(data)} stands around it")


def _item(
    held: dict[str, Any] | list[Any],
    place: str | int,
    edits: Sequence[tuple[FieldPath, Edit]],
) -> list[Any]:
    """What stands at `place` after `edits`: nothing, one value, or more where some are inserted."""
    now = _inside(held, place)
    here = [edit for path, edit in edits if not path]
    inserts = [edit for edit in here if edit.insert]
    puts = [edit for edit in here if not edit.insert]
    deeper = [(path, edit) for path, edit in edits if path]
    if len(puts) + bool(deeper) > 1 or (inserts and isinstance(held, dict)):
        raise CaseMistake(f"at: {here[0].at}: write one edit for it, and insert only into lists")
    new = [edit.after for edit in inserts]
    if puts:
        put = puts[0]
        check_before(put, None if now is _ABSENT else now, absent=now is _ABSENT)
        return [*new, *([] if put.after == NONE else [put.after])]
    if deeper and now is _ABSENT:
        raise _no_such(deeper[0][1], "nothing stands around it")
    return new if now is _ABSENT else [*new, _changed(now, deeper)]


def check_before(edit: Edit, now: Any, *, absent: bool) -> None:
    """Raise a CaseMistake unless `now` is what the edit says, and the edit changes it."""
    if absent != (edit.before == NONE) or (not absent and not _fits(edit.before, now)):
        stands = NONE if absent else _shown(now)
        raise CaseMistake(f"at: {edit.at}: the base has now {stands}; write `before: {stands}`")
    if edit.after == (NONE if absent else now):
        raise CaseMistake(f"at: {edit.at}: nothing is changed; take the edit out")


def _fits(said: Any, now: Any) -> bool:
    """Whether `said` is `now`, or its beginning with … for the rest."""
    if isinstance(said, str) and isinstance(now, str) and said.endswith(MORE):
        return len(said) > 1 and now.startswith(said.removesuffix(MORE))
    if isinstance(said, list) and isinstance(now, list):
        goes_on = said[-1:] == [MORE]
        first = said[:-1] if goes_on else said
        as_long = len(first) <= len(now) if goes_on else len(first) == len(now)
        return as_long and all(map(_fits, first, now))
    if isinstance(said, dict) and isinstance(now, dict):
        named = {name: value for name, value in said.items() if name != MORE}
        as_many = set(named) <= set(now) if MORE in said else set(named) == set(now)
        return as_many and all(_fits(value, now[name]) for name, value in named.items())
    return bool(said == now)


def _no_such(edit: Edit, why: str) -> CaseMistake:
    return CaseMistake(f"at: {edit.at}: there is no such place: {why}")


def _shown(value: Any) -> str:
    text = json.dumps(value, ensure_ascii=False)
    return text if len(text) <= _MOST_SHOWN else text[:_MOST_SHOWN] + MORE
