"""Which words of a unit's pages are in no table yet: what a unit in Welsh would say in English.

`.venv/bin/python -m tests.page_words.left_in_english [UNIT] [PAGE]` prints them, page by page: UNIT
is the folder of a published unit, PAGE a part of a page's name (lesson-1, card, index). The pages
are drawn in a language in which every message of `en.pot` stands between ⟦ and ⟧. What is between
them is taken away, what the author wrote too; the rest, as `… section …` (… is what was taken),
is what to wrap. Words that scripts put on a page are not seen here: `grep` for them.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterable, Iterator
from dataclasses import replace
from functools import cache
from html.parser import HTMLParser

from build_tools.building.templates import html_of
from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.page_words.tables import CLOSED, OPENED, PSEUDO
from build_tools.pages.assemble import unit_pages
from build_tools.pages.page import Page
from tests.page_words.written_by_authors import Written
from tests.support.banks import UNIT
from tests.support.sound_bank import whole_bank

_SHOWN = ("title", "alt", "aria-label", "aria-description", "placeholder")
_SENTENCE = re.compile(r"[A-Z“].* |.* .*[.?!]$")
"""How a `data-` attribute looks whose words a script shows; others hold names and numbers."""
_UNSEEN = frozenset({"script", "style"})
_WITHIN = frozenset(
    {"a", "b", "strong", "em", "i", "span", "tspan", "abbr", "code", "small", "sup", "sub", "q"}
)
"""Elements inside a line, which do not end a text."""
_BETWEEN = frozenset({"input", "text"})
"""Elements between words of one message: a field in a sentence, and the next line of a drawing."""


def pages_marked(bank: Bank, unit: Unit) -> list[Page]:
    """The unit's pages in the marked language."""
    return unit_pages(bank, replace(unit, language=PSEUDO))


def left_on(page: Page, written: Written) -> list[str]:
    """What is left in English on a page, each once, in the order of the page."""
    left = (written.left_of(text) for text in unmarked(shown_on(html_of(page))))
    return [one for one in dict.fromkeys(left) if one]


def left_of_unit(bank: Bank, unit: Unit) -> dict[str, list[str]]:
    """The same of every page of a unit, by the page's name."""
    written = Written(bank, unit)
    return {page.path.split("/")[-1]: left_on(page, written) for page in pages_marked(bank, unit)}


def unmarked(texts: Iterable[str]) -> Iterator[str]:
    """The texts without what stands between marks, however deep."""
    for text in texts:
        depth, kept = 0, []
        for sign in text:
            depth += sign == OPENED
            kept.append(" " if depth or sign == CLOSED else sign)
            depth -= sign == CLOSED
        yield "".join(kept)


def shown_on(html: str) -> list[str]:
    """Every text of a page, a line or a paragraph each, and every attribute that holds words."""
    reader = _Reader()
    reader.feed(html)
    reader.close()
    reader.ended()
    return reader.found


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.found: list[str] = []
        self._line: list[str] = []
        self._unseen = 0

    def ended(self) -> None:
        text = "".join(self._line).strip()
        if text:
            self.found.append(text)
        self._line = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self._passed(tag)
        self._unseen += tag in _UNSEEN
        for name, value in attrs:
            words = value or ""
            as_data = name.startswith("data-") and words[:1] not in "[{" and _SENTENCE.match(words)
            if name in _SHOWN or as_data:
                self.found.append(words)
        if tag == "meta" and ("name", "description") in attrs:
            self.found.append(dict(attrs)["content"] or "")

    def handle_endtag(self, tag: str) -> None:
        self._passed(tag)
        self._unseen -= tag in _UNSEEN

    def _passed(self, tag: str) -> None:
        if tag in _BETWEEN:
            self._line.append(" ")
        elif tag not in _WITHIN:
            self.ended()

    def handle_data(self, data: str) -> None:
        if not self._unseen:
            self._line.append(data)


@cache
def left_in(slug: str) -> dict[str, list[str]]:
    """What is left of a published unit, by page."""
    (unit,) = (one for one in whole_bank().units if one.slug == slug)
    return left_of_unit(whole_bank(), unit)


def main(unit: str = UNIT, page: str = "") -> None:
    """Print what is left, and how much."""
    found = {name: left for name, left in left_in(unit).items() if page in name}
    for name, left in found.items():
        for one in left:
            print(f"{name}: {one}")
    for name, left in found.items():
        print(f"{len(left):6} left on {name}")
    print(f"{len({one for left in found.values() for one in left}):6} in all, each counted once")


if __name__ == "__main__":
    main(*sys.argv[1:])
