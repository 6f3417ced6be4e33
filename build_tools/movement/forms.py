"""The form of a dance, read off the letters of its sections.

Sources: NSW Department of Education, HSC dance (binary, ternary, rondo); Ontario Arts Curriculum
2010, glossary (ternary, narrative); Blom and Chaplin 1982. A rondo comes back to A between any
two episodes, so A B C D A is none: it comes back once. There is no published name for that; it
is called a chain with a return here. A B A C A D, without its last A, is no rondo here either.

A section that comes back changed (A') is still that section: A B A' is ternary, A B A C A' a
rondo, and the name says besides what comes back changed.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import reduce

from build_tools.movement.letters import all_unmarked, is_changed, unmarked
from build_tools.page_words.forms import row
from build_tools.page_words.words import _, ngettext


def returns_to_start(form: Sequence[str]) -> bool:
    """Whether the first section comes back at the very end and only there: A B A, A B C D A."""
    form = all_unmarked(form)
    return len(form) > 2 and form[0] == form[-1] and form[0] not in form[1:-1]


def is_binary(form: Sequence[str]) -> bool:
    """Two sections that contrast: A B."""
    form = all_unmarked(form)
    return len(form) == 2 and form[0] != form[1]


def is_ternary(form: Sequence[str]) -> bool:
    """A B A."""
    form = all_unmarked(form)
    return len(form) == 3 and form[0] == form[2] != form[1]


def is_rondo(form: Sequence[str]) -> bool:
    """A on every odd place and never on an even one, ending on A, with two episodes or more."""
    form = all_unmarked(form)
    if len(form) < 5 or len(form) % 2 == 0:
        return False
    first, episodes = form[0], form[1::2]
    return (
        all(letter == first for letter in form[::2])
        and first not in episodes
        and len(set(episodes)) >= 2
    )


def is_palindrome(form: Sequence[str]) -> bool:
    """The same forwards and backwards, and longer than A B A: A B C B A."""
    form = all_unmarked(form)
    return len(form) > 3 and list(form) == list(reversed(form))


def is_cumulative(form: Sequence[str]) -> bool:
    """Each time round adds a section at the end: A, A B, A B C."""
    form = all_unmarked(form)
    letters = list(dict.fromkeys(form))
    grown = [letter for n in range(1, len(letters) + 1) for letter in letters[:n]]
    return len(letters) > 1 and list(form) == grown


def name(form: Sequence[str]) -> str:
    """The form's name in plain words, from its letters alone."""
    changed = sorted({unmarked(letter) for letter in form if is_changed(letter)})
    if not changed:
        return _name(form)
    return ngettext(
        "{form}; {letters} comes back changed",
        "{form}; {letters} come back changed",
        len(changed),
        form=_name(all_unmarked(form)),
        letters=reduce(lambda said, one: row([said, one]), changed),
    )


def _name(form: Sequence[str]) -> str:
    if len(form) == 1:
        return _("one section")
    if is_binary(form):
        return _("two contrasting sections (binary)")
    if is_ternary(form):
        return _("there and back (ternary)")
    if is_rondo(form):
        return _("coming back between every two (rondo)")
    if is_cumulative(form):
        return _("growing by one section each time (cumulative)")
    if is_palindrome(form):
        return _("the same forwards and backwards (arch)")
    if returns_to_start(form):
        return _("a chain that comes back to the start")
    if len(set(form)) == len(form):
        return _("one section after another (chain)")
    return _("sections that come back in their own order")
