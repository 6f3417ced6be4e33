"""The one module that knows MkDocs: pages in, HTML files out, and not a word of dance.

MkDocs and its theme are in maintenance, so everything else stands apart from them: what is
needed of them is a template environment over `site_overrides/` and a page written for each
context. Pages are generated files; the docs folder is empty, so nothing is published by accident.
"""

from __future__ import annotations

import logging
import os
import shutil
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from mkdocs.commands.build import build
from mkdocs.config import load_config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files, InclusionLevel
from mkdocs.structure.pages import Page as MkDocsPage
from mkdocs.utils.templates import TemplateContext

from build_tools.disk.places import OVERRIDES, PROJECT
from build_tools.disk.scratch import scratch
from build_tools.pages.page import Page


def render(pages: Iterable[Page], out: Path) -> None:
    """Write every page of one batch below the folder `out`, which need not exist."""
    with scratch("pages") as room:
        docs, site = room / "docs", room / "site"
        docs.mkdir()
        config = _config(docs, site)
        config.plugins["pages"] = _GeneratedPages(tuple(pages))
        build(config)
        shutil.copytree(site, out, dirs_exist_ok=True)


def _config(docs: Path, site: Path) -> MkDocsConfig:
    # The theme announces its end of life on every build; that is not for the people who use this.
    os.environ.setdefault("NO_MKDOCS_2_WARNING", "true")
    logging.getLogger("mkdocs").setLevel(logging.ERROR)
    config = load_config(
        str(PROJECT / "mkdocs.yml"), docs_dir=str(docs), site_dir=str(site), strict=False
    )
    config.nav = []
    # no "not found" page and no map of the site: both would hold absolute addresses
    config.theme.static_templates.clear()
    # nor are the theme's thousands of icons listed anew for each batch
    config.theme.dirs = [str(OVERRIDES)]
    return config


@cache
def _environment() -> Environment:
    """One for all batches, so that each template is compiled once.

    Other than MkDocs' own it escapes, and a mistyped name in a template does not pass.
    """
    return Environment(
        loader=FileSystemLoader(OVERRIDES), autoescape=True, undefined=StrictUndefined
    )


class _GeneratedPages(BasePlugin):  # type: ignore[no-untyped-call, type-arg, unused-ignore]
    """Hands MkDocs its pages and templates, and takes the theme's own files out."""

    def __init__(self, pages: tuple[Page, ...]) -> None:
        super().__init__()
        self._pages = {page.path.removesuffix(".html") + ".md": page for page in pages}

    def on_env(self, _env: Environment, **_: Any) -> Environment:
        """Our templates, in place of MkDocs' and the theme's."""
        return _environment()

    def on_files(self, _files: Files, *, config: MkDocsConfig) -> Files:
        """Only our pages: no file of the theme and nothing from a docs folder."""
        return Files(
            [
                File.generated(config, source, content="", inclusion=InclusionLevel.NOT_IN_NAV)
                for source in self._pages
            ]
        )

    def on_page_markdown(self, markdown: str, *, page: MkDocsPage, **_: Any) -> str:
        """Each page names its own template."""
        ours = self._pages[page.file.src_uri]
        page.meta["template"] = ours.template
        page.title = ours.title
        return markdown

    def on_page_context(
        self, context: TemplateContext, *, page: MkDocsPage, **_: Any
    ) -> TemplateContext:
        """The template sees the page's context as `view`."""
        context["view"] = self._pages[page.file.src_uri].context  # type: ignore[typeddict-unknown-key]
        return context
