"""lock: make the locks anew after a change of parts."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.project import lock


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("--upgrade", action="store_true", help="choose newer versions too")


def run(args: Namespace) -> int:
    """Give the exit code of what makes them."""
    return lock.run(upgrade=args.upgrade)
