"""The letters of sections: A, and A' for A come back changed, as the trade writes it.

Sources: the mark is the one of musical analysis, which dance teachers share (NSW Department of
Education, HSC dance: A B A, A B A1); an apostrophe is what a keyboard has for it.
"""

from __future__ import annotations

from collections.abc import Iterable

MARK = "'"
_CURLY = str.maketrans("’′", "''")


def is_changed(letter: str) -> bool:
    """Whether it is the letter of a section that comes back changed."""
    return letter.endswith(MARK)


def unmarked(letter: str) -> str:
    """The letter of the section that it is, changed or not: A for A and for A'."""
    return letter.removesuffix(MARK)


def all_unmarked(form: Iterable[str]) -> tuple[str, ...]:
    """A form by the sections it is made of, whether they come back changed or not."""
    return tuple(unmarked(letter) for letter in form)


def straight(letter: str) -> str:
    """A letter with the mark of a keyboard, however it was typed."""
    return letter.translate(_CURLY)


def slug(letter: str) -> str:
    """The letter as it stands in anchors, names of styles and ids: a, a-changed."""
    return unmarked(letter).lower() + ("-changed" if is_changed(letter) else "")
