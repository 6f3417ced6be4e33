"""Workers of a pool of processes, which end with the process that started them."""

from __future__ import annotations

import os
import signal
import threading
from multiprocessing import connection, parent_process


def end_with_parent() -> None:
    """In a worker: end as soon as the process that started it has ended.

    It would wait for work for ever, since its brothers hold the pipe open that work comes by.
    """
    # How we end in order is for the process that we work for, not for us.
    signal.signal(signal.SIGTERM, signal.SIG_DFL)
    parent = parent_process()
    if parent is not None:
        threading.Thread(target=_watch, args=(parent.sentinel,), daemon=True).start()


def _watch(sentinel: int) -> None:
    connection.wait([sentinel])
    os._exit(1)
