"""A page's context and its template to HTML."""

from __future__ import annotations

from functools import cache

from jinja2 import Environment, FileSystemLoader, StrictUndefined

from build_tools.disk.places import OVERRIDES
from build_tools.pages.page import Page


def html_of(page: Page) -> str:
    """The page as HTML; its template sees the context as `view`."""
    return templates().get_template(page.template).render(view=page.context)


@cache
def templates() -> Environment:
    """One for all pages, so that each template is compiled once in a process.

    It escapes, and a mistyped name in a template does not pass.
    """
    return Environment(
        loader=FileSystemLoader(OVERRIDES),
        autoescape=True,
        undefined=StrictUndefined,
        auto_reload=False,
    )
