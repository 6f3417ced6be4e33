"""Each file of a published folder damaged in each way: seen, mended, and no whole edition lost.

The ways are those in which shares and sticks fail and people slip: common practice, no source.
"""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools.publishing.edition_folders import editions_in, gone_in
from build_tools.publishing.mend import mend_folder
from build_tools.publishing.pointer import read_pointer
from build_tools.publishing.publish import publish
from build_tools.publishing.trouble import CannotPublishError
from build_tools.publishing.verify import verify
from tests.publishing.damages import NUMBERS, Before, Which, damages, lost_readers, made_before
from tests.publishing.folders import DAY, TITLE, Walk, make_site, write


@pytest.fixture
def which(before: Before, thorough: bool) -> Which:
    """Each kind of files in each way, with more editions each in one; in the long run all."""
    if thorough:
        return "every"
    return "of each kind" if before.newest <= 3 else "one of each kind"


@pytest.fixture(scope="module", params=NUMBERS)
def before(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Before:
    return made_before(tmp_path_factory.mktemp("damage"), request.param)


def test_verify_sees_it_and_publish_mends_it(before: Before, tmp_path: Path, which: Which) -> None:
    for damage in damages(before, tmp_path, which):
        what, folder = str(damage), damage.folder
        assert verify(folder) != [], what
        done = publish(before.site, folder, DAY, TITLE, keep=9)
        assert verify(folder) == [], what
        assert damage.whole <= set(editions_in(folder)), what
        assert done.mended, what
        walk = Walk()
        walk.once(folder)
        assert (walk.broken, walk.versions) == ([], {2 * (before.newest - 1)}), what
        # The very pages are published again only where their edition could not be vouched for.
        assert not done.new or done.edition not in damage.whole, what
        assert lost_readers(before.folder, folder) == [], what


def test_mend_alone_mends_it_or_says_that_new_pages_are_needed(
    before: Before, tmp_path: Path, which: Which
) -> None:
    had = read_pointer(before.folder)
    assert had is not None
    for damage in damages(before, tmp_path, which):
        what, folder, whole = str(damage), damage.folder, damage.whole
        mended = mend_folder(folder)
        assert whole <= set(editions_in(folder)), what
        if mended.left:
            assert not whole, what
            assert all(line.endswith("publish again") for line in mended.left), what
            continue
        assert mended.done, what
        assert verify(folder) == [], what
        pointer = read_pointer(folder)
        assert pointer is not None
        # Another edition only where the one they had could not be made whole.
        assert pointer.current == had.current or had.current in gone_in(folder), what
        walk = Walk()
        walk.once(folder)
        assert walk.broken == [], what
        for name in gone_in(folder):
            assert "entry page" in (folder / "editions" / name / "index.html").read_text(), what
        assert lost_readers(before.folder, folder) == [], what


def test_a_lost_pointer_and_its_lost_copy_cost_no_edition_and_no_number(
    before: Before, tmp_path: Path
) -> None:
    folder = tmp_path / "share"
    shutil.copytree(before.folder, folder)
    (folder / "current.js").unlink()
    (folder / "editions" / "current.json").unlink()
    done = publish(make_site(tmp_path / "next", 40, units=1), folder, DAY, TITLE, keep=9)
    assert done.edition == f"{DAY}-{before.newest + 1}"
    assert len(editions_in(folder)) == len(editions_in(before.folder)) + 1
    assert verify(folder) == []


def test_a_number_is_not_used_twice_when_the_newest_edition_was_deleted(
    before: Before, tmp_path: Path
) -> None:
    folder = tmp_path / "share"
    shutil.copytree(before.folder, folder)
    shutil.rmtree(folder / "editions" / f"{DAY}-{before.newest}")
    done = publish(make_site(tmp_path / "next", 40, units=1), folder, DAY, TITLE, keep=9)
    assert done.edition == f"{DAY}-{before.newest + 1}"
    assert verify(folder) == []


def test_a_damaged_file_is_taken_from_an_equal_one(tmp_path: Path) -> None:
    folder = tmp_path / "share"
    for version in (0, 2):
        site = make_site(tmp_path / f"s{version}", version, units=1)
        write(site / "assets" / "typeface.css", "the same in both")
        publish(site, folder, DAY, TITLE)
    (folder / "editions" / f"{DAY}-1" / "assets" / "typeface.css").write_text("spoilt")
    mended = mend_folder(folder)
    assert mended.done == (f"editions/{DAY}-1/assets/typeface.css was taken from an equal file",)
    assert verify(folder) == []


def test_going_back_where_the_pointer_is_lost_says_what_to_run(tmp_path: Path) -> None:
    from build_tools.publishing.roll_back import roll_back

    folder = tmp_path / "share"
    publish(make_site(tmp_path / "s", 2), folder, DAY, TITLE)
    (folder / "current.js").write_text("?")
    (folder / "editions" / "current.json").write_text("?")
    with pytest.raises(CannotPublishError, match="Run `mend"):
        roll_back(folder)


def test_nothing_to_mend_where_nothing_was_published(tmp_path: Path) -> None:
    with pytest.raises(CannotPublishError, match="nothing has been published"):
        mend_folder(tmp_path)
