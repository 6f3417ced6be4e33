"""The content folder: which files there are, each read on its own so that none hides another."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path

from build_tools.disk.stray_files import is_stray
from build_tools.pictures.publishable import cleaned, fit_for_a_page
from build_tools.pictures.trouble import PictureError
from build_tools.problem import Fault, Problem
from build_tools.source.file_names import (
    odd_file,
    odd_name,
    odd_picture,
    plain_picture_name,
    printable,
)
from build_tools.source.front_matter import Document, Reader, read_data, read_markdown
from build_tools.source.media_files import PLAIN

TAKEN_IN = "taken-in.yml"
"""The file that says where a unit came from; it is none of the unit's own and stays here."""
MOST_PICTURE = 20_000_000
"""Bytes of one picture; a page with it opens slowly long before that."""
_SMALLER = "save it smaller: 2,000 points across are plenty for a page"
PUBLISHED_SO = "picture-published-so"
"""The rule that notes are signed with: what is done to a picture before anybody sees it."""
_STAYS = "nothing; your own file stays as it is"
_SOUND = "mend the picture, or put another in its place"
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
    """Each media file, such as media/pool.svg, with its size in bytes where it is published."""
    notes: list[Problem] = field(default_factory=list)
    """What is published otherwise than it lies here."""
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
            size = _read_picture(entry, file, plain, unit)
            if size is not None:
                unit.media[f"media/{plain}"] = size


def _read_picture(path: Path, file: str, plain: str, unit: UnitFolder) -> int | None:
    """The bytes of the picture as it is published; None where it cannot be."""
    try:
        size = path.stat().st_size
        if size > MOST_PICTURE:
            message = f"the picture has {size:,} bytes, and {MOST_PICTURE:,} is the most"
            fault = Fault("file-too-large", 1, 1, message, _SMALLER)
            unit.problems.append(fault.at(printable(file)))
            return None
        data = path.read_bytes()
        clean = cleaned(plain, data)
    except OSError as error:
        unit.problems.append(_unreadable(printable(file), "file", error))
        return None
    except PictureError as error:
        fault = Fault("picture-unsound", error.line or 1, 1, error.why, _SOUND)
        unit.problems.append(fault.at(printable(file)))
        return None
    done = _what_was_done(path.name, plain, data)
    if done:
        message = f"this is published {', '.join(done)}"
        unit.notes.append(Problem(printable(file), 1, 1, PUBLISHED_SO, "note", message, _STAYS))
    return len(clean)


def _what_was_done(name: str, plain: str, data: bytes) -> list[str]:
    """How a file is published otherwise than it lies here, in words."""
    done = [f"as {plain}"] if name != plain else []
    kind = plain.rpartition(".")[2]
    if kind in ("svg", "mp3"):
        return done
    fit = fit_for_a_page(kind, data)
    if fit.turned:
        done.append("turned upright")
    if fit.smaller:
        done.append(f"in {_size(len(fit.data))} (here it has {_size(len(data))})")
    if fit.bared:
        done.append("without what it carries unseen, such as places, names and comments")
    return done


def _size(number: int) -> str:
    """4.1 MB, 287 kB: in thousands, as computers show files."""
    return f"{number / 1e6:.1f} MB" if number >= 1e6 else f"{max(1, round(number / 1e3))} kB"


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
