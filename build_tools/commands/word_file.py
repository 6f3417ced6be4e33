"""word-file: make a word-processor file (.docx) of a unit's lessons."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.use_cases.finished_unit import NotMade
from build_tools.use_cases.word_file import make_word_file, write_word_file


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("unit", nargs="+", help="the unit's folder name, such as rock-pool")
    parser.add_argument(
        "--lesson", type=int, action="append", default=[], help="this lesson only, by its number"
    )
    parser.add_argument(
        "--out", type=Path, default=Path("word-files"), help="the folder for the files"
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when all are made; 1 when one cannot be: the others are made all the same."""
    content, code = existing_content(args.content), DONE
    for slug in dict.fromkeys(Path(unit).name for unit in args.unit):
        made = make_word_file(content, slug, args.lesson)
        if isinstance(made, NotMade):
            if made.problems:
                print(as_text(sorted(made.problems), f"{content.name}/"))
            print(f"no word-processor file was made of {slug}: {made.reason}")
            code = STOPPED
            continue
        goal = (args.out / made.name).as_posix()
        try:
            write_word_file(made, args.out)
        except OSError as error:
            print(f"{goal} could not be written ({error.strerror}); nothing is changed")
            return STOPPED
        print(f"made {goal}: {len(made.data) / 1000:,.0f} kB")
    return code
