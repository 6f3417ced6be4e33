"""What a page shows several times stands in it once: pictures, and the ways of strokes.

A picture that comes again shows the first one's shapes (`use`, SVG 2), which every browser does
within a page; from one page to another it is forbidden where pages are opened from a folder. What
is shown again is styled as if it stood in nothing but its class `shapes` (the use-element shadow
tree), so the rules for what stands in a drawing name that class too. A stroke that a picture draws
again in another look, such as a rim and the paper inside it, shows the first one's way.
"""

from __future__ import annotations

import re
from collections import Counter

_SVG = re.compile(r"<svg\b|</svg>")
_HEAD = re.compile(r"<svg\b[^>]*>(?:<title>[^<]*</title>)?")
_END = "</svg>"
_WORTH = 60
"""So many letters of shapes are worth a name and a way to it."""
_STROKE = re.compile(r'<path(?P<looks>(?: class="[^"]*")?) d="(?P<d>[^"]{60,})"(?P<more>[^>]*?)/>')
_LOOKS = re.compile(r'(?: (?:class|stroke|fill|opacity|stroke-[a-z]+|fill-[a-z]+)="[^"]*")*')


def once(html: str) -> str:
    """The page `html` with what it repeats standing once; it looks the same."""
    return _ways(_pictures(html))


def _ways(html: str) -> str:
    """Each picture with the ways of its strokes once; never shared, as scripts draw some anew."""
    pieces, at, named = [], 0, 0
    for start, end in _whole_pictures(html):
        whole = html[start:end]
        times = Counter(found["d"] for found in _STROKE.finditer(whole))
        again = [d for d, many in times.items() if many > 1]
        if not again:
            continue
        names = {d: f"w{named + n}" for n, d in enumerate(again, start=1)}
        named += len(again)
        pieces += [html[at:start], _with_ways(whole, names)]
        at = end
    return "".join((*pieces, html[at:]))


def _with_ways(whole: str, names: dict[str, str]) -> str:
    there: set[str] = set()

    def shown(stroke: re.Match[str]) -> str:
        d, looks = stroke["d"], stroke["looks"] + stroke["more"]
        if d not in names or not _LOOKS.fullmatch(looks):
            return stroke[0]
        if d in there:
            return f'<use href="#{names[d]}"{looks}/>'
        there.add(d)
        return f'<g{looks}><path id="{names[d]}" d="{d}"/></g>'

    return _STROKE.sub(shown, whole)


def _pictures(html: str) -> str:
    found = _whole_pictures(html)
    times = Counter(html[start:end] for start, end in found)
    names: dict[str, str] = {}
    pieces, at = [], 0
    for start, end in found:
        whole = html[start:end]
        head = _head(whole)
        shapes = whole[len(head) : -len(_END)]
        if times[whole] < 2 or len(shapes) < _WORTH:
            continue
        pieces.append(html[at:start])
        at = end
        if whole in names:
            pieces.append(f'{head}<use href="#{names[whole]}"/>{_END}')
        else:
            names[whole] = f"d{len(names) + 1}"
            pieces.append(f'{head}<g class="shapes" id="{names[whole]}">{shapes}</g>{_END}')
    return "".join((*pieces, html[at:]))


def _head(whole: str) -> str:
    found = _HEAD.match(whole)
    return found[0] if found else ""


def _whole_pictures(html: str) -> list[tuple[int, int]]:
    """Where each picture begins and ends; one may hold others."""
    found, depth, start = [], 0, 0
    for tag in _SVG.finditer(html):
        if tag[0] != _END:
            start = start if depth else tag.start()
            depth += 1
        else:
            depth -= 1
            if not depth:
                found.append((start, tag.end()))
    return found
