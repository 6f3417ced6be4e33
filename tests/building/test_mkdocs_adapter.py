"""Pages through MkDocs: escaped, no name mistyped, and nothing in the folder but the pages."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from jinja2 import UndefinedError

from build_tools.building.mkdocs_adapter import render
from build_tools.pages.about.about import about_page
from build_tools.pages.page import Page
from tests.support.sound_bank import real_bank


def test_what_authors_write_is_escaped_in_every_batch(tmp_path: Path) -> None:
    bank = replace(real_bank(), about="Dance & <b>more</b>")
    for batch in ("one", "two"):
        render([about_page(bank, (), ())], tmp_path / batch)
        page = (tmp_path / batch / "about.html").read_text(encoding="utf-8")
        assert "Dance &amp; &lt;b&gt;more&lt;/b&gt;" in page


def test_a_name_that_a_context_has_not_stops_it(tmp_path: Path) -> None:
    about = about_page(real_bank(), (), ())
    page = Page(about.path, "unit/unit.html", about.title, about.context)
    with pytest.raises(UndefinedError):
        render([page], tmp_path / "site")


def test_nothing_of_the_theme_and_nothing_of_our_folder_is_published(tmp_path: Path) -> None:
    render([about_page(real_bank(), (), ())], tmp_path / "site")
    written = [path.relative_to(tmp_path / "site") for path in (tmp_path / "site").rglob("*")]
    assert written == [Path("about.html")]
