"""What stands in one paragraph of a page, as runs of a word-processor file."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from build_tools.building.word_file.page_tree import Node
from build_tools.word_files.blocks import Paragraph, ParagraphKind, Run, labelled

_STRONG = frozenset({"strong", "b", "dt", "th"})


def paragraph(node: Node, kind: ParagraphKind = "text") -> Paragraph:
    """The paragraph, with the label that it begins with set off by a colon."""
    label, rest = label_and_rest(node)
    return labelled(label, *runs(rest), kind=kind)


def label_and_rest(node: Node) -> tuple[str, list[Node | str]]:
    """The label that a paragraph begins with, empty where it has none, and what follows."""
    inside = [one for one in node.inside if not (isinstance(one, str) and not one.strip())]
    if inside and isinstance(first := inside[0], Node) and _is_label(first):
        after = node.inside[node.inside.index(first) + 1 :]
        return first.text, after
    return "", list(node.inside)


def _is_label(node: Node) -> bool:
    return node.name == "b" or (node.name == "span" and bool(node.classes & {"label", "time"}))


def runs(inside: Sequence[Node | str]) -> tuple[Run, ...]:
    """The words in their looks, no space at either end and one wherever there are several."""
    return tuple(trimmed(_joined(_pieces(inside, strong=False))))


def _pieces(inside: Iterable[Node | str], *, strong: bool) -> Iterator[Run]:
    for one in inside:
        if isinstance(one, str):
            yield Run(one, strong)
            continue
        yield from _pieces(one.inside, strong=strong or one.name in _STRONG)
        address = one.attributes.get("href", "")
        if one.name == "a" and address.startswith(("http", "mailto:")) and address != one.text:
            yield Run(f" ({address})", strong)


def _joined(pieces: Iterable[Run]) -> list[Run]:
    found: list[Run] = []
    for one in pieces:
        if found and found[-1].strong == one.strong:
            found[-1] = Run(found[-1].text + one.text, one.strong)
        elif one.text:
            found.append(one)
    return found


def trimmed(pieces: Sequence[Run]) -> Iterator[Run]:
    """The same without a space at either end, and none that follows another."""
    after_space = True
    kept: list[Run] = []
    for one in pieces:
        text = one.text
        while "  " in text:
            text = text.replace("  ", " ")
        if after_space:
            text = text.lstrip(" ")
        if text:
            after_space = text.endswith(" ")
            kept.append(Run(text, one.strong))
    if kept:
        kept[-1] = Run(kept[-1].text.rstrip(" "), kept[-1].strong)
    return (one for one in kept if one.text)
