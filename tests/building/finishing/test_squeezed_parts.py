"""A booklet's lessons, held small and laid out again."""

from __future__ import annotations

import pytest

from build_tools.building.finishing.squeezed_parts import packed, unpacked

LESSONS = ("<article><h2>Ä first</h2><div>one</div></article>" * 20, "<p>the second</p>" * 30)
PLACES = "".join(
    f'<div class="bound lesson" id="lesson-{n}" data-bound="lesson-{n}.html">{text}</div>\n'
    for n, text in enumerate(LESSONS, 1)
)
BOOKLET = f"<html><body><main><h1>Booklet</h1>\n{PLACES}</main><footer></footer></body></html>"


def test_it_is_small_and_leads_to_each_lesson() -> None:
    small = packed(BOOKLET)
    assert len(small) < len(BOOKLET) / 2
    for n in (1, 2):
        assert small.count(f'<a href="lesson-{n}.html">This part on its own page</a>') == 1
    assert "Ä first" not in small
    assert "<h1>Booklet</h1>" in small
    assert small.endswith("</main><footer></footer></body></html>")


def test_laid_out_again_it_is_as_it_was() -> None:
    assert unpacked(packed(BOOKLET)) == BOOKLET


@pytest.mark.parametrize("page", ["", "<main><p>No place for a lesson</p></main>"])
def test_a_page_without_places_stays_as_it_is(page: str) -> None:
    assert packed(page) == unpacked(page) == page
