"""Finding a browser of this system: for the tests to drive, and to print to PDF."""

from __future__ import annotations

import os
import shutil
import sys
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path


class ToolMissingError(Exception):
    """A program that is needed is missing; the text says how to get it."""


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of browser: how to get one, its names on the search path, its places off it.

    `variable` is the environment variable in which a reader names one; `package` is Debian's.
    """

    variable: str
    package: str
    to_get: str
    names: tuple[str, ...]
    on_mac: tuple[str, ...]
    on_windows: tuple[str, ...]


CHROMIUM = Kind(
    variable="BANK_CHROMIUM",
    package="chromium",
    to_get="Chromium, Chrome or Edge",
    names=(
        "chromium",
        "chromium-browser",
        "google-chrome",
        "google-chrome-stable",
        "microsoft-edge",
    ),
    on_mac=(
        "Chromium.app/Contents/MacOS/Chromium",
        "Google Chrome.app/Contents/MacOS/Google Chrome",
        "Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    ),
    on_windows=(
        "Google/Chrome/Application/chrome.exe",
        "Chromium/Application/chrome.exe",
        "Microsoft/Edge/Application/msedge.exe",
    ),
)
CHROMIUM_SHELL = Kind(
    variable=CHROMIUM.variable,
    package="chromium-headless-shell",
    to_get="Chromium's headless shell",
    names=("chromium-headless-shell", "chrome-headless-shell"),
    on_mac=(),
    on_windows=(),
)
"""The same Chromium without its windows: opening a page costs a quarter of the processor's time."""
FIREFOX = Kind(
    variable="BANK_FIREFOX",
    package="firefox-esr",
    to_get="Firefox",
    names=("firefox-esr", "firefox"),
    on_mac=("Firefox.app/Contents/MacOS/firefox",),
    on_windows=("Mozilla Firefox/firefox.exe",),
)


def installed_browsers(kind: Kind = CHROMIUM) -> Iterator[Path]:
    """The browsers of one kind on this system, the one that the reader named first."""
    named = os.environ.get(kind.variable)
    if named:
        yield present_browser(kind, Path(named))
    for name in kind.names:
        on_path = shutil.which(name)
        if on_path:
            yield Path(on_path)
    yield from (path for path in usual_places(kind, sys.platform, os.environ) if path.is_file())


def present_browser(kind: Kind, path: Path) -> Path:
    """The browser that the reader named, where it is a file."""
    if not path.is_file():
        raise ToolMissingError(f"{kind.variable} names {path}, where there is no file: correct it")
    return path


def usual_places(kind: Kind, platform: str, environment: Mapping[str, str]) -> list[Path]:
    """Where browsers are usually installed on Windows and macOS, off the search path."""
    if platform == "win32":
        names = ("PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA")
        folders = [Path(environment[name]) for name in names if environment.get(name)]
        return [folder / browser for folder in folders for browser in kind.on_windows]
    if platform == "darwin":
        homes = (Path("/"), Path(environment.get("HOME", "/")))
        return [home / "Applications" / browser for home in homes for browser in kind.on_mac]
    return []
