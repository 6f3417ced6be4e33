"""adapt: make a unit of your own from another, with its credits."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.use_cases.adapt import NotAdapted, Wishes, adapt


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("unit", help="the unit's folder name")
    parser.add_argument("slug", help="the name of your own folder")
    parser.add_argument("--title", help="your unit's title")
    parser.add_argument("--publisher", help="who issues your unit")
    parser.add_argument(
        "--licence", help="your unit's licence, where the other one leaves a choice"
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when it is there; 1 when the unit has faults of shape or its licence forbids it."""
    content = existing_content(args.content)
    wishes = Wishes(args.title, args.publisher, args.licence)
    made = adapt(content, Path(args.unit).name, args.slug, wishes)
    if isinstance(made, NotAdapted):
        if made.problems:
            print(as_text(made.problems, f"{content.name}/"))
        print(f"{made.reason}; nothing was written")
        return STOPPED
    print(f"{made.folder.as_posix()} is your own draft under {made.licence}, ", end="")
    print(f"made from {made.made_from}.")
    print("Write what you changed in it under `adapted_from`, then run `check`.")
    return DONE
