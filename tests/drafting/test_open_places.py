"""Every text of a unit and its lessons can be an open place, and is found where it is written."""

from __future__ import annotations

import copy
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from build_tools.model.build import build_unit
from build_tools.problem import FieldPath
from build_tools.source.folder import UnitFolder, read_unit_folder
from build_tools.source.front_matter import Document
from build_tools.views.words.open_places import MARK, OpenPlace, hint_in, open_places
from tests.support.banks import CONTENT

UNITS = ("rock-pool", "seeds-on-the-move", "weaving-shed")
READ_INTO_NUMBERS = {
    "seconds", "form", "counts", "after", "times", "returns", "steps", "apart", "groups_apart",
    "on", "louder", "free",
}  # fmt: skip
"""Fields whose text the model keeps as numbers or letters, so that no hint can stand there."""


def folder(slug: str) -> UnitFolder:
    read = read_unit_folder(CONTENT, slug)
    assert read.unit is not None
    return read


def texts(value: Any, path: FieldPath = ()) -> Iterator[FieldPath]:
    if isinstance(value, str):
        if not any(isinstance(p, str) and p in READ_INTO_NUMBERS for p in path):
            yield path
    elif isinstance(value, list):
        for index, item in enumerate(value):
            yield from texts(item, (*path, index))
    elif isinstance(value, dict):
        for name, item in value.items():
            yield from texts(item, (*path, name))


def marked(document: Document) -> Document:
    """The same document with the mark before every text."""
    data = copy.deepcopy(document.data)
    for path in texts(document.data):
        inside = data
        for step in path[:-1]:
            inside = inside[step]
        inside[path[-1]] = f"{MARK} {inside[path[-1]]}"
    return replace(document, data=data)


@pytest.mark.parametrize("slug", UNITS)
def test_every_text_is_found_where_it_is_written(slug: str) -> None:
    read = folder(slug)
    assert read.unit is not None
    documents = [read.unit, *read.lessons]
    unit = build_unit(slug, marked(read.unit), [marked(d) for d in read.lessons], read.media)
    wanted = {(d.file, path) for d in documents for path in texts(d.data)}
    assert {(p.file, p.path) for p in open_places(unit)} == wanted
    assert len(wanted) > 400


@pytest.mark.parametrize("slug", UNITS)
def test_a_finished_unit_has_none(slug: str) -> None:
    read = folder(slug)
    assert read.unit is not None
    assert open_places(build_unit(slug, read.unit, read.lessons, read.media)) == ()


def test_a_mark_in_the_notes_stands_on_its_line() -> None:
    read = folder("rock-pool")
    assert read.unit is not None
    lesson = replace(read.lessons[0], body="One line.\n\n- ✎ how the wave is danced.\n")
    unit = build_unit("rock-pool", read.unit, [lesson], read.media)
    assert open_places(unit) == (OpenPlace(lesson.file, ("notes", 2), "how the wave is danced"),)


@pytest.mark.parametrize(
    ("text", "hint"),
    [
        ("✎ what pupils do in part A", "what pupils do in part A"),
        ("Walk, then ✎ what comes next.", "what comes next"),
        ("✎", "something"),
        ("✎ one ✎ two", "one two"),
    ],
)
def test_the_hint_follows_the_mark(text: str, hint: str) -> None:
    assert hint_in(text) == hint
