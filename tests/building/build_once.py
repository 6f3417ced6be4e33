"""Building a site as a process of its own that says its phases, which the tests kill.

CONTENT OUT KEPT builds the bank in CONTENT into OUT.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from build_tools.building import drawing, site
from build_tools.disk import in_place
from tests.building.banks import built
from tests.support.killing import saying, says, slow_disk

PLANNING, DRAWING, DECIDING, MOVING, KEEPING, DONE = PHASES = (
    "planning",
    "drawing",
    "deciding",
    "moving",
    "keeping the record",
    "done",
)
HELD_SECONDS = 0.03
"""So long each step of a phase is held up, so that a kill lands in it."""


def said_and_held(module: Any, name: str, phase: str) -> None:
    real: Callable[..., Any] = getattr(module, name)

    def held(*given: Any, **options: Any) -> Any:
        time.sleep(HELD_SECONDS)
        return real(*given, **options)

    setattr(module, name, held)
    saying(module, name, lambda *_, **__: phase)


if __name__ == "__main__":
    content, out, kept = (Path(one) for one in sys.argv[1:])
    slow_disk(0.002)
    said_and_held(drawing, "unit_files", DRAWING)
    said_and_held(in_place, "write_whole", DECIDING)
    said_and_held(in_place, "_move", MOVING)
    said_and_held(site, "write_record", KEEPING)
    says(PLANNING)
    built(content, out, kept)
    says(DONE)
