"""Drafts made of files in tests, and every word that stands in them or is told beside them."""

from __future__ import annotations

import re
from collections import Counter

from build_tools.drafting.asked import BankFacts
from build_tools.drafting.from_document.draft_from_document import (
    DraftFromDocument,
    NoDraft,
    draft_from_document,
)
from build_tools.model.unit import SchoolYears
from build_tools.problem import Problem
from build_tools.schema_check.check import check_document
from build_tools.shapes.schemas import Kind
from build_tools.source.front_matter import Document, read_markdown
from build_tools.word_files.reading.document import read_document

YEARS = (SchoolYears("England", ("3", "4")),)


def drafted(data: bytes) -> DraftFromDocument | NoDraft:
    """The draft of a file, for Years 3 and 4."""
    facts = BankFacts("A bank", "2026-11-29", ("sea",))
    return draft_from_document(read_document(data), YEARS, lambda _: facts)


def sound(data: bytes) -> DraftFromDocument:
    """The draft of a file that makes one; every file of it is read and fits its schema."""
    made = drafted(data)
    assert isinstance(made, DraftFromDocument), made
    for name in made.files:
        fields_of(made, name)
    return made


def fields_of(made: DraftFromDocument, name: str) -> Document:
    """One file of a draft as the bank reads it."""
    read = read_markdown(name, made.files[name].encode())
    assert isinstance(read, Document), read
    kind: Kind = "unit" if name == "unit.md" else "lesson"
    problems: list[Problem] = check_document(read, kind)
    assert problems == []
    return read


def tokens(text: str) -> Counter[str]:
    """Every word and number of a text, without what Markdown sets before a sign."""
    return Counter(re.findall(r"[^\W_]+", text.replace("\\", "").casefold()))


def without_clock(text: str) -> str:
    """The text without from when to when a step goes, which the minutes of all steps say."""
    return re.sub(r"(?:^|(?<=\s))\d{1,3}(?: to |-)\d{1,3}(?= ·|:|$| mins$)", "", text)


def told(made: DraftFromDocument) -> Counter[str]:
    """Every word in a draft, and every word that the screen lists beside it."""
    over = [f"{piece.where} {piece.text}" for kept in made.kept for piece in kept.over]
    return tokens(" ".join([*made.files.values(), *over, *made.labels, *made.said_anyway]))
