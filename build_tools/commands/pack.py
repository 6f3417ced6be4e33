"""pack: make a unit one file for another school."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.use_cases.finished_unit import NotMade
from build_tools.use_cases.pack import pack, write_pack


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("unit", nargs="+", help="the unit's folder name, such as rock-pool")
    parser.add_argument("--out", type=Path, default=Path("packs"), help="the folder for the files")
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when all are packed; 1 when one cannot be: the others are packed all the same."""
    content, code = existing_content(args.content), DONE
    for slug in dict.fromkeys(Path(unit).name for unit in args.unit):
        made = pack(content, slug)
        if isinstance(made, NotMade):
            if made.problems:
                print(as_text(sorted(made.problems), f"{content.name}/"))
            print(f"{slug} was not packed: {made.reason}")
            code = STOPPED
            continue
        goal = (args.out / made.name).as_posix()
        try:
            write_pack(made, args.out)
        except OSError as error:
            print(f"{goal} could not be written ({error.strerror}); nothing is changed")
            return STOPPED
        print(f"packed {goal}: {len(made.data) / 1000:,.0f} kB, send it as it is")
    return code
