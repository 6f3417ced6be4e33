"""Slips of a hand that types fields, made at random places of a sound text."""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Sequence

_Slip = Callable[[str, random.Random], str]


def slipped(text: str, _: Sequence[bytes], choose: random.Random) -> str:
    """The `text` with one to four slips, each on a line of its own."""
    lines = text.split("\n")
    for _n in range(choose.choice((1, 1, 2, 4))):
        at = choose.randrange(len(lines))
        lines[at] = choose.choice(SLIPS)(lines[at], choose)
    return "\n".join(lines)


def _in_words(new: str) -> _Slip:
    def change(line: str, choose: random.Random) -> str:
        gaps = [m.start() for m in re.finditer(r"(?<=\w) (?=\w)", line)]
        at = choose.choice(gaps) if gaps else len(line)
        return f"{line[:at]}{new}{line[at:].lstrip()}"

    return change


def _replaced(old: str, new: str) -> _Slip:
    return lambda line, _: re.sub(old, new, line, count=1)


SLIPS: tuple[_Slip, ...] = (
    *(
        _in_words(new)
        for new in (": ", ":", " #", " - ", ", ", ' "', "' ", " [", "} ", "\n", "\n  ")
    ),
    _replaced(r"^ ", ""),
    _replaced(r"^  ", ""),
    _replaced(r"^", " "),
    _replaced(r"^", "   "),
    _replaced(r"^  ", "\t"),
    _replaced(r"^    ", "\u00a0\u00a0\u00a0\u00a0"),
    _replaced("- ", "-"),
    _replaced("- ", "* "),
    _replaced("- ", "•\t"),
    _replaced("- ", "– "),
    _replaced("- ", ""),
    _replaced(": ", ":"),
    _replaced(": ", " : "),
    _replaced(": ", ":\t"),
    _replaced(": ", " "),
    _replaced(": ", ': "'),
    _replaced(": ", ": '"),
    _replaced(": ", ": “"),
    _replaced(": ", ": *"),
    _replaced(": ", ": - "),
    _replaced(": ", ": | "),
    _replaced(": ", ":\n"),
    _replaced(r"\[", ""),
    _replaced(r"\]", ""),
    _replaced(r"\{", ""),
    _replaced(r"\}", ""),
    _replaced('"', ""),
    _replaced("'", ""),
    _replaced("_", " "),
    _replaced(r"[a-z]", "É"),
    lambda line, _: line.upper(),
    lambda line, _: f"# {line}",
    lambda line, _: f"{line} # a remark",
    lambda line, _: f"{line}\n{line}",
    lambda line, _: f"{line}\nsome words of hers",
    lambda line, _: f"{line}\n      and: some more",
)
