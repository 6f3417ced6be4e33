"""A page's HTML in fewer letters that any parser reads as the same page.

HTML, 13.1.2.3 and 13.1.2.4: a value without spaces, quotes, equals signs, angle brackets and grave
accents needs no quotes; one with double quotes in it may stand in single ones. An end tag may be
left out before what ends its element anyway; here only where nothing, not even a line break, stands
between, so that no text moves from one element to another. Lines left blank go.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from build_tools.building.finishing.rewriting import TAG

_TOKEN = re.compile(rf"{TAG}|[^<]+|<", re.DOTALL)
_ATTRIBUTE = re.compile(
    r"""([^\s"'=/<>]+)(?:\s*=\s*("[^"]*"|'[^']*'|[^\s"'=<>`]+))?""",
)
_PLAIN = re.compile(r"[^\s\"'=<>`]*[^\s\"'=<>`/]")
_BLANK = re.compile(r"\n\s*\n")
_ENDED_BY: Mapping[str, frozenset[str]] = {
    "dt": frozenset(("dt", "dd")),
    "dd": frozenset(("dt", "dd", "/dl", "/div")),
    "td": frozenset(("td", "th", "/tr")),
    "th": frozenset(("td", "th", "/tr")),
    "tr": frozenset(("tr", "/tbody", "/thead", "/table")),
}
"""What begins or ends (with a stroke) right after an element, so that its end tag says nothing."""
_AS_THEY_ARE = ("style", "script", "pre", "textarea")


def short_html(html: str) -> str:
    """The page `html`, read as the same by any parser, in fewer letters."""
    tokens = list(_TOKEN.finditer(html))
    kept: list[str] = []
    whole = ""
    for n, token in enumerate(tokens):
        name = (token["name"] or "").lower()
        if whole:
            kept.append(token[0])
            whole = "" if token["end"] and name == whole else whole
        elif not name:
            kept.append(_text(token[0]))
        elif token["end"]:
            follows = tokens[n + 1] if n + 1 < len(tokens) else None
            if not _said_anyway(name, follows):
                kept.append(token[0])
        else:
            kept.append(_start(token["name"], token["rest"]))
            whole = name if name in _AS_THEY_ARE else ""
    return "".join(kept)


def _said_anyway(name: str, follows: re.Match[str] | None) -> bool:
    if name not in _ENDED_BY or follows is None or follows["name"] is None:
        return False
    return f"{follows['end']}{follows['name'].lower()}" in _ENDED_BY[name]


def _text(text: str) -> str:
    return _BLANK.sub("\n", _quotes(text))


def _quotes(text: str) -> str:
    """Quotation marks as they are, not as the names that values in quotes need."""
    if "&#" not in text:
        return text
    return text.replace("&#39;", "'").replace("&#x27;", "'").replace("&#34;", '"')


def _start(name: str, rest: str) -> str:
    alone = rest.endswith("/")
    written = [_written(*found) for found in _ATTRIBUTE.findall(rest.removesuffix("/"))]
    if alone and written and written[-1][-1] not in "\"'":
        # a stroke right after a value without quotes would be part of it
        quoted = next((one for one in written if one[-1] in "\"'"), None)
        if quoted is None:
            return f"<{' '.join((name, *written))} />"
        written.remove(quoted)
        written.append(quoted)
    return f"<{' '.join((name, *written))}{'/' if alone else ''}>"


def _written(name: str, value: str) -> str:
    if not value:
        return name
    inside = _quotes(value[1:-1] if value[0] in "\"'" else value)
    if _PLAIN.fullmatch(inside):
        return f"{name}={inside}"
    if '"' not in inside:
        return f'{name}="{inside}"'
    if "'" not in inside:
        return f"{name}='{inside}'"
    double, single = inside.replace('"', "&#34;"), inside.replace("'", "&#39;")
    return f'{name}="{double}"' if len(double) <= len(single) else f"{name}='{single}'"
