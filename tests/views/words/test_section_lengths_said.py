"""How long a text says that sections are."""

from __future__ import annotations

import pytest

from build_tools.views.words.section_lengths_said import section_lengths_said


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("A is five eights; B and C are six eights each.", [("A", 40), ("BC", 48)]),
        ("A and B are five eights each; C is six.", [("AB", 40), ("C", 48)]),
        ("Part A has 24 counts. Section B lasts sixteen counts.", [("A", 24), ("B", 16)]),
        ("A is two. B has four counts.", [("B", 4)]),
        ("A is a canon of three parts, four counts apart.", []),
        ("A has four dancers who walk for eight counts.", []),
        ("A wave of eight counts; b is five eights.", []),
    ],
)
def test_lengths_told(text: str, told: list[tuple[str, int]]) -> None:
    assert [("".join(one.letters), int(one.counts)) for one in section_lengths_said(text)] == told
