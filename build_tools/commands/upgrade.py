"""upgrade: rewrite units of an earlier format in this one, and say what is left to you."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.use_cases.upgrade import NotUpgraded, upgrade


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("units", nargs="*", help="the units' folder names; all if none is named")
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when all are in this format; 1 when one was left as it was."""
    content = existing_content(args.content)
    outcome = DONE
    for one in upgrade(content, args.units):
        if isinstance(one, NotUpgraded):
            outcome = STOPPED
            if one.problems:
                print(as_text(one.problems, f"{content.name}/"))
            print(f"{one.file}: {one.reason}; it was left as it is")
            continue
        if not one.done:
            print(f"{one.file}: nothing to do")
        for line in one.done:
            print(f"{one.file}: {line}")
        for line in one.left:
            print(f"{one.file}: left to you: {line}")
    return outcome
