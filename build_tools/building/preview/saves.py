"""What is saved below a folder, as it is saved."""

from __future__ import annotations

import queue
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from watchdog.events import FileSystemEvent, FileSystemEventHandler
from watchdog.observers import Observer

from build_tools.disk.stray_files import is_stray

SETTLE_SECONDS = 0.1
"""Editors save in several small steps; one save is one change."""
WAKE_SECONDS = 0.5


class _Saved(FileSystemEventHandler):
    def __init__(self) -> None:
        self.paths: queue.Queue[Path] = queue.Queue()

    def on_any_event(self, event: FileSystemEvent) -> None:
        """Note every change but a mere look at a file, and what editors do beside it."""
        if event.event_type in ("opened", "closed_no_write") or event.is_directory:
            return
        for path in (event.src_path, getattr(event, "dest_path", "")):
            saved = Path(str(path))
            if path and not is_stray(saved.name):
                self.paths.put(saved)


@contextmanager
def saves_below(folder: Path) -> Iterator[Iterator[list[Path]]]:
    """The saves below `folder` from now on, each with its files; waits for the next one."""
    saved = _Saved()
    observer = Observer()
    observer.schedule(saved, str(folder), recursive=True)
    observer.start()
    try:
        yield _each(saved)
    finally:
        observer.stop()


def _each(saved: _Saved) -> Iterator[list[Path]]:
    while True:
        paths: list[Path] = []
        while not paths:
            # on Windows a wait without an end cannot be ended by Ctrl-C
            with suppress(queue.Empty):
                paths.append(saved.paths.get(timeout=WAKE_SECONDS))
        time.sleep(SETTLE_SECONDS)
        while not saved.paths.empty():
            paths.append(saved.paths.get())
        yield paths
