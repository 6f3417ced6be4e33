"""A publisher as a process of its own that says its phases, which the tests kill.

SITE TARGET publishes a site, `back` TARGET goes back to the edition before.
"""

from __future__ import annotations

import sys
from pathlib import Path
from types import ModuleType

from build_tools.publishing import publish, roll_back, turning
from build_tools.publishing.pointer import Pointer, read_pointer
from build_tools.publishing.shared_folder import HeldFolder
from tests.support.killing import saying, says, slow_disk

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


def said_before(module: ModuleType, name: str, phase: str) -> None:
    saying(module, name, lambda *_: phase)


if __name__ == "__main__":
    site, goal = sys.argv[1], Path(sys.argv[2])
    slow_disk(0.0005)
    said_before(publish, "copy_in", COPYING)
    said_before(publish, "write_entries", ENTRIES)
    said_before(turning, "write_plain", PLAIN)
    said_before(publish, "take_out", TAKING_OUT)
    for module in (publish, turning):
        saying(module, "replace_pointer", announcing_or_turning)
    says(LOOKING)
    if site == BACK:
        roll_back.roll_back(goal)
    else:
        publish.publish(Path(site), goal, "2026-11-25", "A bank", keep=3, days=0)
    says(DONE)
