"""A copy of the bank's software to be changed, quick to start."""

from __future__ import annotations

import shutil
from pathlib import Path

from tests.support.banks import ROOT


def copied_software(goal: Path, *folders: str) -> Path:
    """`folders` of the project in `goal`, and what Python compiled of them already.

    That is known by the time and the size of its source, which both go with a copy; compiling all
    of it anew takes two seconds.
    """
    half_written = shutil.ignore_patterns("*.pyc.*")
    for folder in folders:
        shutil.copytree(ROOT / folder, goal / folder, ignore=half_written)
    return goal
