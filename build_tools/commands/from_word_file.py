"""from-word-file: make a draft of a unit from a word-processor file (.docx)."""

from __future__ import annotations

import shlex
from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.drafting import answers
from build_tools.drafting.from_document.draft_from_document import Kept
from build_tools.misuse import Misuse
from build_tools.model.unit import SchoolYears
from build_tools.use_cases.from_word_file import Drafted, NotDrafted, from_word_file
from build_tools.views.words.open_places import MARK
from build_tools.views.words.plain_words import how_many, listed


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("file", type=Path, help="the file: one heading a lesson, one table a step")
    parser.add_argument("slug", help="the name of the draft's folder, such as our-pool")
    parser.add_argument(
        "--years", action="append", help='a nation\'s years, such as "England 3 and 4"'
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when the draft is written; 1 when the file is not read or no draft comes of it.

    Raises Misuse, with nothing written, where the folder is there already, the file cannot be
    opened, or the years cannot be read.
    """
    content = existing_content(args.content)
    made = from_word_file(content, args.file, args.slug, _years(args.years))
    if isinstance(made, NotDrafted):
        print(f"{args.file.name}: {made.reason}; nothing was written")
        return STOPPED
    _say(made)
    return DONE


def _years(typed: list[str] | None) -> tuple[SchoolYears, ...]:
    try:
        return answers.years("; ".join(typed)) if typed else ()
    except answers.Refused as refused:
        raise Misuse(f"--years: {refused}") from None


def _say(made: Drafted) -> None:
    draft, where = made.draft, made.folder.as_posix()
    lessons, steps = how_many(draft.lessons, "lesson"), how_many(draft.steps, "step")
    print(f"{where} is written: {lessons} with {steps}, a draft")
    for kept in draft.kept:
        _say_kept(kept)
    if draft.labels:
        names = "; ".join(draft.labels)
        print(f"read as the names of fields and of their choices, and standing as those: {names}")
    for sentence in draft.said_anyway:
        print(f"left out, since every lesson's page says it: {sentence}")
    if made.not_read:
        print(f"not read, so look whether words stand in it: {listed(made.not_read)}")
    print(f"{made.places} places are still to write, each marked {MARK} with a hint of what")
    print(f"list them: python3 build_tools check {shlex.quote(where)}")


def _say_kept(kept: Kept) -> None:
    """How much is in no field of one file; in full what its notes have no room for."""
    if inside := len(kept.pieces) - len(kept.over):
        lines = f"{how_many(inside, 'line')} without a place of {'its' if inside == 1 else 'their'}"
        print(f"{kept.file}: {lines} own kept in its notes, each with where in the file it stood")
    for piece in kept.over:
        print(f"{kept.file}: no room in its notes for what stood {piece.where}: {piece.text}")
