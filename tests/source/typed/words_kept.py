"""Which words of a typed text are neither in what was read of it nor on a line that is told of."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from typing import Any

from build_tools.shapes.schemas import Kind
from build_tools.shapes.shape import shape_of
from build_tools.source.typed.reader import read_typed

_WORD = re.compile(r"[^\W_]+")
_SIGNS_OF_YAML = {"null", "true", "false"}


def lost_words(fields: str, kind: Kind) -> Counter[str]:
    """Each word that was typed in `fields` more often than it was kept, and how much more often."""
    made = read_typed(fields, 1, shape_of(kind))
    told = {guess.line for guess in made.guesses} | {fault.line for fault in made.faults}
    # from a tab that makes no sense on, the file is not read, and that alone is told
    tabs = [fault.line for fault in made.faults if "begins with a tab" in fault.message]
    told |= set(range(min(tabs), fields.count("\n") + 2)) if tabs else set()
    typed: Counter[str] = Counter()
    kept: Counter[str] = Counter()
    for number, line in enumerate(fields.split("\n"), start=1):
        words = _WORD.findall(line)
        typed.update(words)
        if number in told or "\\" in line or re.search(r"[|>][-+0-9]+$", line.rstrip()):
            kept.update(words)
    for text in (*_texts(made.data), *_texts(made.aside), *made.beside.values()):
        kept.update(_WORD.findall(text))
    for remarks in made.before.values():
        kept.update(word for text in remarks for word in _WORD.findall(text))
    return Counter({w: n for w, n in (typed - kept).items() if w not in _SIGNS_OF_YAML})


def _texts(data: Any) -> Iterator[str]:
    if isinstance(data, dict):
        for name, value in data.items():
            yield name
            yield from _texts(value)
    elif isinstance(data, list):
        for value in data:
            yield from _texts(value)
    elif data is not None:
        yield str(data)
