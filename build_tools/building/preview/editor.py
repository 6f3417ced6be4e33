"""Texts changed on the page: the file's own lines, checked as ever, and undone one by one."""

from __future__ import annotations

import re
import threading
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from build_tools.disk.sure_files import write_whole
from build_tools.problem import FieldPath
from build_tools.source.folder import is_slug
from build_tools.source.text_edit import EditRefused, texts_in, with_text

MOST_LETTERS = 600
_FILE = re.compile(r"units/([^/]+)/(?:unit|lesson-[1-9][0-9]?)\.md\Z")
_DONE, _REFUSED, _CONFLICT = 200, 422, 409


@dataclass(frozen=True, slots=True)
class _Change:
    file: str
    path: FieldPath
    old: str
    new: str


class Editor:
    """Changes texts in the files of a content folder, one at a time, and can undo them."""

    def __init__(self, content: Path) -> None:
        self._content = content
        self._lock = threading.Lock()
        self._done: list[_Change] = []

    def texts(self, file: str) -> list[dict[str, Any]]:
        """Each text of a unit's file that can be changed on the page."""
        if not _is_units_file(file):
            return []
        try:
            found = texts_in(file, (self._content / file).read_bytes())
        except OSError:
            return []
        return [{"path": list(path), "text": text} for path, text in found]

    def change(self, asked: Any) -> tuple[int, str]:
        """Make the change that a page asks for; the status and the words of the answer."""
        change = _change(asked)
        if change is None:
            return _REFUSED, "nothing was changed: write one to 600 letters"
        with self._lock:
            status, said = self._write(change)
            if status == _DONE:
                self._done.append(change)
        return status, said

    def undo(self) -> tuple[int, str]:
        """Undo the last change that was made on a page."""
        with self._lock:
            if not self._done:
                return _REFUSED, "there is nothing to undo"
            last = self._done.pop()
            status, said = self._write(_Change(last.file, last.path, last.new, last.old))
            return status, f"{last.file} is as it was" if status == _DONE else said

    def _write(self, change: _Change) -> tuple[int, str]:
        path = self._content / change.file
        try:
            raw = path.read_bytes()
            fresh = with_text(change.file, raw, change.path, change.old, change.new)
            if isinstance(fresh, EditRefused):
                return (_CONFLICT if fresh.conflict else _REFUSED), fresh.reason
            if path.read_bytes() != raw:
                return _CONFLICT, "the file was saved at this moment; try again"
            write_whole(path, fresh)
        except OSError as error:
            return _REFUSED, f"the file cannot be written ({error.strerror})"
        return _DONE, f"{change.file} is changed"


def _is_units_file(file: str) -> bool:
    found = _FILE.match(file)
    return bool(found and is_slug(found.group(1)))


def _change(asked: Any) -> _Change | None:
    """What a page asks for, if it has the form that ours has."""
    if not isinstance(asked, dict) or set(asked) != {"file", "path", "old", "new"}:
        return None
    file, path, old, new = (asked[name] for name in ("file", "path", "old", "new"))
    texts = all(isinstance(text, str) for text in (file, old, new))
    steps = isinstance(path, list) and path and all(type(p) in (str, int) for p in path)
    if not texts or not steps or not _is_units_file(file):
        return None
    if not new.strip() or len(new) > MOST_LETTERS:
        return None
    return _Change(file, tuple(path), old, new)
