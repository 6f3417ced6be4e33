"""compare: say what changed between two editions of a unit."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.checking.report_text import as_text
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.use_cases.compare import NotCompared, compare


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("old", type=Path, help="the earlier edition: its folder or its pack")
    parser.add_argument("new", type=Path, help="the later edition: its folder or its pack")


def run(args: Namespace) -> int:
    """Give 0 when both could be read; 1 when one has errors of shape, or is a refused pack."""
    comparison = compare(args.old.resolve(), args.new.resolve())
    if isinstance(comparison, NotCompared):
        name = comparison.path.as_posix()
        if comparison.refusal is not None:
            print(f"{name}: refused: {comparison.refusal}")
        else:
            print(as_text(comparison.problems, f"{name}: " if comparison.path.is_file() else ""))
        return STOPPED
    if not comparison.changes:
        print("nothing changed but, perhaps, the edition and its date")
    for heading, lines in comparison.under_headings():
        print(heading, *(f"  {line}" for line in lines), sep="\n")
    print(comparison.verdict())
    return DONE
