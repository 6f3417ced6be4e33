"""One publisher as a process of its own, which the tests kill: SITE TARGET."""

from __future__ import annotations

import sys
from pathlib import Path

from build_tools.publishing.publish import publish

site, target = map(Path, sys.argv[1:])
print("ready", flush=True)
publish(site, target, "2026-11-25", "A bank", keep=3)
