"""What every page shares: the bank's name, the way to the top folder, the links at the foot."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.page_words.for_scripts import words_script
from build_tools.page_words.speaking import spoken
from build_tools.page_words.words import N_, _


@dataclass(frozen=True, slots=True)
class Link:
    """A link to another page of the site."""

    words: str
    """What the link says."""
    href: str
    """Where it goes, relative to the page it stands on."""


@dataclass(frozen=True, slots=True)
class Frame:
    """What stands around the content of a page."""

    bank_name: str
    """The bank's name, at the head of every page."""
    title: str
    """What the browser's tab shows."""
    description: str
    """One sentence about the page, for search and for sharing."""
    to_root: str
    """The way from the page to the site's top folder: empty, or ../../ and so on."""
    language: str
    """The language of the words around the content, as a language tag."""
    home: str
    """Where the front page is."""
    finder: str
    """Where the finder is on the front page."""
    foot: tuple[Link, ...]
    """The links at the foot of every page."""
    script: str | None
    """The page's script, relative to the page; the page is whole without it."""
    words: str | None
    """Where the words of its scripts are, beside the page; None in English, which they hold."""


_FOOT = (
    (N_("Never taught dance? Start here"), "start.html"),
    (N_("Keeping everyone safe"), "safety.html"),
    (N_("Words of dance"), "words.html"),
    (N_("About the bank"), "about.html"),
    (N_("For advisers"), "advisers.html"),
)


def frame(bank: Bank, path: str, title: str, description: str, script: str | None = None) -> Frame:
    """The frame of the page at `path`; `script` is a name of `PAGE_SCRIPTS`."""
    to_root = "../" * path.count("/")
    return Frame(
        bank_name=bank.name,
        title=tab_title(bank, title),
        description=description,
        to_root=to_root,
        language=spoken(),
        home=f"{to_root}index.html",
        finder=f"{to_root}index.html#find",
        foot=tuple(Link(_(words), to_root + href) for words, href in _FOOT),
        script=f"{to_root}assets/js/{script}" if script else None,
        words=words_script() if script else None,
    )


def tab_title(bank: Bank, title: str) -> str:
    """What the browser's tab shows for a page with `title`."""
    return title if title == bank.name else f"{title} – {bank.name}"
