"""Words that styles say: each has a rule of its own for every language that has a table.

`:lang()` is CSS (Selectors Level 4, "The Language Pseudo-class"). What a margin of a printed side
says cannot be picked so, hence it is a variable of the page (CSS Custom Properties Level 1).
"""

from __future__ import annotations

import re

import pytest

from build_tools.disk.places import OVERRIDES
from build_tools.page_words.tables import TABLES

TAGS = sorted(file.stem for file in TABLES.glob("*.po"))
_RULE = re.compile(r"([^{}]+)\{([^{}]*)\}")
_SAYS = re.compile(r'\bcontent:(?:[^;"]|"[^"A-Za-z]*")*"[^"]*[A-Za-z]{2}')
_VARIABLE = re.compile(r'var\((--[a-z-]+), "[^"]*[A-Za-z]{2}')
STYLES = "\n".join(file.read_text(encoding="utf-8") for file in sorted(OVERRIDES.rglob("*.css")))


def saying() -> list[str]:
    """The selectors of rules that say words, but those for one language and those of margins."""
    found = (
        selector.split("\n")[-1].strip()
        for selector, rule in _RULE.findall(STYLES)
        if _SAYS.search(rule)
    )
    return [one for one in found if ":lang(" not in one and not one.startswith("@")]


def test_there_are_such_rules() -> None:
    assert ".margin .time::after" in saying()
    assert set(_VARIABLE.findall(STYLES)) == {"--side", "--of-sides"}


@pytest.mark.parametrize("tag", TAGS)
def test_each_is_said_in_each_language(tag: str) -> None:
    for selector in saying():
        named, _, pseudo = selector.rpartition("::")
        assert f"{named}:lang({tag})::{pseudo}" in STYLES, selector


@pytest.mark.parametrize("tag", TAGS)
def test_what_margins_say_is_set_for_each_language(tag: str) -> None:
    said = re.findall(rf":root:lang\({tag}\) \{{([^}}]*)\}}", STYLES)
    for name in _VARIABLE.findall(STYLES):
        assert any(f"{name}:" in rule for rule in said), name
