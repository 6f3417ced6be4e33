"""`watch`: what is wrong is said within a second of saving, and the preview shows it."""

from __future__ import annotations

import json
import os
import queue
import signal
import socket
import subprocess
import sys
import threading
import time
import urllib.error
import urllib.request
import webbrowser
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import urlsplit

import pytest

from build_tools import cli
from build_tools.building.preview.server import serve
from build_tools.building.preview.state import State
from build_tools.use_cases.watch import ProblemsFound, Written
from tests.support.banks import BASE_UNIT, ROOT, change, copy_base
from tests.support.processes import end_first, nothing_left_of

LESSON = f"units/{BASE_UNIT}/lesson-1.md"
PATIENCE_SECONDS = 60
PROMISED_SECONDS = 1.0


@dataclass
class Watching:
    """`watch` in a process of its own, and the lines it prints with their times."""

    process: subprocess.Popen[str]
    lines: queue.Queue[tuple[float, str]] = field(default_factory=queue.Queue)
    seen: list[str] = field(default_factory=list)

    def read(self) -> None:
        assert self.process.stdout is not None
        for line in self.process.stdout:
            self.lines.put((time.monotonic(), line.rstrip("\n")))

    def wait_for(self, part: str) -> tuple[float, str]:
        """The next line with `part` in it, and when it came."""
        end = time.monotonic() + PATIENCE_SECONDS
        while True:
            try:
                when, line = self.lines.get(timeout=max(0.0, end - time.monotonic()))
            except queue.Empty:
                raise AssertionError(f"no line with {part!r} came; {self.seen}") from None
            self.seen.append(line)
            if part in line:
                return when, line


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    return copy_base(tmp_path)


@pytest.fixture
def watching(bank: Path, tmp_path: Path) -> Iterator[Watching]:
    (tmp_path / "temporary").mkdir()
    command = [sys.executable, "-P", "-m", "build_tools", "watch", "--port", "0"]
    process = subprocess.Popen(
        [*command, "--content", str(bank)],
        cwd=ROOT,
        env=dict(os.environ) | {"PYTHONUTF8": "1", "TMPDIR": str(tmp_path / "temporary")},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        # a group of its own, which gets Ctrl-C as a whole, as from a terminal
        start_new_session=True,
    )
    found = Watching(process)
    threading.Thread(target=found.read, daemon=True).start()
    try:
        yield found
    finally:
        if process.poll() is None:
            os.killpg(process.pid, signal.SIGKILL)
            process.wait()


def get(url: str) -> tuple[int, str, str]:
    """Status, kind and text of what the preview serves."""
    try:
        with urllib.request.urlopen(url, timeout=PATIENCE_SECONDS) as answer:
            return answer.status, answer.headers["Content-Type"], answer.read().decode("utf-8")
    except urllib.error.HTTPError as error:
        return error.code, "", ""


def until_it_says(words: str, url: str) -> None:
    """Wait for a page: what is saved while pages are drawn may be on them already."""
    end = time.monotonic() + PATIENCE_SECONDS
    while words not in get(url)[2]:
        assert time.monotonic() < end, f"the page does not say {words!r}"
        time.sleep(0.1)


def state(address: str) -> dict[str, object]:
    _, kind, text = get(f"{address}/preview-state.json?1")
    assert kind == "application/json"
    found: dict[str, object] = json.loads(text)
    return found


def test_a_whole_morning_of_writing(watching: Watching, bank: Path, tmp_path: Path) -> None:
    _, line = watching.wait_for("preview on http://127.0.0.1:")
    address = line.removeprefix("preview on ").removesuffix("/index.html")
    watching.wait_for("no problems")
    watching.wait_for("every page written")

    status, kind, page = get(f"{address}/index.html")
    assert (status, kind) == (200, "text/html; charset=utf-8")
    assert page.count('<script defer src="preview.js"></script></head>') == 1
    assert get(f"{address}/")[2] == page
    assert get(f"{address}/units/{BASE_UNIT}/lesson-1.html")[0] == 200
    assert get(f"{address}/preview.js")[:2] == (200, "text/javascript; charset=utf-8")
    assert get(f"{address}/nowhere.html")[0] == 404
    assert get(f"{address}/../../etc/passwd")[0] == 400
    # without the secret there is nothing
    assert get(f"{address.rpartition('/')[0]}/index.html")[0] == 404
    before = state(address)
    assert before["problems"] == ""

    # three faults saved one after another: the quickest shows what the tool itself needs,
    # whatever else this machine is doing
    took = []
    for number in (401, 402, 403):
        change(
            bank / LESSON,
            f"\nminutes: {number - 1 if number > 401 else 40}\n",
            f"\nminutes: {number}\n",
        )
        saved = time.monotonic()
        when, line = watching.wait_for(f"`minutes` is {number}")
        took.append(when - saved)
        assert line.startswith(f"content/{LESSON}:")
        watching.wait_for("1 error")
        time.sleep(0.05)  # what is said beside the page follows what is printed
    assert min(took) < PROMISED_SECONDS, took

    said = state(address)
    assert "`minutes` is 403" in str(said["problems"])
    # the page follows what is written, and its error is marked on it
    until_it_says("403", f"{address}/units/{BASE_UNIT}/lesson-1.html")
    assert said["older"] == []

    change(bank / LESSON, "\ntitle: ", "\ntitle: New ")
    change(bank / LESSON, "\nminutes: 403\n", "\nminutes: 40\n")
    watching.wait_for("no problems")
    until_it_says("New ", f"{address}/units/{BASE_UNIT}/lesson-1.html")
    end = time.monotonic() + PATIENCE_SECONDS
    while state(address)["number"] == before["number"]:
        assert time.monotonic() < end, "no page was told to load itself anew"
        time.sleep(0.05)
    assert state(address)["problems"] == ""

    # a unit that is deleted ends nothing
    for file in sorted((bank / "units" / BASE_UNIT).rglob("*.md")):
        file.unlink()
    watching.wait_for("the unit has no file unit.md")
    assert watching.process.poll() is None

    os.killpg(watching.process.pid, signal.SIGINT)
    assert watching.process.wait(PATIENCE_SECONDS) == 130
    assert nothing_left_of(watching.process.pid)
    assert list((tmp_path / "temporary").iterdir()) == []
    time.sleep(0.2)
    left = "\n".join(watching.seen + [line for _, line in list(watching.lines.queue)])
    assert "Traceback" not in left
    assert "KeyboardInterrupt" not in left


@pytest.mark.parametrize("port", ["-1", "65536", "99999999999"])
def test_a_port_that_is_none(bank: Path, port: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["watch", "--content", str(bank), f"--port={port}"]) == 2
    assert "try --port 0" in capsys.readouterr().err


def test_a_port_in_use(bank: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    preview = serve(tmp_path, 0, State())
    try:
        port = preview.server.server_port
        assert cli.main(["watch", "--content", str(bank), f"--port={port}"]) == 2
    finally:
        preview.stop()
    assert "cannot be used" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("terminal", "asked", "times"),
    [(True, [], 1), (True, ["--no-browser"], 0), (False, [], 0)],
    ids=["somebody looks", "nothing is to be opened", "nobody looks"],
)
def test_the_first_pages_are_shown_once_where_somebody_looks(
    bank: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    terminal: bool,
    asked: list[str],
    times: int,
) -> None:
    opened: list[str] = []
    monkeypatch.setattr(webbrowser, "open", opened.append)
    monkeypatch.setattr(sys.stdout, "isatty", lambda: terminal)
    monkeypatch.setenv("DISPLAY", ":0")
    seen = [ProblemsFound(()), Written(()), Written(("every page",)), Written(("every page",))]
    monkeypatch.setattr("build_tools.commands.watch.watch", lambda *_: iter(seen))
    assert cli.main(["watch", "--content", str(bank), "--port=0", *asked]) == 0
    waits, first = capsys.readouterr().out.splitlines()[:2]
    # found in a trial: the address alone, a minute before there was a page, was taken for broken
    assert waits == "making the pages, about 10 seconds; then open"
    assert [f"preview on {address}" for address in opened] == [first] * times


@pytest.mark.parametrize(
    "number",
    [
        signal.SIGTERM,
        pytest.param(signal.SIGHUP, marks=pytest.mark.thorough),
        pytest.param(signal.SIGKILL, marks=pytest.mark.thorough),
    ],
)
def test_ending_its_first_process_ends_all_of_it(
    watching: Watching, tmp_path: Path, number: int
) -> None:
    port = port_of(watching)
    watching.wait_for("every page written")
    ended_by(number, watching, port, tmp_path)


def port_of(watching: Watching) -> int:
    _, line = watching.wait_for("preview on http://127.0.0.1:")
    port = urlsplit(line.removeprefix("preview on ")).port
    assert port is not None
    return port


def ended_by(number: int, watching: Watching, port: int, around: Path) -> None:
    """End the first process with a signal: nothing of it runs on, or is left in its folder."""
    temporary = around / "temporary"
    assert len(list(temporary.iterdir())) == 1
    code = end_first(watching.process, number)
    assert nothing_left_of(watching.process.pid)
    with socket.socket() as asked:
        assert asked.connect_ex(("127.0.0.1", port)) != 0
    if number != signal.SIGKILL:
        assert code == 128 + number
        assert list(temporary.iterdir()) == []
