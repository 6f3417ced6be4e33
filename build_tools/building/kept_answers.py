"""Answers of this software kept in a file for the next time, and read again only by the same."""

from __future__ import annotations

import os
import pickle
from contextlib import suppress
from pathlib import Path
from typing import Any


class KeptReader(pickle.Unpickler):
    """Reads what we keep ourselves and nothing that would run anything else."""

    def find_class(self, module: str, name: str) -> Any:
        """Only what is ours is made again."""
        if not module.startswith("build_tools.") and (module, name) != ("markupsafe", "Markup"):
            raise pickle.UnpicklingError(f"{module}.{name} is none of ours")
        return super().find_class(module, name)


def read_kept(file: Path, software: str) -> Any:
    """What is kept in `file`; None where there is nothing by this `software`."""
    try:
        with file.open("rb") as opened:
            said, kept = KeptReader(opened).load()
    # what was cut short or changed may fail in any of these ways
    except (OSError, pickle.UnpicklingError, ValueError, TypeError, AttributeError, EOFError,
            ImportError, IndexError, KeyError):  # fmt: skip
        return None
    return kept if said == software else None


def write_kept(file: Path, software: str, kept: object) -> None:
    """Keep it; a folder that cannot be written to only costs time."""
    fresh = file.with_name(f"{file.name}.{os.getpid()}")
    with suppress(OSError):
        file.parent.mkdir(parents=True, exist_ok=True)
        fresh.write_bytes(pickle.dumps((software, kept), pickle.HIGHEST_PROTOCOL))
        fresh.replace(file)
