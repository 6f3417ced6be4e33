"""The command line: finds the command's file, and is the one place where our own faults end."""

from __future__ import annotations

import argparse
import importlib
import sys
import traceback
from collections.abc import Sequence
from pathlib import Path

from build_tools.commands.shared.exit_codes import BUG, INTERRUPTED, MISUSE
from build_tools.commands.shared.plain_output import plain_output
from build_tools.misuse import Misuse

COMMANDS = Path(__file__).with_name("commands")


def main(argv: list[str]) -> int:
    """Run one command. Gives one of `commands/shared/exit_codes.py`."""
    with plain_output():
        return _run(argv)


def _run(argv: list[str]) -> int:
    try:
        args = _parser(argv).parse_args(argv)
        code: int = args.run(args)
        return code
    except Misuse as misuse:
        print(misuse, file=sys.stderr)
        return MISUSE
    except KeyboardInterrupt:
        return INTERRUPTED
    except Exception:  # noqa: BLE001 - the one blanket handler, so that a bug has its own exit code
        traceback.print_exc()
        print("This is a fault of the bank's software, not of your units.", file=sys.stderr)
        return BUG


def _parser(argv: Sequence[str]) -> argparse.ArgumentParser:
    """What is understood: each file in commands/ is a command, and its first line tells of it.

    Only the one that is asked for is loaded, so that `check` does not wait for the publisher.
    """
    parser = argparse.ArgumentParser(
        prog="python3 build_tools", description="Write, check and publish units of class dance."
    )
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")
    for file in sorted(COMMANDS.glob("[a-z]*.py")):
        name = file.stem.replace("_", "-")
        command = commands.add_parser(name, help=_help_line(file))
        if name in argv[:1]:
            module = importlib.import_module(f"build_tools.commands.{file.stem}")
            module.arguments(command)
            command.set_defaults(run=module.run)
    return parser


def _help_line(file: Path) -> str:
    with file.open(encoding="utf-8") as text:
        first = text.readline()
    return first.strip().strip('"').partition(": ")[2].rstrip(".")
