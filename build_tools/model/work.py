"""A picture, sound, poem or object that somebody made, with its credit."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Work:
    """One thing that somebody made. `file` lies in the unit's folder."""

    title: str
    by: str
    licence: str
    source: str
    changes: str | None
    file: str | None
    text_version: str | None
