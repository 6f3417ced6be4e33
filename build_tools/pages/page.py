"""One page to be rendered, whatever renders it."""

from __future__ import annotations

from dataclasses import dataclass, field

from build_tools.page_words.speaking import spoken


@dataclass(frozen=True, slots=True)
class Page:
    """One page of the site.

    `path` is where it lies in the site, with `/` and ending in .html, such as
    units/rock-pool/lesson-1.html; `template` is the template below `site_overrides/`; `title` is
    what the browser's tab shows; `context` is the dataclass that the template sees as `view`;
    `language` is that of its page words, in which it was made and is drawn.
    """

    path: str
    template: str
    title: str
    context: object
    language: str = field(default_factory=spoken)

    @property
    def to_root(self) -> str:
        """The way from this page back to the site's top folder: "" or ../../ and so on."""
        return "../" * self.path.count("/")
