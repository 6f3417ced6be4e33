"""take-in: take in a unit that another school packed."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, Namespace
from datetime import date
from pathlib import Path

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.packs.taking_in.arrival_in_words import (
    Arrival,
    arrival_in_words,
    placing_in_words,
    stops_in_words,
)
from build_tools.use_cases.take_in import (
    STANDS,
    Answer,
    Declined,
    HereAlready,
    NotTakenIn,
    TakenIn,
    take_in,
)


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("file", type=Path, help="the pack, a zip file")
    parser.add_argument(
        "--yes",
        action="store_true",
        help="do not ask; refusals stay refusals, and no unit of your own gives up its place",
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Show what the pack is, ask unless `--yes`, and take it in.

    Give 0 when it is in or was already, and when the answer is no; 1 when it is refused or the
    disk refuses.
    """
    content = existing_content(args.content)

    def agreed(arrival: Arrival) -> Answer:
        _show(arrival, content)
        if args.yes:
            return "unasked"
        return _agreed(arrival)

    came = take_in(content, args.file, date.today(), agreed)
    match came:
        case NotTakenIn():
            if came.problems:
                print(as_text(came.problems, f"{args.file.name}: "))
            print(came.reason)
            return STOPPED
        case HereAlready():
            print(arrival_in_words(came.arrival))
            print(f"it is here already: {came.goal.as_posix()}; nothing to take in")
        case Declined():
            print(STANDS)
        case TakenIn():
            print(f"taken in: {came.goal.as_posix()}; run `check` to see it among the others")
    return DONE


def _show(arrival: Arrival, content: Path) -> None:
    print(arrival_in_words(arrival))
    print(placing_in_words(arrival, content))
    if arrival.stops:
        print(stops_in_words(arrival))
        print("with it among the units nothing of the bank could be published")


def _agreed(arrival: Arrival) -> Answer:
    if arrival.placing.instead is None:
        print("Take it in? yes or no: ", end="", flush=True)
    else:
        print("Keep it beside yours? yes or no, or instead (yours is kept in earlier): ", end="")
        sys.stdout.flush()
    answer = sys.stdin.readline().strip().casefold()
    if not answer:
        print()
    if answer == "instead" and arrival.placing.instead is not None:
        return "instead"
    return "yes" if answer in ("y", "yes") else "no"
