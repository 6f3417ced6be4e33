"""Pages through their templates: escaped, and no name mistyped."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from jinja2 import UndefinedError

from build_tools.building import templates
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


@pytest.mark.parametrize("damage", ["none", "cut", "empty", "other", "a folder", "no place"])
def test_what_is_kept_of_a_template_is_never_needed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, damage: str
) -> None:
    kept = tmp_path / "kept"
    monkeypatch.setattr(templates, "COMPILED", kept)
    about = about_page(real_bank(), (), ())
    try:
        templates.templates.cache_clear()
        first = html_of(about)
        files = list(kept.iterdir())
        assert len(files) > 1
        if damage == "no place":
            monkeypatch.setattr(templates, "COMPILED", files[0] / "below a file")
        for file in files:
            whole = file.read_bytes()
            match damage:
                case "cut":
                    file.write_bytes(whole[: len(whole) // 2])
                case "empty":
                    file.write_bytes(b"")
                case "other":
                    file.write_bytes(whole[:30] + b"\x80\x05cos\nsystem\n." + whole[50:])
                case "a folder":
                    file.unlink()
                    file.mkdir()
                case _:
                    pass
        templates.templates.cache_clear()
        assert html_of(about) == first
    finally:
        templates.templates.cache_clear()
