"""Every field stands where its place says: found anew by an emitter of our own."""

from __future__ import annotations

import json
import random
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from build_tools.problem import Fault, FieldPath
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.yaml_reader import Places, read_yaml

names = st.from_regex(r"[a-z][a-z0-9_-]{0,8}", fullmatch=True)
leaves = st.one_of(
    st.text(st.characters(codec="ascii", exclude_categories=["Cc"]), max_size=20),
    st.text("é😀日 '\"\\:#-", max_size=8),
    st.integers(-999_999, 999_999),
    st.booleans(),
    st.none(),
)
nested = st.recursive(
    leaves,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(names, inner, max_size=4),
    max_leaves=20,
)
maps = st.dictionaries(names, nested, min_size=1, max_size=5)


class Emitter:
    """Writes plain data as YAML and notes the place of every field as it goes."""

    def __init__(self, choose: random.Random) -> None:
        self.lines: list[str] = []
        self.places: Places = {}
        self._choose = choose

    def write(self, value: Any, path: FieldPath, indent: int) -> None:
        """Write a map or a list with something in it, one line or more for each entry."""
        entries = value.items() if isinstance(value, dict) else enumerate(value)
        for key, item in entries:
            if self._choose.random() < 0.2:
                self.lines.append(self._choose.choice(["", "# a remark", "   "]))
            here = (*path, key)
            if isinstance(value, dict):
                start, self.places[here] = f"{key}:", (len(self.lines) + 1, indent + 1)
            else:
                start = "-"
            if not isinstance(value, dict):
                self._item(start, item, here, indent)
            elif isinstance(item, dict | list) and item and self._choose.random() < 0.7:
                self.lines.append(" " * indent + start)
                self.write(item, here, indent + 2)
            else:
                self._in_line(" " * indent + start + " ", item, here)

    def _item(self, start: str, item: Any, here: FieldPath, indent: int) -> None:
        if isinstance(item, dict) and item and self._choose.random() < 0.7:
            # the first field stands beside the hyphen
            before = len(self.lines)
            self.write_beside(item, here, indent, before)
        else:
            self.places[here] = (len(self.lines) + 1, indent + 3)
            self._in_line(" " * indent + start + " ", item, here)

    def write_beside(self, item: dict[str, Any], here: FieldPath, indent: int, before: int) -> None:
        """Write a map whose first field stands on the line of the hyphen."""
        inner = Emitter(random.Random(0))
        inner._choose.random = lambda: 0.5  # type: ignore[method-assign]  # no remark before it
        inner.lines = [""] * before
        inner.write(item, here, indent + 2)
        first = inner.lines[before]
        inner.lines[before] = " " * indent + "- " + first[indent + 2 :]
        self.lines += inner.lines[before:]
        self.places |= inner.places
        self.places[here] = (before + 1, indent + 3)

    def _in_line(self, start: str, item: Any, here: FieldPath) -> None:
        parts: list[str] = [start]
        self._flow(item, here, parts)
        self.lines.append("".join(parts))

    def _flow(self, item: Any, here: FieldPath, parts: list[str]) -> None:
        line = len(self.lines) + 1
        if isinstance(item, dict):
            parts.append("{")
            for name, inner in item.items():
                self.places[(*here, name)] = (line, len("".join(parts)) + 1)
                parts.append(f"{name}: ")
                self._flow(inner, (*here, name), parts)
                parts.append(", ")
            parts.append("}")
        elif isinstance(item, list):
            parts.append("[")
            for number, inner in enumerate(item):
                self.places[(*here, number)] = (line, len("".join(parts)) + 1)
                self._flow(inner, (*here, number), parts)
                parts.append(", ")
            parts.append("]")
        elif isinstance(item, str) and "\\" not in item and '"' not in item:
            parts.append("'" + item.replace("'", "''") + "'")
        else:
            parts.append(json.dumps(item, ensure_ascii=False))


@given(maps, st.randoms(use_true_random=False))
def test_what_was_written_is_read_and_every_place_is_right(
    value: dict[str, Any], choose: random.Random
) -> None:
    emitter = Emitter(choose)
    emitter.write(value, (), 0)
    text = "\n".join(emitter.lines) + "\n"
    result = read_yaml(text)
    assert not isinstance(result, Fault), text
    assert result[0] == value
    places = result[1]
    assert places.pop(()) == (1, 1)
    assert places == emitter.places, text


@given(maps, st.randoms(use_true_random=False), st.sampled_from(["\n", "\r\n", "\r"]))
def test_places_hold_in_a_markdown_file_with_any_line_ends(
    value: dict[str, Any], choose: random.Random, end: str
) -> None:
    emitter = Emitter(choose)
    emitter.write(value, (), 0)
    raw = end.join(["---", *emitter.lines, "---", "Notes.", ""]).encode()
    document = read_markdown("units/u/unit.md", b"\xef\xbb\xbf" + raw)
    if isinstance(document, list):
        assert {p.rule for p in document} == {"raw-html"}, raw
        return
    assert document.data == value
    assert document.body == "Notes.\n"
    for path, (line, column) in emitter.places.items():
        assert document.locate(path) == (line + 1, column)


def test_a_field_that_is_not_there_is_placed_at_what_is_around_it() -> None:
    document = read_markdown("units/u/unit.md", b"---\na:\n  - b: 1\n---\n")
    assert isinstance(document, Document)
    assert document.locate(("a", 0, "missing")) == document.locate(("a", 0)) == (3, 5)
    assert document.locate(("a", 7)) == document.locate(("a",)) == (2, 1)
    assert document.locate(("nothing", "at", "all")) == document.locate(()) == (2, 1)
