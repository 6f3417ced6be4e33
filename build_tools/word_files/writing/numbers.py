"""Numbered lists of a word-processor file: each begins with one (ECMA-376, part 1, 17.9)."""

from __future__ import annotations

from docx.document import Document as WordDocument
from docx.text.paragraph import Paragraph as WordParagraph


def numbered(document: WordDocument, at: WordParagraph, *, anew: bool) -> None:
    """Number a line of a list: `anew` from one, else on from the line before.

    Lines of one style would else go on with the numbers of every list before them.
    """
    numbering = document.part.numbering_part.element
    if anew:
        assert at.style is not None
        (of_style,) = at.style.element.xpath("./w:pPr/w:numPr/w:numId/@w:val")
        look = numbering.num_having_numId(int(of_style)).abstractNumId.val
        made = numbering.add_num(look)
        made.add_lvlOverride(ilvl=0).add_startOverride(1)
        number = int(made.numId)
    else:
        # a list inside this one may stand between
        style = at._p.xpath("string(./w:pPr/w:pStyle/@w:val)")
        number = int(
            at._p.xpath(
                f"string(./preceding-sibling::w:p[w:pPr/w:pStyle/@w:val='{style}']"
                "[1]/w:pPr/w:numPr/w:numId/@w:val)"
            )
        )
    properties = at._p.get_or_add_pPr().get_or_add_numPr()
    properties.get_or_add_ilvl().val = 0
    properties.get_or_add_numId().val = number
