"""site: publish the pages of a bank without errors."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from dataclasses import replace
from pathlib import Path

from build_tools.building.finishing.pdf_printing import browser_to_print
from build_tools.building.ready import ready_to_publish
from build_tools.building.site_record import record_file
from build_tools.checking.quick_check import quick_check
from build_tools.checking.report_text import counted
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.commands.shared.progress import progress
from build_tools.commands.shared.saying import say_ready
from build_tools.disk.places import PROJECT
from build_tools.use_cases.build_site import build, refuse_folder, reviewed
from build_tools.use_cases.check import kept_file
from build_tools.views.words.plain_words import how_many


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument(
        "--out", type=Path, default=PROJECT / "site", help="the folder to publish in"
    )
    parser.add_argument("--review", action="store_true", help="add the advisers' page review.html")
    parser.add_argument(
        "--keep",
        action="store_true",
        help="add each lesson as one file, for readers without script, and as a word-processor "
        "file",
    )
    parser.add_argument("--anew", action="store_true", help="make all of it, whatever was kept")
    parser.add_argument("--pdf", action="store_true", help="print each unit to PDF files as well")
    parser.add_argument(
        "--strict", action="store_true", help="all or nothing: an error in one unit stops all"
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when built; 1 when errors stand in the way, and then the last site stands.

    Raises Misuse where the folder holds something other than a site, since a new site takes its
    place, and where there is no browser to print PDF files.
    """
    content, out = existing_content(args.content), args.out.resolve()
    refuse_folder(content, out)
    browser = browser_to_print() if args.pdf else None
    report = quick_check(content, None if args.anew else kept_file(PROJECT, content))
    ready = ready_to_publish(report, content, strict=args.strict)
    otherwise = "the site was not built, and the last one still stands"
    say_ready(ready, report.skipped, content, otherwise)
    if ready.wanted is None:
        return STOPPED
    wanted = replace(ready.wanted, keep=args.keep)
    wanted = reviewed(wanted, content) if args.review else wanted
    record = None if args.anew else record_file(PROJECT / ".kept", content, out)
    built = build(wanted, out, record, browser, progress("drawn"))
    drafts = len(ready.drafts)
    left_out = f" ({how_many(drafts, 'draft')} left out)" if drafts else ""
    print(f"{counted(ready.problems)}; {how_many(built.units, 'unit')}{left_out}")
    print(f"open {(out / 'index.html').as_posix()}")
    if browser:
        print(f"{built.pdf_files} PDF files in {(out / 'units').as_posix()}/<unit>/pdf")
    if args.review:
        print(f"for advisers: {(out / 'review.html').as_posix()}")
    return DONE
