"""Publishers killed at any moment while a reader walks the folder: no broken read, ever."""

from __future__ import annotations

import random
import subprocess
import sys
import threading
import time
from pathlib import Path

import pytest

from build_tools.publishing.editions import editions_in
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import publish, verify
from tests.publishing.folders import Walk, make_site

ROOT = Path(__file__).resolve().parents[2]
PUBLICATIONS, PUBLICATIONS_THOROUGH = 50, 1000


def started(site: Path, target: Path) -> subprocess.Popen[str]:
    child = subprocess.Popen(
        [sys.executable, "-m", "tests.publishing.publish_once", str(site), str(target)],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert child.stdout is not None
    assert child.stdout.readline() == "ready\n"
    return child


def test_a_publisher_killed_at_any_moment_breaks_no_reading(tmp_path: Path, thorough: bool) -> None:
    target = tmp_path / "share"
    sites = [make_site(tmp_path / f"site-{n}", n) for n in range(4)]
    publish(sites[0], target, "2026-11-25", "A bank", keep=3)
    began = time.monotonic()
    publish(sites[1], target, "2026-11-25", "A bank", keep=3)
    usual = time.monotonic() - began
    walk, over = Walk(), threading.Event()

    def read() -> None:
        while not over.is_set():
            walk.once(target)
            time.sleep(0.002)

    reader = threading.Thread(target=read)
    reader.start()
    moments = random.Random(20261125)
    killed = whole = 0
    try:
        for n in range(PUBLICATIONS_THOROUGH if thorough else PUBLICATIONS):
            before = read_pointer(target)
            child = started(sites[n % len(sites)], target)
            if n % 5:
                time.sleep(moments.uniform(0, usual))
                child.kill()
            code = child.wait()
            killed, whole = killed + (code != 0), whole + (code == 0)
            assert verify(target) == []
            after = read_pointer(target)
            assert before is not None
            assert after is not None
            assert after.current in (before.current, editions_in(target)[-1])
    finally:
        over.set()
        reader.join()
    assert walk.broken == []
    assert killed >= 5
    assert whole >= 5
    assert len(walk.versions) > 1
    assert walk.pages > 100


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
