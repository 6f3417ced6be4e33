"""Ending when asked to, with everything cleared up first, as after Ctrl-C."""

from __future__ import annotations

import signal
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from types import FrameType

ASKED_TO_END = ("SIGTERM", "SIGHUP")
"""What `kill`, a closed window or a computer that shuts down sends; Windows has only the first."""


def end_in_order() -> None:
    """Let such a signal end the program as an exit does, with the code 128 + the signal's number.

    One that is ignored already, as below `nohup`, stays so.
    """
    for name in ASKED_TO_END:
        number = getattr(signal, name, None)
        if number is not None and signal.getsignal(number) is signal.SIG_DFL:
            signal.signal(number, _end)


def _end(number: int, _: FrameType | None) -> None:
    raise SystemExit(128 + number)
