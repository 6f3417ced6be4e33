"""new: write the draft of a unit, and mark what to write."""

from __future__ import annotations

import shlex
import sys
from argparse import ArgumentParser, Namespace
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from build_tools.commands.shared.exit_codes import DONE
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.disk.places import PROJECT
from build_tools.drafting import answers
from build_tools.drafting.asked import KINDS, LESSONS, MINUTES, PATTERNS, Asked
from build_tools.misuse import Misuse
from build_tools.use_cases.new_folder import free_folder
from build_tools.use_cases.start_unit import Started, bank_for_draft, start_unit
from build_tools.views.words.open_places import MARK
from build_tools.views.words.plain_words import how_many, listed

_T = TypeVar("_T")


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("slug", help="the folder's name, such as rock-pool")
    for option, says in (
        ("title", "the unit's title"),
        ("stimulus", "what the dance starts from"),
        ("kinds", "how pupils meet it, such as see,hear"),
        ("lessons", f"how many lessons, {LESSONS[0]} to {LESSONS[-1]}"),
        ("minutes", f"how long a lesson is, {MINUTES[0]} to {MINUTES[-1]}"),
        ("pattern", "; ".join(f"{name}: {says}" for name, says in PATTERNS.items())),
    ):
        parser.add_argument(f"--{option}", help=says)
    parser.add_argument(
        "--years", action="append", help='a nation\'s years, such as "England 3 and 4"'
    )
    take_content(parser)


def run(args: Namespace) -> int:
    """Write the draft; ask for what is not given, on a terminal only.

    Raises Misuse, with nothing written, where the folder is there already or cannot be written,
    or an answer is missing or cannot be used.
    """
    content = existing_content(args.content)
    folder = free_folder(content, args.slug)
    bank = bank_for_draft(content)
    _say_what_next(content, folder, start_unit(bank, folder, _asked(args)))
    return DONE


def _asked(given: Namespace) -> Asked:
    _refuse_missing(given)
    patterns = "".join(f"\n  {n}. {p}: {PATTERNS[p]}" for n, p in enumerate(PATTERNS, start=1))
    number, length = f"{LESSONS[0]} to {LESSONS[-1]}", f"{MINUTES[0]} to {MINUTES[-1]}"
    kinds, usual_kinds = ", ".join(KINDS), ",".join(answers.USUAL_KINDS)
    typed_years = "; ".join(given.years) if given.years else None
    return Asked(
        title=_answer("--title", given.title, "What is the unit called?", answers.title),
        stimulus=_answer(
            "--stimulus", given.stimulus, "What does the dance start from?", answers.stimulus
        ),
        kinds=_answer(
            "--kinds",
            usual_kinds if given.kinds is None and not sys.stdin.isatty() else given.kinds,
            f"How do pupils meet it: {kinds}?",
            answers.kinds,
            usual_kinds,
        ),
        years=_answer(
            "--years",
            typed_years,
            "For which school years, such as England 3 and 4?",
            answers.years,
        ),
        lessons=_answer(
            "--lessons", given.lessons, f"How many lessons ({number})?", answers.lessons, "4"
        ),
        minutes=_answer(
            "--minutes",
            given.minutes,
            f"How many minutes is a lesson ({length})?",
            answers.minutes,
            "40",
        ),
        pattern=_answer(
            "--pattern",
            given.pattern,
            f"Which pattern? Type its number.{patterns}\n",
            answers.pattern,
            "1",
        ),
    )


_NEEDED = {
    "title": "What is the unit called?",
    "stimulus": "What does the dance start from?",
    "years": "For which school years, such as England 3 and 4?",
    "lessons": "How many lessons?",
    "minutes": "How many minutes is a lesson?",
    "pattern": "Which pattern?",
}


def _refuse_missing(given: Namespace) -> None:
    """Raise Misuse that names every answer still missing, where nobody can be asked."""
    missing = [name for name in _NEEDED if getattr(given, name) is None]
    if not missing or sys.stdin.isatty():
        return
    first, *others = missing
    more = f" Missing too: {', '.join(f'--{name}' for name in others)}." if others else ""
    raise Misuse(f"--{first} is missing. {_NEEDED[first]}{more}")


def _answer(
    option: str,
    given: str | None,
    question: str,
    read: Callable[[str], _T],
    usual: str = "",
) -> _T:
    """The answer given, or else the answer to `question`, asked until it can be used.

    Who only presses Enter gets `usual`, where there is one.
    """
    if given is not None:
        try:
            return read(given)
        except answers.Refused as refused:
            raise Misuse(f"{option}: {refused}") from None
    hint = f" [Enter for {usual}]" if usual else ""
    while True:
        try:
            return read(input(f"{question.rstrip(chr(10))}{hint} ").strip() or usual)
        except answers.Refused as refused:
            print(refused)
        except EOFError:
            raise Misuse(f"{option} is missing, and nothing was written") from None


def _say_what_next(content: Path, folder: Path, started: Started) -> None:
    where = folder.as_posix()
    usual = PROJECT / "content"
    elsewhere = "" if content == usual else f" --content {shlex.quote(content.as_posix())}"
    print(f"{where} is written: unit.md and {how_many(started.lessons, 'lesson')}, a draft")
    print(f"{started.places} places are still to write, each marked {MARK} with a hint of what")
    if started.topics:
        topics = listed(started.topics)
        print(f"topics found by its words: {topics}; change them where they do not fit")
    else:
        print("its topic is not in vocabulary/topics.yml: choose some from there in unit.md")
    print(f"list them: python3 build_tools check {shlex.quote(where)}{elsewhere}")
    print(f"write with the pages beside you: python3 build_tools watch{elsewhere}")
    print("when nothing is left to write, take `draft: true` out of unit.md")
