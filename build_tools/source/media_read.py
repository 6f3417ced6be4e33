"""One picture or recording of a unit, read as it is published, and what is said of it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from build_tools.pictures.heif import is_heif
from build_tools.pictures.publishable import cleaned, fit_for_a_page
from build_tools.pictures.trouble import PictureError
from build_tools.problem import Fault, Problem
from build_tools.source.file_names import printable

MOST_PICTURE = 20_000_000
"""Bytes of one picture; a page with it opens slowly long before that."""
SMALLER = "save it smaller: 2,000 points across are plenty for a page"
PUBLISHED_SO = "picture-published-so"
"""The rule that notes are signed with: what is done to a picture before anybody sees it."""
_STAYS = "nothing; your own file stays as it is"
_NO_HEIC = (
    "it is no photograph as telephones keep them, though its name ends in .heic: open it and save "
    "it as a JPEG (.jpg)"
)
_SOUND = "mend the picture, or put another in its place"


@dataclass(frozen=True, slots=True)
class ReadMedia:
    """How many bytes a file has where it is published, or why it cannot be."""

    size: int = 0
    problem: Problem | None = None
    note: Problem | None = None
    """How it is published otherwise than it lies here."""


def read_media(path: Path, file: str, plain: str) -> ReadMedia:
    """Read what lies at `path`; `file` names it in problems, `plain` is its name in the bank."""
    name = printable(file)
    try:
        size = path.stat().st_size
        if size > MOST_PICTURE:
            message = f"the picture has {size:,} bytes, and {MOST_PICTURE:,} is the most"
            fault = Fault("file-too-large", 1, 1, message, SMALLER)
            return ReadMedia(problem=fault.at(name))
        data = path.read_bytes()
        if path.suffix.lower() in (".heic", ".heif") and not is_heif(data):
            raise PictureError(_NO_HEIC)
        clean = cleaned(plain, data)
    except OSError as error:
        return ReadMedia(problem=unreadable(name, "file", error))
    except PictureError as error:
        fault = Fault("picture-unsound", error.line or 1, 1, error.why, _SOUND)
        return ReadMedia(problem=fault.at(name))
    done = what_was_done(path.name, plain, data)
    message = f"this is published {', '.join(done)}"
    note = Problem(name, 1, 1, PUBLISHED_SO, "note", message, _STAYS) if done else None
    return ReadMedia(len(clean), note=note)


def unreadable(file: str, what: str, error: OSError) -> Problem:
    """The problem of a file or a folder that the computer refuses to open."""
    message = f"the {what} cannot be opened ({error.strerror})"
    help_ = "close it in other programs, and check that you may read it"
    return Fault("file-unreadable", 1, 1, message, help_).at(file)


def what_was_done(name: str, plain: str, data: bytes) -> list[str]:
    """How a file is published otherwise than it lies here, in words."""
    done = [f"as {plain}"] if name != plain else []
    kind = plain.rpartition(".")[2]
    if kind in ("svg", "mp3"):
        return done
    fit = fit_for_a_page(kind, data)
    if fit.turned:
        done.append("turned upright")
    if fit.smaller:
        here = size_in_words(len(data))
        done.append(f"in {size_in_words(len(fit.data))} (here it has {here})")
    if fit.bared:
        done.append("without what it carries unseen, such as places, names and comments")
    return done


def size_in_words(number: int) -> str:
    """4.1 MB, 287 kB: in thousands, as computers show files."""
    return f"{number / 1e6:.1f} MB" if number >= 1e6 else f"{max(1, round(number / 1e3))} kB"
