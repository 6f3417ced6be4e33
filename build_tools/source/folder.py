"""The content folder: which files there are, each read on its own so that none hides another."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path

from build_tools.disk.stray_files import is_stray
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from build_tools.problem import Fault, Problem
from build_tools.source.file_names import odd_file, odd_name, odd_picture
from build_tools.source.front_matter import Document, Reader, read_data, read_markdown

TAKEN_IN = "taken-in.yml"
"""The file that says where a unit came from; it is none of the unit's own and stays here."""
MOST_PICTURE = 20_000_000
"""Bytes of one picture; a page with it opens slowly long before that."""
_SMALLER = "save it smaller: 2,000 points across are plenty for a page"
_SOUND = "mend the picture, or put another in its place"
SLUG = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\Z")
MOST_SLUG = 40
_LESSON_FILE = re.compile(r"lesson-([1-9][0-9]?)\.md\Z")
_MEDIA_FILE = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\.(svg|png|jpg|webp|mp3)\Z")
_DEVICE_NAMES = {"con", "prn", "aux", "nul"} | {
    f"{port}{n}" for port in ("com", "lpt") for n in range(1, 10)
}
BANK_FILES: dict[str, Reader] = {
    "bank.yml": read_data,
    "vocabulary/topics.yml": read_data,
    "vocabulary/words.yml": read_data,
    "vocabulary/near.yml": read_data,
    "safety.md": read_markdown,
}
MAY_BE_MISSING = frozenset({"vocabulary/near.yml"})
"""Files of the bank that a bank can do without."""


@dataclass(slots=True)
class UnitFolder:
    """The files of one unit, and what is wrong with reading them."""

    slug: str
    unit: Document | None = None
    lessons: list[Document] = field(default_factory=list)
    media: dict[str, int] = field(default_factory=dict)
    """Each media file, such as media/pool.svg, with its size in bytes."""
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
        problems.append(_unreadable(folder, "folder", error))
        return []
    return [one for one in found if not one.name.startswith(".") and not is_stray(one.name)]


def _list_media(root: Path, unit: UnitFolder, at: str) -> None:
    folder = f"{at}/media"
    for entry in _entries(root, folder, unit.problems):
        if not entry.is_file() or not _MEDIA_FILE.match(entry.name):
            unit.problems.append(odd_picture(f"{folder}/{entry.name}"))
            continue
        data = _read_picture(entry, f"{folder}/{entry.name}", unit.problems)
        if data is not None:
            unit.media[f"media/{entry.name}"] = len(data)


def _read_picture(path: Path, file: str, problems: list[Problem]) -> bytes | None:
    """The picture's bytes, once it was seen that it can be published; None where it cannot."""
    try:
        size = path.stat().st_size
        if size > MOST_PICTURE:
            message = f"the picture has {size:,} bytes, and {MOST_PICTURE:,} is the most"
            problems.append(Fault("file-too-large", 1, 1, message, _SMALLER).at(file))
            return None
        data = path.read_bytes()
        cleaned(path.name, data)
    except OSError as error:
        problems.append(_unreadable(file, "file", error))
        return None
    except PictureError as error:
        fault = Fault("picture-unsound", error.line or 1, 1, error.why, _SOUND)
        problems.append(fault.at(file))
        return None
    return data


def _read(root: Path, file: str, reader: Reader, problems: list[Problem]) -> Document | None:
    path = root / file
    try:
        raw = path.read_bytes()
    except FileNotFoundError:
        problems.append(_missing(file, f"the file `{file}` is not there"))
        return None
    except OSError as error:
        problems.append(_unreadable(file, "file", error))
        return None
    result = reader(file, raw)
    if isinstance(result, list):
        problems.extend(result)
        return None
    return result


def _unreadable(file: str, what: str, error: OSError) -> Problem:
    message = f"the {what} cannot be opened ({error.strerror})"
    help_ = "close it in other programs, and check that you may read it"
    return Fault("file-unreadable", 1, 1, message, help_).at(file)


def _missing(file: str, message: str) -> Problem:
    help_ = "write it, or put it back from an earlier copy"
    return Fault("file-missing", 1, 1, message, help_).at(file)
