"""The quick reader and the careful one give the same data, or the quick one leaves it alone."""

from __future__ import annotations

import random
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.problem import Fault
from build_tools.source.front_matter import read_markdown
from build_tools.source.front_matter_split import Split, split
from build_tools.source.yaml_quickly import ODD, read_quickly
from build_tools.source.yaml_reader import read_yaml
from tests.source.test_places import Emitter, maps

CONTENT = Path(__file__).resolve().parents[2] / "content"
SIGNS = [
    "\n",
    " ",
    "  ",
    "- ",
    ": ",
    ":",
    "#",
    "'",
    '"',
    "\\",
    "{",
    "}",
    "[",
    "]",
    ",",
    "&a ",
    "*a",
]
SIGNS += [
    "!x ",
    "|",
    ">",
    "%",
    "@",
    "---\n",
    "...\n",
    "? ",
    "~",
    "\t",
    "\\x00",
    "title: ",
    "0",
    "1",
]


def agrees(text: str) -> bool:
    """Hold the two readers to the same answer; whether the quick one had one."""
    quick = read_quickly(text)
    if quick is ODD:
        return False
    careful = read_yaml(text)
    assert not isinstance(careful, Fault), text
    assert repr(quick) == repr(careful[0]), text  # repr, since 1 equals true and 1.0
    return True


@given(maps, st.randoms(use_true_random=False))
def test_what_is_sound_is_read_quickly(value: dict[str, Any], choose: random.Random) -> None:
    emitter = Emitter(choose)
    emitter.write(value, (), 0)
    assert agrees("\n".join(emitter.lines) + "\n")


@given(maps, st.randoms(use_true_random=False), st.integers(1, 4))
def test_what_is_damaged_is_read_alike(
    value: dict[str, Any], choose: random.Random, times: int
) -> None:
    emitter = Emitter(choose)
    emitter.write(value, (), 0)
    text = "\n".join(emitter.lines) + "\n"
    for _ in range(times):
        start = choose.randrange(len(text) + 1)
        end = start + choose.choice((0, 0, 1, 2, 9))
        text = text[:start] + choose.choice(SIGNS) + text[end:]
    agrees(text)


@given(st.lists(st.sampled_from([*SIGNS, "a", "b: 1\n", "no", "1.5", ".inf", "-"]), max_size=12))
def test_odd_texts_are_read_alike(parts: list[str]) -> None:
    agrees("".join(parts))


@given(st.text("+-.0123456789eExX_:naif~", min_size=1, max_size=12))
def test_what_looks_like_a_number_is_read_alike(word: str) -> None:
    agrees(f"a: {word}")
    agrees(f"- {word}\n- '{word}'")


@pytest.mark.parametrize(
    "text", ["", "\n", "# nothing", "---\n", "---\n...\n", "a", "12", "[]", "{}"]
)
def test_small_texts_are_read_alike(text: str) -> None:
    assert agrees(text)


@pytest.mark.parametrize("text", ["a: 1\na: 2", "a: &b 1", "a: *b", "!x a", "a: .nan", "a\n---\nb"])
def test_odd_texts_are_left_to_the_careful_reader(text: str) -> None:
    assert read_quickly(text) is ODD


def test_every_file_of_the_bank_is_read_quickly() -> None:
    files = sorted(CONTENT.glob("units/*/*.md"))
    assert len(files) > 10
    for file in files:
        halves = split(file.read_text("utf-8"))
        assert isinstance(halves, Split)
        assert agrees(halves.fields), file


@pytest.mark.parametrize("code", ["\\x3cb>", "\\u003Cb>", "\\U0000003cb>", "<b>"])
def test_a_tag_written_by_its_code_is_found(code: str) -> None:
    found = read_markdown("units/u/unit.md", f'---\ntitle: "a {code}"\n---\n'.encode())
    assert isinstance(found, list)
    assert [p.rule for p in found] == ["raw-html"]
