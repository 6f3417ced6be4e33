"""Every field has a name of its own in sentences about a change, or is part of one that has."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from build_tools.comparing.labels import LESSON, UNIT, Labels
from tests.support.schema_fields import ends

SAID_APART = {
    "unit": {
        "edition",
        "issued",
        "words",
        "allow",
        "developments",
        "transitions",
        "curriculum",
        "ending",
    },
    "lesson": {"lesson", "words"},
}
"""What `comparing/compare.py` says as a whole, under a name of its own: a word, a development.

The edition heads a comparison, and lessons are matched by their numbers.
"""


def around(path: str) -> Iterator[str]:
    """The field at `path`, and each that it is part of."""
    while path:
        yield path
        shorter = path.removesuffix("[]")
        path = path.rpartition(".")[0] if shorter == path else shorter


@pytest.mark.parametrize("labels", [UNIT, LESSON], ids=lambda labels: str(labels.kind))
def test_every_field_has_a_name(labels: Labels) -> None:
    named = set(labels.known) | SAID_APART[labels.kind]
    fields = {path for path, _ in ends(labels.kind)}
    assert "title" in fields
    nameless = {path for path in fields if named.isdisjoint(around(path))}
    assert nameless == set(), "name it in comparing/labels.py"
