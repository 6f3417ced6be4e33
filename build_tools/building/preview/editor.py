"""Texts changed on the page: the file's own lines, checked as ever, and undone one by one."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from build_tools.building.preview.asked import (
    MOST_LETTERS,
    TextChange,
    fits,
    is_units_file,
    text_change,
)
from build_tools.building.preview.field_changes import (
    as_typed,
    is_first_format,
    sound,
    with_sound_field,
)
from build_tools.building.preview.parts import parts_of
from build_tools.building.preview.plain_names import thing_name
from build_tools.building.preview.things import as_data, names_in
from build_tools.disk.sure_files import make_folder, write_down, write_whole
from build_tools.problem import FieldPath
from build_tools.source.field_edit import NOTHING
from build_tools.source.file_lines import EditRefused
from build_tools.source.front_matter import NOTES, kind_of_file
from build_tools.source.item_edit import WAYS, mark_of, with_item
from build_tools.source.notes_edit import MOST_NOTES, notes_in, with_notes
from build_tools.source.same_meaning import came_from, meaning_the_same
from build_tools.source.step_edit import with_step_after, without_step
from build_tools.source.text_edit import texts_in, with_text
from build_tools.source.value_edit import with_value

DONE, REFUSED, _CONFLICT = 200, 422, 409
_SAVED_SINCE = "the file was saved since; nothing was changed"
_SAVED_NOW = "the file was saved at this moment; try again"


@dataclass(frozen=True, slots=True)
class _Whole:
    """A change of whole lines: what the file was before and after, and the picture it brought."""

    file: str
    path: FieldPath
    before: bytes
    after: bytes
    picture: str = ""
    data: bytes = b""


class Editor:
    """Changes texts, values and parts of lists in a content folder, and can undo each change."""

    def __init__(self, content: Path) -> None:
        self._content = content
        self._lock = threading.Lock()
        self._done: list[TextChange | _Whole] = []

    def texts(self, file: str) -> list[dict[str, Any]]:
        """Each text of a unit's file that can be changed on the page."""
        if not is_units_file(file):
            return []
        try:
            found = texts_in(file, (self._content / file).read_bytes())
        except OSError:
            return []
        return [{"path": list(path), "text": text} for path, text in found]

    def change(self, asked: Any) -> tuple[int, str]:
        """Make the change that a page asks for; the status and the words of the answer."""
        change = text_change(asked)
        if change is None:
            return REFUSED, "nothing was changed: write one to 600 letters"
        with self._lock:
            status, said = self._write(change)
            if status == DONE:
                self._done.append(change)
        return status, said

    def parts(self, file: str) -> dict[str, Any]:
        """What of a unit's file can be chosen from a list, set, or moved about on the page."""
        raw = self._bytes_of(file)
        found = parts_of(file, raw) if raw else {"values": [], "lists": []}
        return {**found, "undo": self.undoes(file)}

    def undoes(self, file: str) -> str:
        """What would be undone in the file, by its name on the pages; "" where nothing would."""
        last = next((one for one in reversed(self._done) if one.file == file), None)
        return thing_name(kind_of_file(file) or "", last.path) if last else ""

    def set(self, asked: Any) -> tuple[int, str]:
        """Put another word, number or row where one stands."""
        if not fits(asked, {"file", "path", "old", "new"}):
            return REFUSED, "nothing was changed: that is none of what may stand there"
        file, path, old, new = (asked[name] for name in ("file", "path", "old", "new"))
        plain = all(isinstance(one, str | int | float) for one in (old, new))
        if not plain or (isinstance(new, str) and (not new.strip() or len(new) > MOST_LETTERS)):
            return REFUSED, "nothing was changed: that is none of what may stand there"
        at = tuple(path)
        return self._remade(
            file, at, lambda raw: sound(file, raw, with_value(file, raw, at, old, new))
        )

    def move(self, asked: Any) -> tuple[int, str]:
        """Move a part of a list up or down, write it again, or take it away; a step besides anew.

        The minutes of a step that comes or goes are given by or to the one beside it.
        """
        if not fits(asked, {"file", "path", "old", "way"}):
            return REFUSED, "nothing was changed"
        file, path, old, way = (asked[name] for name in ("file", "path", "old", "way"))
        if not isinstance(old, str) or way not in (*WAYS, "new"):
            return REFUSED, "nothing was changed"
        at = tuple(path)
        is_step = len(at) == 2 and at[0] == "steps" and type(at[1]) is int
        if way == "new" and not is_step:
            return REFUSED, "nothing was changed"

        def moved(raw: bytes) -> bytes | EditRefused:
            if way == "new":
                return with_step_after(file, raw, at[1], old)
            if way == "away" and is_step:
                return without_step(file, raw, at[1], old)
            return with_item(file, raw, at, old, way)

        def remade(raw: bytes) -> bytes | EditRefused:
            fresh = moved(raw)
            if isinstance(fresh, EditRefused) or type(at[-1]) is not int:
                return fresh
            return meaning_the_same(file, raw, fresh, at[:-1], came_from(raw, file, at, way))

        return self._remade(file, at, remade)

    def notes(self, file: str) -> dict[str, Any]:
        """The notes below the fields of a unit's file, and their mark."""
        text = notes_in(self._bytes_of(file))
        return {} if text is None else {"text": text, "mark": mark_of(text)}

    def write_notes(self, asked: Any) -> tuple[int, str]:
        """Put other notes below the fields."""
        if not fits(asked, {"file", "path", "old", "new"}) or asked["path"] != [NOTES]:
            return REFUSED, "nothing was changed"
        file, old, new = (asked[name] for name in ("file", "old", "new"))
        if not isinstance(new, str) or len(new) > MOST_NOTES:
            return REFUSED, f"nothing was changed: notes have {MOST_NOTES:,} letters at most"
        return self._remade(file, (NOTES,), lambda raw: with_notes(file, raw, old, new))

    def things(self, file: str) -> list[dict[str, Any]]:
        """Each part of a unit's file, with what it has and what could be added to it."""
        raw = self._bytes_of(file)
        unit = self._bytes_of(f"{file.rpartition('/')[0]}/unit.md") if raw else b""
        return as_data(file, raw, names_in(unit)) if raw else []

    def field(self, asked: Any) -> tuple[int, str]:
        """Add a field, a line of a list or a part under a name, set it, or take it away."""
        if not fits(asked, {"file", "path", "old", "way", "value"}):
            return REFUSED, "nothing was changed"
        file, path, old, way = (asked[name] for name in ("file", "path", "old", "way"))
        if not isinstance(old, str) or way not in ("add", "set", "away"):
            return REFUSED, "nothing was changed"
        value = NOTHING if way == "away" else as_typed(tuple(path), asked["value"])
        if value is None:
            return REFUSED, "nothing was changed: something is missing, or too long"
        first = is_first_format(self._bytes_of(f"{file.rpartition('/')[0]}/unit.md"))
        return self._remade(
            file,
            tuple(path),
            lambda raw: with_sound_field(file, raw, tuple(path), old, value, first_format=first),
        )

    def put_in(
        self,
        file: str,
        remade: Callable[[bytes], bytes | EditRefused],
        picture: str,
        data: bytes,
    ) -> tuple[int, str]:
        """Write a new picture beside the file, and what is made of the file; both or neither."""
        path = self._content / picture
        with self._lock:
            before = self._bytes_of(file)
            fresh = remade(before)
            if not isinstance(fresh, EditRefused):
                try:
                    make_folder(path.parent)
                    write_down(path, data)
                except OSError as error:
                    return _unwritable(error)
            status, said = self._put(file, before, fresh, _SAVED_SINCE)
            if status == DONE and not isinstance(fresh, EditRefused):
                self._done.append(_Whole(file, ("stimulus",), before, fresh, picture, data))
            elif not isinstance(fresh, EditRefused):
                path.unlink(missing_ok=True)
            return status, said

    def _without_picture(self, last: _Whole) -> str:
        """Take out the picture that a change brought, if it is still as it came; in words."""
        path = self._content / last.picture
        try:
            if not last.picture or path.read_bytes() != last.data:
                return ""
            path.unlink()
        except OSError:
            return ""
        return f", and {path.name} is out of its folder again: yours is where it was"

    def undo(self, asked: Any) -> tuple[int, str]:
        """Undo the last change that was made on the pages of a file, and in no other file."""
        file = asked.get("file") if isinstance(asked, dict) else None
        with self._lock:
            of_file = [n for n, one in enumerate(self._done) if one.file == file]
            if not of_file:
                return REFUSED, "there is nothing to undo"
            last = self._done.pop(of_file[-1])
            if isinstance(last, _Whole):
                status, said = self._put(last.file, last.after, last.before, _SAVED_SINCE)
                if status != DONE:
                    return status, said
                return status, f"{last.file} is as it was{self._without_picture(last)}"
            back = TextChange(last.file, last.path, last.new, last.old)
            status, said = self._write(back, undoing=True)
            return status, f"{last.file} is as it was" if status == DONE else said

    def _bytes_of(self, file: str) -> bytes:
        """A unit's file; nothing where there is none of that name."""
        if not is_units_file(file):
            return b""
        try:
            return (self._content / file).read_bytes()
        except OSError:
            return b""

    def _remade(
        self, file: str, path: FieldPath, remade: Callable[[bytes], bytes | EditRefused]
    ) -> tuple[int, str]:
        """Write what is made of the file, and keep it whole, to be undone."""
        with self._lock:
            before = self._bytes_of(file)
            fresh = remade(before)
            status, said = self._put(file, before, fresh, _SAVED_SINCE)
            if status == DONE and not isinstance(fresh, EditRefused):
                self._done.append(_Whole(file, path, before, fresh))
            return status, said

    def _put(
        self, file: str, before: bytes, fresh: bytes | EditRefused, saved: str
    ) -> tuple[int, str]:
        """Write the file anew, if it still is as it was `before`; else it has been `saved`."""
        if isinstance(fresh, EditRefused):
            return (_CONFLICT if fresh.conflict else REFUSED), fresh.reason
        path = self._content / file
        try:
            if path.read_bytes() != before:
                return _CONFLICT, saved
            write_whole(path, fresh)
        except OSError as error:
            return _unwritable(error)
        return DONE, f"{file} is changed"

    def _write(self, change: TextChange, *, undoing: bool = False) -> tuple[int, str]:
        try:
            raw = (self._content / change.file).read_bytes()
        except OSError as error:
            return _unwritable(error)
        fresh = with_text(change.file, raw, change.path, change.old, change.new)
        if not undoing:
            fresh = sound(change.file, raw, fresh)
        return self._put(change.file, raw, fresh, _SAVED_NOW)


def _unwritable(error: OSError) -> tuple[int, str]:
    return REFUSED, f"the file cannot be written ({error.strerror})"
