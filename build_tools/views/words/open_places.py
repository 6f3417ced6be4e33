"""Open places: where an author has still to write, each with a hint of what."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, fields, is_dataclass
from fractions import Fraction
from functools import cache
from operator import attrgetter
from typing import Any

from build_tools.model.dance import (
    Action,
    Addition,
    Choice,
    Dance,
    Development,
    Motif,
    Passage,
    Section,
    Sound,
    Transition,
)
from build_tools.model.lesson import Lesson
from build_tools.model.unit import EndPoint, Tried, Unit
from build_tools.problem import FieldPath

MARK = "✎"
"""The lower right pencil. It stands before a hint, and no other text of a unit holds it."""

_NOT_WRITTEN: Mapping[type, frozenset[str]] = {
    Unit: frozenset({"slug", "file", "media", "lessons", "notes"}),
    Lesson: frozenset({"file", "notes"}),
    EndPoint: frozenset({"name"}),
    Motif: frozenset({"name"}),
    Development: frozenset({"name"}),
    Choice: frozenset({"name"}),
    Section: frozenset({"letter", "returns", "changes"}),
}
"""Fields of the model that an author does not write as fields."""
_WRITTEN: Mapping[tuple[type, str], FieldPath] = {
    (Unit, "dance"): (),
    (Dance, "front"): ("dance", "front"),
    (Dance, "sides"): ("dance", "sides"),
    (Dance, "sound"): ("dance", "sound"),
    (Dance, "order_choice"): ("dance", "order"),
    (Section, "improvised_from"): ("improvised", "start"),
    (Section, "improvised_rules"): ("improvised", "rules"),
    (Transition, "start"): ("from",),
    (Transition, "end"): ("to",),
    (Transition, "kind"): ("as",),
    (Motif, "made_by"): ("from",),
    (Choice, "options"): ("from",),
    (Action, "word"): ("as",),
    (Action, "also"): ("with",),
    (Passage, "fit"): ("as",),
    (Development, "replacement"): ("replace", "by"),
    (Development, "added"): ("add",),
    (Development, "joined_to"): ("and",),
    (Addition, "action"): ("action",),
    (Lesson, "trouble"): ("if",),
    (Tried, "with_whom"): ("with",),
}
"""Fields of the model that an author writes under another name."""

_NO_TEXT = frozenset({bool, int, Fraction})


@dataclass(frozen=True, slots=True)
class OpenPlace:
    """One open place: its document, the place inside it, and the hint without the mark."""

    file: str
    path: FieldPath
    hint: str


def open_places(unit: Unit) -> tuple[OpenPlace, ...]:
    """Every open place of the unit and its lessons, in the order they are written in.

    An open place in the notes below the fields stands on its line there.
    """
    found: list[OpenPlace] = []
    documents: list[tuple[str, object, str]] = [(unit.file, unit, unit.notes)]
    documents += [(lesson.file, lesson, lesson.notes) for lesson in unit.lessons]
    for file, written, notes in documents:
        texts: list[tuple[FieldPath, str]] = []
        _collect(written, (), texts, unit.dance.sound)
        lines = enumerate(notes.split("\n"))
        texts += [(("notes", number), line) for number, line in lines if MARK in line]
        found += [
            OpenPlace(file, path, hint_in(text))
            for path, text in texts
            if not _of_the_first(unit, path)
        ]
    return tuple(found)


def _of_the_first(unit: Unit, path: FieldPath) -> bool:
    """Whether a changed return only has it from the first section, where it is open too."""
    if path[:1] != ("sections",) or len(path) < 3:
        return False
    section = unit.dance.sections[str(path[1])]
    return section.returns is not None and path[2] not in section.changes


def hint_in(text: str) -> str:
    """What follows the mark in `text`, on one line, with no stop at its end."""
    hint = " ".join(text.partition(MARK)[2].replace(MARK, " ").split())
    return hint.rstrip(".") or "something"


def _collect(
    value: object, path: FieldPath, found: list[tuple[FieldPath, str]], shared: Sound
) -> None:
    """Add every text with the mark in `value`, which stands at `path`.

    `shared` is the sound of the whole dance, which a section without its own only repeats.
    """
    if isinstance(value, str):
        if MARK in value:
            found.append((path, value))
    elif isinstance(value, tuple):
        for index, item in enumerate(value):
            if isinstance(item, str) and MARK not in item:
                continue
            _collect(item, (*path, index), found, shared)
    elif isinstance(value, Mapping):
        for name, item in value.items():
            _collect(item, (*path, name), found, shared)
    elif is_dataclass(value):
        get, places = _fields(value.__class__)
        for inner, under in zip(get(value), places, strict=True):
            # most fields hold no text, or text without the mark: those cost no call
            if inner.__class__ is str:
                if MARK not in inner:
                    continue
            elif not inner or inner.__class__ in _NO_TEXT:
                continue
            if isinstance(value, Section):
                if inner is shared:
                    continue
                if under == ("ends_on",):
                    under = (value.kind, *under)
            _collect(inner, (*path, *under), found, shared)


@cache
def _fields(kind: type) -> tuple[Callable[[object], tuple[Any, ...]], tuple[FieldPath, ...]]:
    """The fields of one part of the model, read at once, each with where its author writes it."""
    left_out = _NOT_WRITTEN.get(kind, frozenset())
    names = [field.name for field in fields(kind) if field.name not in left_out]
    places = tuple(_WRITTEN.get((kind, name), (name,)) for name in names)
    read = attrgetter(*names)
    if len(names) > 1:
        return read, places
    return lambda value: (read(value),), places
