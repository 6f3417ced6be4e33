"""Many lessons on paper at once: each from its own page, each beginning on a side of its own.

Printing one document of twenty lessons takes a fraction of the time that twenty take. The styles
and the words are those of the pages; what no paper shows is left out beforehand.
"""

from __future__ import annotations

import io
import re
from collections import defaultdict
from collections.abc import Sequence
from pathlib import Path

import pdfplumber
from playwright.sync_api import Page as Tab

from build_tools.building.assets import copy_assets
from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.pages.lesson.lesson import LessonView, lesson_page
from tests.support.drawn import ENVIRONMENT

AT_ONCE = 20
_NOT_ON_PAPER = re.compile(
    r'<details class="covers">.*?</details>'
    r'|<div class="step-(?:strip|plan)"[^>]*>.*?</figure></div>'
    r'|<details class="fit".*?</details>|<nav .*?</nav>|<section class="notes".*?</section>'
    r'|<details class="in-words">.*?</details>',
    re.DOTALL,
)
_DOCUMENT = """<!doctype html>
<html lang="en-GB" data-foot="" data-paper="{paper}">
<head><meta charset="utf-8"><link rel="stylesheet" href="assets/css/look.css">
<style>.one {{ break-before: page; }}</style></head>
<body class="page lesson">
{lessons}
<link rel="stylesheet" href="assets/css/lesson.css">
<link rel="stylesheet" href="assets/css/typeface.css">
</body></html>
"""


class LessonPrinter:
    """Prints lessons in the tab of a browser; `folder` is its own to write in."""

    def __init__(self, tab: Tab, folder: Path) -> None:
        self.tab, self.folder = tab, folder
        copy_assets(folder)

    def sides(self, bank: Bank, lessons: Sequence[tuple[Unit, Lesson]]) -> list[int]:
        """On how many sides of A4 each lesson is printed."""
        by_size: defaultdict[str, list[tuple[int, str]]] = defaultdict(list)
        for place, (unit, lesson) in enumerate(lessons):
            view = lesson_page(bank, unit, lesson).context
            assert isinstance(view, LessonView)
            by_size[view.paper_size].append((place, on_paper_only(whole_page(view))))
        found = [0] * len(lessons)
        for size, waiting in by_size.items():
            for start in range(0, len(waiting), AT_ONCE):
                part = waiting[start : start + AT_ONCE]
                counted = self._printed(size, [html for _, html in part])
                for (place, _), count in zip(part, counted, strict=True):
                    found[place] = count
        return found

    def _printed(self, size: str, lessons: Sequence[str]) -> list[int]:
        each = "\n".join(f'<div class="page lesson one">{html}</div>' for html in lessons)
        file = self.folder / "lessons.html"
        file.write_text(_DOCUMENT.format(paper=size, lessons=each), encoding="utf-8")
        self.tab.goto(file.as_uri())
        pdf = self.tab.pdf(
            format="A4", prefer_css_page_size=True, print_background=True, outline=True, tagged=True
        )
        starts, sides = starts_of_titles(pdf)
        assert len(starts) == len(lessons)
        return [end - start for start, end in zip(starts, [*starts[1:], sides], strict=True)]


def whole_page(view: LessonView) -> str:
    """A lesson's page, as its template writes it."""
    return ENVIRONMENT.get_template("lesson/lesson.html").render(view=view)


def on_paper_only(html: str) -> str:
    """What stands in the middle of a lesson's page, without what no paper shows."""
    start, end = html.index("<main"), html.index("</main>")
    return _NOT_ON_PAPER.sub("", html[start:end]) + "</main>"


def starts_of_titles(pdf: bytes) -> tuple[list[int], int]:
    """The sides, from 0, on which headings of the first level stand, and how many sides it has."""
    with pdfplumber.open(io.BytesIO(pdf)) as document:
        places = {page.page_obj.pageid: place for place, page in enumerate(document.pages)}
        outlines = document.doc.get_outlines()
        titles = [places[where[0].objid] for level, _, where, *_ in outlines if level == 1]
        return titles, len(places)
