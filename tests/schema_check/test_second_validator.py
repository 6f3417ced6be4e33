"""A second validator, written by other people in another language, gives the same verdicts.

It knows the specification by itself: JSON Schema 2020-12, Validation, sections 6 and 7.
"""

from __future__ import annotations

import json
import random
from functools import cache
from typing import Any

import jsonschema_rs

from build_tools.model.build import build_unit
from build_tools.problem import Fault
from build_tools.schema_check.check import check_document, faults_of_shape
from build_tools.shapes.schemas import Kind, schema
from build_tools.source.front_matter import Document
from build_tools.source.yaml_reader import read_yaml
from tests.support.schema_fuzz import changed, documents, fixture_documents

FEW, MANY = 80, 20_000
SEED = 20_261_125


@cache
def second(kind: Kind) -> jsonschema_rs.Draft202012Validator:
    registry = jsonschema_rs.Registry([("bank:shared", schema("shared"))])
    return jsonschema_rs.Draft202012Validator(schema(kind), registry=registry)


def as_document(file: str, data: Any) -> Document:
    """A document of `data`, written as JSON, which is YAML too."""
    return Document(file, data, "", json.dumps(data, indent=1), 1)


def test_both_agree_on_every_document_there_is() -> None:
    seen = 0
    for kind, document in [*documents(), *fixture_documents()]:
        ours = not faults_of_shape(document, kind)
        assert second(kind).is_valid(document.data) == ours, (kind, document.file)
        seen += 1
    assert seen >= 10


def test_the_real_documents_are_sound_to_the_second_validator() -> None:
    for kind, document in documents():
        assert [e.message for e in second(kind).iter_errors(document.data)] == []


def test_both_agree_on_changed_documents(thorough: bool) -> None:
    choose = random.Random(SEED)
    originals = [(kind, document) for kind, document in documents()]
    verdicts = {True: 0, False: 0}
    for number in range(MANY if thorough else FEW):
        kind, original = originals[number % len(originals)]
        data = changed(original.data, choose)
        problems = faults_of_shape(as_document(original.file, data), kind)
        assert second(kind).is_valid(data) == (not problems), (kind, number, problems[:3])
        verdicts[not problems] += 1
    # both verdicts are put to the test often enough
    assert min(verdicts.values()) > sum(verdicts.values()) // 20, verdicts


def test_every_document_that_fits_is_built_into_a_unit(thorough: bool) -> None:
    choose = random.Random(SEED + 1)
    found = [(kind, document) for kind, document in documents() if kind in ("unit", "lesson")]
    a_unit = next(d for kind, d in found if kind == "unit")
    a_lesson = next(d for kind, d in found if kind == "lesson")
    built = 0
    for number in range(MANY // 4 if thorough else FEW // 4):
        kind, original = found[number % len(found)]
        document = as_document(original.file, changed(original.data, choose))
        if check_document(document, kind):
            continue
        unit, lesson = (document, a_lesson) if kind == "unit" else (a_unit, document)
        assert build_unit("rock-pool", unit, [lesson], {}).lessons[0].file == lesson.file
        built += 1
    assert built > FEW // 100


def test_places_are_found_in_changed_documents() -> None:
    choose = random.Random(SEED + 2)
    originals = list(documents())
    for number in range(FEW // 10):
        kind, original = originals[number % len(originals)]
        data = changed(original.data, choose)
        text = json.dumps(data, indent=1, ensure_ascii=True)
        again = read_yaml(text)
        if isinstance(again, Fault):
            continue
        document = Document(original.file, data, "", text, 1)
        lines = text.count("\n") + 1
        assert all(1 <= p.line <= lines for p in check_document(document, kind))
