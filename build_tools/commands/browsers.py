"""Finding a browser of this system: for the tests to drive, and to print to PDF."""

from __future__ import annotations

import os
import shutil
import sys
from collections.abc import Iterator, Mapping
from pathlib import Path

BROWSER_NAMES = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "microsoft-edge",
)
MAC_BROWSERS = (
    "Chromium.app/Contents/MacOS/Chromium",
    "Google Chrome.app/Contents/MacOS/Google Chrome",
    "Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
)
WINDOWS_BROWSERS = (
    "Google/Chrome/Application/chrome.exe",
    "Chromium/Application/chrome.exe",
    "Microsoft/Edge/Application/msedge.exe",
)


class ToolMissingError(Exception):
    """A program that is needed is missing; the text says how to get it."""


def installed_browsers() -> Iterator[Path]:
    """The browsers of this system, the one named in BANK_CHROMIUM first."""
    named = os.environ.get("BANK_CHROMIUM")
    if named:
        yield present_browser(Path(named))
    for name in BROWSER_NAMES:
        on_path = shutil.which(name)
        if on_path:
            yield Path(on_path)
    yield from (path for path in usual_places(sys.platform, os.environ) if path.is_file())


def present_browser(path: Path) -> Path:
    """The browser that the reader named, where it is a file."""
    if not path.is_file():
        raise ToolMissingError(f"BANK_CHROMIUM names {path}, where there is no file: correct it")
    return path


def usual_places(platform: str, environment: Mapping[str, str]) -> list[Path]:
    """Where browsers are usually installed on Windows and macOS, off the search path."""
    if platform == "win32":
        names = ("PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA")
        folders = [Path(environment[name]) for name in names if environment.get(name)]
        return [folder / browser for folder in folders for browser in WINDOWS_BROWSERS]
    if platform == "darwin":
        homes = (Path("/"), Path(environment.get("HOME", "/")))
        return [home / "Applications" / browser for home in homes for browser in MAC_BROWSERS]
    return []
