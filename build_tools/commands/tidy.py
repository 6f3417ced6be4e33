"""tidy: write files in one clear form, with every word kept."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import below_content, existing_content, take_content
from build_tools.use_cases.tidy import FileLeft, tidy
from build_tools.views.words.plain_words import how_many


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("path", nargs="*", help="tidy only what lies here; all if none is named")
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when all are tidy; 1 when one was left as it was."""
    content = existing_content(args.content)
    wanted = [below_content(content, path) for path in args.path]
    prefix, outcome, written, so_already = f"{content.name}/", DONE, 0, 0
    for one in tidy(content, wanted):
        if isinstance(one, FileLeft):
            outcome = STOPPED
            if one.problems:
                print(as_text(one.problems, prefix))
            print(f"{prefix}{one.file}: {one.reason}; it was left as it is")
            continue
        for note in one.read_as:
            print(f"{prefix}{one.file}:{note.line}: {note.message}")
        if one.written:
            print(f"{prefix}{one.file}: written anew, with every word kept")
        written, so_already = written + one.written, so_already + (not one.written)
    print(f"{how_many(written, 'file')} written anew; {how_many(so_already, 'file')} tidy already")
    return outcome
