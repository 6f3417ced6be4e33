"""Every saying of every module is written as sayings are written."""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Iterator

from build_tools import sentences
from build_tools.sentences.sayings import Saying


def sayings() -> Iterator[tuple[str, Saying]]:
    for module in pkgutil.iter_modules(sentences.__path__):
        held = vars(importlib.import_module(f"{sentences.__name__}.{module.name}"))
        for name, value in held.items():
            rows = value.items() if isinstance(value, dict) else ((name, value),)
            for key, one in rows:
                if isinstance(one, Saying):
                    yield f"{module.name}: {name} {key}", one


ALL = dict(sayings())


def test_no_phrase_was_cut_in_two() -> None:
    for name, saying in ALL.items():
        for line in (phrase.written for phrase in saying._phrases):
            assert line[0] not in "~!", (name, line)
            assert not line.endswith(("~", "|")), (name, line)


def test_each_phrase_can_be_read() -> None:
    for name, saying in ALL.items():
        assert saying.said("Nothing of the kind is said here.") is None, name
