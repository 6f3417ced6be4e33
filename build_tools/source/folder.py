"""The content folder: which files there are, each read on its own so that none hides another."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path

from build_tools.disk.stray_files import is_stray
from build_tools.problem import Fault, FieldPath, Problem
from build_tools.source.file_names import (
    odd_file,
    odd_name,
    odd_picture,
    plain_picture_name,
)
from build_tools.source.front_matter import Document, Reader, read_data, read_markdown
from build_tools.source.media_files import PLAIN, SHARED, lies_in
from build_tools.source.media_read import read_media, unreadable
from build_tools.source.shared_pictures import (
    LIST,
    MISSING,
    places_of_shared,
    shared_pictures,
    with_shared,
)

TAKEN_IN = "taken-in.yml"
"""The file that says where a unit came from; it is none of the unit's own and stays here."""
SLUG = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\Z")
MOST_SLUG = 40
_LESSON_FILE = re.compile(r"lesson-([1-9][0-9]?)\.md\Z")
_DEVICE_NAMES = {"con", "prn", "aux", "nul"} | {
    f"{port}{n}" for port in ("com", "lpt") for n in range(1, 10)
}
BANK_FILES: dict[str, Reader] = {
    "bank.yml": read_data,
    "vocabulary/topics.yml": read_data,
    "vocabulary/words.yml": read_data,
    "vocabulary/near.yml": read_data,
    "safety.md": read_markdown,
    LIST: read_data,
}
MAY_BE_MISSING = frozenset({"vocabulary/near.yml", LIST})
"""Files of the bank that a bank can do without."""


@dataclass(slots=True)
class UnitFolder:
    """The files of one unit, and what is wrong with reading them."""

    slug: str
    unit: Document | None = None
    lessons: list[Document] = field(default_factory=list)
    media: dict[str, int] = field(default_factory=dict)
    """Each media file, such as media/pool.svg, with its size in bytes where it is published."""
    notes: list[Problem] = field(default_factory=list)
    """What is published otherwise than it lies here."""
    shares: bool = False
    """Whether it names pictures that units of the bank share."""
    shared: set[str] = field(default_factory=set)
    """Those of them that are there, by their names."""
    taken_in: Document | None = None
    problems: list[Problem] = field(default_factory=list)

    def by_file(self) -> dict[str, Document]:
        """Every document that could be read, by its file."""
        read = (self.unit, *self.lessons)
        return {document.file: document for document in read if document is not None}


def read_bank_files(root: Path) -> tuple[dict[str, Document], list[Problem]]:
    """The bank's own files in the content folder `root`, and what is wrong with reading them."""
    documents: dict[str, Document] = {}
    problems: list[Problem] = []
    for file, reader in BANK_FILES.items():
        if file in MAY_BE_MISSING and not (root / file).exists():
            continue
        document = _read(root, file, reader, problems)
        if document is not None:
            documents[file] = document
    return documents, problems


def unit_slugs(root: Path) -> tuple[list[str], list[Problem]]:
    """The names of the units' folders below `root`, in order, and what else lies among them."""
    slugs: list[str] = []
    problems: list[Problem] = []
    for folder in _entries(root, "units", problems):
        file = f"units/{folder.name}"
        if not folder.is_dir():
            problems.append(odd_name(file, "a file lies among the folders of units"))
        elif not is_slug(folder.name):
            problems.append(
                odd_name(
                    file,
                    f"the folder name `{folder.name}` is not small letters, figures and hyphens, "
                    f"{MOST_SLUG} at most",
                )
            )
        else:
            slugs.append(folder.name)
    return slugs, problems


def is_slug(name: str) -> bool:
    """Whether `name` can name a unit's folder on any computer."""
    return bool(SLUG.match(name)) and len(name) <= MOST_SLUG and name not in _DEVICE_NAMES


def read_unit_folder(
    root: Path, slug: str, below: str = "units", reader: Reader = read_markdown
) -> UnitFolder:
    """Read the files of the unit in `below`/`slug`. Nothing is raised for what is wrong there.

    `reader` reads its Markdown files: as people type here, or strictly where strangers sent them.
    """
    unit = UnitFolder(slug)
    problems = unit.problems
    at = f"{below}/{slug}"
    folder = root / below / slug
    entries = _entries(root, at, problems)
    for entry in sorted(entries, key=lambda p: _number_first(p.name)):
        file = f"{at}/{entry.name}"
        if entry.name == "unit.md":
            unit.unit = _read(root, file, reader, problems)
        elif _LESSON_FILE.match(entry.name):
            lesson = _read(root, file, reader, problems)
            if lesson is not None:
                unit.lessons.append(lesson)
        elif entry.name == TAKEN_IN:
            unit.taken_in = _read(root, file, read_data, problems)
        elif entry.name == "media" and entry.is_dir():
            _list_media(root, unit, at)
        else:
            problems.append(odd_file(file, {one.name for one in entries}))
    _lay_in_shared(root, unit, at)
    if not (folder / "unit.md").is_file():
        problems.append(_missing(f"{at}/unit.md", "the unit has no file unit.md"))
    elif not problems and not unit.lessons:
        problems.append(_missing(f"{at}/unit.md", "the unit has no lesson: 0 files lesson-1.md …"))
    return unit


def _number_first(name: str) -> tuple[int, str]:
    found = _LESSON_FILE.match(name)
    return (int(found.group(1)) if found else 0, name)


def _entries(root: Path, folder: str, problems: list[Problem]) -> list[Path]:
    """What lies in `folder`, by name, less what is hidden or left behind; nothing if unlisted."""
    try:
        found = sorted((root / folder).iterdir(), key=lambda p: p.name)
    except FileNotFoundError:
        # no units yet, or an author who is moving folders at this moment
        return []
    except OSError as error:
        problems.append(unreadable(folder, "folder", error))
        return []
    return [one for one in found if not one.name.startswith(".") and not is_stray(one.name)]


def _list_media(root: Path, unit: UnitFolder, at: str) -> None:
    folder = f"{at}/media"
    # what has its plain name already goes before what would get the same
    found = sorted(_entries(root, folder, unit.problems), key=lambda p: not PLAIN.match(p.name))
    for entry in found:
        file, plain = f"{folder}/{entry.name}", plain_picture_name(entry.name)
        if plain is None or not entry.is_file():
            unit.problems.append(odd_picture(file))
        elif f"media/{plain}" in unit.media:
            message = f"two files here are called {plain} where they are published"
            unit.problems.append(odd_name(file, message, "give one of them another name"))
        else:
            read = read_media(entry, file, plain)
            unit.problems += [read.problem] if read.problem else []
            unit.notes += [read.note] if read.note else []
            if not read.problem:
                unit.media[f"media/{plain}"] = read.size


def _lay_in_shared(root: Path, unit: UnitFolder, at: str) -> None:
    """Read the pictures that the unit shares with others as if they were its own."""
    documents = list(unit.by_file().values())
    if not any(True for one in documents for _ in places_of_shared(one.data)):
        return
    shared = shared_pictures(root)
    unit.shares = True
    for document in documents:
        made, used, missing = with_shared(document, shared)
        unit.problems += missing
        unit.shared |= set(used)
        if document is unit.unit:
            unit.unit = made
        else:
            unit.lessons[unit.lessons.index(document)] = made
        for path, name in places_of_shared(document.data):
            if name in used:
                _lay_in(root, unit, at, shared.files[name], document, path)


def _lay_in(
    root: Path, unit: UnitFolder, at: str, file: str, document: Document, path: FieldPath
) -> None:
    lies = lies_in(root / at, f"media/{file}")
    own = lies.is_relative_to(root / at)
    if own:
        message = f"the unit has a picture of its own that is called {file} too"
        help_ = "give that another name, or list it with its own credit in place of `shared`"
        unit.problems.append(document.problem(MISSING, "error", path, message, help_))
        return
    read = read_media(lies, f"{SHARED}/{lies.name}", file)
    if read.problem:
        message = f"the shared picture {lies.name} cannot be published: {read.problem.message}"
        unit.problems.append(
            document.problem(read.problem.rule, "error", path, message, read.problem.help)
        )
        return
    unit.media[f"media/{file}"] = read.size
    unit.notes += [read.note] if read.note else []


def _read(root: Path, file: str, reader: Reader, problems: list[Problem]) -> Document | None:
    path = root / file
    try:
        raw = path.read_bytes()
    except FileNotFoundError:
        problems.append(_missing(file, f"the file `{file}` is not there"))
        return None
    except OSError as error:
        problems.append(unreadable(file, "file", error))
        return None
    result = reader(file, raw)
    if isinstance(result, list):
        problems.extend(result)
        return None
    return result


def _missing(file: str, message: str) -> Problem:
    help_ = "write it, or put it back from an earlier copy"
    return Fault("file-missing", 1, 1, message, help_).at(file)
