"""Publishers killed at any moment while a reader walks the folder: no broken read, ever."""

from __future__ import annotations

import random
import threading
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from build_tools.publishing.edition_folders import editions_in
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import publish
from build_tools.publishing.roll_back import roll_back
from build_tools.publishing.verify import verify
from tests.publishing.folders import Walk, make_site
from tests.publishing.publish_once import BACK, DONE, PHASES, PHASES_BACK, PLAIN, TURNING
from tests.support.killing import WHOLE, forked, killed_in, wanted_phases

KILLED = PHASES[:-1]
KILLS, KILLS_THOROUGH = 12, 1_000
ROUNDS, ROUNDS_THOROUGH = 2, 13
"""For each phase in one folder; then in a fresh one, as signposts make each look longer."""
BACK_ROUNDS, BACK_ROUNDS_THOROUGH = 2, 70


def currents(phase: str, before: str, newest: str) -> set[str]:
    """Which edition readers may get where a publisher died in `phase`."""
    if phase == TURNING:
        return {before, newest}
    return {before} if phase in PHASES[: PHASES.index(TURNING)] else {newest}


@contextmanager
def reading(target: Path) -> Iterator[Walk]:
    """A reader who walks the folder again and again, for as long as the block lasts."""
    walk, over = Walk(), threading.Event()

    def read() -> None:
        while not over.is_set():
            walk.once(target)
            time.sleep(0.002)

    reader = threading.Thread(target=read)
    reader.start()
    try:
        yield walk
    finally:
        over.set()
        reader.join()


def test_a_publisher_killed_in_any_phase_breaks_no_reading(tmp_path: Path, thorough: bool) -> None:
    """The publisher says each phase before it enters it, so the last it said is where it died."""
    sites = [make_site(tmp_path / f"site-{n}", n) for n in range(4)]
    moments = random.Random(20261125)
    landed: Counter[str] = Counter()
    kills, rounds = (KILLS_THOROUGH, ROUNDS_THOROUGH) if thorough else (KILLS, ROUNDS)
    while landed.total() - landed[WHOLE] < kills:
        target = tmp_path / f"share-{landed.total()}"
        landed += killed_in_each_phase(target, sites, rounds, moments)
    assert set(landed) >= {*KILLED, WHOLE}, landed


def killed_in_each_phase(
    target: Path, sites: list[Path], rounds: int, moments: random.Random
) -> Counter[str]:
    """Publish into a new folder, killed in each phase in turn; gives where the kills landed."""
    publish(sites[0], target, "2026-11-25", "A bank", keep=3, days=0)
    landed: Counter[str] = Counter()
    with reading(target) as walk:
        for n, wanted in enumerate(wanted_phases((*KILLED, WHOLE), rounds, landed)):
            before = read_pointer(target)
            assert before is not None
            site = sites[(n + n // len(PHASES)) % len(sites)]
            with forked("tests.publishing.publish_once", str(site), str(target)) as publisher:
                phase = killed_in(publisher, wanted, max(0.0, moments.uniform(-0.002, 0.003)))
            landed[phase] += 1
            assert verify(target) == []
            after = read_pointer(target)
            assert after is not None
            newest = editions_in(target)[-1]
            assert after.current in currents(phase, before.current, newest), phase
    assert walk.broken == []
    assert len(walk.versions) > 1
    assert walk.pages > 100
    return landed


def test_a_way_back_killed_in_any_phase_breaks_no_reading(tmp_path: Path, thorough: bool) -> None:
    target = tmp_path / "share"
    sites = {n: make_site(tmp_path / f"site-{n}", n) for n in (2, 3)}
    for site in sites.values():
        publish(site, target, "2026-11-25", "A bank")
    first, second = editions_in(target)
    moments = random.Random(20261126)
    landed: Counter[str] = Counter()
    with reading(target) as walk:
        rounds = BACK_ROUNDS_THOROUGH if thorough else BACK_ROUNDS
        for wanted in wanted_phases((*PHASES_BACK[:-1], WHOLE), rounds, landed):
            with forked("tests.publishing.publish_once", BACK, str(target)) as publisher:
                phase = killed_in(publisher, wanted, max(0.0, moments.uniform(-0.002, 0.003)))
            landed[phase] += 1
            assert verify(target) == []
            pointer = read_pointer(target)
            assert pointer is not None
            possible = {TURNING: {first, second}}
            possible |= {after: {first} for after in (PLAIN, DONE, WHOLE)}
            assert pointer.current in possible.get(phase, {second}), phase
            roll_back(target, second)
    assert walk.broken == []
    assert set(landed) >= {*PHASES_BACK[:-1], WHOLE}, landed
    assert walk.versions == {2, 3}


@pytest.mark.parametrize("step", range(12))
def test_a_publisher_stopped_after_any_step_leaves_a_clean_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, step: int
) -> None:
    """The same, step by step: the process ends after its first, second … change of a name."""
    target = tmp_path / "share"
    publish(make_site(tmp_path / "old", 2), target, "2026-11-25", "A bank")
    site = make_site(tmp_path / "new", 3)
    changes = 0
    replace = Path.replace

    def ending(self: Path, goal: Path) -> Path:
        nonlocal changes
        if changes == step:
            raise KeyboardInterrupt
        changes += 1
        return replace(self, goal)

    monkeypatch.setattr(Path, "replace", ending)
    try:
        publish(site, target, "2026-11-25", "A bank")
    except KeyboardInterrupt:
        assert changes == step
    monkeypatch.undo()
    assert verify(target) == []
    walk = Walk()
    walk.once(target)
    assert walk.broken == []
    publish(site, target, "2026-11-25", "A bank")
    assert verify(target) == []
    walk.once(target)
    assert walk.versions >= {3}
    assert walk.broken == []
