"""A finished lesson page as what stands in a word-processor file, in the order of the page."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from build_tools.building.word_file.page_runs import paragraph, runs
from build_tools.building.word_file.page_tree import Node, page_tree
from build_tools.building.word_file.step_table import step_heading, step_table
from build_tools.model.lesson import Step
from build_tools.page_words.words import _
from build_tools.word_files.blocks import (
    Block,
    Cell,
    Heading,
    Paragraph,
    ParagraphKind,
    Table,
    labelled,
    words,
)

_HEADINGS = {"h1": 1, "h2": 2, "h3": 3, "h4": 4, "h5": 5, "h6": 6}


Drawn = Callable[[str], Block]
"""A picture by its file, as it stands in the file to edit."""


def lesson_blocks(html: str, drawn: Drawn, steps: Sequence[Step]) -> tuple[Block, ...]:
    """What the lesson's page tells, its steps as tables.

    Left out is what only works on a page: ways to other pages, what is fitted to the day, drawings,
    whose words stand in their place. `drawn` gives the lesson's own pictures, `steps` what the
    page leaves to the dance: how many counts a step has.
    """
    article = page_tree(html)
    number = article.attributes["data-lesson"]
    return tuple(_blocks(article, number, drawn, steps))


def _blocks(node: Node, lesson: str, drawn: Drawn, steps: Sequence[Step]) -> Iterator[Block]:
    for one in node.elements:
        if one.name == "h1":
            yield Heading(1, _("Lesson {number}: {title}", number=lesson, title=one.text))
        elif one.name in _HEADINGS:
            yield Heading(_HEADINGS[one.name], one.text)
        elif "step" in one.classes:
            yield step_heading(one)
            yield step_table(one, steps)
        elif one.name == "p":
            if one.text:
                yield paragraph(one)
        elif one.name in ("ul", "ol") and one.find("li", "step") is None:
            yield from _list(one, 0)
        elif one.name == "dl":
            yield from _rows(one)
        elif picture := one.find("img") if one.name == "figure" else None:
            yield drawn(picture.attributes["src"])
            yield from (paragraph(caption) for caption in one.all("figcaption"))
        elif one.name == "figure":
            yield from _in_words(one)
        elif one.name == "table":
            yield _table(one)
        elif one.name == "pre":
            yield words(one.text)
        elif one.name != "summary":
            yield from _blocks(one, lesson, drawn, steps)


def _list(node: Node, level: int) -> Iterator[Paragraph]:
    kind: ParagraphKind = "number" if node.name == "ol" and not node.classes else "bullet"
    for item in node.elements:
        inner = [one for one in item.elements if one.name in ("ul", "ol")]
        own = Node("li", item.attributes, [one for one in item.inside if one not in inner])
        line = paragraph(own, kind)
        yield Paragraph(line.runs, kind, level)
        for one in inner:
            yield from _list(one, level + 1)


def _rows(node: Node) -> Iterator[Paragraph]:
    for row in node.all("div"):
        label, *lines = row.elements
        for n, line in enumerate(lines):
            yield labelled("" if n else label.text, *runs(line.inside))


def _in_words(figure: Node) -> Iterator[Block]:
    """A drawing by its words, under what it shows."""
    caption = figure.find("figcaption")
    lines = [words(line.text, "bullet") for line in figure.all("li")]
    if caption and lines:
        yield labelled(caption.text)
        yield from lines


def _table(node: Node) -> Table:
    rows: list[tuple[Cell, ...]] = [
        tuple((Paragraph(runs(cell.inside)),) for cell in row.elements) for row in node.all("tr")
    ]
    return Table(tuple(rows))
