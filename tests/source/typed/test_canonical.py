"""What is written in canonical form is read back as it was, whatever it holds."""

from __future__ import annotations

from typing import Any

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from build_tools.shapes.shape import ANY, Shape
from build_tools.source.typed.canonical import canonical, field_lines
from build_tools.source.typed.what_was_read import Reading
from build_tools.source.yaml_reader import read_yaml

names = st.from_regex(r"[a-z]{1,8}(-[a-z]{1,4})?", fullmatch=True)
texts = st.one_of(
    st.text(st.characters(codec="utf-8", categories=("L", "N", "P", "S", "Zs")), min_size=1),
    st.sampled_from(["no", "3:45", "012", "true", "~", "- a", "a: b", "a #b", "'", '"', "✎ a, b}"]),
)
leaves = st.one_of(texts, st.integers(0, 500), st.booleans())
values = st.recursive(
    leaves,
    lambda inner: st.one_of(
        st.lists(inner, max_size=4),
        st.dictionaries(names, inner, min_size=1, max_size=4),
    ),
    max_leaves=12,
)


@given(st.dictionaries(names, values, min_size=1, max_size=5))
def test_fields_are_read_back_as_they_were(data: dict[str, Any]) -> None:
    written = canonical(Reading(data=data), ANY)
    read = read_yaml(written)
    assert isinstance(read, tuple), (read, written)
    assert read[0] == data


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ('"Freeze" and my hand up', ["say: '\"Freeze\" and my hand up'"]),
        ("Say: it's time", ['say: "Say: it\'s time"']),
        ('"Freeze": it\'s my hand', ["say: >-", '  "Freeze": it\'s my hand']),
    ],
)
def test_marks_are_those_that_a_text_does_not_hold(text: str, lines: list[str]) -> None:
    """Found in a trial: "\\"Freeze\\" and …" is not handed to a colleague."""
    assert field_lines("say", text, Shape("fields", fields={"say": Shape("text")}), ()) == lines
    assert yaml.safe_load("\n".join(lines)) == {"say": text}
