"""Pictures dropped on a page: kept until their rights are told, then put into the unit.

Nothing is written until what the schema requires of a picture has been said. Undone, the entry
goes out of the file and the picture out of the folder, since the author's own file is elsewhere.
"""

from __future__ import annotations

import secrets
import threading
from pathlib import Path
from typing import Any

from build_tools.building.preview.asked import is_units_file
from build_tools.building.preview.dropped import Dropped, as_dropped, free_name, names_taken
from build_tools.building.preview.editor import DONE, REFUSED, Editor
from build_tools.building.preview.field_changes import as_typed, with_sound_field
from build_tools.building.preview.things import questions
from build_tools.pictures.trouble import PictureError
from build_tools.problem import FieldPath
from build_tools.schema_check.wanted import Wanted, wanted, whole
from build_tools.source.file_lines import EditRefused, at, reading_of
from build_tools.source.front_matter import Document, kind_of_file, read_markdown
from build_tools.source.media_read import MOST_PICTURE, SMALLER, size_in_words

_MOST_KEPT = 4
_LISTS: dict[str, FieldPath] = {"lesson": ("pictures",), "unit": ("stimulus", "items")}
"""Where a file lists its pictures."""
_ASKED = ("text_version", "title", "by", "licence", "source", "changes")
_ALWAYS = frozenset(_ASKED) - {"changes"}
TOO_LARGE = f"the picture has more than {MOST_PICTURE:,} bytes: {SMALLER}"


class Pictures:
    """The pictures that were dropped and not entered yet, the last few."""

    def __init__(self, content: Path, editor: Editor) -> None:
        self._content, self._editor = content, editor
        self._lock = threading.Lock()
        self._kept: dict[str, Dropped] = {}

    def drop(self, file: str, name: str, data: bytes) -> tuple[int, dict[str, Any]]:
        """Make a dropped picture fit, and say what has to be told of it; nothing is written."""
        if not is_units_file(file) or not (self._content / file).is_file():
            return REFUSED, {"said": "a picture goes into a unit or a lesson"}
        full = _why_full(file, (self._content / file).read_bytes())
        if full:
            return REFUSED, {"said": full}
        try:
            picture = as_dropped(name, data)
        except PictureError as error:
            return REFUSED, {"said": f"the picture is not taken: {error.why}"}
        key = secrets.token_urlsafe(12)
        with self._lock:
            self._kept[key] = picture
            while len(self._kept) > _MOST_KEPT:
                del self._kept[next(iter(self._kept))]
        size = f"{size_in_words(len(picture.data))} large"
        said = ", ".join((*picture.done, size))
        return DONE, {"said": said, "key": key, "asked": _questions(file)}

    def kept(self, key: str) -> Dropped | None:
        """A picture that was dropped and is still kept."""
        return self._kept.get(key)

    def enter(self, asked: Any) -> tuple[int, str]:
        """Put a kept picture into the unit's folder, and what was told of it into the file."""
        if not isinstance(asked, dict) or asked.keys() != {"file", "key", "told"}:
            return REFUSED, "nothing was changed"
        file, key, told = (asked[name] for name in ("file", "key", "told"))
        if not isinstance(file, str) or not is_units_file(file) or not isinstance(told, dict):
            return REFUSED, "nothing was changed"
        picture = self._kept.get(key) if isinstance(key, str) else None
        if picture is None:
            return REFUSED, "the picture is not kept any more: drop it again"
        plain = as_typed((), {name: one for name, one in told.items() if one != ""})
        lacking = _ALWAYS - plain.keys() if isinstance(plain, dict) else _ALWAYS
        if lacking or plain.keys() - set(_ASKED):
            return REFUSED, "something that has to be said of a picture is missing, or too long"
        unit = (self._content / file).parent
        name = free_name(picture, str(plain["title"]), names_taken(unit))
        item = {**plain, "file": f"media/{name}"}
        where = f"{file.rpartition('/')[0]}/media/{name}"
        status, said = self._editor.put_in(
            file, lambda raw: _entered(file, raw, item), where, picture.data
        )
        if status == DONE:
            with self._lock:
                self._kept.pop(key, None)
            said += f", and the picture is media/{name} in the unit’s folder"
        return status, said


def _entered(file: str, raw: bytes, item: dict[str, Any]) -> bytes | EditRefused:
    """The file with one more picture in its list, its fields in the schema's order."""
    path, held = _listed(file, raw)
    order = [one.name for one in _each(file)]
    sorted_item = {name: item[name] for name in order if name in item}
    if isinstance(held, list):
        return with_sound_field(file, raw, (*path, len(held)), "", sorted_item)
    return with_sound_field(file, raw, path, "", [sorted_item])


def _listed(file: str, raw: bytes) -> tuple[FieldPath, Any]:
    path = _LISTS[kind_of_file(file) or "unit"]
    document = read_markdown(file, raw)
    data = reading_of(document).data if isinstance(document, Document) else None
    return path, at(data, path)


def _why_full(file: str, raw: bytes) -> str:
    _, held = _listed(file, raw)
    most = _list_of(file).most
    if not isinstance(held, list) or len(held) < most:
        return ""
    there = f"there are {len(held)} pictures and other items here"
    return f"{there}, and {most} is the most: take one out first"


def _list_of(file: str) -> Wanted:
    kind = kind_of_file(file)
    path = _LISTS[kind or "unit"]
    here = whole("lesson" if kind == "lesson" else "unit")
    for step in path[:-1]:
        inner = here.inner(step)
        assert inner is not None
        here = inner
    return wanted(str(path[-1]), here.fields[str(path[-1])], here.within)


def _each(file: str) -> list[Wanted]:
    """Every field of a picture, in the schema's order."""
    kind = "lesson" if kind_of_file(file) == "lesson" else "unit"
    here = whole("lesson" if kind == "lesson" else "unit")
    for step in (*_LISTS[kind], 0):
        inner = here.inner(step)
        assert inner is not None
        here = inner
    return [wanted(name, part, here.within) for name, part in here.fields.items()]


def _questions(file: str) -> list[dict[str, Any]]:
    """What is asked of a picture, in the order in which one would tell it."""
    kind = kind_of_file(file) or "unit"
    fields = {one.name: one for one in _each(file)}
    made = []
    for name in _ASKED:
        asked = questions(kind, (*_LISTS[kind], 0, name), fields[name])
        made.append({**asked, **_WORDS.get(name, {}), "needed": name in _ALWAYS})
    return made


_WORDS: dict[str, dict[str, str]] = {
    "text_version": {
        "called": "What it shows, in words",
        "about": "For whoever cannot see it, and where it cannot be shown: what is where, and any "
        "words in it.",
    },
    "title": {"called": "Its title", "about": "A few words that tell it from other pictures."},
    "by": {"called": "Who made it", "about": "The photographer or the artist; or the service or "
           "school, if it is yours. No pupil’s name."},
    "licence": {
        "called": "Its licence",
        "about": "What others may do with it, as its maker allows: CC0-1.0 is everything; "
        "CC-BY-4.0 with the maker’s name; SA under the same licence; NC not for money; ND "
        "unchanged; OGL-UK-3.0 is that of public bodies. If you do not know, do not use it.",
    },
    "source": {"called": "Where it comes from",
               "about": "An address or a book; or: photographed for this unit."},
    "changes": {"called": "What you changed in it",
                "about": "Such as: cut to the left half. Nothing, if it is as it was."},
}  # fmt: skip
