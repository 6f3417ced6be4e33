"""In which language pages are being made just now, and the table of its words.

It is a context variable: a word is put on a page by some hundred small functions, many of which
rules ask too, and none of them has another use for the language. What is outside `speaking` is in
English, so commands and problem messages are. English has no table, and opens no file.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import lru_cache, wraps
from gettext import NullTranslations
from typing import ParamSpec, TypeVar

from build_tools.page_words.tables import ENGLISH, table_for, tag_of

_Given = ParamSpec("_Given")
_Answer = TypeVar("_Answer")

_SPOKEN: ContextVar[str] = ContextVar("language of page words", default=ENGLISH)


@contextmanager
def speaking(language: str) -> Iterator[None]:
    """Make page words in the language of a unit, or in English where there is no table of it."""
    token = _SPOKEN.set(tag_of(language))
    try:
        yield
    finally:
        _SPOKEN.reset(token)


def spoken() -> str:
    """The language in which page words are made just now, as a language tag: en-GB, cy."""
    return _SPOKEN.get()


def table() -> NullTranslations | None:
    """The table of the language spoken; None for English, which stands in the code."""
    language = _SPOKEN.get()
    return None if language == ENGLISH else table_for(language)


def kept_by_language(
    maxsize: int = 16,
) -> Callable[[Callable[_Given, _Answer]], Callable[_Given, _Answer]]:
    """As functools.lru_cache, for answers with page words in them: one for each language."""

    def keeping(worked_out: Callable[_Given, _Answer]) -> Callable[_Given, _Answer]:
        @lru_cache(maxsize=maxsize)
        def kept(_language: str, *given: Hashable, **named: Hashable) -> _Answer:
            return asked_anew(*given, **named)

        asked_anew: Callable[..., _Answer] = worked_out

        @wraps(worked_out)
        def asked(*given: _Given.args, **named: _Given.kwargs) -> _Answer:
            return answer(_SPOKEN.get(), *given, **named)

        answer: Callable[..., _Answer] = kept

        return asked

    return keeping
