"""`watch`: a live preview; problems are said as soon as a file is saved."""

from __future__ import annotations

import queue
import tempfile
import time
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path

from watchdog.events import FileSystemEvent, FileSystemEventHandler
from watchdog.observers import Observer

from build_tools.building.rebuild import Touched, again, rebuild, touched
from build_tools.checking.check_bank import check_folder
from build_tools.checking.quick_check import quick_check
from build_tools.checking.report_text import as_text, counted
from build_tools.commands.preview_server import State, serve
from build_tools.misuse import Misuse
from build_tools.problem import Problem

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
        out, kept = Path(folder) / "site", Path(folder) / "kept.json"
        out.mkdir()
        try:
            server = serve(out, port, state)
        except OSError as error:
            raise Misuse(f"port {port} cannot be used ({error.strerror}); try --port 0") from None
        observer.start()
        try:
            print(f"preview on http://127.0.0.1:{server.server_port}/index.html", flush=True)
            print("save a file to check it; Ctrl-C ends this", flush=True)
            report = check_folder(content)
            _tell(content, report.problems, state)
            _show(rebuild(content, out, Touched(frozenset(), True), report), state)
            while True:
                what = touched(content, _next_save(saved))
                # the problems first, since they are what the author waits for; then the pages
                now = quick_check(content, kept)
                _tell(content, now.problems, state)
                report = again(content, report, what, now)
                _show(rebuild(content, out, what, report), state)
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


def _tell(content: Path, problems: Sequence[Problem], state: State) -> None:
    text = as_text(problems, f"{content.name}/") + "\n" if problems else ""
    print(f"\n{text}{counted(problems)}", flush=True)
    state.say(text)


def _show(written: Sequence[str], state: State) -> None:
    for pages in written:
        print(f"{pages} written", flush=True)
    if written:
        state.rebuilt()
