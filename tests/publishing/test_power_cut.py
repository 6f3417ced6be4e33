"""The power cut at every moment: readers have a whole edition, and the next run mends the rest."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest

from build_tools.publishing.mend import mend_folder
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import publish
from build_tools.publishing.roll_back import roll_back
from build_tools.publishing.verify import verify
from tests.publishing.folders import DAY, TITLE, Walk, make_site
from tests.support.power_cut import every_end, make, recorded

OLD, OLDER, NEW = 4, 2, 5


@dataclass(frozen=True, slots=True)
class Room:
    """A published folder with two editions, and the sites they were made of and the next one."""

    share: Path
    sites: dict[int, Path]

    def publish(self, version: int, share: Path | None = None) -> None:
        site = self.sites[version]
        publish(site, share or self.share, DAY, TITLE, keep=2, days=0)


@pytest.fixture
def room(tmp_path: Path) -> Room:
    sites = {n: make_site(tmp_path / f"site-{n}", n, units=1) for n in (OLDER, OLD, NEW)}
    found = Room(tmp_path / "share", sites)
    for version in (OLDER, OLD):
        found.publish(version)
    return found


def published(room: Room) -> None:
    room.publish(NEW)


def went_back(room: Room) -> None:
    roll_back(room.share)


def mended(room: Room) -> None:
    mend_folder(room.share)


def damage(share: Path) -> None:
    edition = sorted(path for path in (share / "editions").glob("2*") if path.is_dir())[0]
    (edition / "assets" / "css" / "look.css").write_text("spoilt", encoding="utf-8")
    (share / "index.html").write_bytes(b"")
    (share / "current.js").write_bytes(b"")


@pytest.mark.parametrize(
    ("work", "before", "after"),
    [(published, OLD, NEW), (went_back, OLD, OLDER), (mended, OLD, OLD)],
    ids=["publish", "roll back", "mend"],
)
def test_a_cut_at_any_moment_leaves_readers_a_whole_edition(
    room: Room,
    tmp_path: Path,
    thorough: bool,
    work: Callable[[Room], None],
    before: int,
    after: int,
) -> None:
    if work is mended:
        damage(room.share)
    with recorded(room.share) as found:
        work(room)
    assert len(found.steps) > 5
    share = tmp_path / "after the cut"
    met: set[int] = set()
    for n, (cut, state) in enumerate(every_end(found, thorough)):
        make(state, share)
        where = f"end {n}, after step {cut} of {len(found.steps)}"
        if work is not mended or read_pointer(share):
            walk = Walk()
            walk.once(share)
            assert walk.broken == [], where
            assert walk.versions <= {before, after}, where
            met |= walk.versions
        if n % 2 or work is mended:
            assert mend_folder(share).left == (), where
            assert verify(share) == [], where
            walk = Walk()
            walk.once(share)
            assert (walk.broken, walk.versions <= {before, after}) == ([], True), where
        room.publish(NEW, share)
        assert verify(share) == [], where
        walk = Walk()
        walk.once(share)
        assert (walk.broken, walk.versions) == ([], {NEW}), where
        shutil.rmtree(share)
    assert met == {before, after}


def test_a_cut_at_any_moment_of_a_first_edition(room: Room, tmp_path: Path, thorough: bool) -> None:
    fresh, share = tmp_path / "fresh", tmp_path / "after the cut"
    fresh.mkdir()
    with recorded(fresh) as found:
        room.publish(OLD, fresh)
    whole = 0
    for n, (cut, state) in enumerate(every_end(found, thorough)):
        make(state, share)
        where = f"end {n}, after step {cut} of {len(found.steps)}"
        if read_pointer(share):
            walk = Walk()
            walk.once(share)
            assert (walk.broken, walk.versions) == ([], {OLD}), where
            whole += 1
        room.publish(NEW, share)
        assert verify(share) == [], where
        shutil.rmtree(share)
    assert whole
