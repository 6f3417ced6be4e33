"""Judging a pack as the command does, with word of what it took."""

from __future__ import annotations

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


@dataclass(frozen=True, slots=True)
class Took:
    """Processor seconds, and the most bytes in memory at one time."""

    seconds: float
    memory: int


def measuring(patch: pytest.MonkeyPatch) -> None:
    """From now on judging leaves word, beside the pack, of what it took."""
    patch.setattr(judging_packs, "_judge", judge_and_tell)


def judging_once(patch: pytest.MonkeyPatch) -> None:
    """From now on the same pack is judged once, for tests of what is done with it then."""
    known: dict[bytes, Judged | Refused] = {}

    def judged(content: Path, file: Path) -> Judged | Refused:
        data = file.read_bytes()
        if data not in known:
            known[data] = judging_packs.judged(content, file)
        return known[data]

    patch.setattr(take_in, "judged", judged)


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
