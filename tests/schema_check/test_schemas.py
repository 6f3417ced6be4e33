"""The schemas themselves: sound by the specification, and readable by a teacher."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from typing import Any

import jsonschema_rs
import pytest
from jsonschema import Draft202012Validator

from build_tools.checking.check_bank import BANK_KINDS
from build_tools.schema_check.descriptions import description, description_at
from build_tools.shapes.schemas import SCHEMA_FOLDER, schema
from build_tools.source.front_matter import kind_of_file

NAMES = sorted(p.name.removesuffix(".schema.json") for p in SCHEMA_FOLDER.glob("*.schema.json"))
# The dialect's own address: JSON Schema Core 2020-12, section 8.1.1.
DIALECT = "https://json-schema.org/draft/2020-12/schema"
# Words of programmers that no author should have to know.
PROGRAMMERS_WORDS = re.compile(
    r"\b(object|array|string|integer|boolean|property|properties|schema|regex|enum|null|instance"
    r"|pattern|value|field type|invalid|must)\b",
    re.IGNORECASE,
)
HOLDERS = ("properties", "$defs")


def parts(
    value: Any, path: tuple[str, ...] = ()
) -> Iterator[tuple[tuple[str, ...], dict[str, Any]]]:
    """Every part of a schema that says what one field or one item of a list is."""
    if isinstance(value, list):
        for inner in value:
            yield from parts(inner, path)
    if not isinstance(value, dict):
        return
    for key, inner in value.items():
        if key in HOLDERS:
            for name, part in inner.items():
                yield (*path, name), part
                yield from parts(part, (*path, name))
        elif key in ("items", "additionalProperties") and isinstance(inner, dict):
            yield (*path, key), inner
            yield from parts(inner, (*path, key))
        elif key != "enum":
            yield from parts(inner, path)


ALL_PARTS = [(name, path, part) for name in NAMES for path, part in parts(schema(name))]


def test_there_is_a_schema_for_every_kind_of_file() -> None:
    assert NAMES == [
        "bank",
        "lesson",
        "near",
        "pictures",
        "safety",
        "shared",
        "taken-in",
        "topics",
        "unit",
        "words",
    ]
    assert len(ALL_PARTS) > 200


@pytest.mark.parametrize("file", BANK_KINDS)
def test_a_slip_in_any_file_of_the_bank_is_read_by_its_schema(file: str) -> None:
    assert kind_of_file(file) == BANK_KINDS[file]


@pytest.mark.parametrize("name", NAMES)
def test_each_is_a_sound_schema_of_2020_12(name: str) -> None:
    assert schema(name)["$schema"] == DIALECT
    assert schema(name)["$id"] == f"bank:{name}"
    Draft202012Validator.check_schema(schema(name))
    jsonschema_rs.meta.validate(schema(name))


@pytest.mark.parametrize("name", NAMES)
def test_each_has_a_title_and_says_what_it_is_for(name: str) -> None:
    assert schema(name)["title"]
    assert schema(name)["description"].endswith(".")


@pytest.mark.parametrize("kind", NAMES)
def test_every_field_and_item_is_described_in_plain_words(kind: str) -> None:
    for path, part in parts(schema(kind)):
        words = description(part, kind)
        assert len(words) > 5, path
        assert words.endswith("."), words
        assert words[0].isupper() or words.startswith("true"), words
        assert not PROGRAMMERS_WORDS.search(words), words


def test_every_needed_field_can_be_asked_for_in_words() -> None:
    asked = 0
    for kind, _, part in ALL_PARTS:
        for name in part.get("required", []):
            assert description(part["properties"][name], kind)
            asked += 1
    for kind in NAMES:
        for name in schema(kind).get("required", []):
            assert description(schema(kind)["properties"][name], kind)
            asked += 1
    assert asked > 80


@pytest.mark.parametrize("name", NAMES)
def test_patterns_mean_the_same_in_every_language(name: str) -> None:
    """ECMA-262 and Python differ on \\d (figures of any script) and on $ (before a line end)."""
    text = (SCHEMA_FOLDER / f"{name}.schema.json").read_text(encoding="utf-8")
    for word in ("multipleOf", "patternProperties", '"format":"', "$dynamicRef"):
        assert word not in text
    for pattern in patterns(json.loads(text)):
        assert not re.search(r"\\[dwsDWSbBAZz]|\(\?[^!:]|\.(?![^\[]*\])(?<!\\\.)", pattern), pattern
        if pattern.endswith("$"):
            assert pattern.endswith("(?!\\n)$"), pattern


def patterns(value: Any) -> Iterator[str]:
    if isinstance(value, dict):
        if isinstance(value.get("pattern"), str):
            yield value["pattern"]
        for inner in value.values():
            yield from patterns(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from patterns(inner)


def test_every_map_is_closed_so_that_no_slip_is_lost() -> None:
    for name, path, part in ALL_PARTS:
        if part.get("type") == "object":
            assert "additionalProperties" in part, (name, path)
    for name in NAMES:
        if name != "shared":
            assert "additionalProperties" in schema(name)


def test_every_pattern_and_choice_says_in_words_what_it_takes() -> None:
    for name, path, part in ALL_PARTS:
        if "pattern" in part or "oneOf" in part or isinstance(part.get("type"), list):
            comment = part.get("$comment", "")
            assert comment, (name, path)
            assert not PROGRAMMERS_WORDS.search(comment), comment


@pytest.mark.parametrize(
    ("kind", "path", "words"),
    [
        ("unit", "title", "The unit's title, as"),
        ("unit", "stimulus.items[].by", "Who made it"),
        ("unit", "sections.*.start.facing", "Which way the dancers face."),
        ("unit", "motifs.*.actions[].side", "The side of the body"),
        ("lesson", "look_and_talk.next.seen", ""),
        ("lesson", "steps[].ask[].question", ""),
        ("unit", "stimulus.nothing", None),
        ("unit", "title.nothing", None),
        ("unit", "topics.*", None),
    ],
)
def test_what_a_field_is_for_is_found_by_its_place(kind: str, path: str, words: str | None) -> None:
    found = description_at(kind, path)
    assert found.startswith(words) and found if words is not None else not found
