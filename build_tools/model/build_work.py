"""From what is written of a picture, sound, poem or object to a work."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from build_tools.model.work import Work


def build_works(listed: Sequence[Mapping[str, Any]]) -> tuple[Work, ...]:
    """The works of a list, in order."""
    return tuple(
        Work(
            title=item["title"],
            by=item["by"],
            licence=item["licence"],
            source=item["source"],
            changes=item.get("changes"),
            file=item.get("file"),
            text_version=item.get("text_version"),
        )
        for item in listed
    )
