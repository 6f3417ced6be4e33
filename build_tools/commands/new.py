"""`new`: the draft of a unit, complete in shape, with the places marked that are still to write."""

from __future__ import annotations

import shlex
import sys
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, TypeVar

from build_tools.commands.unit_folder import free_folder, written_whole
from build_tools.drafting import answers
from build_tools.drafting.asked import LESSONS, MINUTES, PATTERNS, Asked, BankFacts
from build_tools.drafting.draft import draft
from build_tools.misuse import Misuse
from build_tools.problem import Problem
from build_tools.schema_check.check import check_document
from build_tools.schema_check.schemas import SCHEMA_FOLDER, Kind
from build_tools.source.document import Document, read_data, read_markdown
from build_tools.views.words.open_places import MARK
from build_tools.views.words.plain_words import listed

_T = TypeVar("_T")


@dataclass(frozen=True, slots=True)
class Given:
    """The answers given on the command line, as typed; None where there is none."""

    title: str | None = None
    stimulus: str | None = None
    kinds: str | None = None
    years: Sequence[str] | None = None
    lessons: str | None = None
    minutes: str | None = None
    pattern: str | None = None


def run(slug: str, given: Given, content: Path) -> int:
    """Write a draft into `content`/units/`slug`; ask for what is not given, on a terminal only.

    Raises Misuse, with nothing written, where the folder is there already or cannot be written,
    or an answer is missing or cannot be used.
    """
    folder = free_folder(content, slug)
    bank = _bank_file(content, "bank.yml", "bank")
    topics = _bank_file(content, "vocabulary/topics.yml", "topics")
    asked = _asked(given)
    known = {name: tuple(topic["also"]) for name, topic in topics.items()}
    found = answers.topics_for(f"{asked.title} {asked.stimulus}", known)
    facts = BankFacts(bank["name"], bank["as_of"], found or (slug,))
    files = draft(asked, facts)
    _refuse_odd_answers(files)
    with written_whole(folder) as room:
        for file, text in files.items():
            (room / file).write_text(text, encoding="utf-8", newline="")
    _say_what_next(content, slug, files, found)
    return 0


def _bank_file(content: Path, file: str, kind: Kind) -> dict[str, Any]:
    """The fields of one of the bank's own files, which has to be sound."""
    try:
        read = read_data(file, (content / file).read_bytes())
    except OSError:
        raise Misuse(f"{content / file} cannot be read; give the folder of a bank") from None
    problems = read if isinstance(read, list) else check_document(read, kind)
    if problems or not isinstance(read, Document):
        raise Misuse(f"{file} needs mending first ({problems[0].message}); run check")
    fields: dict[str, Any] = read.data
    return fields


def _asked(given: Given) -> Asked:
    patterns = "".join(f"\n  {n}. {p}: {PATTERNS[p]}" for n, p in enumerate(PATTERNS, start=1))
    number, length = f"{LESSONS[0]} to {LESSONS[-1]}", f"{MINUTES[0]} to {MINUTES[-1]}"
    title = _answer("--title", given.title, "What is the unit called?", answers.title)
    stimulus = _answer(
        "--stimulus", given.stimulus, "What does the dance start from?", answers.stimulus
    )
    alone = given.kinds is None and not sys.stdin.isatty()
    kinds = _answer(
        "--kinds",
        ",".join(answers.USUAL_KINDS) if alone else given.kinds,
        "How do pupils meet it: see, hear, touch, do, think about?",
        answers.kinds,
    )
    return Asked(
        title=title,
        stimulus=stimulus,
        kinds=kinds,
        years=_answer(
            "--years",
            "; ".join(given.years) if given.years else None,
            "For which school years, such as England:3,4?",
            answers.years,
        ),
        lessons=_answer(
            "--lessons", given.lessons, f"How many lessons ({number})?", answers.lessons
        ),
        minutes=_answer(
            "--minutes", given.minutes, f"How many minutes is a lesson ({length})?", answers.minutes
        ),
        pattern=_answer("--pattern", given.pattern, f"Which pattern?{patterns}\n", answers.pattern),
    )


def _answer(option: str, given: str | None, question: str, read: Callable[[str], _T]) -> _T:
    """The answer given, or else the answer to `question`, asked until it can be used."""
    if given is not None:
        try:
            return read(given)
        except answers.Refused as refused:
            raise Misuse(f"{option}: {refused}") from None
    if not sys.stdin.isatty():
        raise Misuse(f"{option} is missing. {question.strip()}")
    while True:
        try:
            return read(input(f"{question} "))
        except answers.Refused as refused:
            print(refused)
        except EOFError:
            raise Misuse(f"{option} is missing, and nothing was written") from None


def _refuse_odd_answers(files: dict[str, str]) -> None:
    """Nothing the author typed may make a file that cannot be read."""
    for file, text in files.items():
        read = read_markdown(file, text.encode())
        kind: Kind = "unit" if file == "unit.md" else "lesson"
        problems: list[Problem] = read if isinstance(read, list) else check_document(read, kind)
        if problems:
            first = problems[0]
            raise Misuse(f"the title or stimulus cannot be used: {first.message}; {first.help}")


def _say_what_next(
    content: Path, slug: str, files: dict[str, str], topics: tuple[str, ...]
) -> None:
    lessons = len(files) - 1
    places = sum(text.count(MARK) for text in files.values())
    where = f"{content.as_posix()}/units/{slug}"
    usual = SCHEMA_FOLDER.parent / "content"
    elsewhere = "" if content == usual else f" --content {shlex.quote(content.as_posix())}"
    print(f"{where} is written: unit.md and {lessons} lesson{'' if lessons == 1 else 's'}, a draft")
    print(f"{places} places are still to write, each marked {MARK} with a hint of what")
    if topics:
        print(f"topics found by its words: {listed(topics)}; change them where they do not fit")
    else:
        print("its topic is not in vocabulary/topics.yml: choose some from there in unit.md")
    print(f"list them: python3 build_tools check {shlex.quote(where)}{elsewhere}")
    print(f"write with the pages beside you: python3 build_tools watch{elsewhere}")
    print("when nothing is left to write, take `draft: true` out of unit.md")
