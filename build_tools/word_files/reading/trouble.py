"""Why a file is not read."""

from __future__ import annotations


class DocumentError(Exception):
    """The file is not read; the text says why, and what to do, in a reader's words."""
