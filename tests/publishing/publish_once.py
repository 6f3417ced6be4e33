"""A publisher as a process of its own that says its phases, which the tests kill.

SITE TARGET publishes a site, `back` TARGET goes back to the edition before.
"""

from __future__ import annotations

import sys
from importlib import import_module
from pathlib import Path
from typing import Any

from build_tools.publishing.pointer import Pointer, read_pointer
from build_tools.publishing.shared_folder import HeldFolder
from tests.support.killing import saying, says, slow_disk

publishing: Any = import_module("build_tools.publishing.publish")

LOOKING, COPYING, ANNOUNCING, ENTRIES, TURNING, PLAIN, TAKING_OUT, DONE = PHASES = (
    "looking at what is there",
    "copying the edition in",
    "announcing its new pages",
    "writing entry pages",
    "turning the pointer",
    "writing the page for readers without script",
    "taking old editions out",
    "done",
)
BACK = "back"
PHASES_BACK = (LOOKING, TURNING, PLAIN, DONE)


def announcing_or_turning(target: HeldFolder, fresh: Pointer) -> str:
    now = read_pointer(target.path)
    return ANNOUNCING if now is not None and now.current == fresh.current else TURNING


def said_before(name: str, phase: str) -> None:
    saying(publishing, name, lambda *_: phase)


if __name__ == "__main__":
    site, goal = sys.argv[1], Path(sys.argv[2])
    slow_disk(0.0005)
    said_before("copy_in", COPYING)
    said_before("write_entries", ENTRIES)
    said_before("write_plain", PLAIN)
    said_before("take_out", TAKING_OUT)
    saying(publishing, "replace_pointer", announcing_or_turning)
    says(LOOKING)
    if site == BACK:
        publishing.roll_back(goal)
    else:
        publishing.publish(Path(site), goal, "2026-11-25", "A bank", keep=3, days=0)
    says(DONE)
