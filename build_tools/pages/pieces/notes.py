"""Notes in Markdown to HTML: no raw HTML, headings set under the page's own."""

from __future__ import annotations

import re
from xml.etree.ElementTree import Element

from markdown import Markdown
from markdown.treeprocessors import Treeprocessor
from markupsafe import Markup

_HEADING = re.compile(r"h([1-6])\Z")
_DEEPEST = 6


def notes_html(text: str, top: int) -> Markup:
    """The notes as HTML, their highest heading at level `top`; empty for no notes."""
    if not text.strip():
        return Markup("")
    reader = Markdown(output_format="html", extensions=["sane_lists", "tables"])
    reader.preprocessors.deregister("html_block")
    reader.inlinePatterns.deregister("html")
    reader.treeprocessors.register(_Headings(reader, top), "bank-headings", 5)
    return Markup(reader.convert(text))


class _Headings(Treeprocessor):
    """Shifts headings so that the highest is at `top`, with none skipped, and names them."""

    def __init__(self, reader: Markdown, top: int) -> None:
        super().__init__(reader)
        self._top = top

    def run(self, root: Element) -> None:
        """Change the headings in place."""
        open_levels: list[int] = []
        names: dict[str, int] = {}
        for element in root.iter():
            # a table's columns would be aligned by a style, which the pages' policy shuts out
            element.attrib.pop("style", None)
            found = _HEADING.match(element.tag)
            if not found:
                continue
            level = int(found.group(1))
            while open_levels and open_levels[-1] >= level:
                open_levels.pop()
            open_levels.append(level)
            element.tag = f"h{min(self._top + len(open_levels) - 1, _DEEPEST)}"
            element.set("id", _name("".join(element.itertext()), names))


def _name(words: str, names: dict[str, int]) -> str:
    name = re.sub(r"[^a-z0-9]+", "-", words.lower()).strip("-") or "part"
    names[name] = names.get(name, 0) + 1
    return name if names[name] == 1 else f"{name}-{names[name]}"
