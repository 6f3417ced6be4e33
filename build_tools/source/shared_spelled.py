"""A unit's files with its shared pictures as its own, so that it goes elsewhere whole."""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from build_tools.pictures.trouble import PictureError
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.media_files import lies_in
from build_tools.source.shared_pictures import (
    SharedPictures,
    places_of_shared,
    shared_pictures,
    with_shared,
)
from build_tools.source.tidy import Tidied, as_every_program_reads_it, tidied

_ENTRY = "- shared:"
_ORDER = ("title", "by", "licence", "source", "changes", "file", "text_version")


def as_it_goes(folder: Path, name: str) -> bytes:
    """The file `name` of the unit in `folder` as it goes to others: as any program reads it, and
    with what is said of each shared picture. Raises PictureError.
    """
    raw = as_every_program_reads_it(name, (folder / name).read_bytes())
    read = read_markdown(name, raw)
    if not isinstance(read, Document) or not any(True for _ in places_of_shared(read.data)):
        return raw
    return _spelled(name, raw, shared_pictures(folder.resolve().parent.parent))


def shared_with(folder: Path) -> dict[str, Path]:
    """The shared pictures that the unit in `folder` shows: where each lies, by its name there."""
    shared = shared_pictures(folder.resolve().parent.parent)
    found: dict[str, Path] = {}
    for text in sorted(folder.glob("*.md")):
        read = read_markdown(text.name, text.read_bytes())
        for _, name in places_of_shared(read.data) if isinstance(read, Document) else ():
            if name in shared.files:
                file = f"media/{shared.files[name]}"
                found[file] = lies_in(folder, file)
    return found


def _spelled(name: str, raw: bytes, shared: SharedPictures) -> bytes:
    made = tidied(name, raw)
    before = read_markdown(name, made.text.encode()) if isinstance(made, Tidied) else None
    if not isinstance(made, Tidied) or not isinstance(before, Document):
        raise PictureError(f"{name} cannot be written anew: run tidy and see what it says")
    wanted, _, missing = with_shared(before, shared)
    if missing:
        raise PictureError(missing[0].message)
    lines = made.text.split("\n")
    for path, picture in places_of_shared(before.data):
        line, _ = before.locate((*path, "shared"))
        head, entry, _ = lines[line - 1].partition(_ENTRY)
        fields = shared.fields_of(picture)
        if not entry or head.strip() or fields is None:
            raise PictureError(f"line {line} of {name} is not one that names a shared picture")
        lines[line - 1] = _written(head, fields)
    again = tidied(name, "\n".join(lines).encode())
    after = read_markdown(name, again.text.encode()) if isinstance(again, Tidied) else None
    if not isinstance(again, Tidied) or not isinstance(after, Document):
        raise PictureError(f"the shared pictures of {name} could not be written out")
    if after.data != wanted.data or after.body != before.body:
        raise PictureError(f"the shared pictures of {name} could not be written out")
    return again.text.encode()


def _written(head: str, fields: Mapping[str, Any]) -> str:
    """The fields as lines; texts in double quotation marks are YAML as they are JSON."""
    named = [name for name in _ORDER if name in fields]
    said = (f"{name}: {json.dumps(fields[name], ensure_ascii=False)}" for name in named)
    return "\n".join(f"{head}{'  ' if n else '- '}{one}" for n, one in enumerate(said))
