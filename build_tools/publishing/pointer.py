"""The one pointer: which edition readers get. It is a script, since pages opened from a folder
cannot read any other file.

A copy lies in the folder of editions. Where the pointer is lost, it says which edition readers had.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import Any

from build_tools.publishing.edition_folders import is_edition_name
from build_tools.publishing.shared_folder import HeldFolder, read_file

POINTER = "current.js"
COPY = "editions/current.json"
_START, _END = "window.danceUnitBankEdition = ", ";\n"


@dataclass(frozen=True, slots=True)
class Pointer:
    """Where readers are sent."""

    current: str
    """The edition they get."""
    title: str
    """What the whole is called."""
    missing: tuple[str, ...] = ()
    """The pages that have an entry page, though the current edition does not hold them."""
    coming: tuple[str, ...] = ()
    """The pages of an edition on its way, which may have their entry page already."""
    last: int = 0
    """The highest number an edition has had: no number is used twice."""
    left: Mapping[str, str] = field(default_factory=dict)
    """For each edition that readers had once: the day and time when it was no longer theirs."""


def read_pointer(target: Path) -> Pointer | None:
    """The pointer of a published folder; None where there is none that can be read."""
    raw = read_file(target / POINTER)
    return None if raw is None else _read(raw, _START, _END)


def read_copy(target: Path) -> Pointer | None:
    """The pointer's copy; None where there is none that can be read."""
    raw = read_file(target / COPY)
    return None if raw is None else _read(raw, "", "\n")


def replace_pointer(target: HeldFolder, pointer: Pointer) -> None:
    """Point to another edition, in one step; the copy is written first."""
    for name, data in written(pointer).items():
        target.write_new(name, data)


def written(pointer: Pointer) -> dict[str, bytes]:
    """The files that hold a pointer, the copy first."""
    said = asdict(pointer) | {
        "missing": sorted(pointer.missing),
        "coming": sorted(pointer.coming),
        "left": dict(sorted(pointer.left.items())),
    }
    text = json.dumps(said | {"digest": _digest(said)})
    return {COPY: f"{text}\n".encode(), POINTER: f"{_START}{text}{_END}".encode()}


def _read(raw: bytes, start: str, end: str) -> Pointer | None:
    try:
        text = raw.decode("utf-8")
        if not (text.startswith(start) and text.endswith(end)):
            return None
        read = json.loads(text[len(start) : len(text) - len(end)])
        pointer = _pointer(read)
    # A text nested without end is no pointer either.
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return None
    return pointer


def _digest(said: Mapping[str, Any]) -> str:
    """By this a changed letter shows, which would still read as a pointer."""
    return hashlib.sha512(json.dumps(said, sort_keys=True).encode()).hexdigest()[:32]


def _pointer(read: Any) -> Pointer | None:
    """A pointer of an earlier form has `had`, and no digest, `coming` or `last`."""
    digest = read.pop("digest", None)
    if digest != _digest(read) and not ("had" in read and digest is None):
        return None
    missing, coming = tuple(read.get("missing", ())), tuple(read.get("coming", ()))
    last, left = read.get("last", 0), dict(read.get("left", {}))
    texts = [read["current"], read["title"], *missing, *coming, *left, *left.values()]
    if not all(isinstance(one, str) for one in texts) or not isinstance(last, int):
        return None
    if not is_edition_name(read["current"]):
        return None
    return Pointer(read["current"], read["title"], missing, coming, last, left)
