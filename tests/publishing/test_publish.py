"""Editions in a folder that others read: published, kept, and refused."""

from __future__ import annotations

import errno
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from functools import partial
from itertools import count
from pathlib import Path
from typing import Any

import pytest

from build_tools.disk import sure_files
from build_tools.publishing import edition_folders
from build_tools.publishing.edition_folders import editions_in, gone_in
from build_tools.publishing.editions_kept import DAYS, KEEP
from build_tools.publishing.entry_pages import entries_in
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import Published, publish
from build_tools.publishing.trouble import CannotPublishError
from build_tools.publishing.verify import verify
from tests.publishing.folders import DAY, TITLE, make_site, walked, write
from tests.support.killing import forked


def test_a_first_edition_can_be_read(share: Path) -> None:
    assert editions_in(share) == ("2026-11-25-1",)
    assert verify(share) == []
    assert walked(share).versions == {2}
    assert "units/unit-0/lesson-1.html" in entries_in(share)


def test_the_same_pages_make_no_new_edition(share: Path, tmp_path: Path) -> None:
    assert publish(tmp_path / "first", share, DAY, TITLE) == Published("2026-11-25-1", new=False)


def test_an_edition_is_a_true_copy_that_other_programs_can_check(
    share: Path, tmp_path: Path
) -> None:
    edition = share / "editions" / "2026-11-25-1"
    for path in sorted((tmp_path / "first").rglob("*.*")):
        copy = edition / path.relative_to(tmp_path / "first")
        assert copy.read_bytes() == path.read_bytes()
    if shutil.which("sha512sum"):
        # GNU coreutils reads the same manifest.
        command = ["sha512sum", "--check", "--strict", "--quiet", "manifest-sha512.txt"]
        done = subprocess.run(command, cwd=edition, capture_output=True, text=True, check=False)
        assert (done.returncode, done.stdout) == (0, "")


def test_the_newest_editions_are_kept_and_the_rest_taken_out(share: Path, tmp_path: Path) -> None:
    for version in range(3, 12):
        done = publish(
            make_site(tmp_path / f"s{version}", version), share, DAY, TITLE, keep=3, days=0
        )
    assert editions_in(share) == ("2026-11-25-8", "2026-11-25-9", "2026-11-25-10")
    assert done.taken_out == ("2026-11-25-7",)
    assert verify(share) == []
    assert walked(share).versions == {11}


def test_a_page_that_a_new_edition_lacks_keeps_its_address(share: Path, tmp_path: Path) -> None:
    publish(make_site(tmp_path / "s3", 3), share, DAY, TITLE)
    publish(make_site(tmp_path / "s4", 4), share, DAY, TITLE)
    pointer = read_pointer(share)
    assert pointer is not None
    assert pointer.missing == ("units/odd-3/index.html",)
    assert (share / "units" / "odd-3" / "index.html").is_file()
    assert verify(share) == []


def test_folders_that_hold_other_things_are_left_alone(tmp_path: Path) -> None:
    target = tmp_path / "stick"
    write(target / "holiday" / "plan.txt", "mine")
    with pytest.raises(CannotPublishError, match="holds other things, such as holiday"):
        publish(make_site(tmp_path / "s", 2), target, DAY, TITLE)
    assert [path.name for path in target.iterdir() if path.name != ".publishing.lock"] == [
        "holiday"
    ]


def test_somebody_elses_page_is_never_written_over(share: Path, tmp_path: Path) -> None:
    write(share / "units" / "odd-3" / "index.html", "mine")
    with pytest.raises(CannotPublishError, match="somebody else's page"):
        publish(make_site(tmp_path / "s3", 3), share, DAY, TITLE)
    assert (share / "units" / "odd-3" / "index.html").read_text() == "mine"
    assert walked(share).versions == {2}


def test_a_file_in_place_of_the_folder_and_a_folder_that_is_not_there(tmp_path: Path) -> None:
    site = make_site(tmp_path / "s", 2)
    write(tmp_path / "file", "")
    with pytest.raises(CannotPublishError, match="is a file"):
        publish(site, tmp_path / "file", DAY, TITLE)
    with pytest.raises(CannotPublishError, match="connect the share or the stick again"):
        publish(site, tmp_path / "gone" / "share", DAY, TITLE)


FAULTS = {
    errno.ENOSPC: "the disk is full",
    errno.EACCES: "writing is not allowed",
    errno.EROFS: "writing is not allowed",
    errno.ENOENT: "a folder or file went away",
    errno.ENAMETOOLONG: "a name is too long",
    errno.EIO: "the disk or network said",
}


@pytest.mark.parametrize("fault", FAULTS)
@pytest.mark.parametrize("step", [0, 1, 7, 15, 16, 17, 18])
def test_a_fault_at_any_write_leaves_the_old_edition_standing(
    share: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, fault: int, step: int
) -> None:
    site = make_site(tmp_path / "s3", 3)
    written = 0
    write_down = sure_files.write_down

    def failing(path: Path, data: bytes) -> None:
        nonlocal written
        written += 1
        if written > step:
            path.write_bytes(data[: len(data) // 2])
            raise OSError(fault, os.strerror(fault), str(path))
        write_down(path, data)

    monkeypatch.setattr(sure_files, "write_down", failing)
    monkeypatch.setattr(edition_folders, "write_down", failing)
    with pytest.raises(CannotPublishError, match=FAULTS[fault]) as stopped:
        publish(site, share, DAY, TITLE)
    monkeypatch.undo()
    assert written == step + 1
    assert "readers still have the edition they had" in str(stopped.value)
    assert verify(share) == []
    assert walked(share).versions == {2}
    assert not list(share.rglob("*.part"))
    assert publish(site, share, DAY, TITLE).new


def test_two_publishers_at_once_take_turns_or_say_so(share: Path, tmp_path: Path) -> None:
    sites = [make_site(tmp_path / f"s{n}", n) for n in (3, 4, 5, 6)]
    with ExitStack() as all_of_them:
        children = [
            all_of_them.enter_context(
                forked("tests.publishing.publish_once", str(site), str(share))
            )
            for site in sites
        ]
        codes = [child.wait() for child in children]
    assert 0 in codes
    assert verify(share) == []
    assert len(editions_in(share)) == min(3, 1 + codes.count(0))


def test_a_publisher_that_waits_in_vain_says_who_is_at_work(
    share: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from filelock import FileLock

    from build_tools.publishing import publisher_alone

    monkeypatch.setattr(publisher_alone, "LOCK_SECONDS", 0.1)
    with (
        FileLock(share / ".publishing.lock"),
        pytest.raises(CannotPublishError, match="somebody else is publishing"),
    ):
        publish(make_site(tmp_path / "s3", 3), share, DAY, TITLE)
    assert publish(tmp_path / "s3", share, DAY, TITLE).new


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 300 KiB, where this machine lets us make one: Linux, as root."""
    folder = tmp_path / "disk"
    folder.mkdir()
    command = ["mount", "-t", "tmpfs", "-o", "size=300k", "tmpfs", str(folder)]
    made = sys.platform == "linux" and subprocess.run(command, check=False).returncode == 0
    yield folder
    if made:
        subprocess.run(["umount", str(folder)], check=True)


def test_a_disk_that_is_truly_full(small_disk: Path, tmp_path: Path) -> None:
    """On other machines, and without the right to mount, the injected faults above stand alone."""
    target = small_disk / "share"
    publish(make_site(tmp_path / "small", 2), target, DAY, TITLE)
    large = make_site(tmp_path / "large", 3, units=120)
    if os.path.ismount(small_disk):
        with pytest.raises(CannotPublishError, match="the disk is full"):
            publish(large, target, DAY, TITLE)
        assert walked(target).versions == {2}
        assert editions_in(target) == ("2026-11-25-1",)
    else:
        publish(large, target, DAY, TITLE)
        assert walked(target).versions == {3}
    assert verify(target) == []


def test_where_writing_is_not_allowed(share: Path, tmp_path: Path) -> None:
    """Root may write anywhere, so the folder is made unchangeable where the system can do that."""
    site = make_site(tmp_path / "s3", 3)
    locked = share / "editions"
    root = hasattr(os, "geteuid") and os.geteuid() == 0
    if root:
        subprocess.run(["chattr", "+i", str(locked)], check=False, capture_output=True)
    else:
        locked.chmod(0o500)
    stopped = None
    try:
        publish(site, share, DAY, TITLE)
    except CannotPublishError as error:
        stopped = error
    finally:
        if root:
            subprocess.run(["chattr", "-i", str(locked)], check=False, capture_output=True)
        else:
            locked.chmod(0o700)
    # Where the file system has no such attribute, root was let through.
    assert (stopped is None) == (walked(share).versions == {3})
    assert stopped is None or re.search("writing is not allowed", str(stopped))
    assert stopped is not None or root
    assert verify(share) == []


def test_how_many_are_kept_by_default() -> None:
    assert KEEP == 5


def test_an_edition_taken_out_leaves_signposts(share: Path, tmp_path: Path) -> None:
    for version in (4, 6, 8):
        publish(make_site(tmp_path / f"s{version}", version), share, DAY, TITLE, keep=2, days=0)
    assert editions_in(share) == (f"{DAY}-3", f"{DAY}-4")
    assert gone_in(share) == (f"{DAY}-1", f"{DAY}-2")
    first = share / "editions" / f"{DAY}-1"
    text = (first / "units" / "unit-0" / "lesson-1.html").read_text(encoding="utf-8")
    assert 'src="../../../../go.js" data-page="units/unit-0/lesson-1.html"' in text
    assert 'src="../../../../current.js"' in text
    assert not (first / "assets").exists()


def test_editions_are_kept_by_age_as_well_as_number(share: Path, tmp_path: Path) -> None:
    begin = datetime(2026, 11, 25, 8, tzinfo=UTC)
    for day, version in enumerate((4, 6, 8, 10)):
        now = begin + timedelta(days=day)
        publish(make_site(tmp_path / f"s{version}", version), share, DAY, TITLE, keep=2, now=now)
    assert len(editions_in(share)) == 5
    later = begin + timedelta(days=DAYS + 1)
    done = publish(make_site(tmp_path / "s12", 12), share, DAY, TITLE, keep=2, now=later)
    # The first was left on the first day, the second on the next; the others not so long ago.
    assert done.taken_out == (f"{DAY}-1", f"{DAY}-2")
    # A clock set back keeps them longer, and takes nothing out.
    back = begin - timedelta(days=300)
    done = publish(make_site(tmp_path / "s14", 14), share, DAY, TITLE, keep=2, now=back)
    assert done.taken_out == ()


def test_an_empty_or_cut_entry_page_is_ours_and_written_anew(share: Path, tmp_path: Path) -> None:
    for data in (b"", b"<!doctype html>\n<!-- ent"):
        (share / "index.html").write_bytes(data)
        assert "index.html was changed" in verify(share)
        done = publish(tmp_path / "first", share, DAY, TITLE)
        assert done.mended == ("index.html was written anew",)
        assert verify(share) == []


def planted(link: Path, goal: Path) -> None:
    if link.exists():
        link.rename(link.with_name("was-here"))
    link.symlink_to(goal, target_is_directory=goal.is_dir())


LINKS = ("index.html", "units", "units/unit-0", "go.js", "current.js", ".publishing.lock")


@pytest.mark.parametrize("name", LINKS)
def test_no_link_is_written_through(share: Path, tmp_path: Path, name: str) -> None:
    goal = tmp_path / "elsewhere"
    if "." in name:
        write(goal, "mine")
    else:
        write(goal / "mine.txt", "mine")
    planted(share / name, goal)
    with pytest.raises(CannotPublishError, match="is a link to another place"):
        publish(make_site(tmp_path / "s4", 4), share, DAY, TITLE)
    assert sorted(path.name for path in goal.rglob("*")) == ([] if "." in name else ["mine.txt"])
    assert (goal if "." in name else goal / "mine.txt").read_text() == "mine"


def test_a_link_where_a_half_written_file_would_lie_is_taken_away(
    share: Path, tmp_path: Path
) -> None:
    goal = tmp_path / "elsewhere.txt"
    write(goal, "mine")
    for name in (".index.html.part", ".current.js.part", "units/unit-0/.index.html.part"):
        (share / name).symlink_to(goal)
    (share / "index.html").write_bytes(b"")
    (share / "units" / "unit-0" / "index.html").unlink()
    publish(make_site(tmp_path / "s4", 4), share, DAY, TITLE)
    assert goal.read_text() == "mine"
    assert verify(share) == []


def some_steps(thorough: bool) -> Iterator[int]:
    """Each step in the long run; in the usual one three of seven, so that none of a cycle of
    steps, such as those that write a file, is passed over each time.
    """
    return (step for step in count() if thorough or step % 7 in (0, 2, 5))


def test_a_folder_renamed_at_any_step_stops_the_work_with_the_truth_told(
    tmp_path: Path, thorough: bool
) -> None:
    """Each step that changes a name or writes a file: the folder gets another name before it."""
    sites = {n: make_site(tmp_path / f"s{n}", n, units=1) for n in (2, 3)}
    publish(sites[2], tmp_path / "first", DAY, TITLE)
    begun_elsewhere = 0
    for step in some_steps(thorough):
        share, moved = tmp_path / f"share-{step}", tmp_path / f"renamed-{step}"
        shutil.copytree(tmp_path / "first", share)

        def renamed(n: int, at: int = step, old: Path = share, new: Path = moved) -> None:
            if n == at:
                old.rename(new)

        with before_each_change(renamed):
            stopped = stopped_by(partial(publish, sites[3], share, DAY, TITLE))
        if not moved.exists():
            assert stopped is None
            break
        if stopped is None:
            # It was renamed before the work began, which found no folder of that name.
            begun_elsewhere += 1
            assert (walked(moved).versions, walked(share).versions) == ({2}, {3})
            continue
        assert re.search("no longer the folder|went away", str(stopped)), step
        assert not share.exists() or not any(path.is_file() for path in share.rglob("*")), step
        assert walked(moved).versions <= {2, 3}
        assert [line for line in verify(moved) if "entry page" not in line] == [], step
        assert publish(sites[3], moved, DAY, TITLE).edition
        assert verify(moved) == []
    assert step > 30
    assert begun_elsewhere <= 1


def test_a_disk_that_is_full_at_any_step_leaves_readers_a_whole_edition(
    tmp_path: Path, thorough: bool
) -> None:
    """Each step that needs room: a file's bytes, a name, a folder, and waiting for the disk."""
    sites = {n: make_site(tmp_path / f"s{n}", n, units=1) for n in (2, 4, 5)}
    for version in (2, 4):
        publish(sites[version], tmp_path / "first", DAY, TITLE, keep=2, days=0)
    told: set[str] = set()
    for step in some_steps(thorough):
        share = tmp_path / f"share-{step}"
        shutil.copytree(tmp_path / "first", share)

        def full(n: int, at: int = step) -> None:
            if n >= at:
                raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

        with before_each_change(full) as changes:
            stopped = stopped_by(partial(publish, sites[5], share, DAY, TITLE, keep=2, days=0))
        if changes.done <= step:
            assert stopped is None
            break
        assert stopped is not None, step
        said = re.search("the disk is full; (readers (still )?have the edition)", str(stopped))
        assert said, stopped
        told.add(said[1])
        assert walked(share).versions == ({4} if said[2] else {5}), step
        assert publish(sites[5], share, DAY, TITLE, keep=2, days=0).edition
        assert verify(share) == [], step
        assert walked(share).versions == {5}
    assert step > 50
    assert len(told) == 2


@dataclass
class Changes:
    """How many changes a run has made to files."""

    done: int = 0


@contextmanager
def before_each_change(deed: Callable[[int], object]) -> Iterator[Changes]:
    """Call `deed` with 0, 1, 2 … before each change of files that needs room or a name."""
    changes = Changes()
    real = {name: getattr(os, name) for name in ("mkdir", "replace", "rename", "fsync")}
    write = Path.open
    busy = False

    def told() -> None:
        nonlocal busy
        if not busy:
            busy = True
            try:
                deed(changes.done)
            finally:
                busy = False
                changes.done += 1

    def wrapped(name: str) -> Callable[..., Any]:
        def call(*given: Any, **options: Any) -> Any:
            if not busy:
                told()
            return real[name](*given, **options)

        return call

    def opened(path: Path, mode: str = "r", *given: Any, **options: Any) -> Any:
        if "x" in mode:
            told()
        return write(path, mode, *given, **options)

    with pytest.MonkeyPatch.context() as patch:
        for name in real:
            patch.setattr(os, name, wrapped(name))
        patch.setattr(Path, "open", opened)
        yield changes


def stopped_by(work: Callable[[], object]) -> CannotPublishError | None:
    """What the work was stopped by; None where it ended well."""
    try:
        work()
    except CannotPublishError as error:
        return error
    return None
