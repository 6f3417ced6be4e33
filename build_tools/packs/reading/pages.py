"""What may not be in a page of a pack, read from start to end without looking back.

Nothing is published of such a page, and none is kept that this bank would not draw itself. This
is for people who unpack the file and open it all the same: where a page runs something, the pack
is refused.
"""

from __future__ import annotations

import re

from build_tools.packs.reading.names import printable
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.sentences.word_lists import word_list

_RUNS = word_list("script iframe object embed applet base form frame frameset link")
_SAFE = re.compile(r"(#|https?://|mailto:|data:image/|data:,|[a-z0-9-]+\.html(#|\Z))")
_LEADS = frozenset({"href", "src", "action", "formaction", "xlink:href", "data", "srcset"})
_TAG = re.compile(r"[A-Za-z][^\s/>]*")
_BETWEEN = re.compile(r"[\s/]*")
_NAME = re.compile(r"[^\s/>][^\s/>=]*")
_EQUALS = re.compile(r"\s*=\s*")
_BARE = re.compile(r"[^\s>]*")
_MOST_PARTS = 100_000
"""Tags of one page: those that this bank draws have some thousand."""
_MOST_ATTRIBUTES = 500
_LOOKED_AT = 300
"""Letters of a value, which may be a whole picture."""


def refuse_active_page(path: str, html: str) -> None:
    """Raise for a page that runs something or leads astray, with the line that does it."""
    at, parts = html.find("<"), 0
    while at >= 0:
        parts += 1
        if parts > _MOST_PARTS:
            raise RefusedError(f"{path}: the page has more than {_MOST_PARTS:,} parts")
        found = _TAG.match(html, at + 1)
        if found is None:
            at = html.find("<", at + 1)
            continue
        attributes, after = _attributes(html, found.end())
        if why := _wrong(found[0].lower(), attributes):
            line = html.count("\n", 0, at) + 1
            raise RefusedError(f"{path}:{line}: the page {why}")
        at = html.find("<", after)


def _attributes(html: str, at: int) -> tuple[dict[str, str], int]:
    """The attributes of a tag from `at` on, and where it ends."""
    found: dict[str, str] = {}
    for _ in range(_MOST_ATTRIBUTES):
        at = _matched(_BETWEEN, html, at)
        name = _NAME.match(html, at)
        if name is None:
            return found, at + 1
        at = name.end()
        value = ""
        if equals := _EQUALS.match(html, at):
            at = equals.end()
            quote = html[at : at + 1]
            if quote in ('"', "'"):
                end = html.find(quote, at + 1)
                end = len(html) if end < 0 else end
                value, at = html[at + 1 : min(end, at + _LOOKED_AT)], end + 1
            else:
                end = _matched(_BARE, html, at)
                value, at = html[at : min(end, at + _LOOKED_AT)], end
        found.setdefault(name[0].casefold(), "".join(value.split()))
    raise RefusedError(f"a page has a part with more than {_MOST_ATTRIBUTES} attributes")


def _matched(pattern: re.Pattern[str], html: str, at: int) -> int:
    found = pattern.match(html, at)
    return at if found is None else found.end()


def _wrong(tag: str, attributes: dict[str, str]) -> str | None:
    if tag in _RUNS and not (tag == "link" and attributes.get("href") == "data:,"):
        return f"has a part `{tag}`"
    if tag == "meta" and attributes.get("http-equiv", "").casefold() == "refresh":
        return "leads elsewhere by itself"
    for key, value in attributes.items():
        if key.startswith("on"):
            return f"runs something by `{printable(key)}`"
        if key in _LEADS and value and not _SAFE.match(value):
            return f"leads to `{printable(value)}`"
    return None
