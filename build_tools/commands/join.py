"""join: publish the units of several banks as one site."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.building.site_record import record_file
from build_tools.checking.report_text import as_text, counted
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content
from build_tools.commands.shared.progress import progress
from build_tools.disk.places import PROJECT
from build_tools.misuse import Misuse
from build_tools.use_cases.build_site import refuse_folder
from build_tools.use_cases.join import join, read_banks
from build_tools.views.words.plain_words import how_many, listed


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("folders", type=Path, nargs="+", help="the folders of units, one a bank")
    parser.add_argument("--name", default="Dance units", help="what the whole is called")
    parser.add_argument(
        "--out", type=Path, default=PROJECT / "site", help="the folder to publish in"
    )


def run(args: Namespace) -> int:
    """Give 0 when all banks are published; 1 when some had to be left out, or all.

    The faults of one bank never stop another: it is left out, and its errors are said.
    """
    folders, out = [existing_content(one) for one in args.folders], args.out.resolve()
    for folder in folders:
        refuse_folder(folder, out)
    if len({*folders}) < len(folders):
        raise Misuse("a folder is named twice; name each bank once")
    banks = read_banks(folders, PROJECT)
    for one in banks:
        if one.ready.wanted is None:
            print(as_text(one.ready.problems, f"{one.content.as_posix()}/"))
            print(f"left out: {one.content.as_posix()}, {counted(one.ready.problems)}")
    published = [one for one in banks if one.ready.wanted is not None]
    if not published:
        print("no bank can be published; the last site still stands")
        return STOPPED
    named = "\n".join(str(folder) for folder in folders)
    record = record_file(PROJECT / ".kept", Path(named), out)
    done = join(banks, args.name, out, record, progress("drawn"))
    for slug, names in done.renamed.items():
        print(f"units/{slug} is in {how_many(len(names), 'bank')}: here {listed(names)}")
    if done.differing:
        print(f"explained differently, and as the first bank does here: {listed(done.differing)}")
    print(f"{how_many(done.built.units, 'unit')} of {how_many(len(published), 'bank')}")
    print(f"open {(out / 'index.html').as_posix()}")
    return DONE if len(published) == len(banks) else STOPPED
