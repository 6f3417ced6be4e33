"""A photograph without what it carries unseen, before anybody has looked at its points."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.pictures.upright import UPRIGHT

DAMAGED = "it is damaged: open it and save it again"


@dataclass(frozen=True, slots=True)
class Stripped:
    """What is seen of the file, and which way up the rest said that it is shown."""

    data: bytes
    orientation: int = UPRIGHT
