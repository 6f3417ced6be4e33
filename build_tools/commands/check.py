"""check: say what needs mending."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.checking.report_data import as_json
from build_tools.checking.report_text import as_summary, as_text, counted
from build_tools.checking.weights import weights_in_words
from build_tools.commands.shared.exit_codes import stopped_if
from build_tools.commands.shared.folders import below_content, existing_content, take_content
from build_tools.commands.shared.saying import say_skipped
from build_tools.disk.places import PROJECT
from build_tools.use_cases.check import check, kept_file, outlines_in, stands_in_the_way


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("path", nargs="*", help="report only what lies here; all is read")
    parser.add_argument("--json", action="store_true", help="as a list for programs")
    parser.add_argument("--all", action="store_true", help="every problem, however many")
    parser.add_argument("--strict", action="store_true", help="let questions fail too")
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when sound, 1 with an error (with a question too when `strict`).

    Raises Misuse where a path does not exist or lies outside the content folder.
    """
    content = existing_content(args.content)
    wanted = [below_content(content, path) for path in args.path]
    report = check(content, wanted, kept_file(PROJECT, content))
    prefix = f"{content.name}/"
    if args.json:
        print(as_json(report.problems, prefix))
    else:
        if report.problems:
            said = as_text if args.all else as_summary
            print(said(report.problems, prefix))
        print(counted(report.problems))
        if weights := weights_in_words(outlines_in(report, wanted)):
            print(weights)
    grades = {problem.severity for problem in report.problems}
    if not grades or "error" in grades:
        # beside questions and notes alone nothing is broken that would have to be mended first
        say_skipped(report.skipped)
    return stopped_if(stands_in_the_way(report.problems, strict=args.strict))
