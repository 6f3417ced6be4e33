"""A poem in a unit's notes, line by line: what a heading names, where its lines end as written."""

from __future__ import annotations

import re

from build_tools.model.work import Work

_HEADING = re.compile(r"^#{1,6}\s+(.*?)\s*$")
_BREAK = ("  ", "\\")


def verse(notes: str, title: str) -> tuple[tuple[str, ...], ...]:
    """The stanzas under the heading that ends in `title`; none where no lines end as written."""
    inside, found, stanza = False, list[tuple[str, ...]](), list[str]()
    for line in (*notes.splitlines(), ""):
        heading = _HEADING.match(line)
        if heading:
            inside = heading.group(1).casefold().endswith(title.casefold())
        if heading or not line.strip():
            if any(one.endswith(_BREAK) for one in stanza):
                found.append(tuple(one.rstrip(" \\") for one in stanza))
            stanza = []
        elif inside:
            stanza.append(line)
    return tuple(found)


def verse_of(item: Work) -> tuple[tuple[str, ...], ...]:
    """The stanzas of a poem whose text version has lines of its own; none of other words."""
    text = (item.text_version or "").strip()
    if "\n" not in text:
        return ()
    stanzas = re.split(r"\n\s*\n", text)
    return tuple(tuple(line.strip() for line in one.splitlines()) for one in stanzas)
