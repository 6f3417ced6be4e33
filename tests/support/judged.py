"""Judging a pack as the command does, with word of what it took."""

from __future__ import annotations

import hashlib
import json
import resource
import time
from dataclasses import dataclass
from pathlib import Path

import pytest

from build_tools.packs.reading.walled import Refused
from build_tools.use_cases import judging_packs, take_in
from build_tools.use_cases.judging_packs import Judged

_judge = judging_packs._judge
_ENDING = ".took"
_known: dict[tuple[str, bytes, bytes], Judged | Refused] = {}


@dataclass(frozen=True, slots=True)
class Took:
    """Processor seconds, and the most bytes in memory at one time."""

    seconds: float
    memory: int


def measuring(patch: pytest.MonkeyPatch) -> None:
    """From now on judging leaves word, beside the pack, of what it took."""
    patch.setattr(judging_packs, "_judge", judge_and_tell)


def judging_once(patch: pytest.MonkeyPatch) -> None:
    """The same pack is judged once for the same bank, for tests of what is done with it then.

    It is judged in this process: what becomes of one within walls, others ask.
    """

    def judged(content: Path, file: Path) -> Judged | Refused:
        key = (file.name, file.read_bytes(), _said_in(content))
        if key not in _known:
            _known[key] = _judge(content, file)
        return _known[key]

    patch.setattr(take_in, "judged", judged)


def _said_in(content: Path) -> bytes:
    """A digest of all that a pack is judged by: the bank's files and the units in it.

    Neither what was kept beside it nor what a run that takes in has laid there, beside the units.
    """
    found = hashlib.sha256()
    for path in sorted(content.rglob("*")):
        first = path.relative_to(content).parts[0]
        if path.is_file() and first != "earlier" and not first.startswith("."):
            found.update(f"{path.relative_to(content).as_posix()}\0".encode())
            found.update(path.read_bytes())
    return found.digest()


def took(file: Path) -> Took | None:
    """What judging the pack took; None where it was ended before it could say."""
    told = file.with_suffix(_ENDING)
    return Took(**json.loads(told.read_bytes())) if told.exists() else None


def judge_and_tell(content: Path, file: Path) -> Judged | Refused:
    """What the other process does in the place of judging alone."""
    before = time.process_time()
    try:
        return _judge(content, file)
    finally:
        memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024
        told = {"seconds": time.process_time() - before, "memory": memory}
        file.with_suffix(_ENDING).write_text(json.dumps(told), encoding="utf-8")
