"""Values as they were written. What must not change: YAML 1.1's types (yaml.org/type), which read
3:45 as 225, 012 as 10 and no as false."""

from __future__ import annotations

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from build_tools.problem import Fault
from build_tools.source.yaml_reader import read_yaml


def data(text: str) -> object:
    result = read_yaml(text)
    assert not isinstance(result, Fault), result
    return result[0]


@pytest.mark.parametrize(
    "word",
    [
        "3:45",
        "10:30",
        "1:02:03",
        "no",
        "No",
        "NO",
        "on",
        "off",
        "yes",
        "y",
        "n",
        "012",
        "0o17",
        "0x1F",
        "0b11",
        "1_000",
        "1e5",
        "1.5e3",
        "2024-01-01",
        "2024-01-01 10:00:00",
        ".5",
        "5.",
        "True",
        "TRUE",
        "FALSE",
        "Null",
        "NULL",
        "=",
        "1,000",
        "½",
        "٣",
        "1/2",
        "1 1/2",
        "+.5",
    ],
)
def test_what_looks_like_something_else_stays_text(word: str) -> None:
    assert data(f"a: {word}") == {"a": word}
    assert data(f"{word}: a") == {word: "a"}
    assert data(f"- {word}") == [word]


@pytest.mark.parametrize(
    ("word", "value"),
    [
        ("8", 8),
        ("-3", -3),
        ("+5", 5),
        ("0", 0),
        ("1.0", 1.0),
        ("0.25", 0.25),
        ("-2.50", -2.5),
        ("true", True),
        ("false", False),
        ("null", None),
        ("~", None),
        ("", None),
        ("999999999", 999999999),
    ],
)
def test_numbers_truth_and_nothing(word: str, value: object) -> None:
    found = data(f"a: {word}")
    assert found == {"a": value}
    assert isinstance(found, dict)
    assert type(found["a"]) is type(value)


@pytest.mark.parametrize("word", ["8", "true", "~", "null", "1.0", "", ".nan", "1234567890123"])
@pytest.mark.parametrize("quote", ["'", '"'])
def test_quotation_marks_make_it_text(word: str, quote: str) -> None:
    assert data(f"a: {quote}{word}{quote}") == {"a": word}


@pytest.mark.parametrize("word", ["8", "true", "~", ".inf"])
def test_blocks_are_text(word: str) -> None:
    assert data(f"a: |-\n  {word}\nb: >-\n  {word}\n") == {"a": word, "b": word}


@pytest.mark.parametrize("name", ["8", "true", "~", "null", "1.5"])
def test_names_of_fields_are_always_text(name: str) -> None:
    assert data(f"{name}: x") == {name: "x"}


@pytest.mark.parametrize("text", ["", "\n\n", "# only a remark\n", "null", "~"])
def test_nothing_written_is_nothing(text: str) -> None:
    assert data(text) is None


plain = st.text(
    st.characters(codec="utf-8", exclude_categories=["Cc", "Cs", "Cf", "Zl", "Zp", "Cn", "Co"]),
    max_size=30,
)
texts = st.recursive(
    plain,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(plain, inner, max_size=4),
    max_leaves=12,
)


@given(texts)
def test_agrees_with_a_reader_that_knows_only_text(value: object) -> None:
    written = yaml.safe_dump(value, allow_unicode=True, width=60)
    expected = yaml.load(written, Loader=yaml.BaseLoader)
    assert expected == value
    assert data(written) == expected


numbers = st.integers(-(10**9) + 1, 10**9 - 1)


@given(st.dictionaries(plain, st.one_of(numbers, st.booleans(), st.none()), max_size=6))
def test_agrees_on_numbers_truth_and_nothing(value: dict[str, object]) -> None:
    assert data(yaml.safe_dump(value, allow_unicode=True)) == value
