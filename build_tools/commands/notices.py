"""notices: write the notices of all parts anew."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.project import notices


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("--check", action="store_true", help="only say whether they are fresh")


def run(args: Namespace) -> int:
    """Give 1 where `--check` finds them stale, else 0."""
    return DONE if notices.run(args.check) else STOPPED
