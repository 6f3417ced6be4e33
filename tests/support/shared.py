"""What is made once for all workers of a run: whoever needs it first makes it, the others wait."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest
from filelock import FileLock


def made_once(factory: pytest.TempPathFactory, name: str, make: Callable[[Path], object]) -> Path:
    """The folder `name`, which `make` has filled; nobody may change what is in it."""
    base = factory.getbasetemp()
    # each worker has a folder of its own inside that of the run
    room = base.parent if "PYTEST_XDIST_WORKER" in os.environ else base
    folder = room / name
    with FileLock(f"{folder}.lock"):
        if not folder.exists():
            begun = folder.with_name(f"{name}.begun")
            begun.mkdir()
            make(begun)
            begun.rename(folder)
    return folder
