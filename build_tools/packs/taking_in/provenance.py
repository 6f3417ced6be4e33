"""Where a unit that was taken in came from, and when: a small file that stays beside it."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from build_tools.source.folder import TAKEN_IN
from build_tools.source.text import HIDDEN

_HEAD = "# Written by take-in. Nothing proves what a pack says of itself.\n"
_MOST = 120
"""Letters of a file's name or a publisher's."""


@dataclass(frozen=True, slots=True)
class Provenance:
    """A pack's file name and SHA-512, whose it says it is, its edition, and the day it came."""

    file: str
    sha512: str
    publisher: str
    edition: str
    day: date


def noted(files: Mapping[str, bytes], came: Provenance) -> dict[str, bytes]:
    """A unit's files with the one that says where they came from."""
    told = {
        "file": _short(came.file),
        "sha512": came.sha512,
        "says_publisher": _short(came.publisher),
        "edition": came.edition,
        "taken_in": came.day.isoformat(),
    }
    lines = (f"{name}: {json.dumps(value, ensure_ascii=False)}\n" for name, value in told.items())
    return {**files, TAKEN_IN: (_HEAD + "".join(lines)).encode()}


def _short(text: str) -> str:
    """The text in signs that can be read, so that it can stand in a file of the bank."""
    seen = HIDDEN.sub("?", text.replace("\n", " ")).encode("utf-8", "replace").decode()
    seen = seen.replace("<", "?")
    return seen if len(seen) <= _MOST else f"{seen[: _MOST - 1]}…"
