"""Pages through their templates: escaped, and no name mistyped."""

from __future__ import annotations

from dataclasses import replace

import pytest
from jinja2 import UndefinedError

from build_tools.building.templates import html_of
from build_tools.pages.about.about import about_page
from build_tools.pages.page import Page
from tests.support.sound_bank import real_bank


def test_what_authors_write_is_escaped() -> None:
    bank = replace(real_bank(), about="Dance & <b>more</b>")
    assert "Dance &amp; &lt;b&gt;more&lt;/b&gt;" in html_of(about_page(bank, (), ()))


def test_a_name_that_a_context_has_not_stops_it() -> None:
    about = about_page(real_bank(), (), ())
    with pytest.raises(UndefinedError):
        html_of(Page(about.path, "unit/unit.html", about.title, about.context))
