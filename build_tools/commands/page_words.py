"""page-words: gather the words of pages into their tables, a language each."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.project import page_tables


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("--check", action="store_true", help="only say whether they are fresh")


def run(args: Namespace) -> int:
    """Give 1 where `--check` finds them stale, else 0."""
    return DONE if page_tables.run(only_look=args.check) else STOPPED
