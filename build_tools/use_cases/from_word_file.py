"""Making a draft of a unit from anybody's word-processor file."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from build_tools.drafting.answers import topics_for
from build_tools.drafting.asked import BankFacts
from build_tools.drafting.from_document.draft_from_document import (
    DraftFromDocument,
    NoDraft,
    draft_from_document,
)
from build_tools.misuse import Misuse
from build_tools.model.unit import SchoolYears
from build_tools.packs.reading.walled import Refused, walled
from build_tools.use_cases.new_folder import free_folder, written_whole
from build_tools.use_cases.start_unit import bank_for_draft
from build_tools.views.words.open_places import MARK
from build_tools.word_files.reading.document import ReadDocument, read_document
from build_tools.word_files.reading.limits import MOST_FILE
from build_tools.word_files.reading.trouble import DocumentError


@dataclass(frozen=True, slots=True)
class Drafted:
    """The draft that was written, and what in the file was not read."""

    folder: Path
    draft: DraftFromDocument
    places: int
    """Places that are still to write."""
    not_read: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class NotDrafted:
    """Why nothing was written, and what to do."""

    reason: str


def from_word_file(
    content: Path, file: Path, slug: str, years: tuple[SchoolYears, ...]
) -> Drafted | NotDrafted:
    """Write `content`/units/`slug` from the `file`, or nothing.

    Raises Misuse where the name cannot be used or is taken, the file cannot be opened, or the disk
    refuses.
    """
    folder = free_folder(content, slug)
    bank = bank_for_draft(content)
    read = walled(_read, _bytes_of(file))
    if isinstance(read, Refused):
        return NotDrafted(read.why)
    if isinstance(read, str):
        return NotDrafted(read)

    def facts(words: str) -> BankFacts:
        return BankFacts(bank.name, bank.as_of, topics_for(words, bank.topics) or (folder.name,))

    made = draft_from_document(read, years, facts)
    if isinstance(made, NoDraft):
        return NotDrafted(made.reason)
    with written_whole(folder) as room:
        for name, text in made.files.items():
            (room / name).write_text(text, encoding="utf-8", newline="")
    places = sum(text.count(MARK) for text in made.files.values())
    return Drafted(folder, made, places, read.not_read)


def _bytes_of(file: Path) -> bytes:
    try:
        size = file.stat().st_size
        if size > MOST_FILE:
            raise Misuse(f"{file} has {size:,} bytes, more than {MOST_FILE:,} that are read")
        return file.read_bytes()
    except OSError as error:
        raise Misuse(f"{file} cannot be opened ({error.strerror})") from None


def _read(data: bytes) -> ReadDocument | str:
    """What stands in the file, or why it is not read."""
    try:
        return read_document(data)
    except DocumentError as error:
        return str(error)
