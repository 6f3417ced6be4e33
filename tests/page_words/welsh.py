"""Welsh messages as words, and the mutations that some little words ask of the next one.

Source of the mutations, from memory: Peter Wynn Thomas, Gramadeg y Gymraeg (1996), the chapter on
mutations: `am, ar, at, dan, dros, drwy, gan, heb, hyd, i, o, wrth` and `neu` soften, `a`, `â`,
`gyda` and `tua` make p, t and c breathed.
"""

from __future__ import annotations

import atexit
import itertools
import json
import re
import subprocess
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import IO

from build_tools.project.tools_for_tests import node
from tests.support.banks import ROOT

SOFTEN = frozenset(
    [
        "am",
        "ar",
        "at",
        "dan",
        "tan",
        "dros",
        "tros",
        "drwy",
        "trwy",
        "gan",
        "heb",
        "hyd",
        "i",
        "o",
        "wrth",
        "neu",
        "dau",
        "dwy",
    ]
)
BREATHE = frozenset(["a", "â", "gyda", "tua"])
RADICAL = re.compile(r"(?:p(?!h)|t(?!h)|c(?!h)|ll|rh|m)", re.IGNORECASE)
"""Letters that a softened word does not begin with."""
SOFT_OF = {"b": "p", "g": "c", "d": "t"}
"""What a softened word may begin with, and what it began with before."""
PLACE = re.compile(r"\{[^}]*\}|%\(\w+\)s|<[^>]+>")
WORD = re.compile(r"[^\W\d_]+(?:[’'-][^\W\d_]+)*|[^\w\s]")


@dataclass(frozen=True, slots=True)
class Pair:
    """Two words beside each other in a message."""

    first: str
    then: str
    message: str


def words(message: str) -> Iterator[str]:
    """The words of a message, its places and marks left out; ’r and the like are cut off."""
    for word in WORD.findall(PLACE.sub(" ", message)):
        stem = re.split(r"[’']", word)[0]
        if len(stem) > 1 and not stem.isupper() and stem[0].isalpha():
            yield stem


def _pairs(messages: Iterable[str]) -> Iterator[Pair]:
    """Every two words or marks beside each other; a place stands between as a mark."""
    for message in messages:
        found = WORD.findall(PLACE.sub(" | ", message))
        for first, then in itertools.pairwise(found):
            yield Pair(first, then, message)


def not_softened(messages: Iterable[str]) -> Iterator[Pair]:
    """Words that do not begin as the word before them asks; `b`, `g` and `d` are not looked at."""
    for pair in _pairs(messages):
        before = pair.first.lower()
        breathed = before in BREATHE and re.match(r"(?:p|t|c)(?!h)", pair.then, re.IGNORECASE)
        if breathed or (before in SOFTEN and RADICAL.match(pair.then)):
            yield pair


def softened_twice(messages: Iterable[str]) -> Iterator[Pair]:
    """Pairs whose second word may be softened, or may begin so in the dictionary."""
    for pair in _pairs(messages):
        then = pair.then.lower()
        if pair.first.lower() in SOFTEN and then[0] in SOFT_OF and then[:2] != "dd":
            yield pair


def unknown(lines: Iterable[str]) -> list[str]:
    """Of lines of words those none of whose words the Welsh dictionary knows."""
    asked, answers = _dictionary()
    asked.write(f"{json.dumps([*lines])}\n")
    asked.flush()
    found: list[str] = json.loads(answers.readline())
    return found


@cache
def _dictionary() -> tuple[IO[str], IO[str]]:
    """Where the dictionary is asked, and where it answers; it ends with what asks it."""
    started = subprocess.Popen(
        [str(node()), str(Path(__file__).with_name("spelling.mjs"))],
        cwd=ROOT,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        encoding="utf-8",
    )
    assert started.stdin is not None
    assert started.stdout is not None
    atexit.register(started.communicate)  # ends what it is asked by
    return started.stdin, started.stdout


def before_softening(word: str) -> str:
    """The word as it may have been before it was softened: gam, cam."""
    return SOFT_OF[word[0].lower()] + word[1:].lower()
