"""One page's HTML changed tag by tag, with every other letter left as it stands."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from html import escape
from html.parser import HTMLParser

VOID = frozenset(
    "area base br col embed hr img input link meta param source track wbr".split()  # noqa: SIM905
)


@dataclass(frozen=True, slots=True)
class Start:
    """One start tag: its name, its attributes (empty where they have no value), and its text."""

    name: str
    attributes: dict[str, str]
    text: str


Change = Callable[[Start], str | None]


def rewritten(html: str, change: Change) -> str:
    """`html` with each start tag as `change` gives it back.

    None leaves out the element with all that is in it; an empty text leaves out its tags and
    keeps what is in it.
    """
    parser = _Rewriter(change)
    parser.feed(html)
    parser.close()
    return "".join(parser.kept)


def with_value(text: str, attribute: str, value: str) -> str:
    """The start tag `text` with another value for an attribute that it has."""
    before, found, after = text.partition(f' {attribute}="')
    if not found:
        raise ValueError(f"no {attribute} in {text}")
    return f"{before}{found}{escape(value, quote=False)}{after[after.index(chr(34)) :]}"


def element(html: str, name: str) -> str:
    """What stands in the first element called `name`, which holds no other of that name."""
    found = re.search(rf"<{name}(?:\s[^>]*)?>(.*?)</{name}>", html, re.DOTALL)
    if found is None:
        raise ValueError(f"the page has no <{name}>")
    return found.group(0)


class _Rewriter(HTMLParser):
    def __init__(self, change: Change) -> None:
        super().__init__(convert_charrefs=False)
        self.kept: list[str] = []
        self._change = change
        self._left_out = ""
        self._depth = 0
        self._with_tags: dict[str, list[bool]] = defaultdict(list)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if self._left_out:
            self._depth += tag == self._left_out
            return
        now = self._changed(tag, attrs)
        if tag in VOID:
            self._keep(now or "")
        elif now is None:
            self._left_out, self._depth = tag, 1
        else:
            self._with_tags[tag].append(bool(now))
            self._keep(now)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if not self._left_out:
            self._keep(self._changed(tag, attrs) or "")

    def handle_endtag(self, tag: str) -> None:
        if self._left_out:
            self._depth -= tag == self._left_out
            if not self._depth:
                self._left_out = ""
        elif not self._with_tags[tag] or self._with_tags[tag].pop():
            self._keep(f"</{tag}>")

    def handle_data(self, data: str) -> None:
        self._keep(data)

    def handle_entityref(self, name: str) -> None:
        self._keep(f"&{name};")

    def handle_charref(self, name: str) -> None:
        self._keep(f"&#{name};")

    def handle_comment(self, data: str) -> None:
        self._keep(f"<!--{data}-->")

    def handle_decl(self, decl: str) -> None:
        self._keep(f"<!{decl}>")

    def _changed(self, tag: str, attrs: list[tuple[str, str | None]]) -> str | None:
        attributes = {name: value or "" for name, value in attrs}
        return self._change(Start(tag, attributes, self.get_starttag_text() or ""))

    def _keep(self, text: str) -> None:
        if not self._left_out:
            self.kept.append(text)
