"""What a command's exit code says, to a shell and to whatever runs it."""

from __future__ import annotations

from typing import Final

DONE: Final = 0
"""What was asked is done, or was done already; what was checked has nothing to mend."""
STOPPED: Final = 1
"""Something has to be mended first, as an error in a unit or a full disk; the words say what."""
MISUSE: Final = 2
"""What was typed cannot be asked; argparse gives the same."""
BUG: Final = 3
"""A fault of the bank's software, not of the units."""
INTERRUPTED: Final = 130
"""Ended with Ctrl-C: 128 and the signal's number, as shells say it (POSIX)."""


def stopped_if(stands_in_the_way: object) -> int:
    """STOPPED where something stands in the way, as a list of faults that is not empty."""
    return STOPPED if stands_in_the_way else DONE
