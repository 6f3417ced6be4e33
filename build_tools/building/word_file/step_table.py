"""One step of a lesson's page as a table: a first row that heads it, then a row for each thing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from build_tools.building.word_file.page_runs import label_and_rest, paragraph, runs
from build_tools.building.word_file.page_tree import Node
from build_tools.model.lesson import Step
from build_tools.page_words.words import N_, _
from build_tools.views.words.plain_words import counts_in_words
from build_tools.word_files.blocks import Cell, Heading, Paragraph, Run, Table, words

_NOTES = N_("Notes for you")
"""What the page calls the author's notes; those of a step stand in it without a heading."""
_MOVES = N_("Moves")

Row = tuple[str, Cell]


def step_heading(step: Node) -> Heading:
    """What pupils do, with the step's number."""
    does = step.find("h3")
    return Heading(3, does.text if does else "")


def step_table(step: Node, steps: Sequence[Step]) -> Table:
    """The table of a step; the first row says which step it is, when, and how.

    How many counts it has stands below its beat, so that the way back finds it: the page tells
    the beat phrase by phrase.
    """
    number = step.attributes["data-step"]
    written = steps[int(number) - 1]
    time, how = step.find("span", "time"), step.find("p", "how")
    head = f"{time.text} · {how.text}" if time and how else ""
    first: tuple[Cell, Cell] = ((words(_("Step {number}", number=number)),), (words(head),))
    rows = (
        ((words(label),), _with_counts(label, cell, written)) for label, cell in _rows(step) if cell
    )
    does = _without_number(step_heading(step).text)
    return Table((first, *rows), _("Step {number}: {does}", number=number, does=does))


def _with_counts(label: str, cell: Cell, step: Step) -> Cell:
    if label != _("Beat") or step.counts is None:
        return cell
    return (*cell, words(counts_in_words(step.counts)))


def _without_number(does: str) -> str:
    return does.partition(". ")[2] or does


def _rows(step: Node) -> Iterator[Row]:
    for part in ("does", "shown"):
        held = step.find("div", part)
        for one in held.elements if held else ():
            yield from _row(one)


def _row(node: Node) -> Iterator[Row]:
    if node.name == "h3" or "how" in node.classes:
        return
    if "range" in node.classes:
        for line in node.all("p"):
            yield from _row(line)
    elif node.name == "details":
        summary = node.find("summary")
        yield (summary.text if summary else "", tuple(_told(node)))
    elif node.name == "dl":
        for row in node.all("div"):
            name, *lines = row.elements
            yield name.text, tuple(Paragraph(runs(line.inside)) for line in lines)
    elif "step-strip" in node.classes or "step-plan" in node.classes or node.name == "figure":
        yield from _drawn(node)
    elif "see" in node.classes:
        label, _colon, where = node.text.partition(": ")
        yield label, (words(where),)
    elif node.name == "p":
        label, rest = label_and_rest(node)
        yield label or _(_MOVES), (Paragraph(runs(rest)),)
    elif "helps" in node.classes:
        yield _(_NOTES), tuple(_told(node))


def _drawn(figure: Node) -> Iterator[Row]:
    """A drawing by its words; where the page has told those above, nothing is left to tell."""
    caption = figure.find("figcaption")
    lines = tuple(words(line.text) for line in figure.all("li"))
    if caption and lines:
        yield caption.text, lines


def _told(node: Node) -> Iterator[Paragraph]:
    """Every paragraph and line inside, a labelled row of a list as one of them."""
    for one in node.elements:
        if one.name == "summary":
            continue
        if one.name == "p" or one.name in ("h3", "h4", "h5", "h6"):
            yield paragraph(one)
        elif one.name == "li":
            yield paragraph(one, "bullet")
        elif one.name == "div" and (label := one.find("dt")):
            lines = [Paragraph(runs(line.inside)) for line in one.all("dd")]
            if len(lines) == 1:
                yield Paragraph((Run(f"{label.text}: ", strong=True), *lines[0].runs))
            else:
                yield Paragraph((Run(label.text, strong=True),))
                yield from lines
        else:
            yield from _told(one)
