"""What a page of the preview asks for, if it has the form that ours has."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from build_tools.problem import FieldPath
from build_tools.source.folder import is_slug

MOST_LETTERS = 600
_FILE = re.compile(r"units/([^/]+)/(?:unit|lesson-[1-9][0-9]?)\.md\Z")


@dataclass(frozen=True, slots=True)
class TextChange:
    """A text of a file put in the place of another."""

    file: str
    path: FieldPath
    old: str
    new: str


def fits(asked: Any, names: set[str]) -> bool:
    """Whether a page asks for something at a place of a unit's file, in the form that ours has."""
    if not isinstance(asked, dict) or set(asked) != names:
        return False
    path = asked["path"]
    steps = isinstance(path, list) and path and all(type(one) in (str, int) for one in path)
    return bool(steps) and isinstance(asked["file"], str) and is_units_file(asked["file"])


def is_units_file(file: str) -> bool:
    """Whether it names a unit's own file or one of its lessons, and nothing outside."""
    found = _FILE.match(file)
    return bool(found and is_slug(found.group(1)))


def text_change(asked: Any) -> TextChange | None:
    """What a page asks for, if it has the form that ours has."""
    if not fits(asked, {"file", "path", "old", "new"}):
        return None
    file, path, old, new = (asked[name] for name in ("file", "path", "old", "new"))
    if not isinstance(old, str) or not isinstance(new, str):
        return None
    if not new.strip() or len(new) > MOST_LETTERS:
        return None
    return TextChange(file, tuple(path), old, new)
