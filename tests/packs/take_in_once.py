"""`take-in` as a process of its own that says its phases, which the tests kill.

FILE CONTENT [JUDGED]: JUDGED is a file with what was found of FILE before, as Python pickles it.
"""

from __future__ import annotations

import pickle
import shutil
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any
from unittest import mock

from build_tools import cli
from build_tools.disk import sure_files
from build_tools.packs.taking_in import journal
from build_tools.use_cases import judging_packs, take_in
from tests.support.killing import saying, says, slow_disk

LOOKING, WRITING, JOURNAL, MOVING_OUT, MOVING_IN, CLEARING, DONE = PHASES = (
    "looking at the pack",
    "writing the unit beside",
    "writing the journal",
    "moving the old one out",
    "moving the new one in",
    "clearing up",
    "done",
)


def moving(source: Path, _: Path) -> str:
    return MOVING_IN if source.name == "unit" else MOVING_OUT


def clearing(folder: Any, **_: object) -> str:
    return CLEARING if Path(folder).name == journal.ROOM and Path(folder).exists() else ""


def here(work: Callable[..., Any], *given: Any) -> Any:
    """Judge in this very process: how one within walls ends is asked in tests/lifeline."""
    return work(*given)


if __name__ == "__main__":
    file, content, *before = sys.argv[1:]
    mock.patch.object(judging_packs, "walled", here).start()
    if before:
        known = pickle.loads(Path(before[0]).read_bytes())
        mock.patch.object(take_in, "judged", return_value=known).start()
    slow_disk(0.002)
    saying(journal, "_stage", lambda *_: WRITING)
    saying(sure_files, "write_whole", lambda *_: JOURNAL)
    saying(journal, "_move", moving)
    saying(shutil, "rmtree", clearing)
    says(LOOKING)
    code = cli.main(["take-in", file, "--yes", "--content", content])
    says(DONE)
    sys.exit(code)
