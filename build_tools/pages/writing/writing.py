"""How to write a unit, from the schemas' own words, with examples from a real unit."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.page import Page
from build_tools.pages.writing.schema_guide import FieldGuide, Schemas, fields_of

PATH = "writing.html"
_UNIT_FIELDS = (
    "title", "edition", "issued", "publisher", "licence", "language", "summary", "topics",
    "subjects",
)  # fmt: skip
_LESSON_FIELDS = (
    "title", "focus", "pupils_make", "minutes", "story_so_far", "never_did_last", "collect",
    "classroom_first", "not_dancing",
)  # fmt: skip
_FILES = (
    ("unit", "unit.md", "The unit file"),
    ("lesson", "lesson-1.md and so on", "A lesson file"),
    ("topics", "vocabulary/topics.yml", "The topics file"),
    ("words", "vocabulary/words.yml", "The words file"),
    ("near", "vocabulary/near.yml", "The thesaurus"),
    ("pictures", "pictures/pictures.yml", "The shared pictures"),
    ("bank", "bank.yml", "The bank file"),
    ("safety", "safety.md", "The safety file"),
)


@dataclass(frozen=True, slots=True)
class FileGuide:
    """One kind of file."""

    heading: str
    """What it is called."""
    anchor: str
    """Its name in links."""
    file: str
    """The file's name."""
    meaning: str
    """The schema’s own description of such a file."""
    fields: tuple[FieldGuide, ...]
    """Its fields, in the order of the schema."""


@dataclass(frozen=True, slots=True)
class WritingView:
    """The page on how to write a unit."""

    frame: Frame
    """What stands around the content."""
    files: tuple[FileGuide, ...]
    """The files, the unit's first."""
    action: tuple[FieldGuide, ...]
    """The fields of an action, which motifs and developments are made of."""
    topics: tuple[str, ...]
    """Every topic that a unit may name, in the order of the alphabet."""
    example_from: str | None
    """The title of the unit that the examples are from."""


@dataclass(frozen=True, slots=True)
class Examples:
    """Fields of one unit as its author might write them: they can be kept without the unit."""

    title: str
    """The unit's title."""
    fields: Mapping[str, Mapping[str, str]]
    """For each kind of file, each field that is shown, as text."""


def examples_of(unit: Unit) -> Examples:
    """The examples that `unit` gives."""
    return Examples(unit.title, _examples(unit))


def writing_page(bank: Bank, shown: Examples | None, schemas: Schemas) -> Page:
    """The page writing.html, with the examples `shown`, if there are any."""
    examples = shown.fields if shown else {}
    view = WritingView(
        frame=frame(
            bank, PATH, "How to write a unit", "Every field of a unit and its lessons, explained."
        ),
        files=tuple(
            FileGuide(
                heading=heading,
                anchor=f"file-{kind}",
                file=file,
                meaning=schemas[kind]["description"],
                fields=_fields(schemas, kind, examples.get(kind, {})),
            )
            for kind, file, heading in _FILES
            if kind in schemas
        ),
        action=fields_of({**schemas, "action": _action(schemas)}, "action", {}),
        topics=tuple(sorted(bank.topics)),
        example_from=shown.title if shown else None,
    )
    return Page(PATH, "writing/writing.html", view.frame.title, view)


def _action(schemas: Schemas) -> dict[str, object]:
    found: dict[str, object] = dict(schemas["shared"]["$defs"]["action"])
    return found


def _fields(schemas: Schemas, kind: str, examples: Mapping[str, str]) -> tuple[FieldGuide, ...]:
    schema = schemas[kind]
    if "properties" in schema:
        return fields_of(schemas, kind, examples)
    # a file that is all one map of names: show what stands under each name
    under = schema["additionalProperties"]
    return fields_of({**schemas, kind: under}, kind, examples)


def _examples(unit: Unit) -> dict[str, dict[str, str]]:
    if not unit.lessons:
        return {}
    lesson = unit.lessons[min(1, len(unit.lessons) - 1)]
    return {
        "unit": {name: _written(name, getattr(unit, name)) for name in _UNIT_FIELDS},
        "lesson": {
            name: _written(name, value)
            for name in _LESSON_FIELDS
            if (value := getattr(lesson, name))
        },
    }


def _written(name: str, value: object) -> str:
    """A field as an author might write it."""
    if isinstance(value, tuple):
        return "\n".join([f"{name}:", *(f"  - {_plain(str(one))}" for one in value)])
    return f"{name}: {_plain(str(value))}"


def _plain(words: str) -> str:
    """Words as YAML: in quotes only where they need them."""
    return json.dumps(words, ensure_ascii=False) if ": " in words or " #" in words else words
