"""A diagram and the same in words."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Figure:
    """A diagram: its title, its SVG text, and its text version as lines."""

    title: str
    svg: str
    words: tuple[str, ...]
