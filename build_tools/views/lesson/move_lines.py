"""Lines of a lesson's notes that are meant for a move, read as what they plainly are.

A move's line is "- **Fold**: both arms scoop low". Hands forget the bold, write a dash for the
hyphen, or a form of the move's name ("Folding"). Where the word before the colon is a move of the
dance, and a mark of a list or lines for other moves stand by it, that line is the move's. Where it
may be one, `asked_about` says which, so that nothing an adviser wrote goes astray unsaid.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from build_tools.model.dance import Dance
from build_tools.sentences.forms import forms
from build_tools.sentences.slips import is_a_slip
from build_tools.views.dance.actions_written import actions_written

_LINE = re.compile(
    r"(?P<mark>[-*+•·–—]\s*(?=\*\*)|[-*+•·–—]\s+|[-•·–—](?=[A-Z]))?"
    r"(?P<bold>\*\*)?(?P<word>[^\W\d_][^*:.!?;]{0,39}?)(?P<whom>\s*(?:,|\()[^*:.!?;]{0,39}?)?"
    r"(?P<colon>:\*\*|\*\*\s*:|\*\*(?=\s)|\s*:(?=\s)|\s+[-–—](?=\s))(?P<told>.*)",
    re.DOTALL,
)
"""A line for a move, or what was meant as one: its mark, its word, for whom it is, its text."""
_AFTER = re.compile(r"\A\s*[:–—-]\s+")
"""A sign between a word in bold and what is told of it."""


@dataclass(frozen=True, slots=True)
class MoveLine:
    """Which line of the notes is, or may be, a move's; what was typed; how it begins."""

    line: int
    typed: str
    word: str
    head: str


@dataclass(frozen=True, slots=True)
class _Found:
    line: int
    typed: str
    word: str
    right: bool
    """Whether it is written as a move's line is."""
    sure: bool
    head: str
    written: str


@dataclass(frozen=True, slots=True)
class _OfAMove:
    found: re.Match[str]
    bold: bool
    word: str
    exact: bool
    """Whether it is the move's word, and no form of it."""
    slip: bool = False
    """Whether it is no word of the dance, and only a letter or two off one."""


def notes_as_meant(notes: str, dance: Dance) -> str:
    """The notes with each line that plainly is a move's as such lines are written."""
    lines = notes.split("\n")
    for found in _found(notes, dance):
        if found.sure and not found.right:
            lines[found.line] = found.written
    return "\n".join(lines)


def asked_about(notes: str, dance: Dance) -> tuple[MoveLine, ...]:
    """The lines that may be a move's and are read as something else."""
    return tuple(
        MoveLine(one.line, one.typed, one.word, one.head)
        for one in _found(notes, dance)
        if not one.sure and not one.right
    )


def read_as_moves(notes: str, dance: Dance) -> tuple[MoveLine, ...]:
    """The lines that are read as a move's, though they are written otherwise."""
    lines = notes.split("\n")
    return tuple(
        MoveLine(one.line, lines[one.line], one.word, one.head)
        for one in _found(notes, dance)
        if one.sure and not one.right
    )


@lru_cache(maxsize=512)
def _found(notes: str, dance: Dance) -> tuple[_Found, ...]:
    words = _words_of(dance)
    lines = notes.split("\n")
    own = [_of_a_move(line, words) for line in lines]
    told = {one.word for one in own if one is not None}
    if len(told) < len(set(words.values())):
        untold = [word for small, (word, exact) in words.items() if exact and word not in told]
        known = frozenset(words) | _names_in(dance)
        own = [one or _slip(line, untold, known) for one, line in zip(own, lines, strict=True)]
    return tuple(_each(lines, own))


def _slip(line: str, untold: Sequence[str], known: frozenset[str]) -> _OfAMove | None:
    """A list's line in bold whose word is a letter or two off a move that no line tells."""
    found = _LINE.fullmatch(line) if "**" in line else None
    if found is None or not (found["bold"] and found["mark"] and "**" in found["colon"]):
        return None
    typed = found["word"].strip().casefold()
    if typed in known:
        return None
    near = [word for word in untold if is_a_slip(typed, word.casefold())]
    return _OfAMove(found, True, near[0], exact=False, slip=True) if len(near) == 1 else None


def _names_in(dance: Dance) -> frozenset[str]:
    """What else of the dance has a name, in small letters."""
    named = (*dance.motifs, *dance.developments, *dance.choices)
    sections = (section.name for section in dance.sections.values() if section.name)
    return frozenset(name.replace("-", " ").casefold() for name in (*named, *sections))


def _each(lines: list[str], own: list[_OfAMove | None]) -> Iterator[_Found]:
    for n, one in enumerate(own):
        if one is None:
            continue
        found, bold, mark = one.found, one.bold, bool(one.found["mark"])
        right = bold and one.exact and (lines[n].startswith(("- ", "* ")) or not mark)
        beside = (own[m] for m in _beside(lines, n))
        near = any(other is not None and other.bold and not other.slip for other in beside)
        if one.slip and not (near and mark and bold):
            continue
        big = found["word"][:1].isupper()
        parted = found["colon"] != "**" or _AFTER.match(found["told"]) is not None
        if not right and not mark and not ((bold and parted) or (big and (one.exact or near))):
            continue
        sure = mark and parted and (bold or near or (one.exact and found["colon"].strip() == ":"))
        sure = (sure or (near and one.exact and big)) and not one.slip
        head = f"- **{_like(one.word, found['word'])}{found['whom'] or ''}**:"
        told = _AFTER.sub("", found["told"]).strip()
        yield _Found(n, found["word"], one.word, right, sure, head, f"{head} {told}")


def _beside(lines: list[str], at: int) -> Iterator[int]:
    """The other lines of the block in which the line stands."""
    for step in (-1, 1):
        n = at + step
        while 0 <= n < len(lines) and lines[n].strip():
            yield n
            n += step


def _of_a_move(line: str, words: Mapping[str, tuple[str, bool]]) -> _OfAMove | None:
    found = _LINE.fullmatch(line)
    if found is None or not (found["bold"] or found["mark"] or found["colon"].strip() == ":"):
        return None
    bold = bool(found["bold"])
    known = words.get(found["word"].strip().casefold())
    if known is None or bold != ("**" in found["colon"]):
        return None
    return _OfAMove(found, bold, *known)


def _like(word: str, typed: str) -> str:
    return word.capitalize() if typed[:1].isupper() and word.islower() else word


@lru_cache(maxsize=64)
def _words_of(dance: Dance) -> Mapping[str, tuple[str, bool]]:
    """Each move's word, and each form of one that is of one move alone, in small letters."""
    words = {a.word.casefold(): a.word for _, a in actions_written(dance) if a.word}
    found = {small: (word, True) for small, word in words.items()}
    others: dict[str, list[str]] = {}
    for small, word in words.items():
        for form in forms(small) if " " not in small else ():
            others.setdefault(form, []).append(word)
    once = {form: (many[0], False) for form, many in others.items() if len(many) == 1}
    return once | found
