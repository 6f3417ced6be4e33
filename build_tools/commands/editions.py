"""editions: list the editions kept in a folder."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_readers_folder, take_readers_folder
from build_tools.use_cases.publish_site import kept_in


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    take_readers_folder(parser)


def run(args: Namespace) -> int:
    """List them, oldest first; give 1 where nothing has been published yet."""
    target = existing_readers_folder(args.folder)
    kept = kept_in(target)
    if kept is None:
        print(f"{target}: nothing has been published there yet")
        return STOPPED
    for name in kept.editions:
        print(f"{name}  readers get this one" if name == kept.current else name)
    return DONE
