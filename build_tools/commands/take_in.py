"""take-in: take in a unit that another school packed."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.packs.taking_in.arrival import Arrival, arrival_in_words, placing_in_words
from build_tools.use_cases.take_in import STANDS, Declined, HereAlready, NotTakenIn, take_in


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("file", type=Path, help="the pack, a zip file")
    parser.add_argument("--yes", action="store_true", help="answer yes; refusals stay refusals")
    take_content(parser)


def run(args: Namespace) -> int:
    """Show what the pack is, ask unless `--yes`, and take it in.

    Give 0 when it is in or was already, and when the answer is no; 1 when it is refused or the
    disk refuses.
    """
    content = existing_content(args.content)

    def agreed(arrival: Arrival) -> bool:
        print(arrival_in_words(arrival))
        print(placing_in_words(arrival, content))
        return args.yes or _agreed()

    came = take_in(content, args.file, agreed)
    match came:
        case NotTakenIn():
            if came.problems:
                print(as_text(came.problems, f"{args.file.name}: "))
            print(came.reason)
            return 1
        case HereAlready():
            print(arrival_in_words(came.arrival))
            print(f"it is here already: {came.goal.as_posix()}; nothing to take in")
        case Declined():
            print(STANDS)
        case _:
            print(f"taken in: {came.goal.as_posix()}; run `check` to see it among the others")
    return 0


def _agreed() -> bool:
    print("Take it in? yes or no: ", end="", flush=True)
    answer = sys.stdin.readline().strip().casefold()
    if not answer:
        print()
    return answer in ("y", "yes")
