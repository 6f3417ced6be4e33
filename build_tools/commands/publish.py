"""publish: put a new edition into a folder others read."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from collections.abc import Sequence
from pathlib import Path

from build_tools.building.ready import ready_to_publish
from build_tools.checking.quick_check import quick_check
from build_tools.checking.report_text import one_line
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import (
    existing_content,
    take_content,
    take_readers_folder,
)
from build_tools.commands.shared.progress import progress
from build_tools.commands.shared.saying import say_ready
from build_tools.disk.places import PROJECT
from build_tools.publishing.editions_kept import KEEP
from build_tools.publishing.trouble import CannotPublishError
from build_tools.unit_editions.next_number import WrongNumber
from build_tools.use_cases.check import kept_file
from build_tools.use_cases.publish_site import (
    publish_site,
    refuse_folder,
    units_as_written,
    wrong_numbers,
)
from build_tools.views.words.plain_words import how_many


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    take_readers_folder(parser)
    parser.add_argument("--keep", type=int, default=KEEP, help="how many editions stay at least")
    parser.add_argument(
        "--strict",
        action="store_true",
        help="all or nothing: an error in one unit stops all, and so does an edition number that "
        "is not the one its changes call for",
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when it is published or was already; 1 when it could not be.

    Errors in the bank, the disk or another publisher may stand in the way, and then readers still
    have the edition they had.
    """
    content, target = existing_content(args.content), args.folder.resolve()
    refuse_folder(content, target, args.keep)
    report = quick_check(content, kept_file(PROJECT, content))
    ready = ready_to_publish(report, content, strict=args.strict)
    otherwise = "nothing was published, and the last edition stands"
    say_ready(ready, report.skipped, content, otherwise)
    if ready.wanted is None:
        return STOPPED
    units = units_as_written(ready.wanted)
    wrong = wrong_numbers(content, units, target)
    _say_wrong(wrong, content)
    if wrong and args.strict:
        print(f"{how_many(len(wrong), 'edition number')} to mend; {otherwise}")
        return STOPPED
    try:
        done = publish_site(ready.wanted, units, target, args.keep, progress("drawn"))
    except CannotPublishError as stopped:
        print(stopped)
        return STOPPED
    for line in done.mended:
        print(f"mended: {line}")
    if not done.new:
        print(f"the current edition {done.edition} has the same pages; nothing to publish")
        return DONE
    print(f"published {done.edition}: give readers {(target / 'index.html').as_posix()}")
    if done.taken_out:
        gone = ", ".join(done.taken_out)
        print(f"taken out, since {args.keep} editions are kept: {gone}; their pages lead on")
    return DONE


def _say_wrong(wrong: Sequence[WrongNumber], content: Path) -> None:
    """Say of each unit which number its changes call for, what they are, and how to mend it."""
    for one in wrong:
        place = f"{content.name}/units/{one.slug}/unit.md:{one.line}"
        print(f"{place}: {one_line(one.said())}")
        for change in one.changes():
            print(f"    - {one_line(change)}")
        print(f"    to mend it: {one.help()}")
