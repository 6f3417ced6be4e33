"""The content folder: which files there are, each read on its own so that none hides another."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path as FilePath

from build_tools.problem import Fault, Problem
from build_tools.source.document import Document, Reader, read_data, read_markdown

SLUG = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\Z")
MOST_SLUG = 40
_LESSON_FILE = re.compile(r"lesson-([1-9][0-9]?)\.md\Z")
_MEDIA_FILE = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\.(svg|png|jpg|webp)\Z")
_DEVICE_NAMES = {"con", "prn", "aux", "nul"} | {
    f"{port}{n}" for port in ("com", "lpt") for n in range(1, 10)
}
BANK_FILES: dict[str, Reader] = {
    "bank.yml": read_data,
    "vocabulary/topics.yml": read_data,
    "vocabulary/words.yml": read_data,
    "safety.md": read_markdown,
}


@dataclass(slots=True)
class UnitFolder:
    """The files of one unit. `whole` is false where a file of it could not be read."""

    slug: str
    unit: Document | None = None
    lessons: list[Document] = field(default_factory=list)
    media: dict[str, int] = field(default_factory=dict)
    """Each media file, such as media/pool.svg, with its size in bytes."""
    whole: bool = True


@dataclass(slots=True)
class Content:
    """Everything read from a content folder, and what could not be read."""

    bank: dict[str, Document] = field(default_factory=dict)
    units: list[UnitFolder] = field(default_factory=list)
    problems: list[Problem] = field(default_factory=list)


def read_content(root: FilePath) -> Content:
    """Read the content folder `root`. Nothing is raised for what is wrong inside it."""
    content = Content()
    for file, reader in BANK_FILES.items():
        document = _read(root, file, reader, content.problems)
        if document is not None:
            content.bank[file] = document
    units = root / "units"
    folders = sorted(units.iterdir(), key=lambda p: p.name) if units.is_dir() else []
    for folder in folders:
        if folder.name.startswith("."):
            continue
        if not folder.is_dir():
            content.problems.append(
                _odd(f"units/{folder.name}", "a file lies among the folders of units")
            )
        elif not is_slug(folder.name):
            content.problems.append(
                _odd(
                    f"units/{folder.name}",
                    f"the folder name `{folder.name}` is not small letters, figures and hyphens, "
                    f"{MOST_SLUG} at most",
                )
            )
        else:
            content.units.append(read_unit_folder(root, folder.name, content.problems))
    return content


def is_slug(name: str) -> bool:
    """Whether `name` can name a unit's folder on any computer."""
    return bool(SLUG.match(name)) and len(name) <= MOST_SLUG and name not in _DEVICE_NAMES


def read_unit_folder(root: FilePath, slug: str, problems: list[Problem]) -> UnitFolder:
    """Read the files of one unit and add what is wrong to `problems`."""
    unit = UnitFolder(slug)
    before = len(problems)
    folder = root / "units" / slug
    for entry in sorted(folder.iterdir(), key=lambda p: _number_first(p.name)):
        file = f"units/{slug}/{entry.name}"
        if entry.name.startswith("."):
            continue
        if entry.name == "unit.md":
            unit.unit = _read(root, file, read_markdown, problems)
        elif _LESSON_FILE.match(entry.name):
            lesson = _read(root, file, read_markdown, problems)
            if lesson is not None:
                unit.lessons.append(lesson)
        elif entry.name == "media" and entry.is_dir():
            _list_media(entry, slug, unit, problems)
        else:
            problems.append(_odd(file, f"`{entry.name}` is not a file of a unit"))
    if not (folder / "unit.md").is_file():
        problems.append(_missing(f"units/{slug}/unit.md", "the unit has no file unit.md"))
    elif len(problems) == before and not unit.lessons:
        problems.append(
            _missing(f"units/{slug}/unit.md", "the unit has no lesson: 0 files lesson-1.md …")
        )
    unit.whole = len(problems) == before
    return unit


def _number_first(name: str) -> tuple[int, str]:
    found = _LESSON_FILE.match(name)
    return (int(found.group(1)) if found else 0, name)


def _list_media(folder: FilePath, slug: str, unit: UnitFolder, problems: list[Problem]) -> None:
    for entry in sorted(folder.iterdir(), key=lambda p: p.name):
        if entry.name.startswith("."):
            continue
        if not entry.is_file() or not _MEDIA_FILE.match(entry.name):
            problems.append(
                _odd(f"units/{slug}/media/{entry.name}", "this is not a picture with a plain name")
            )
        else:
            unit.media[f"media/{entry.name}"] = entry.stat().st_size


def _read(root: FilePath, file: str, reader: Reader, problems: list[Problem]) -> Document | None:
    path = root / file
    try:
        raw = path.read_bytes()
    except FileNotFoundError:
        problems.append(_missing(file, f"the file `{file}` is not there"))
        return None
    except OSError as error:
        problems.append(
            Fault(
                "file-unreadable",
                1,
                1,
                f"the file cannot be opened ({error.strerror})",
                "close it in other programs, and check that you may read it",
            ).at(file)
        )
        return None
    result = reader(file, raw)
    if isinstance(result, list):
        problems.extend(result)
        return None
    return result


def _missing(file: str, message: str) -> Problem:
    help_ = "write it, or put it back from an earlier copy"
    return Fault("file-missing", 1, 1, message, help_).at(file)


def _odd(file: str, message: str) -> Problem:
    help_ = (
        "rename it or move it out: units hold unit.md, lesson-1.md and so on, and pictures "
        "(svg, png, jpg, webp) in media"
    )
    return Fault("file-name-odd", 1, 1, message, help_).at(file)
