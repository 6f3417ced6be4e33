"""A diagram as a page shows it, with the same in words."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from build_tools.views.diagrams.diagram import Figure


@dataclass(frozen=True, slots=True)
class Picture:
    """A diagram on a page, with the same in words."""

    title: str
    """What the diagram shows."""
    svg: Markup
    """The diagram."""
    words: tuple[str, ...]
    """Its text version, line by line."""


def picture(figure: Figure) -> Picture:
    """A figure as a page shows it. Its SVG was made here and escaped where it was made."""
    return Picture(figure.title, Markup(figure.svg), figure.words)
