"""Notes in Markdown to HTML: no raw HTML, headings set under the page's own.

Read by markdown-it-py, whose time grows with a text's length alone (CommonMark 0.31.2, and tables).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from markdown_it import MarkdownIt
from markdown_it.token import Token
from markupsafe import Markup

from build_tools.source.prose import is_safe_address

_DEEPEST = 6
_READER = (
    MarkdownIt("commonmark", {"html": False, "xhtmlOut": False})
    .enable("table")
    .disable(["image", "html_inline"])
)
_READER.validateLink = is_safe_address  # type: ignore[method-assign, assignment]


@lru_cache(maxsize=1024)
def notes_html(text: str, top: int) -> Markup:
    """The notes as HTML, their highest heading at level `top`; empty for no notes.

    Kept, since the manual of every rule is a note, and stays the same from build to build.
    """
    if not text.strip():
        return Markup("")
    tokens = _READER.parse(text)
    _set_headings(tokens, top)
    for token in tokens:
        # a table's columns would be aligned by a style, which the pages' policy shuts out
        token.attrs.pop("style", None)
    return Markup(_READER.renderer.render(tokens, _READER.options, {}).rstrip("\n"))


def _set_headings(tokens: Sequence[Token], top: int) -> None:
    """Shift headings so that the highest is at `top`, with none skipped, and name them."""
    open_levels: list[int] = []
    names: dict[str, int] = {}
    for n, token in enumerate(tokens):
        if token.type != "heading_open":
            continue
        level = int(token.tag[1:])
        while open_levels and open_levels[-1] >= level:
            open_levels.pop()
        open_levels.append(level)
        words, end = tokens[n + 1], tokens[n + 2]
        token.tag = end.tag = f"h{min(top + len(open_levels) - 1, _DEEPEST)}"
        token.attrSet("id", _name(_words(words.children or ()), names))


def _words(tokens: Sequence[Token]) -> str:
    return "".join(" " if token.type == "softbreak" else token.content for token in tokens)


def _name(words: str, names: dict[str, int]) -> str:
    name = re.sub(r"[^a-z0-9]+", "-", words.lower()).strip("-") or "part"
    names[name] = names.get(name, 0) + 1
    return name if names[name] == 1 else f"{name}-{names[name]}"
