"""What follows is worked out: written or left away, a file means the same.

There is no published source for what follows from what: it is this bank's own way of writing, held
here to its laws and to cases that say the defaults in words.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given

from build_tools.shapes.schemas import Kind, schema
from build_tools.shapes.shape import shape_of
from build_tools.source.front_matter import Document, kind_of_file, read_markdown
from build_tools.source.said_once.in_full import in_full
from build_tools.source.said_once.shortened import shortened
from build_tools.source.tidy import Tidied, tidied
from build_tools.source.typed.canonical import canonical
from build_tools.source.typed.what_was_read import Reading
from tests.source.said_once.units import LESSON, lessons, units, with_lines
from tests.support.banks import CONTENT
from tests.support.optional_fields import Place, place

FILE = "units/boats/lesson-2.md"


def holds(data: dict[str, Any], kind: Kind, file: str) -> None:
    """The laws of a file, whatever is in it."""
    full, short = in_full(data, kind, file), shortened(data, kind, file)
    assert in_full(full, kind, file) == full
    assert in_full(short, kind, file) == full
    assert shortened(short, kind, file) == short
    assert in_full(shortened(full, kind, file), kind, file) == full
    assert _kept(data, full), "what is written stands"


def _kept(written: Any, full: Any) -> bool:
    if isinstance(written, dict):
        return all(name in full and _kept(one, full[name]) for name, one in written.items())
    if isinstance(written, list):
        return len(written) == len(full) and all(map(_kept, written, full))
    return bool(written == full)


def added(written: Any, full: Any, here: Place) -> Iterator[tuple[Place, str]]:
    """Each field that `full` has and `written` has not, with the place that it stands in."""
    if isinstance(written, dict) and isinstance(full, dict):
        by_name = isinstance(here.part.get("additionalProperties"), dict)
        for name, one in full.items():
            if name not in written:
                yield here, name
            elif by_name or name in here.part.get("properties", {}):
                yield from added(written[name], one, here.inner("*" if by_name else name))
    elif isinstance(written, list) and isinstance(full, list) and "items" in here.part:
        for old, new in zip(written, full, strict=True):
            yield from added(old, new, here.inner("[]"))


def follows_only_what_every_file_had(data: Any, kind: Kind, file: str) -> None:
    """A field that could always be left out has its meaning already, and no other may follow."""
    for here, name in added(data, in_full(data, kind, file), place(schema(kind), kind)):
        assert name in here.needed | {*here.one_of}, f"{name} was never needed in a {kind}"


@given(lessons)
def test_nothing_follows_in_a_lesson_that_could_be_left_out(data: dict[str, Any]) -> None:
    follows_only_what_every_file_had(data, "lesson", FILE)


@given(units)
def test_nothing_follows_in_a_unit_that_could_be_left_out(data: dict[str, Any]) -> None:
    follows_only_what_every_file_had(data, "unit", "units/boats/unit.md")


@given(lessons)
def test_a_lesson_in_full_or_short_is_the_same(data: dict[str, Any]) -> None:
    holds(data, "lesson", FILE)


@given(units)
def test_a_unit_in_full_or_short_is_the_same(data: dict[str, Any]) -> None:
    holds(data, "unit", "units/boats/unit.md")


@pytest.mark.parametrize(
    "path", sorted(CONTENT.glob("units/*/*.md")), ids=lambda one: f"{one.parent.name}-{one.stem}"
)
def test_published_units_in_full_are_what_they_are_short(path: Any) -> None:
    file, kind = path.name, kind_of_file(path.name)
    assert kind is not None
    read = read_markdown(file, path.read_bytes())
    assert isinstance(read, Document)
    written = canonical(Reading(data=read.data), shape_of(kind))
    again = read_markdown(file, f"---\n{written}---\n{read.body}".encode())
    assert isinstance(again, Document), again
    assert again.data == read.data
    made = tidied(file, f"---\n{written}---\n{read.body}".encode())
    assert isinstance(made, Tidied)
    short = read_markdown(file, made.text.encode())
    assert isinstance(short, Document)
    assert short.data == read.data
    assert len(made.text) < len(written) + len(read.body) + 8


def step(number: int, text: str, file: str = "lesson-1.md") -> dict[str, Any]:
    read = read_markdown(file, text.encode())
    assert isinstance(read, Document), read
    found: dict[str, Any] = read.data["steps"][number]
    return found


def without(text: str, *lines: str) -> str:
    for line in lines:
        assert f"{line}\n" in text, line
        text = text.replace(f"{line}\n", "", 1)
    return text


def test_the_first_step_is_the_warm_up_and_the_last_the_cool_down() -> None:
    text = LESSON.replace("  - phase: warm-up\n    does", "  - does", 1)
    text = text.replace("  - phase: cool-down\n    does", "  - does", 1)
    first, last = step(0, text), step(5, text)
    assert (first["phase"], first["grouping"]) == ("warm-up", "alone")
    assert (last["phase"], last["grouping"]) == ("cool-down", "alone")


@pytest.mark.parametrize(
    ("does", "phase"),
    [
        ("makes: A", "make"),
        ("develops: drift-mirrored", "develop"),
        ("joins: A, B", "join"),
        ("shows: A", "look and talk"),
        ("dances: A", "recall"),
    ],
)
def test_a_step_is_what_it_does(does: str, phase: str) -> None:
    text = LESSON.replace("  - phase: explore\n    does", "  - does", 1)
    text = without(text, "    dances: [fold]")
    text = with_lines(text, "look_for: Sharp edges.", f"    {does}")
    number = 1
    assert step(number, text.replace("lesson: 1", "lesson: 2"))["phase"] == phase
    if phase == "recall":
        assert step(number, text)["phase"] == "explore", "a first lesson has nothing to recall"


def test_a_grouping_stays_until_another_is_written() -> None:
    text = LESSON.replace(
        "    grouping: alone\n    task: Crease", "    grouping: pairs\n    task: Crease"
    )
    text = text.replace("    grouping: alone\n    task: Float", "    task: Float")
    assert step(2, text)["grouping"] == "pairs"
    assert step(3, text)["grouping"] == "alone"


def test_a_lesson_lasts_as_long_as_its_steps_and_has_the_number_of_its_file() -> None:
    text = without(LESSON, "lesson: 1", "minutes: 40")
    read = read_markdown("units/boats/lesson-3.md", text.encode())
    assert isinstance(read, Document)
    assert (read.data["lesson"], read.data["minutes"]) == (3, 40)


def test_what_is_written_stands() -> None:
    text = LESSON.replace("minutes: 40", "minutes: 45").replace("lesson: 1", "lesson: 2")
    read = read_markdown("lesson-1.md", text.encode())
    assert isinstance(read, Document)
    assert (read.data["lesson"], read.data["minutes"]) == (2, 45)


def test_a_remark_keeps_its_field() -> None:
    text = LESSON.replace("    grouping: alone", "    grouping: alone  # they may not know", 1)
    made = tidied("lesson-1.md", text.encode())
    assert isinstance(made, Tidied)
    assert 'grouping: "alone"  # they may not know\n' in made.text
    assert made.text.count("grouping:") < LESSON.count("grouping:"), "others are left out"


def test_whose_something_is_never_follows() -> None:
    """A unit that another school adapts has another publisher, and the pictures their makers."""
    item = {"title": "Low tide", "source": "Drawn for this unit"}
    link = {"stage": "key stage 2", "says": "…", "met_by": "…"}
    years = [{"nation": "Wales", "years": [3]}]
    data = {"publisher": "A school", "licence": "CC0-1.0", "years": years,
            "stimulus": {"items": [item]}, "curriculum": [link]}  # fmt: skip
    assert in_full(data, "unit", "unit.md") == data
