"""A page with all that it needs inside it, so that one file opens with nothing beside it."""

from __future__ import annotations

import base64
import hashlib
import mimetypes
import posixpath
import re
from collections.abc import Callable, Collection, Iterable
from urllib.parse import unquote

from build_tools.building.finishing.rewriting import Start, rewritten, with_value

BESIDE = "data-beside"
"""Marks what is of no use away from the other pages, such as the way to them."""
WHOLE = "data-whole"
"""Tells the styles to lay out the whole page at once, which a script would say otherwise."""
_URL = re.compile(r"""url\(\s*["']?([^"')]+)["']?\s*\)""")
_FACES = {".woff2": "font/woff2"}

Read = Callable[[str], bytes]


def one_file(html: str, read: Read, beside: Collection[str] = ()) -> str:
    """The page `html` as one file; `read` gives a file by its address as the page writes it.

    Styles, typefaces and pictures come inside, held by the page's policy. Scripts go, and with
    them what only a script would show. A link to another file leaves its words, unless it is among
    those `beside` this one.
    """
    style = _styles(html, read)
    policy = policy_for(style)

    def change(tag: Start) -> str | None:
        has = tag.attributes
        if tag.name == "script" or has.keys() & {BESIDE, "hidden"}:
            return None
        if tag.name == "html":
            return f"{tag.text[:-1]} {WHOLE}>"
        if tag.name == "meta" and has.get("http-equiv") == "Content-Security-Policy":
            return f"{with_value(tag.text, 'content', policy)}\n<style>{style}</style>"
        if tag.name == "link" and not has.get("href", "").startswith("data:"):
            return None
        if tag.name == "a" and has.get("href", "#").partition("#")[0] not in ("", *beside):
            return ""
        if tag.name == "img" and not has["src"].startswith("data:"):
            return with_value(tag.text, "src", as_data(has["src"], read))
        return tag.text

    return re.sub(r"\n\n+", "\n", rewritten(html, change))


def policy_for(style: str) -> str:
    """The policy of a page that holds `style` and its typefaces and pictures, and no script."""
    digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
    return (
        f"default-src 'none'; style-src 'sha256-{digest}'; img-src data:; font-src data:; "
        "base-uri 'none'; form-action 'none'"
    )


def _styles(html: str, read: Read) -> str:
    found: list[str] = []

    def note(tag: Start) -> str:
        if tag.name == "link" and tag.attributes.get("rel") == "stylesheet":
            found.append(tag.attributes["href"])
        return tag.text

    rewritten(html, note)
    return style_of(found, read)


def style_of(addresses: Iterable[str], read: Read) -> str:
    """The styles at `addresses` as one, their typefaces and pictures inside."""
    found = [_style(address, read) for address in addresses]
    style = re.sub(r"\n\n+", "\n", "\n".join(found))
    if "</" in style:
        raise ValueError("a style sheet that holds </ cannot stand inside a page")
    return style


def _style(address: str, read: Read) -> str:
    folder = posixpath.dirname(address)

    def inside(found: re.Match[str]) -> str:
        named = found.group(1)
        if named.startswith(("data:", "#")):
            return found.group(0)
        return f'url("{as_data(posixpath.join(folder, named), read)}")'

    return _URL.sub(inside, read(address).decode("utf-8")).replace("\r\n", "\n").strip()


def as_data(address: str, read: Read) -> str:
    """What lies at an address, as an address that holds it (RFC 2397)."""
    path = posixpath.normpath(unquote(address))
    kind = _FACES.get(posixpath.splitext(path)[1]) or mimetypes.guess_type(path)[0]
    if kind is None:
        raise ValueError(f"nobody knows what kind of file {address} is")
    return f"data:{kind};base64,{base64.b64encode(read(path)).decode()}"
