"""Being told how far the drawing of many units is."""

from __future__ import annotations

from collections.abc import Callable

Progress = Callable[[int, int], None]
"""Is told how many of how many units are drawn."""


def no_progress(_done: int, _total: int) -> None:
    """Tell nobody."""
