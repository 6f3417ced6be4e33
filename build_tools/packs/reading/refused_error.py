"""Why a pack is not taken in."""

from __future__ import annotations


class RefusedError(Exception):
    """The pack is refused; the text says what is wrong, where, and what to ask for."""
