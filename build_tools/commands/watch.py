"""watch: check and preview while you write."""

from __future__ import annotations

import os
import sys
import webbrowser
from argparse import ArgumentParser, Namespace
from collections.abc import Sequence
from pathlib import Path

from build_tools.building.preview.saves import saves_below
from build_tools.building.preview.server import Preview, serve
from build_tools.building.preview.shown import shown
from build_tools.building.preview.state import State
from build_tools.checking.report_text import as_summary, as_text, counted
from build_tools.commands.shared.exit_codes import DONE
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.disk.scratch import scratch
from build_tools.misuse import Misuse
from build_tools.problem import Problem
from build_tools.use_cases.watch import ProblemsFound, Written, watch

MOST_PORT = 65535
_SECONDS_A_UNIT = 4
"""As measured on two busy cores: thirteen units in 55 seconds."""


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("--port", type=int, default=8765, help="where the preview is served")
    parser.add_argument(
        "--no-browser", action="store_true", help="print the preview's address, and open nothing"
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Watch until interrupted, with a preview on this machine alone."""
    content, state = existing_content(args.content), State(being_made=True)
    with scratch("preview") as folder:
        out = folder / "site"
        out.mkdir()
        preview = _served(out, args.port, state, content)
        try:
            with saves_below(content) as saves:
                print(f"making the pages, about {_seconds(content)} seconds; then open", flush=True)
                print(f"preview on {preview.address}index.html", flush=True)
                print("the address is another each time, and this machine's alone", flush=True)
                print("save a file to check it; Ctrl-C ends this", flush=True)
                opened = args.no_browser or not _somebody_looks()
                for seen in watch(content, saves, out, folder / "kept.json"):
                    if isinstance(seen, ProblemsFound):
                        _tell(content, seen.problems, state)
                        continue
                    _show(seen, state)
                    if seen.pages and not opened:
                        opened = True
                        _open(preview.address)
        finally:
            preview.stop()
    return DONE


def _seconds(content: Path) -> int:
    """About how long the pages take the first time, on a slow or busy computer: to tens."""
    units = sum(1 for _ in content.glob("units/*/unit.md"))
    return max(10, round(units * _SECONDS_A_UNIT, -1))


def _somebody_looks() -> bool:
    """Whether a person sits at a terminal of a system that can show a browser's window."""
    windows = sys.platform in ("win32", "darwin") or bool(
        {"DISPLAY", "WAYLAND_DISPLAY"} & os.environ.keys()
    )
    return windows and sys.stdout.isatty()


def _open(address: str) -> None:
    """Show the front page in the author's browser."""
    webbrowser.open(f"{address}index.html")


def _served(out: Path, port: int, state: State, content: Path) -> Preview:
    if not 0 <= port <= MOST_PORT:
        raise Misuse(f"port {port} is not one of 0 to {MOST_PORT}; try --port 0")
    try:
        return serve(out, port, state, content)
    except OSError as error:
        raise Misuse(f"port {port} cannot be used ({error.strerror}); try --port 0") from None


def _tell(content: Path, problems: Sequence[Problem], state: State) -> None:
    text = as_text(problems, f"{content.name}/") + "\n" if problems else ""
    brief = as_summary(problems, f"{content.name}/") + "\n" if problems else ""
    print(f"\n{brief}{counted(problems)}", flush=True)
    state.say(text, shown(content, problems))


def _show(written: Written, state: State) -> None:
    state.being_made = False
    for pages in written.pages:
        print(f"{pages} written", flush=True)
    state.older(written.older)
    if written.pages:
        state.rebuilt()
