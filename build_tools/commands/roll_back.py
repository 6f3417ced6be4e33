"""roll-back: give readers an earlier edition again."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_readers_folder, take_readers_folder
from build_tools.publishing.roll_back import roll_back
from build_tools.publishing.trouble import CannotPublishError


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    take_readers_folder(parser)
    parser.add_argument("--to", help="which edition; without it, the one before")


def run(args: Namespace) -> int:
    """Give 0 when readers get it; 1 when there is no such edition, or it is not whole."""
    try:
        edition = roll_back(existing_readers_folder(args.folder), args.to)
    except CannotPublishError as stopped:
        print(stopped)
        return STOPPED
    print(f"readers now get {edition}")
    return DONE
