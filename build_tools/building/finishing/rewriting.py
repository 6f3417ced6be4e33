"""One page's HTML changed tag by tag, with every other letter left as it stands."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from html import escape, unescape

VOID = frozenset(
    "area base br col embed hr img input link meta param source track wbr".split()  # noqa: SIM905
)


TAG = r"""<(?P<end>/?)(?P<name>[A-Za-z][^\s/>]*)(?P<rest>(?:"[^"]*"|'[^']*'|[^"'>])*)>"""
_TAG = re.compile(TAG, re.DOTALL)
"""A tag of a page of ours, as it is drawn or as it is published; signs of HTML in text escaped."""
_VALUE = r"""(?:"[^"]*"|'[^']*'|[^\s"'=<>`]+)"""
_ATTRIBUTE = re.compile(rf"""([^\s"'=/]+)(?:=({_VALUE}))?""")


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
    kept: list[str] = []
    written = 0
    left_out, depth = "", 0
    with_tags: dict[str, list[bool]] = defaultdict(list)
    for tag in _TAG.finditer(html):
        name, ends, alone = tag["name"].lower(), tag["end"], tag["rest"].endswith("/")
        if left_out:
            if name == left_out and not alone:
                depth += -1 if ends else 1
            if not depth:
                left_out, written = "", tag.end()
            continue
        kept.append(html[written : tag.start()])
        written = tag.end()
        if ends:
            if not with_tags[name] or with_tags[name].pop():
                kept.append(tag[0])
            continue
        now = _changed(tag, change)
        if alone or name in VOID:
            kept.append(now or "")
        elif now is None:
            left_out, depth = name, 1
        else:
            with_tags[name].append(bool(now))
            kept.append(now)
    if not left_out:
        kept.append(html[written:])
    return "".join(kept)


def with_value(text: str, attribute: str, value: str) -> str:
    """The start tag `text` with another value for an attribute that it has."""
    found = re.search(rf" {re.escape(attribute)}=(?P<value>{_VALUE})", text)
    if found is None:
        raise ValueError(f"no {attribute} in {text}")
    start, end = found.span("value")
    return f'{text[:start]}"{escape(value, quote=False)}"{text[end:]}'


def element(html: str, name: str) -> str:
    """What stands in the first element called `name`, which holds no other of that name."""
    found = re.search(rf"<{name}(?:\s[^>]*)?>(.*?)</{name}>", html, re.DOTALL)
    if found is None:
        raise ValueError(f"the page has no <{name}>")
    return found.group(0)


def _inside(value: str) -> str:
    return value[1:-1] if value[:1] in ('"', "'") else value


def _changed(tag: re.Match[str], change: Change) -> str | None:
    attributes = {
        name.lower(): unescape(_inside(value)) for name, value in _ATTRIBUTE.findall(tag["rest"])
    }
    return change(Start(tag["name"].lower(), attributes, tag[0]))
