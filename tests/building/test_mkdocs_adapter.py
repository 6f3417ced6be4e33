"""`mkdocs build` gives the bytes of `site`, `mkdocs serve` shows a saved change."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import time
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

import pytest

from build_tools import cli
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.built_sites import ROOT, files

PATIENCE = 120.0


@pytest.fixture
def bank(tmp_path: Path) -> Path:
    """A bank with a `mkdocs.yml` of its own beside it, that of the project."""
    (tmp_path / "mkdocs.yml").write_bytes((ROOT / "mkdocs.yml").read_bytes())
    return copy_base(tmp_path)


def mkdocs(*line: str, folder: Path) -> list[str]:
    return [sys.executable, "-m", "mkdocs", *line, "-f", str(folder / "mkdocs.yml")]


def test_mkdocs_build_gives_the_bytes_of_site(bank: Path, tmp_path: Path) -> None:
    done = subprocess.run(
        mkdocs("build", folder=tmp_path), cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    assert cli.main(["site", "--content", str(bank), "--out", str(tmp_path / "ours")]) == 0
    assert files(tmp_path / "site") == files(tmp_path / "ours")
    assert {path.name for path in tmp_path.iterdir()} == {"content", "mkdocs.yml", "ours", "site"}


def test_errors_stop_it_and_are_said(bank: Path, tmp_path: Path) -> None:
    lesson = bank / "units" / BASE_UNIT / "lesson-1.md"
    change(lesson, "\nminutes: 40\n", "\nminutes: 400\n")
    done = subprocess.run(
        mkdocs("build", folder=tmp_path), cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 1
    assert "`minutes` is 400" in done.stderr
    assert "1 error; nothing was built" in done.stderr
    assert not (tmp_path / "site" / "index.html").exists()


def test_mkdocs_serve_shows_a_saved_change(bank: Path, tmp_path: Path) -> None:
    with served(tmp_path) as address:
        page = f"{address}units/{BASE_UNIT}/lesson-1.html"
        assert "A wholly new focus" not in shown(page, "</html>")
        lesson = bank / "units" / BASE_UNIT / "lesson-1.md"
        change(lesson, "\nfocus: ", "\nfocus: A wholly new focus, ")
        html = shown(page, "A wholly new focus")
        assert "script-src 'self' 'unsafe-inline'" in html


@contextmanager
def served(folder: Path) -> Iterator[str]:
    """The bank in `folder` served by MkDocs, from the moment that it answers."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    line = mkdocs("serve", "-a", f"127.0.0.1:{port}", folder=folder)
    process = subprocess.Popen(
        line, cwd=ROOT, env=dict(os.environ), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    )
    try:
        address = f"http://127.0.0.1:{port}/"
        shown(address, "</html>")
        yield address
    finally:
        process.terminate()
        process.wait()


def shown(address: str, words: str) -> str:
    """The page at `address`, once it holds `words`; fails where it never does."""
    until, page = time.monotonic() + PATIENCE, ""
    while time.monotonic() < until:
        with suppress(OSError), urllib.request.urlopen(address, timeout=5) as answer:
            page = str(answer.read(), "utf-8")
            if words in page:
                return page
        time.sleep(0.2)
    raise AssertionError(f"{words!r} never came: {page[:2000]}")
