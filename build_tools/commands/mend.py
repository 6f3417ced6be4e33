"""mend: make a published folder whole again from what is whole in it."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import STOPPED, stopped_if
from build_tools.commands.shared.folders import existing_readers_folder, take_readers_folder
from build_tools.publishing.mend import mend_folder
from build_tools.publishing.trouble import CannotPublishError


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    take_readers_folder(parser)


def run(args: Namespace) -> int:
    """Give 0 when the folder is whole; 1 when something in it needs new pages, or cannot be."""
    try:
        mended = mend_folder(existing_readers_folder(args.folder))
    except CannotPublishError as stopped:
        print(stopped)
        return STOPPED
    for line in (*mended.done, *mended.left):
        print(line)
    if not mended.done and not mended.left:
        print("every file is as it was published; there was nothing to mend")
    return stopped_if(mended.left)
