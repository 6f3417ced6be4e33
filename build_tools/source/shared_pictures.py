"""Pictures that units of a bank share: one file, and its rights said once.

They lie in the folder `pictures` beside `units`, and `pictures.yml` there says what each is and
whose. A unit names one by `shared: harbour`, and is read as if it had the file and said the rest.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from build_tools.disk.stray_files import is_stray
from build_tools.problem import FieldPath, Problem
from build_tools.shapes.schemas import quick_validator
from build_tools.source.file_names import plain_picture_name
from build_tools.source.front_matter import Document, read_data
from build_tools.source.media_files import SHARED

LIST = f"{SHARED}/pictures.yml"
_NOT_A_PICTURE = (".mp3", ".yml")
MISSING, UNUSED, ODD = "shared-picture-missing", "shared-picture-unused", "shared-picture-odd"


@dataclass(frozen=True, slots=True)
class SharedPictures:
    """The shared pictures of one bank, by their names."""

    said: Mapping[str, Mapping[str, Any]] = field(default_factory=dict)
    """What is said of each; empty where the list is not there or not sound."""
    files: Mapping[str, str] = field(default_factory=dict)
    """What each is called where it is published: harbour.jpg."""
    strange: tuple[str, ...] = ()
    """What else lies there."""

    def fields_of(self, name: str) -> dict[str, Any] | None:
        """The fields of an item that a name stands for; None where something of it is missing."""
        said, file = self.said.get(name), self.files.get(name)
        return {**said, "file": f"media/{file}"} if said and file else None


def shared_pictures(root: Path) -> SharedPictures:
    """The shared pictures of the content folder `root`."""
    read = _list_in(root)
    sound = isinstance(read, Document) and quick_validator("pictures").is_valid(read.data)
    said = read.data if isinstance(read, Document) and sound else {}
    files: dict[str, str] = {}
    strange: list[str] = []
    for name in _names_in(root):
        plain = plain_picture_name(name)
        stem = (plain or "").rpartition(".")[0]
        if plain is None or plain.endswith(_NOT_A_PICTURE) or stem in files:
            strange.append(name)
        else:
            files[stem] = plain
    return SharedPictures(said, files, tuple(strange))


def places_of_shared(data: Any) -> Iterator[tuple[FieldPath, str]]:
    """Each item of a unit's or a lesson's fields that is a shared picture, and its name."""
    if not isinstance(data, dict):
        return
    stimulus = data.get("stimulus")
    items = stimulus.get("items") if isinstance(stimulus, dict) else None
    for path, listed in (
        (("stimulus", "items"), items),
        (("pictures",), data.get("pictures")),
    ):
        for number, item in enumerate(listed if isinstance(listed, list) else ()):
            if isinstance(item, dict) and item.keys() == {"shared"}:
                yield (*path, number), str(item["shared"])


def with_shared(
    document: Document, shared: SharedPictures
) -> tuple[Document, list[str], list[Problem]]:
    """The document with what its shared pictures stand for, their names, and what is missing."""
    used: list[str] = []
    problems: list[Problem] = []
    found: dict[FieldPath, dict[str, Any]] = {}
    for path, name in places_of_shared(document.data):
        fields = shared.fields_of(name)
        if fields is None:
            message, help_ = _what_is_missing(name, shared)
            problems.append(document.problem(MISSING, "error", path, message, help_))
        else:
            used.append(name)
            found[path] = fields
    if not found:
        return document, used, problems
    return replace(document, data=_with_items(document.data, found, ())), used, problems


def _with_items(data: Any, found: Mapping[FieldPath, Any], path: FieldPath) -> Any:
    """A copy of `data` in which what stands at some paths is something else."""
    if path in found:
        return found[path]
    if not any(one[: len(path)] == path for one in found):
        return data
    if isinstance(data, dict):
        return {name: _with_items(value, found, (*path, name)) for name, value in data.items()}
    return [_with_items(value, found, (*path, n)) for n, value in enumerate(data)]


def _what_is_missing(name: str, shared: SharedPictures) -> tuple[str, str]:
    if name in shared.files:
        return (
            f"`{shared.files[name]}` lies in the folder {SHARED}, but {LIST} does not say soundly "
            "what it is and whose",
            f"write `{name}:` there, and below it title, by, licence, source and text_version",
        )
    whole = [one for one in shared.files if one in shared.said]
    there = " and ".join(f"`{one}`" for one in whole) or "none"
    return (
        f"no picture `{name}` is shared: of those in the folder {SHARED} that are listed, "
        f"there is {there}",
        f"write one of these, or put {name}.jpg into the folder {SHARED} and say in {LIST} what "
        "it is and whose",
    )


def problems_of_list(root: Path, document: Document | None) -> list[Problem]:
    """What does not fit together in the folder of shared pictures; `document` is its sound list."""
    shared = shared_pictures(root)
    found: list[Problem] = []
    for name in document.data if document else ():
        if document and name not in shared.files:
            message = f"no picture of the name `{name}` lies in the folder {SHARED}"
            help_ = f"put {name}.jpg (or .png, .webp, .svg) there, or take the lines out"
            found.append(document.problem(ODD, "question", (name,), message, help_))
    for name, file in shared.files.items():
        if name not in shared.said:
            message = f"{LIST} does not say what this picture is and whose, so no unit can show it"
            help_ = f"write `{name}:` there, and below it title, by, licence, source, text_version"
            found.append(Problem(f"{SHARED}/{file}", 1, 1, ODD, "question", message, help_))
    for file in shared.strange:
        message = "this is no picture with a name of its own"
        help_ = "call it by small letters, figures and hyphens, or move it out"
        found.append(Problem(f"{SHARED}/{file}", 1, 1, ODD, "question", message, help_))
    return found


def unused(document: Document, used: frozenset[str]) -> list[Problem]:
    """A note for each picture in the sound list that no unit shows."""
    return [
        document.problem(
            UNUSED,
            "note",
            (name,),
            f"no unit shows `{name}`",
            f"name it in a unit by `shared: {name}`, or take it out of the folder and the list",
        )
        for name in document.data
        if name not in used
    ]


def _list_in(root: Path) -> object:
    try:
        return read_data(LIST, (root / LIST).read_bytes())
    except OSError:
        return None


def _names_in(root: Path) -> list[str]:
    try:
        names = sorted(one.name for one in (root / SHARED).iterdir())
    except OSError:
        return []
    return [n for n in names if not n.startswith(".") and not is_stray(n) and n != "pictures.yml"]
