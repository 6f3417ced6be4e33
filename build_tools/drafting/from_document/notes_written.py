"""The notes of a draft: its author's own, what is open, and every word that is in no field."""

from __future__ import annotations

import re

from build_tools.drafting.from_document.leftover import Leftover, Piece, clean
from build_tools.source.prose import MOST_NOTES
from build_tools.views.words.open_places import MARK

_SIGNS = re.compile(r"([\\`*_\[\]~])")
_LINK = re.compile(r"\](?=[(:])(.)")
"""Brackets that would be the address of a link."""
_BEGINS = re.compile(r"^(\s*)([#>+=-]|\d{1,9}(?=[.)]))")
_MOST_OWN = MOST_NOTES // 2
_HEADING = "### From the word-processor file"
_ASKS = f"{MARK} Put each line below in its place, or take it out; then take this line out."


def notes_written(left: Leftover) -> tuple[str, tuple[Piece, ...]]:
    """The notes as Markdown, and the pieces for which they have no room."""
    lines: list[str] = []
    over: list[Piece] = []
    room = _MOST_OWN
    for one in left.notes:
        text = _plain(one.text)
        line = f"### {text}" if one.kind == "title" else _at_start(text)
        line = f"- {line}" if one.kind == "bullet" else line
        room -= len(line) + 2
        if room < 0:
            over.append(Piece("in the notes", one.text))
        else:
            lines += [line, ""]
    for what in left.open:
        lines += [_plain(what), ""]
    room = MOST_NOTES - sum(len(line) + 1 for line in lines) - len(_HEADING) - len(_ASKS) - 99
    kept: list[str] = []
    for piece in left.settled():
        line = f"- {_at_start(_plain(piece.where[:1].upper() + piece.where[1:]))}: " + _plain(
            piece.text
        )
        room -= len(line) + 1
        if room < 0:
            over.append(piece)
        else:
            kept.append(line)
    if kept:
        lines += [_HEADING, "", _ASKS, "", *kept]
    text = "\n".join(lines).strip("\n")
    return (f"{text}\n" if text else ""), tuple(over)


def _plain(text: str) -> str:
    """Words that mean in Markdown what they mean on paper."""
    # many bars would be a table, however they are set apart
    apart = _LINK.sub(r"] \1", clean(text)).replace("|", "¦")
    return _SIGNS.sub(r"\\\1", apart)


def _at_start(text: str) -> str:
    """The same where a line begins with it, so that it begins no list, heading or quotation."""
    return _BEGINS.sub(_escaped, text)


def _escaped(found: re.Match[str]) -> str:
    sign = found[2]
    return f"{found[1]}{sign}\\" if sign.isdigit() else f"{found[1]}\\{sign}"
