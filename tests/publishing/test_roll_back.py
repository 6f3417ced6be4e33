"""Going back to an earlier edition, and forward again."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools.publishing.edition_folders import editions_in
from build_tools.publishing.publish import publish
from build_tools.publishing.roll_back import roll_back
from build_tools.publishing.trouble import CannotPublishError
from build_tools.publishing.verify import verify
from tests.publishing.folders import DAY, TITLE, make_site, walked, write


def test_going_back_and_forward(share: Path, tmp_path: Path) -> None:
    publish(make_site(tmp_path / "s3", 3), share, DAY, TITLE)
    assert roll_back(share) == "2026-11-25-1"
    assert walked(share).versions == {2}
    assert verify(share) == []
    with pytest.raises(CannotPublishError, match="oldest edition"):
        roll_back(share)
    assert roll_back(share, "2026-11-25-2") == "2026-11-25-2"
    assert walked(share).versions == {3}
    with pytest.raises(CannotPublishError, match="there is no edition 2026-01-01-9"):
        roll_back(share, "2026-01-01-9")


def test_no_way_back_to_a_damaged_edition(share: Path, tmp_path: Path) -> None:
    publish(make_site(tmp_path / "s3", 3), share, DAY, TITLE)
    write(share / "editions" / "2026-11-25-1" / "index.html", "spoilt")
    with pytest.raises(CannotPublishError, match=r"not whole: 2026-11-25-1/index.html was changed"):
        roll_back(share)
    assert walked(share).versions == {3}


def test_the_edition_that_readers_had_stays_after_a_way_back(share: Path, tmp_path: Path) -> None:
    for version in (4, 6, 8):
        publish(make_site(tmp_path / f"s{version}", version), share, DAY, TITLE, keep=4, days=0)
    roll_back(share, f"{DAY}-1")
    publish(make_site(tmp_path / "s10", 10), share, DAY, TITLE, keep=2, days=0)
    assert f"{DAY}-1" in editions_in(share)
    assert editions_in(share)[-1] == f"{DAY}-5"
