"""test: run every check of the project itself."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.project import test


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("--thorough", action="store_true", help="at the larger sizes")
    parser.add_argument("rest", nargs="*", metavar="-- PYTEST ARGUMENTS", help="handed to pytest")


def run(args: Namespace) -> int:
    """Give 1 if any check failed, else 0."""
    return DONE if test.run(args.thorough, args.rest) else STOPPED
