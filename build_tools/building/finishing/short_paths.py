"""The way of a stroke in as few letters as SVG allows, point for point the same.

SVG 2, chapter 9 ("Paths"): a command in small letters counts from where the last one ended; one
that comes again need not be written again; a number needs no nought before its point, and no space
where its sign or its point begins it. Nothing is rounded.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

_TOKEN = re.compile(r"\s*,?\s*([A-Za-z]|[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?)")
_PLACES = 1000
"""Parts of a unit that numbers are read in; a path with finer ones is left as it is."""
_TAKES = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2, "A": 7, "Z": 0}
_D = re.compile(r'(?<= d=")[^"]+(?=")')

Segment = tuple[str, tuple[int, ...]]
"""A command in capitals with its numbers, all of places counted from the drawing's corner."""


def with_short_paths(html: str) -> str:
    """The page `html` with the `d` of each path as short as can be."""
    return _D.sub(lambda found: short_path(found[0]), html)


@lru_cache(maxsize=8192)
def short_path(d: str) -> str:
    """The same way in fewer letters; as it is where it cannot be read."""
    try:
        written = _written(list(segments(d)))
    except (ValueError, LookupError):
        return d
    return min(written, d, key=len)


def segments(d: str) -> Iterator[Segment]:
    """Each command of a path, its places absolute, in thousandths of a unit."""
    tokens = _tokens(d)
    at = start = (0, 0)
    command, n = "", 0
    while n < len(tokens):
        if tokens[n].isalpha():
            command, n = tokens[n], n + 1
        elif command in ("M", "m"):
            command = chr(ord(command) - 1)
        elif command in ("", "Z", "z"):
            raise ValueError("a number where a command is due")
        name, takes = command.upper(), _TAKES[command.upper()]
        numbers = tuple(_number(one) for one in tokens[n : n + takes])
        if len(numbers) < takes:
            raise ValueError("too few numbers")
        n += takes
        if command.islower():
            numbers = _moved(name, numbers, at)
        yield name, numbers
        at = _end(name, numbers, at, start)
        start = at if name == "M" else start


def _tokens(d: str) -> list[str]:
    found, end = [], 0
    for token in _TOKEN.finditer(d):
        if token.start() != end:
            break
        found.append(token[1])
        end = token.end()
    if d[end:].strip():
        raise ValueError("no path")
    return found


def _number(token: str) -> int:
    value = float(token) * _PLACES
    whole = round(value)
    if abs(value - whole) > 1e-6:
        raise ValueError("finer than can be written")
    return whole


def _moved(name: str, numbers: tuple[int, ...], by: tuple[int, int]) -> tuple[int, ...]:
    """Numbers told from `by`, told from the corner; with the other sign, the other way round."""
    x, y = by
    if name == "H":
        return (numbers[0] + x,)
    if name == "V":
        return (numbers[0] + y,)
    if name == "A":
        return (*numbers[:5], numbers[5] + x, numbers[6] + y)
    return tuple(one + (y if n % 2 else x) for n, one in enumerate(numbers))


def _end(
    name: str, numbers: tuple[int, ...], at: tuple[int, int], start: tuple[int, int]
) -> tuple[int, int]:
    if name == "Z":
        return start
    if name == "H":
        return (numbers[0], at[1])
    if name == "V":
        return (at[0], numbers[0])
    return (numbers[-2], numbers[-1])


def _written(found: list[Segment]) -> str:
    text, at, start = "", (0, 0), (0, 0)
    last = ""
    for name, numbers in found:
        end = _end(name, numbers, at, start)
        straight, told = name, numbers
        if name == "L" and end[1] == at[1]:
            straight, told = "H", (end[0],)
        elif name == "L" and end[0] == at[0]:
            straight, told = "V", (end[1],)
        near = _moved(straight, told, (-at[0], -at[1]))
        ways = [(straight, told), (straight.lower(), near)]
        if straight != name:
            ways.append((name.lower(), _moved(name, numbers, (-at[0], -at[1]))))
        options = [(_joined(text, last, command, some), command) for command, some in ways]
        # of two as short the small letters, which look alike from path to path and so pack well
        text, last = min(options, key=lambda one: (len(one[0]), one[1].isupper()))
        at = end
        start = end if name == "M" else start
    return text


def _joined(text: str, last: str, command: str, numbers: tuple[int, ...]) -> str:
    """`text` with one more command, which is not named where it is what would be read anyway."""
    implied = {"M": "L", "m": "l"}.get(last, last)
    if command != implied or not numbers:
        text += command
    for n, one in enumerate(numbers):
        written = _figures(one)
        flag = command in ("A", "a") and n in (4, 5)
        pointed = written[0] == "." and _has_point(text) and not flag
        beside = text[-1].isalpha() or written[0] == "-" or pointed
        text += written if beside else f" {written}"
    return text


_LAST = re.compile(r"-?\d*(\.\d+)?$")


def _has_point(text: str) -> bool:
    found = _LAST.search(text[-12:])
    return bool(found and found[1])


def _figures(value: int) -> str:
    sign, whole = "-" if value < 0 else "", abs(value)
    before, after = divmod(whole, _PLACES)
    if not after:
        return f"{sign}{before}"
    return f"{sign}{before or ''}.{f'{after:03d}'.rstrip('0')}"
