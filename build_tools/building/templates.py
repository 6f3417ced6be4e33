"""A page's context and its template to HTML."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from functools import cache
from pickle import UnpicklingError

from jinja2 import Environment, FileSystemBytecodeCache, FileSystemLoader, StrictUndefined
from jinja2.bccache import Bucket
from jinja2.ext import InternationalizationExtension

from build_tools.disk.places import OVERRIDES, PROJECT
from build_tools.page_words.in_templates import in_template, in_template_meaning, many_in_template
from build_tools.page_words.speaking import speaking
from build_tools.pages.page import Page

COMPILED = PROJECT / ".kept" / "templates"
"""Where compiled templates are kept; compiling all of them takes half a second."""


def html_of(page: Page) -> str:
    """The page as HTML, in its language; its template sees the context as `view`."""
    with speaking(page.language):
        return templates().get_template(page.template).render(view=page.context)


@cache
def templates() -> Environment:
    """One for all pages, so that each template is read once in a process and seldom compiled.

    It escapes, and a mistyped name in a template does not pass.
    """
    return speaking_templates(
        Environment(
            loader=FileSystemLoader(OVERRIDES),
            autoescape=True,
            undefined=StrictUndefined,
            auto_reload=False,
            bytecode_cache=KeptTemplates(),
            extensions=[InternationalizationExtension],
        )
    )


def speaking_templates(environment: Environment) -> Environment:
    """The same, with Jinja's own `_()` and `{% trans %}` asking the table of the page's language.

    Line breaks inside `{% trans %}` are spaces.
    """
    environment.policies["ext.i18n.trimmed"] = True
    # the extension puts this method on the environment, where no type checker sees it
    install: Callable[..., None] = vars(environment)["install_gettext_callables"]
    install(in_template, many_in_template, newstyle=True, pgettext=in_template_meaning)
    return environment


class KeptTemplates(FileSystemBytecodeCache):
    """Compiled templates in a folder of the project, known by the text they were compiled from.

    A folder that cannot be written to, or is damaged, only costs time.
    """

    def __init__(self) -> None:
        super().__init__(str(COMPILED), "%s.compiled")

    def load_bytecode(self, bucket: Bucket) -> None:
        """Read what is kept; what was cut short counts as not there."""
        try:
            super().load_bytecode(bucket)
        # what was cut short or changed may fail in any of these ways
        except (OSError, UnpicklingError, ValueError, TypeError, AttributeError, EOFError,
                ImportError, IndexError, KeyError):  # fmt: skip
            bucket.reset()

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep it, in one step, so that nobody reads half of it."""
        with suppress(OSError):
            COMPILED.mkdir(parents=True, exist_ok=True)
            super().dump_bytecode(bucket)
