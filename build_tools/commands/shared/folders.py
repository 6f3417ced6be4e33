"""The folders that commands are given: the units, and the one that readers open."""

from __future__ import annotations

from argparse import ArgumentParser
from pathlib import Path

from build_tools.disk.places import PROJECT
from build_tools.misuse import Misuse


def take_content(parser: ArgumentParser) -> None:
    """Let a command be given the folder of units."""
    parser.add_argument(
        "--content", type=Path, default=PROJECT / "content", help="the folder of units"
    )


def take_readers_folder(parser: ArgumentParser) -> None:
    """Let a command be given the folder that readers open."""
    parser.add_argument("folder", type=Path, help="the folder that readers open")


def existing_content(content: Path) -> Path:
    """The content folder as a whole path; raises Misuse where there is none."""
    whole = whole_path(content)
    if whole is None or not whole.is_dir():
        raise Misuse(f"there is no folder {content}; give the folder that holds bank.yml and units")
    return whole


def existing_readers_folder(folder: Path) -> Path:
    """The folder that readers open as a whole path; raises Misuse where there is none."""
    whole = folder.resolve()
    if not whole.is_dir():
        raise Misuse(f"{whole} is not a folder; name the folder that readers open")
    return whole


def whole_path(path: Path) -> Path | None:
    """The whole path of what exists; None where nothing does, or nothing could."""
    try:
        return path.resolve(strict=True)
    except (OSError, RuntimeError, ValueError):
        return None


def below_content(content: Path, path: str) -> str:
    """A path that was typed, relative to the folder `content`, with `/`.

    Raises Misuse where it does not exist or lies outside that folder.
    """
    whole = whole_path(Path(path))
    if whole is None:
        raise Misuse(f"there is no file or folder {path}")
    try:
        return whole.relative_to(content).as_posix()
    except ValueError:
        raise Misuse(f"{path} lies outside {content}, so nothing in it is checked") from None
