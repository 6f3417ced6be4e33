"""Building a site as a process of its own that says its phases, which the tests kill.

CONTENT OUT KEPT builds the bank in CONTENT into OUT.
"""

from __future__ import annotations

import sys
from pathlib import Path

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

if __name__ == "__main__":
    content, out, kept = (Path(one) for one in sys.argv[1:])
    slow_disk(0.002)
    saying(drawing, "unit_files", lambda *_: DRAWING)
    saying(in_place, "write_whole", lambda *_: DECIDING)
    saying(in_place, "_move", lambda *_: MOVING)
    saying(site, "write_record", lambda *_: KEEPING)
    says(PLANNING)
    built(content, out, kept)
    says(DONE)
