"""Starting a unit: the draft of one, complete in shape, its places to write marked."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from build_tools.drafting.answers import topics_for
from build_tools.drafting.asked import Asked, BankFacts
from build_tools.drafting.draft import draft
from build_tools.misuse import Misuse
from build_tools.problem import Problem
from build_tools.schema_check.check import check_document
from build_tools.shapes.schemas import Kind
from build_tools.source.front_matter import Document, read_data, read_markdown
from build_tools.use_cases.new_folder import written_whole
from build_tools.views.words.open_places import MARK


@dataclass(frozen=True, slots=True)
class BankToDraft:
    """What a draft needs of the bank: its name, its day, and its topics with their near words."""

    name: str
    as_of: str
    topics: Mapping[str, tuple[str, ...]]


@dataclass(frozen=True, slots=True)
class Started:
    """The draft that was written: how many lessons, places to write, and the topics it got."""

    lessons: int
    places: int
    topics: tuple[str, ...]
    """The bank's topics that its words name; empty where they name none."""


def bank_for_draft(content: Path) -> BankToDraft:
    """Read the bank's own files; raises Misuse where one cannot be read or needs mending first."""
    bank = _bank_file(content, "bank.yml", "bank")
    topics = _bank_file(content, "vocabulary/topics.yml", "topics")
    also = {name: tuple(topic["also"]) for name, topic in topics.items()}
    return BankToDraft(bank["name"], bank["as_of"], also)


def start_unit(bank: BankToDraft, folder: Path, asked: Asked) -> Started:
    """Write the draft into the `folder`, which is not there yet.

    Raises Misuse, with nothing written, where an answer makes a file that cannot be read, or the
    disk refuses.
    """
    found = topics_for(f"{asked.title} {asked.stimulus}", bank.topics)
    files = draft(asked, BankFacts(bank.name, bank.as_of, found or (folder.name,)))
    _refuse_odd_answers(files)
    with written_whole(folder) as room:
        for file, text in files.items():
            (room / file).write_text(text, encoding="utf-8", newline="")
    return Started(len(files) - 1, sum(text.count(MARK) for text in files.values()), found)


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


def _refuse_odd_answers(files: Mapping[str, str]) -> None:
    """Nothing the author typed may make a file that cannot be read."""
    for file, text in files.items():
        read = read_markdown(file, text.encode())
        kind: Kind = "unit" if file == "unit.md" else "lesson"
        problems: list[Problem] = read if isinstance(read, list) else check_document(read, kind)
        if problems:
            first = problems[0]
            raise Misuse(f"the title or stimulus cannot be used: {first.message}; {first.help}")
