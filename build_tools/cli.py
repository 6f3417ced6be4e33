"""The command line: the one place where a fault of the tool itself is caught."""

from __future__ import annotations

import argparse
import sys
import traceback
from pathlib import Path

from build_tools.misuse import Misuse

PROJECT = Path(__file__).resolve().parents[1]
BUG = 3


def main(argv: list[str]) -> int:
    """Run one command. Returns 0 sound, 1 errors, 2 misuse, 3 a bug in the tool."""
    try:
        return _run(_parser().parse_args(argv))
    except Misuse as misuse:
        print(misuse, file=sys.stderr)
        return 2
    except KeyboardInterrupt:
        return 130
    except Exception:  # noqa: BLE001 - the one blanket handler, so that a bug has its own exit code
        traceback.print_exc()
        print("This is a fault of the bank's software, not of your units.", file=sys.stderr)
        return BUG


def _run(args: argparse.Namespace) -> int:
    # Each command is imported when it is wanted, so that `check` does not wait for the publisher.
    match args.command:
        case "check":
            from build_tools.commands import check

            content = check.existing_content(args.content)
            return check.run(
                content,
                args.path,
                json=args.json,
                strict=args.strict,
                kept_in=check.kept_file(PROJECT, content),
            )
        case "site":
            from build_tools.commands import check, site

            content = check.existing_content(args.content)
            return site.run(content, args.out.resolve(), review=args.review, pdf=args.pdf)
        case "new":
            from build_tools.commands import check, new

            given = new.Given(
                args.title, args.stimulus, args.kinds, args.years, args.lessons, args.minutes,
                args.pattern,
            )  # fmt: skip
            return new.run(args.slug, given, check.existing_content(args.content))
        case "compare":
            from build_tools.commands import compare

            return compare.run(args.old.resolve(), args.new.resolve())
        case "publish":
            from build_tools.commands import check, publish

            content = check.existing_content(args.content)
            return publish.run(content, args.folder.resolve(), args.keep)
        case "roll-back":
            from build_tools.commands import publish

            return publish.go_back(args.folder.resolve(), args.to)
        case "editions":
            from build_tools.commands import publish

            return publish.list_editions(args.folder.resolve())
        case "verify":
            from build_tools.commands import publish

            return publish.look(args.folder.resolve())
        case "explain":
            from build_tools.commands import explain

            return explain.run(args.rule)
        case "watch":
            from build_tools.commands import check, watch

            return watch.run(check.existing_content(args.content), args.port)
        case "pack":
            from build_tools.commands import check, pack

            return pack.run(check.existing_content(args.content), args.unit, args.out)
        case "take-in":
            from build_tools.commands import check, take_in

            return take_in.run(check.existing_content(args.content), args.file, yes=args.yes)
        case "adapt":
            from build_tools.commands import adapt, check

            return adapt.run(
                check.existing_content(args.content),
                args.unit,
                args.slug,
                title=args.title,
                licence=args.licence,
                publisher=args.publisher,
            )
        case "test":
            from build_tools.project import test

            return test.run(args.thorough, args.rest)
        case "lock":
            from build_tools.project import lock

            return lock.run(upgrade=args.upgrade)
        case "notices":
            from build_tools.project import notices

            return notices.run(args.check, PROJECT)
        case other:
            raise AssertionError(other)


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 build_tools", description="Write, check and publish units of class dance."
    )
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")

    check = commands.add_parser("check", help="say what needs mending")
    check.add_argument("path", nargs="*", help="report only what lies here; all is read")
    check.add_argument("--json", action="store_true", help="as a list for programs")
    check.add_argument("--strict", action="store_true", help="let questions fail too")
    site = commands.add_parser("site", help="publish the pages of a bank without errors")
    site.add_argument("--out", type=Path, default=PROJECT / "site", help="the folder to publish in")
    site.add_argument("--review", action="store_true", help="add the advisers' page review.html")
    site.add_argument("--pdf", action="store_true", help="print each unit to PDF files as well")
    new = commands.add_parser("new", help="write the draft of a unit, and mark what to write")
    new.add_argument("slug", help="the folder's name, such as rock-pool")
    for option, says in (
        ("title", "the unit's title"),
        ("stimulus", "what the dance starts from"),
        ("kinds", "how pupils meet it, such as see,hear"),
        ("lessons", "how many lessons, 1 to 8"),
        ("minutes", "how long a lesson is, 20 to 90"),
        ("pattern", "section-a-lesson, one-theme, pupils-order, existing-dance or within-rules"),
    ):
        new.add_argument(f"--{option}", help=says)
    new.add_argument("--years", action="append", help="a nation's years, such as England:3,4")
    explain = commands.add_parser("explain", help="say what a rule wants and why")
    explain.add_argument("rule", nargs="?", help="the rule's name; without it, all are listed")
    watch = commands.add_parser("watch", help="check and preview while you write")
    watch.add_argument("--port", type=int, default=8765, help="where the preview is served")
    compare = commands.add_parser("compare", help="say what changed between two editions of a unit")
    compare.add_argument("old", type=Path, help="the earlier edition: its folder or its pack")
    compare.add_argument("new", type=Path, help="the later edition: its folder or its pack")
    pack = commands.add_parser("pack", help="make a unit one file for another school")
    pack.add_argument("unit", nargs="+", help="the unit's folder name, such as rock-pool")
    pack.add_argument("--out", type=Path, default=Path("packs"), help="the folder for the files")
    take_in = commands.add_parser("take-in", help="take in a unit that another school packed")
    take_in.add_argument("file", type=Path, help="the pack, a zip file")
    take_in.add_argument("--yes", action="store_true", help="answer yes; refusals stay refusals")
    adapt = commands.add_parser(
        "adapt", help="make a unit of your own from another, with its credits"
    )
    adapt.add_argument("unit", help="the unit's folder name")
    adapt.add_argument("slug", help="the name of your own folder")
    for option, says in (
        ("title", "your unit's title"),
        ("publisher", "who issues your unit"),
        ("licence", "your unit's licence, where the other one leaves a choice"),
    ):
        adapt.add_argument(f"--{option}", help=says)
    publish = commands.add_parser("publish", help="put a new edition into a folder others read")
    publish.add_argument("--keep", type=int, default=5, help="how many editions stay there")
    roll_back = commands.add_parser("roll-back", help="give readers an earlier edition again")
    roll_back.add_argument("--to", help="which edition; without it, the one before")
    editions = commands.add_parser("editions", help="list the editions kept in a folder")
    verify = commands.add_parser("verify", help="compare a folder with what was published there")
    for command in (publish, roll_back, editions, verify):
        command.add_argument("folder", type=Path, help="the folder that readers open")
    for command in (check, site, watch, new, publish, pack, take_in, adapt):
        command.add_argument(
            "--content", type=Path, default=PROJECT / "content", help="the folder of units"
        )
    test = commands.add_parser("test", help="run every check of the project itself")
    test.add_argument("--thorough", action="store_true", help="at the larger sizes")
    test.add_argument("rest", nargs="*", metavar="-- PYTEST ARGUMENTS", help="handed to pytest")
    lock = commands.add_parser("lock", help="make the locks anew after a change of parts")
    lock.add_argument("--upgrade", action="store_true", help="choose newer versions too")
    notices = commands.add_parser("notices", help="write the notices of all parts anew")
    notices.add_argument("--check", action="store_true", help="only say whether they are fresh")
    return parser
