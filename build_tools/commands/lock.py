"""lock: make the locks anew after a change of parts."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.project import lock


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("--upgrade", action="store_true", help="choose newer versions too")


def run(args: Namespace) -> int:
    """Give 0 when both are made; 1 when what makes them is missing or stopped."""
    return DONE if lock.run(upgrade=args.upgrade) else STOPPED
