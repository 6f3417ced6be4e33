"""A command used in a way it cannot be: ends with exit code 2 and one plain sentence."""

from __future__ import annotations


class Misuse(Exception):  # noqa: N818 - it says what happened
    """What was asked cannot be done; the text says why and what to do."""
