"""Render every piece into its unit: python -m composing [FOLDER OF UNITS]."""

from __future__ import annotations

import importlib
import pkgutil
import sys
from collections.abc import Iterator
from pathlib import Path

import composing
from composing.piece import Piece, recorded


def pieces() -> Iterator[Piece]:
    """Every piece: each module beside this one that has a `PIECE`."""
    for module in pkgutil.iter_modules(composing.__path__):
        if module.name != "__main__":
            piece = getattr(importlib.import_module(f"composing.{module.name}"), "PIECE", None)
            if isinstance(piece, Piece):
                yield piece


if __name__ == "__main__":
    units = Path(sys.argv[1] if len(sys.argv) > 1 else "content/units")
    for one in pieces():
        path = recorded(one, units)
        print(f"{path}: {one.seconds:.0f} s at {one.tempo}, {path.stat().st_size:,} bytes")
