"""`watch`: a live preview; problems are said as soon as a file is saved."""

from __future__ import annotations

import queue
import tempfile
import time
from contextlib import suppress
from pathlib import Path

from watchdog.events import FileSystemEvent, FileSystemEventHandler
from watchdog.observers import Observer

from build_tools.commands.misuse import Misuse
from build_tools.commands.preview_server import State, serve
from build_tools.pipeline import Report, check_folder
from build_tools.reports.text import as_text, counted
from build_tools.watching import Touched, rebuild, touched

SETTLE_SECONDS = 0.1
"""Editors save in several small steps; one save is one change."""


WAKE_SECONDS = 0.5
MOST_PORT = 65535


class _Saved(FileSystemEventHandler):
    def __init__(self) -> None:
        self.paths: queue.Queue[Path] = queue.Queue()

    def on_any_event(self, event: FileSystemEvent) -> None:
        """Note every change but a mere look at a file."""
        if event.event_type in ("opened", "closed_no_write") or event.is_directory:
            return
        for path in (event.src_path, getattr(event, "dest_path", "")):
            if path:
                self.paths.put(Path(str(path)))


def run(content: Path, port: int) -> int:
    """Watch `content` until interrupted, with a preview on this machine's `port`."""
    if not 0 <= port <= MOST_PORT:
        raise Misuse(f"port {port} is not one of 0 to {MOST_PORT}; try --port 0")
    saved, state = _Saved(), State()
    observer = Observer()
    observer.schedule(saved, str(content), recursive=True)
    with tempfile.TemporaryDirectory(prefix="preview-") as folder:
        out = Path(folder)
        try:
            server = serve(out, port, state)
        except OSError as error:
            raise Misuse(f"port {port} cannot be used ({error.strerror}); try --port 0") from None
        observer.start()
        try:
            print(f"preview on http://127.0.0.1:{server.server_port}/index.html", flush=True)
            print("save a file to check it; Ctrl-C ends this", flush=True)
            _once(content, out, Touched(frozenset(), True), state)
            while True:
                _once(content, out, touched(content, _next_save(saved)), state)
        finally:
            observer.stop()
            server.shutdown()


def _next_save(saved: _Saved) -> list[Path]:
    paths: list[Path] = []
    while not paths:
        # on Windows a wait without an end cannot be ended by Ctrl-C
        with suppress(queue.Empty):
            paths.append(saved.paths.get(timeout=WAKE_SECONDS))
    time.sleep(SETTLE_SECONDS)
    while not saved.paths.empty():
        paths.append(saved.paths.get())
    return paths


def _once(content: Path, out: Path, what: Touched, state: State) -> None:
    """Say the problems first, since they are what the author waits for; then the pages."""
    report = check_folder(content)
    text = _problems(content, report)
    print(f"\n{text}{counted(report.problems)}", flush=True)
    for written in rebuild(content, out, what, report):
        print(f"{written} written", flush=True)
    state.changed(text)


def _problems(content: Path, report: Report) -> str:
    return as_text(report.problems, f"{content.name}/") + "\n" if report.problems else ""
