"""One target fuzzed by a process of its own, guided by what of our code it reaches.

TARGET and libFuzzer's own options. Ends with 0 if nothing fell and nothing took long; else what did
it lies where the options say.

Without a target it is told of one run after another, a line of JSON each: the target, the options,
and the file for what the fuzzer says. What takes longest, loading our code so that the fuzzer sees
the ways through it, is then done once; each run is still a process of its own, forked from this
one, whose exit code is said in a line. `--library` lets it follow the library that reads notes too.
"""

from __future__ import annotations

import json
import os
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import NoReturn

import atheris

_ROOT = Path(__file__).resolve().parents[2]
MOST_SECONDS = 4.0
"""Of the processor, for reading one text or picture once."""
_FOLLOWED = [
    "build_tools.drafting.from_document",
    "build_tools.packs",
    "build_tools.pictures",
    "build_tools.source",
    "build_tools.pages.pieces",
    "build_tools.word_files.reading",
    "tests.fuzzing.planted",
]
_LIBRARY = "markdown_it"
"""Followed too where there is time: to load it so takes longer than the few readings without."""


class SlowError(Exception):
    """Reading took longer than any unit needs."""


def _not_followed() -> list[str]:
    """Our other modules. What is to be followed is told by its first name alone, which has them."""
    found = []
    for top in ("build_tools", "tests"):
        for path in sorted((_ROOT / top).rglob("*.py")):
            parts = path.relative_to(_ROOT).with_suffix("").parts
            name = ".".join(part for part in parts if part != "__init__")
            if not any(f"{name}.".startswith(f"{one}.") for one in _FOLLOWED):
                found.append(name)
    return found


def reader(name: str, *, library: bool = True) -> Callable[[bytes], object]:
    """What is fuzzed, loaded so that the fuzzer sees which ways are taken in it."""
    followed = [*_FOLLOWED, *([_LIBRARY] if library else [])]
    with atheris.instrument_imports(include=followed, exclude=_not_followed()):
        from tests.fuzzing.planted import falls
        from tests.fuzzing.targets import TARGETS

    return TARGETS[name].read if name in TARGETS else falls


def main(name: str, options: list[str]) -> None:
    """Fuzz until an option ends it."""
    read = reader(name)

    def once(data: bytes) -> None:
        start = time.process_time()
        read(data)
        taken = time.process_time() - start
        if taken > MOST_SECONDS:
            raise SlowError(f"{taken:.1f} s for {len(data):,} bytes")

    atheris.Setup([sys.argv[0], *options], once)
    atheris.Fuzz()


def many(*, library: bool) -> None:
    """Fuzz what each line asks for, in a fork, and say how it ended."""
    reader("", library=library)
    for line in sys.stdin:
        name, options, said = json.loads(line)
        child = os.fork()
        if not child:
            _forked(name, options, said)
        print(os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]), flush=True)


def _forked(name: str, options: list[str], said: str) -> NoReturn:
    with Path(said).open("wb") as words:
        os.dup2(words.fileno(), 1)
        os.dup2(words.fileno(), 2)
    main(name, options)
    sys.exit()


if __name__ == "__main__":
    match sys.argv[1:]:
        case []:
            many(library=False)
        case ["--library"]:
            many(library=True)
        case [target, *given]:
            main(target, given)
