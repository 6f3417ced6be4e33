"""Work that wants too much of one thing, for another process to try."""

from __future__ import annotations

import os
import re
import tempfile
import time
from pathlib import Path


def adds(one: int, other: int) -> int:
    return one + other


def divides(one: int, other: int) -> float:
    return one / other


def recurses(depth: int) -> int:
    return recurses(depth + 1)


def where() -> str:
    with tempfile.TemporaryDirectory() as made:
        return made


def thinks() -> bool:
    """A pattern that tries every way to part a text, within one call that nothing interrupts."""
    return re.match(r"(a+)+\Z", "a" * 60 + "b") is None


def sleeps(seconds: float) -> None:
    time.sleep(seconds)


def remembers(size: int) -> int:
    """Memory that is really used, a mebibyte at a time."""
    held = [b"x" * 2**20 + b"%d" % n for n in range(size)]
    return len(held)


def asks_at_once(size: int) -> int:
    return len(bytes(size))


def writes(files: int, size: int) -> int:
    room = Path(tempfile.gettempdir())
    for n in range(files):
        (room / f"{n}").write_bytes(b"x" * size)
        time.sleep(0.01)
    return files


def says(size: int) -> bytes:
    return os.urandom(size)


def dies(code: int) -> None:
    os._exit(code)
