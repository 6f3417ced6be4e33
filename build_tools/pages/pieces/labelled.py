"""A line with a label before it."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Labelled:
    """A line with a label before it."""

    label: str
    """What the line is about, in a word or a few."""
    words: str
    """The line."""
