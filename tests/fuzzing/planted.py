"""A reader with a fault that only its own branches lead to, to see that the fuzzer follows them."""

from __future__ import annotations


def falls(data: bytes) -> None:
    """Falls over for what starts with four letters, found one by one."""
    for found, wanted in zip(data, b"fell", strict=False):
        if found != wanted:
            return
    if len(data) >= len(b"fell"):
        raise ZeroDivisionError("planted")
