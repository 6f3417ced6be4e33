"""The words of the licences that a unit may have, bundled so that no network is asked."""

from __future__ import annotations

from pathlib import Path

_TEXTS = Path(__file__).parent / "licence_texts"


def licence_text(licence: str) -> str:
    """The whole text of a licence, by its SPDX id."""
    return (_TEXTS / f"{licence}.txt").read_text(encoding="utf-8")
