"""How many syllables a word is said with.

Counted by the syllapy library, which carries a list of some 6,000 words and counts the groups of
vowels in all others. Faults of it that come again and again are mended by rule: an ending that is
said is lost or a silent one counted (`danced`, `softly`), a silent e inside a word is counted
(`sideways`), two vowels said apart are counted as one (`violin`), and an m that is a syllable of
its own is not counted (`rhythm`).

Error, on the 722 labelled words of tests/views/syllables_labelled.json, chosen for being hard: 16
words, 2.2 per cent, and 0.6 per cent too few syllables in all. The library alone errs on 101 of
them (14.0 per cent); hyphenation patterns for American English on 195, for British on 301.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache
from types import ModuleType

TRADE_WORDS = {
    "centres": 2,
    "choreograph": 4,
    "choreographer": 5,
    "choreography": 5,
    "flexibility": 5,
}
"""Words of dance that the library counts wrongly and that no rule mends."""

SAID_ENDINGS = ("ments", "ment", "ness", "less", "ful", "ings", "ing", "ers", "er", "est", "ly")
LOST_FROM_LIST = ("ing", "er", "est", "ly")
"""Endings that the library's own list often leaves out: its `faster` has one syllable."""

VOWEL = re.compile("[aeiouy]")
HISS = re.compile("([sxz]|[cs]h)es$|[sxzcg]es$")
LE = re.compile("[^aeiouy]le$")
OWN_NT = re.compile("[dst]n't$")
"""The shortened not that is a syllable: didn't and isn't, not can't and weren't."""
AFTER_HISS = re.compile("([sxz]|[cs]h)'s$")
OWN_M = re.compile("(s|th)ms?$")
SAID_APART = re.compile(
    r"""
      (?<![tscgx])i[ao](?!u)             # giant, violin; not action, special, religious
    | (?<![tscgx])iou                    # serious; not cautious
    | i(?=um$|us$|ence|ent|est$|er$|en$) # stadium, experience, happiest, alien
    | (?<![gqn])u[ao](?!y)               # gradual, duo; not guard, quarter
    | (?<![aeioug])eo(?!u|ple)           # meteor; not people, pigeon
    | y[aeiou]|[oeu]ing                  # copying, going
    """,
    re.VERBOSE,
)


@lru_cache(maxsize=16384)
def syllables(word: str) -> int:
    """The syllables `word` is said with, at least 1. Figures are said as whole numbers."""
    plain = word.casefold().replace("’", "'")
    own_nt = 1 if OWN_NT.search(plain) else 0
    plain = AFTER_HISS.sub(r"\1es", plain.removesuffix("n't")).replace("'", "")
    parts = re.findall("[a-z]+|[0-9]+", plain)
    said = sum(_figures(part) if part.isdigit() else _syllables(part) for part in parts)
    return max(1, said + own_nt)


def listed_words() -> frozenset[str]:
    """The everyday words of the library's list, in small letters."""
    return frozenset(_listed())


@cache
def _library() -> ModuleType:
    # loading its list takes longer than checking a unit, and most units need no syllables counted
    import syllapy  # type: ignore[import-untyped]

    return syllapy  # type: ignore[no-any-return]


@cache
def _listed() -> dict[str, int]:
    return dict(_library().WORD_DICT)


def _counted(word: str) -> int:
    return int(_library().count(word))


def _syllables(word: str) -> int:
    if word in TRADE_WORDS:
        return TRADE_WORDS[word]
    if OWN_M.search(word):
        return _counted(word) + 1
    if word.endswith("ically"):
        return _syllables(word.removesuffix("ally")) + 1  # basically is said with three
    listed = _listed().get(word, 0)
    ed = _with_ed(word, listed > 0)
    if ed:
        return ed
    ended = _with_said_ending(word, LOST_FROM_LIST if listed else SAID_ENDINGS)
    if listed or ended:
        return max(listed, ended)
    return _with_s(word) or _with_silent_e_inside(word) or _by_letters(word)


def _by_letters(word: str) -> int:
    own_re = 1 if word.endswith("tre") else 0  # metre: the library knows only meter
    return _counted(word) + own_re + len(SAID_APART.findall(word))


def _base(stem: str) -> str | None:
    """The listed word that lost a letter, or changed its y, before an ending."""
    undoubled = stem[:-1] if stem[-2:-1] == stem[-1:] else ""
    with_y = f"{stem[:-1]}y" if stem.endswith("i") else ""
    found = (w for w in (stem, f"{stem}e", undoubled, with_y) if w in _listed() or w in TRADE_WORDS)
    return next(found, None)


def _with_said_ending(word: str, endings: tuple[str, ...]) -> int:
    ending = next((e for e in endings if word.endswith(e)), "")
    stem = word.removesuffix(ending)
    if not ending or len(stem) < 2 or not VOWEL.search(stem):
        return 0
    base = _base(stem)
    if base is None:
        return 0
    # the l of gentle joins the ending: gent-ler
    joins = LE.search(base) is not None and not stem.endswith("e") and ending[0] in "aei"
    return _syllables(base) + (0 if joins else 1)


def _with_ed(word: str, listed: bool) -> int:
    stem = word.removesuffix("ed")
    if stem == word or stem.endswith("e") or not VOWEL.search(stem):
        return 0
    base = _base(stem)
    if base is None and listed:
        return 0
    if base is None:
        base = f"{stem}e" if LE.search(f"{stem}e") else stem
    return _syllables(base) + (1 if stem[-1] in "td" else 0)


def _with_s(word: str) -> int:
    if not word.endswith("s") or word.endswith(("ss", "us", "is")) or len(word) < 4:
        return 0
    if word.endswith("ies"):
        return _syllables(f"{word[:-3]}y")
    if word.endswith("oes"):
        return _syllables(word[:-2])
    if HISS.search(word):
        return _syllables(_base(word[:-2]) or word[:-2]) + 1
    return _syllables(word[:-1])


def _with_silent_e_inside(word: str) -> int:
    for end in range(3, len(word) - 1):
        first, rest = word[:end], word[end:]
        if (
            first.endswith("e")
            and first in _listed()
            and not VOWEL.match(rest)
            and rest in _listed()
        ):
            return _syllables(first) + _syllables(rest)
    return 0


_ONES = (2, *(1,) * 6, 2, *(1,) * 3, 3, 1, *(2,) * 4, 3, 2, 2)
_TENS = (0, 0, 2, 2, 2, 2, 2, 3, 2, 2)


def _figures(figures: str) -> int:
    """Up to 999 as it is read out; a longer number figure by figure."""
    if len(figures) > 3:
        return sum(_ONES[int(figure)] for figure in figures)
    number = int(figures)
    if number < len(_ONES):
        return _ONES[number]
    if number < 100:
        return _TENS[number // 10] + (_ONES[number % 10] if number % 10 else 0)
    rest = number % 100
    return _ONES[number // 100] + 2 + (1 + _figures(str(rest)) if rest else 0)
