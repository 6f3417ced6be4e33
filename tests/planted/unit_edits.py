"""A sound unit as plain data that code can damage in one place, and its way back to documents."""

from __future__ import annotations

import copy
import json
import pickle
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from build_tools.model.build import build_unit
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath
from build_tools.source.folder import read_unit_folder
from build_tools.source.front_matter import Document, kind_of_file, read_markdown
from build_tools.source.said_once.in_full import in_full
from tests.support.writing_yaml import write_yaml

Place = tuple[str, FieldPath]
"""A file and the path of a field in it."""


@dataclass(slots=True)
class EditableUnit:
    """The fields and notes of each file of a unit, free to be changed."""

    root: Path
    slug: str
    data: dict[str, Any]
    bodies: dict[str, str]
    media: dict[str, int]
    _read_back: dict[str, tuple[str, Document]] = field(default_factory=dict)
    """Each file as it was last written: what was in it, in the order it stood there."""

    def copied(self) -> EditableUnit:
        """The same to be changed; files that stay as they are need not be read back again."""
        # the same as copying it piece by piece, in a quarter of the time
        data = pickle.loads(pickle.dumps(self.data))
        own = (dict(self.bodies), dict(self.media), dict(self._read_back))
        return EditableUnit(self.root, self.slug, data, *own)

    @property
    def file(self) -> str:
        """The unit's own file."""
        return f"units/{self.slug}/unit.md"

    @property
    def top(self) -> Any:
        """The fields of the unit's own file."""
        return self.data[self.file]

    @property
    def lesson_files(self) -> list[str]:
        """The files of the lessons, first to last."""
        return sorted((f for f in self.data if f != self.file), key=_lesson_number)

    def lessons(self) -> Iterator[tuple[str, Any]]:
        """Each lesson's file and fields, first to last."""
        for file in self.lesson_files:
            yield file, self.data[file]

    def steps(self) -> Iterator[tuple[str, int, Any]]:
        """Each step's file, index and fields, in the order of teaching."""
        for file, lesson in self.lessons():
            for n, step in enumerate(lesson["steps"]):
                yield file, n, step

    def first_step(self, fits: Callable[[Any], bool]) -> tuple[str, int, Any] | None:
        """The first step in the order of teaching for which `fits` says yes."""
        return next((found for found in self.steps() if fits(found[2])), None)

    def making(self, name: str) -> tuple[str, int, Any] | None:
        """The first step that makes `name`."""
        return self.first_step(lambda step: name in step.get("makes", []))

    def get(self, file: str, path: FieldPath) -> Any:
        """What stands at `path`."""
        value = self.data[file]
        for part in path:
            value = value[part]
        return value

    def set(self, file: str, path: FieldPath, value: Any) -> Place:
        """Write `value` at `path`, new or in place of what is there."""
        self.get(file, path[:-1])[path[-1]] = value
        return file, path

    def drop(self, file: str, path: FieldPath) -> Any:
        """Take out what stands at `path`, and give it back."""
        return self.get(file, path[:-1]).pop(path[-1])

    def insert(self, file: str, path: FieldPath, value: Any) -> Place:
        """Put `value` into a list so that it stands at `path`."""
        self.get(file, path[:-1]).insert(path[-1], value)
        return file, path

    def move(self, file: str, path: FieldPath, to_file: str, to: FieldPath) -> Place:
        """Take the item of a list at `path` and put it into a list at `to`."""
        return self.insert(to_file, to, self.drop(file, path))

    def swap(self, file: str, path: FieldPath, other_file: str, other: FieldPath) -> None:
        """Let what stands at two paths change places."""
        first, second = self.get(file, path), self.get(other_file, other)
        self.set(file, path, second)
        self.set(other_file, other, first)

    def stretch(self, file: str, path: FieldPath, times: float) -> Place:
        """Multiply the number at `path`; whole numbers stay whole."""
        number = self.get(file, path) * times
        return self.set(file, path, int(number) if number == int(number) else number)

    def repeat(self, file: str, path: FieldPath, times: int) -> Place:
        """Let the item of a list at `path` stand `times` times, one after another."""
        items, item = self.get(file, path[:-1]), self.get(file, path)
        at = path[-1]
        assert isinstance(at, int)
        items[at : at + 1] = [copy.deepcopy(item) for _ in range(times)]
        return file, path

    def tidy(self) -> None:
        """Take out the lists that an edit has left empty; lessons have no empty lists."""
        for _, lesson in self.lessons():
            for part in (*lesson["steps"], lesson.get("look_and_talk", {})):
                for name in [name for name, value in part.items() if value == []]:
                    del part[name]

    def written(self) -> tuple[Document, list[Document]]:
        """The unit's file and its lessons, written out and read again by the bank's own reader."""
        return self._read(self.file), [self._read(file) for file in self.lesson_files]

    def built(self, unit: Document, lessons: list[Document]) -> Unit:
        """The unit that the written documents describe."""
        return build_unit(self.slug, unit, lessons, self.media)

    def _read(self, file: str) -> Document:
        inside = repr((self.data[file], self.bodies[file]))
        before, document = self._read_back.get(file, (None, None))
        if document is None or inside != before:
            document = self._written_out(file)
            self._read_back[file] = (inside, document)
        return document

    def _written_out(self, file: str) -> Document:
        text = f"---\n{write_yaml(self.data[file])}---\n{self.bodies[file]}"
        document = read_markdown(file, text.encode())
        assert isinstance(document, Document), document
        kind = kind_of_file(file)
        assert kind is not None
        full = in_full(self.data[file], kind, file)
        assert document.data == full, f"{file}: written and read back unequal"
        return document


def load(root: Path, slug: str) -> EditableUnit:
    """The unit in the folder `slug` of a content folder, read by the bank's own reader."""
    folder = read_unit_folder(root, slug)
    assert folder.problems == [], folder.problems
    files = folder.by_file()
    return EditableUnit(
        root,
        slug,
        {file: copy.deepcopy(document.data) for file, document in files.items()},
        {file: document.body for file, document in files.items()},
        dict(folder.media),
    )


def motifs_in(unit: EditableUnit, letter: str) -> list[str]:
    """The motifs that a section is made of, also by way of their developments."""
    section = unit.top["sections"][letter]
    names = [name for passage in section.get("danced", []) for name in passage["what"]]
    while any(name in unit.top.get("developments", {}) for name in names):
        names = [unit.top["developments"].get(n, {"of": n})["of"] for n in names]
    return names


def unknown_word(unit: EditableUnit) -> str | None:
    """A word of the trade that the unit uses nowhere, so that nobody has been taught it."""
    said = json.dumps([unit.data, unit.bodies]).lower()
    return next((w for w in ("retrograde", "fragmentation", "rondo") if w not in said), None)


def _lesson_number(file: str) -> int:
    return int(file.rsplit("-", 1)[1].removesuffix(".md"))
