"""Whether a unit is a draft is known also where the rest of its file cannot be read."""

from __future__ import annotations

import pytest

from build_tools.source.draft_state import says_draft
from build_tools.source.front_matter import read_markdown

SAYS = [
    "---\ndraft: true\ntitle: A\n---\n",
    "---\ntitle: A\ndraft:   true  # until the third lesson is written\n---\nnotes\n",
    "---\r\ntitle: A\r\ndraft: true\r\n---\r\n",
    "---\ntitle: [\ndraft: true\n---\n",
    "---\ntitle: A\n\tdance: {\ndraft : true",
    "\ufeff---\ndraft: true\n---\n",
    '---\ndraft: "true"\n---\n',
    "---\nDraft: Yes\n---\n",
    "\n\n---\ntitle: A\ndraft: yes\n---\n",
]
DOES_NOT = [
    "---\ntitle: A\n---\n",
    "---\ndraft: false\n---\n",
    "---\ndraft: true\ndraft: false\n---\n",
    "---\ndraft: true\ndraft: true\n---\n",
    "---\ndraft:\n  true\n---\n",
    "---\nsummary: >\n  draft: true\n---\n",
    "---\ntitle: A\n---\ndraft: true\n",
    "---\n# draft: true\ntitle: A\n---\n",
    "---\nredraft: true\n---\n",
    "",
]


@pytest.mark.parametrize("text", SAYS)
@pytest.mark.parametrize("coding", ["utf-8", "utf-16"])
def test_a_draft_is_known(text: str, coding: str) -> None:
    assert says_draft(text.encode(coding))


@pytest.mark.parametrize("text", DOES_NOT)
@pytest.mark.parametrize("coding", ["utf-8", "utf-16"])
def test_what_does_not_say_so_is_none(text: str, coding: str) -> None:
    assert not says_draft(text.encode(coding))


def test_odd_bytes_hide_no_draft_and_make_none() -> None:
    assert says_draft(b"---\ntitle: \xff\xfe\ndraft: true\n---\n")
    assert not says_draft(b"---\ntitle: A\ndraft: tr\xffue\n---\n")


@pytest.mark.parametrize("text", [*SAYS, *DOES_NOT])
def test_it_says_what_the_reader_says_of_what_can_be_read(text: str) -> None:
    read = read_markdown("units/a/unit.md", text.encode())
    if not isinstance(read, list) and "\n  true" not in text:
        assert says_draft(text.encode()) is (read.data.get("draft") is True)
